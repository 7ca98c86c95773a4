package parser

import "strings"

// Where its reach is asked, a rope is told by its length alone: "will the 200
// footer do", "my 150", "la de 40"; and two of them where either could be taken.

const (
	shortestFooter = 24 // in metres: no piece that is lowered whole is as long

	shortestRope, longestRope = 15, 650 // of a bare number, in feet or metres
)

// ropesByLength finds such ropes.
func (rd *reading) ropesByLength(l *layout) {
	if !rd.anyAt(rd.reachAsked) && !rd.runsOnly() || rd.anyAt(rd.sized) || rd.swings() && !rd.asksFor(AskRope) {
		return // "the house is 14 ft on the other side"
	}
	if rd.asksFor(AskDrop) {
		return // "no room to let it run, we only have 6 ft"
	}
	first := -1
	for i := range rd.elems {
		fig := rd.elems[i].fig
		named := rd.ropeNamed(i)
		if fig == nil || fig.told != "" || fig.elsewhere || fig.pair || fig.falling || !named && !rd.footer(i) && !rd.ownRope(l, i) && !rd.behindThick(i) && !rd.ropeOf(i) {
			continue
		}
		field := RopeLength
		if first >= 0 && rd.elems[first].fig.low != fig.low && rd.either(l, first, i) {
			field = SecondRope
		}
		switch {
		case field == RopeLength && named: // its words take it
		case rd.lentRope(i):
			fig.told = field
			if rd.ropeWords(i) {
				rd.alter(i-2, func(t *term) { t.roles = nil }) // they have their number
			}
		default:
			fig.sure = field // its unit is asked for
		}
		if first < 0 {
			first = i
		}
	}
}

// reachAsked says whether the element at i asks for the reach of a rope, or
// names one.
func (rd *reading) reachAsked(i int) bool {
	return rd.termAt(i).intent == AskRope || rd.elems[i].plays(RopeLength)
}

// sized says whether the element at i is of a piece: then a bare length is
// rather the piece's.
func (rd *reading) sized(i int) bool {
	fig := rd.elems[i].fig
	return fig.short() && !fig.rope && fig.low >= thinnestPiece || rd.termAt(i).tree != nil
}

// ropeNamed says whether the words right beside a length are those of a rope.
func (rd *reading) ropeNamed(i int) bool {
	before := rd.at(rd.past(i-1, -1, markMade|markIs))
	return rd.far(i) && (rd.at(i+1).looksBack(RopeLength) || rd.at(i+1).part() == partRope || before.part() == partRope && before.leadsTo(RopeLength))
}

// behindThick says whether a length stands right behind how thick a rope is: "13 mm
// 60 m", "9/16 double braid 200 ft".
func (rd *reading) behindThick(i int) bool {
	k := i - 1
	for rd.at(k).pause == 2 || strings.HasPrefix(rd.termAt(k).note, "rope-") || rd.at(k).marked(markCord) {
		k--
	}
	return rd.far(i) && rd.at(k).fig != nil && rd.ofRope(k) && !rd.at(i+1).looksBack(HitchHeight)
}

// longThin claims the length of a rope that is told before how thick it is, "150 ft
// half inch line", where nothing else could be as long.
func (rd *reading) longThin() {
	if rd.anyAt(func(i int) bool { return rd.elems[i].piece() || rd.termAt(i).tree != nil }) {
		return
	}
	for i := range rd.elems {
		if rd.far(i) && rd.at(i+1).fig.short() && rd.at(i+2).part() == partRope {
			rd.claim(i, RopeLength)
		}
	}
}

// ropeOf reads "soga de 120" where it is asked whether that reaches, and nothing is
// told that could hang on it.
func (rd *reading) ropeOf(i int) bool {
	fig := rd.elems[i].fig
	bare := fig.dim == dimCount && fig.unit == nil && shortestRope <= fig.low && fig.high <= longestRope
	return bare && rd.ropeWords(i) && rd.anyAt(func(k int) bool { return rd.termAt(k).intent == AskRope }) && !rd.anyAt(rd.heavy)
}

// ropeWords says whether the number at i stands behind "soga de".
func (rd *reading) ropeWords(i int) bool {
	return rd.at(i-1).marked(markMade) && rd.at(i-2).part() == partRope
}

// footer says whether the number at i is told as one long thing: "the 200 footer".
func (rd *reading) footer(i int) bool {
	fig := rd.elems[i].fig
	return fig.far() && fig.low >= shortestFooter && strings.HasSuffix(strings.ToLower(fig.words(rd.text)), "footer") && !rd.at(i+1).piece()
}

// ownRope reads "my 150", "we only have 200 ft", "una de 100": a length that
// somebody has or fetches, and of which no more is said.
func (rd *reading) ownRope(l *layout, i int) bool {
	fig := rd.elems[i].fig
	bare := fig.dim == dimCount && fig.unit == nil && shortestRope <= fig.low && fig.high <= longestRope
	if !bare && !fig.far() || !l.ownRope.MatchString(rd.text[:fig.start]) {
		return false
	}
	if f := rd.roleBeside(i); f != nil && f[0] != RopeLength {
		return false // "drop is 4 ft, rope breaks at 9,000 lb"
	}
	if k := rd.past(i-1, -1, markIs|markArticle|markAdverb); rd.at(k).marked(markPlace | markObstacle | markStation | markStanding) {
		return false // "drop zone is 30 ft and 120 ft of rope"
	}
	return rd.endsBreath(i+1) || rd.reachAsked(i+1) || l.orRope.MatchString(rd.text[fig.end:])
}

// either says whether two ropes are told to choose between: no other number
// stands between them, but a word that joins them.
func (rd *reading) either(l *layout, i, j int) bool {
	if !l.eitherRope.MatchString(rd.text[rd.elems[i].end:rd.elems[j].start]) {
		return false
	}
	for k := i + 1; k < j; k++ {
		if rd.elems[k].fig != nil {
			return false
		}
		if rd.cued(rd.elems[k], cueOther) {
			rd.alter(k, func(t *term) { t.ask = "" })
		}
	}
	return true
}

// lentRope gives a bare length of a rope the unit of the other lengths, and says
// whether the number has one now.
func (rd *reading) lentRope(i int) bool {
	fig := rd.elems[i].fig
	if fig.unit != nil {
		return true
	}
	fine, coarse, ok := rd.lengthUnits(i)
	switch {
	case !ok || fine == nil && coarse == nil:
		return false
	case coarse == nil && fine.system == Imperial:
		coarse = foot
	case coarse == nil:
		coarse = metre
	}
	fig.lent(coarse)
	return true
}
