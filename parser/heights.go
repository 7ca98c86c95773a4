package parser

// A long length that something is lowered "from", or that the piece hangs "at",
// is the height of the hitch, though no word names it.

// heights claims it where the message lowers and tells no hitch in its own
// words.
func (rd *reading) heights() {
	rd.cutHere()
	rd.tallPiece()
	rd.cutTo()
	if rd.anyAt(rd.hitched) {
		return
	}
	at := -1
	for i := range rd.elems {
		if !rd.plainHeight(i) {
			continue
		}
		if at >= 0 {
			return // two heights are rather two things
		}
		at = i
	}
	if at >= 0 {
		rd.claim(at, HitchHeight)
	}
}

// aLower reads "a 12 m lower" as how high what is lowered hangs.
func (rd *reading) aLower(i int) bool {
	return rd.far(i) && rd.at(i-1).marked(markArticle) && rd.at(i+1).marked(markAttribute) && rd.endsBreath(i+2)
}

// cutHere takes what a cut plan asks for, "dónde corto", behind a thickness for the
// place where that was measured: "8 pulgadas donde corto".
func (rd *reading) cutHere() {
	for i := range rd.elems {
		if rd.termAt(i).intent == AskCutPlan && rd.at(i).looksBack(ButtDiameter) && rd.at(i-1).fig.short() {
			rd.alter(i, func(t *term) { t.intent = "" })
		}
	}
}

// cutTo reads "this chunk is 3 ft across and i'm cutting it at 4 ft", where only its
// weight is asked: how long it comes off. Of what still stands, it is where it is cut.
func (rd *reading) cutTo() {
	const longest = 2 // in metres: more is rather a height
	chunk := func(i int) bool {
		return !rd.elems[i].marked(markStanding) && (rd.termAt(i).shape == Log || rd.termAt(i).unnamed)
	}
	if !rd.asksFor(AskWeight) || !rd.anyAt(chunk) || rd.anyAt(func(i int) bool { return rd.elems[i].marked(markStanding) || rd.hitched(i) || rd.beside(i, Length) }) {
		return
	}
	for i := range rd.elems {
		j := rd.past(i-2, -1, markPronoun|markArticle)
		cut := rd.cued(rd.at(j), cueCutting) && (j < i-2 || rd.cutsIt(j))
		if rd.far(i) && rd.at(i-1).marked(markAt) && cut && rd.elems[i].fig.high <= longest && rd.endsBreath(i+1) {
			rd.claim(i, Length)
			return
		}
	}
}

// cutsIt says whether the word at i is of a verb that has its "it" before it: "lo
// cortamos a".
func (rd *reading) cutsIt(i int) bool { return rd.at(i - 1).marked(markPronoun | markArticle) }

// tallPiece reads how high a piece is that only its weight is asked of as how long
// it is: "cuánto pesa la punta, 8 pulgadas en el corte y 20 pies de alto".
func (rd *reading) tallPiece() {
	shaped, thick, at := false, false, -1
	for i, e := range rd.elems {
		shaped = shaped || rd.termAt(i).shape != ""
		thick = thick || e.fig.short() && !rd.ofRope(i)
		switch {
		case rd.far(i) && at >= 0:
			return
		case rd.far(i):
			at = i
		}
	}
	if at < 0 || !rd.at(at+1).marked(markHigh) || rd.at(at-1).marked(markAt) || rd.in.leads[rd.word(rd.at(at-1))] || !rd.asksFor(AskWeight) {
		return
	}
	if shaped && thick && !rd.anyAt(func(k int) bool { return k != at+1 && rd.besidesWeight(k) }) {
		rd.alter(at+1, func(t *term) { *t = term{roles: []role{{Length, before, false}}} })
	}
}

// hitched says whether the element at i has words of a hitch that say nothing
// else, other than "up" and "high".
func (rd *reading) hitched(i int) bool {
	for _, r := range rd.termAt(i).rolesOf(HitchHeight) {
		if !r.soft && (rd.far(i-1) || rd.far(rd.past(i+1, +1, markIs|markAt|markBound))) {
			return true
		}
	}
	return false
}

// lowest is the least that a bare "from 10 ft" is taken for a height, in metres:
// what is less is rather the length of a piece.
const lowest = 2.4

// plainHeight says whether the number at i is led to by "from" or "at" and is
// nobody else's.
func (rd *reading) plainHeight(i int) bool {
	fig, lead := rd.elems[i].fig, rd.at(i-1)
	if !fig.far() || fig.elsewhere || fig.told != "" || fig.sure != "" || fig.claimed != "" || fig.low < lowest || lead.term == nil {
		return false
	}
	if rd.aLower(i) || rd.onlyRope() && (rd.hung(i) || rd.elems[i-1].marked(markAt) && rd.ofRopeQuestion(i)) {
		return true
	}
	word := fold(rd.text[lead.start:lead.end])
	if !rd.in.leads[word] || rd.goesOn(i+1) {
		return false
	}
	if lead.marked(markAt) {
		return rd.hangsAt(rd.past(i-2, -1, markAdverb|markArticle))
	}
	lowers := rd.asksFor(AskLower) || rd.asksFor(AskDrop) || rd.asksFor(AskBlockLoad)
	return lowers && (!lead.marked(markMade) || rd.heavy(i-2) && !rd.bounded(i-2)) // "bajar 500 kg de 12 m", not "un tronco de 12 m"
}

// hung reads "rope for an 85 ft block": how high the block hangs.
func (rd *reading) hung(i int) bool {
	next := rd.at(i + 1)
	return next.part() == partBlock && rd.at(i+2).strength() == "" && !Redirecting(next.term.block)
}

// ofRopeQuestion reads "how much rope for a 3:1 at 45 ft", where the number before
// it is of the tackle or the rope.
func (rd *reading) ofRopeQuestion(i int) bool {
	j := rd.past(i-1, -1, markAt|markArticle)
	e := rd.at(j)
	return !rd.goesOn(i+1) && (e.fig != nil && e.fig.dim == dimRatio || e.plays(Parts) || e.term != nil && rd.reachAsked(j))
}

// bounded says whether the mass at i is told as what gear may carry rather than
// as what is lowered: "límite 900 libras".
func (rd *reading) bounded(i int) bool {
	e := rd.at(rd.past(i-1, -1, markIs|markMade))
	return e.marked(markBound|markRating) || e.term != nil && len(e.term.roles) > 0 && !e.plays(Weight)
}

// hangsAt says whether what stands before "at" is the piece or its lowering:
// "limb at 30 ft", "22 ft at 35 ft"; not "cut at 12 ft".
func (rd *reading) hangsAt(i int) bool {
	e := rd.at(i)
	lowers := rd.asksFor(AskLower) || rd.asksFor(AskDrop) || rd.asksFor(AskBlockLoad)
	switch {
	case rd.far(i):
		return rd.anyAt(func(k int) bool { return rd.elems[k].fig.short() })
	case !lowers:
		return false
	}
	return e.piece() || rd.heavy(i) || e.plays(Wraps) || e.term != nil && (e.term.intent == AskLower || e.term.intent == AskDrop)
}

// goesOn says whether what stands at i makes something else of the number
// before it: the piece, a place, another role.
func (rd *reading) goesOn(i int) bool {
	e := rd.at(i)
	if e.term == nil {
		return e.fig != nil
	}
	return e.piece() || e.cross || len(e.term.roles) > 0 && !e.looksBack(HitchHeight) || e.marked(markRelation|markPlace|markPart|markOutward|markAside|markMade)
}

// hitchBeforeRope reads "block at 12 m rope breaks at 60 kN" without the comma: the
// height is the block's where the rope behind it has a strength of its own.
func (rd *reading) hitchBeforeRope() {
	for i := range rd.elems {
		lead, rope := rd.at(i-1), rd.at(i+1)
		if !rd.far(i) || rd.elems[i].fig.told != "" || lead.term == nil || !lead.term.leads || !lead.leadsTo(HitchHeight) || !rope.marked(markCord) {
			continue
		}
		rated := rd.at(rd.past(i+2, +1, markIs|markMade|markRating))
		if rated.strength() != "" || rated.fig != nil && rated.fig.dim != dimCount && rated.fig.rates() {
			rd.elems[i].fig.told = HitchHeight
		}
	}
}
