package parser

// How a load hangs that swings or is pulled aside: how far below its block, and
// how far over it shall go. Elsewhere the same words are numbers of the
// surroundings, or in doubt.

// longestHung is the longest rope that is taken for the line a load hangs on, in
// metres: a longer one is rather the whole rope, and would make every pull
// aside too small.
const longestHung = 20

// hanging finds both.
func (rd *reading) hanging() {
	if !rd.swung() {
		return
	}
	for i := range rd.elems {
		if !rd.far(i) || rd.elems[i].fig.told != "" {
			continue
		}
		switch next := rd.termAt(i + 1); {
		case next.belowBlock && rd.termAt(rd.back(i-1)).hung:
			rd.elems[i].fig.told = LineOut
			rd.elems[i+1].term = &term{}
		case rd.at(i+1).plays(RopeLength) && rd.termAt(i+2).belowBlock && rd.elems[i].fig.high <= longestHung:
			rd.elems[i].fig.told = LineOut // "on 40 ft of rope under the block"
			rd.elems[i+1].term, rd.elems[i+2].term = &term{}, &term{}
		case rd.hungBelow(i), rd.pieceBelow(i):
			rd.elems[i].fig.told = LineOut
			rd.elems[i+1].term = &term{}
		case rd.hungUnder(i):
			rd.elems[i-1].term = &term{} // no bound
		case next.offPlumb && rd.cutBefore(i):
			rd.elems[i].fig.told = Sideways
			rd.elems[i+1].term = &term{}
		case next.aboveLoad && (rd.at(rd.back(i-1)).part() == partBlock || rd.blockBefore(i)):
			rd.elems[i].fig.told = LineOut // "la polea está 10 m más arriba"
			rd.elems[i+1].term = &term{}
		case rd.termAt(rd.back(i-1)).hangs && rd.anyAt(rd.toTheSide) && !rd.goesOn(i+1):
			rd.elems[i].fig.told = LineOut // "3 m de lado, cuelga 10 m"
		case rd.tuggedSo(i):
			rd.elems[i].fig.told = Sideways
		case rd.movedOver(i):
			rd.elems[i].fig.told = Sideways
			rd.elems[i+1].term = &term{}
		case rd.termAt(rd.back(i-1)).rolesOf(Sideways) != nil && rd.cued(rd.at(i+1), cueOut) && !rd.at(i+2).marked(markRelation):
			rd.elems[i].fig.told = Sideways // "starts 14 ft out"
			rd.elems[i+1].term = &term{}
		case rd.at(i+1).plays(Sideways) && rd.at(i+1).marked(markPlace):
			rd.elems[i].fig.told = Sideways // "2 m de lado"
		case rd.termAt(rd.back(i-1)).hung && rd.endsBreath(i+1):
			rd.hangsSoFar(i)
		default:
			rd.hangsElse(i)
		}
	}
}

// hangsSoFar asks about "the log hangs 6 m": it could be so long, or so far below
// its block.
func (rd *reading) hangsSoFar(i int) {
	fig := rd.elems[i].fig
	a := fig.ask(TwoReadings, rd.text)
	a.Fields = []Field{Length, LineOut}
	a.Choices = []Choice{{Field: Length}, {Field: LineOut}}
	rd.asks = append(rd.asks, a)
	fig.elsewhere = true
}

// swung says whether the message speaks of a swing, a tag line, or how far a
// load is to the side.
func (rd *reading) swung() bool {
	return rd.anyAt(func(i int) bool {
		e := rd.elems[i]
		if rd.far(i) && rd.termAt(i+1).belowBlock && rd.termAt(rd.back(i-1)).hung {
			return true
		}
		return e.plays(Sideways) || rd.beside(i, LineOut) || e.term != nil && (e.term.offPlumb || e.term.intent == AskBalance || e.term.intent == AskSwing)
	})
}

// toTheSide says whether the element at i says how far aside a number is.
func (rd *reading) toTheSide(i int) bool { return rd.elems[i].plays(Sideways) }

// movedOver reads "pull it 6 ft over", and not "over the deck".
func (rd *reading) movedOver(i int) bool {
	j := rd.past(i-1, -1, markPronoun|markArticle)
	if !rd.cued(rd.at(i+1), cueMoved) || !rd.at(j).marked(markTug|markMoving) {
		return false
	}
	after := rd.at(i + 2)
	return !after.marked(markArticle|markPlace) && after.fig == nil && !after.piece()
}

// tuggedSo reads "jalarlo 7 pies" where a tag line is asked about, which moves
// nothing but sideways: not "jalar 7 pies de cuerda", nor "7 pies arriba".
func (rd *reading) tuggedSo(i int) bool {
	j := rd.past(i-1, -1, markPronoun|markArticle)
	for rd.at(j).piece() || rd.termAt(j).unnamed {
		j = rd.past(j-1, -1, markArticle) // "separar la rama 2 m"
	}
	after := rd.at(i + 1)
	ends := rd.endsBreath(i+1) || rd.cued(after, cueSoThat) || rd.termAt(i+1).purpose
	tagged := rd.anyAt(func(k int) bool { return rd.termAt(k).intent == AskBalance })
	return tagged && ends && rd.at(j).marked(markTug)
}

// pieceBelow reads "180 kg, 8 m below the block" where a tag line is spoken of: the
// piece hangs on so much rope.
func (rd *reading) pieceBelow(i int) bool {
	k := rd.past(i-1, -1, markIs|markAt)
	of := k < 0 || rd.at(k).pause > 0 || rd.at(k).piece() || rd.termAt(k).unnamed || rd.heavy(k)
	return rd.termAt(i+1).belowBlock && of && rd.tugged() && rd.endsBreath(i+2)
}

// hungOnRope takes a rope for the line that a load hangs on, where it swings or
// is pulled aside and no other line is told: "6 ft off plumb on 25 ft of rope".
// A crew's own rope, one that goes to the drum, and one too long to hang there
// are not that.
func (rd *reading) hungOnRope(q *Question) {
	aside := q.Intent == AskSwing || q.Intent == AskBalance && q.Has(Sideways)
	if !aside || q.Has(LineOut) || q.Has(Wraps) || rd.has(markStation) {
		return
	}
	for i, x := range q.Quantities {
		if x.Field != RopeLength || x.High > longestHung || rd.owned(x.Start) {
			continue
		}
		if h, ok := q.Get(HitchHeight); ok && x.High >= h.Low {
			continue
		}
		q.Quantities[i].Field = LineOut
	}
}

// owned says whether what is told at a place of the text is somebody's: "my 50
// ft rope".
func (rd *reading) owned(start int) bool {
	for i, e := range rd.elems {
		if e.fig != nil && e.start == start {
			return rd.cued(rd.at(i-1), cueOwned)
		}
	}
	return false
}
