package parser

// unsaidStrength asks about a number that is rather gear's than the piece's,
// and has no word for which of the two on its label it is: "carabiner 22 kN",
// or "5/8 double braid, 16,000 lb" with no piece in sight.
func (rd *reading) unsaidStrength(i int, used map[int]bool) {
	fig, before := rd.elems[i].fig, rd.at(i-1)
	if rd.wantsWorking(i) {
		fig.sure = RopeBreak
		return
	}
	if rd.loadWanted() || rd.goodFor(i) {
		return // "what's on the redirect sling with 300 kg in the line"
	}
	if p := rd.heldUpTo(i); p != "" && fig.dim != dimCount {
		rd.asksStrength(fig, p)
		return
	}
	if p := rd.isOf(i); p != "" {
		rd.asksStrength(fig, p)
		return
	}
	if p := rd.describedGear(i); p != "" {
		rd.asksStrength(fig, p)
		return
	}
	if p := rd.part(); fig.dim == dimForce && (p == partConnector || p == partSling) && !rd.anyAt(func(k int) bool { return rd.elems[k].piece() || rd.termAt(k).unnamed }) {
		rd.asksStrength(fig, p) // "my biner, its 24 kN"
		return
	}
	p := rd.ratedRope(i)
	if fig.dim == dimCount && p != "" {
		rd.asksStrength(fig, p).inUnit(rd.capacityUnit(i))
		return
	}
	if fig.dim == dimCount || rd.at(i+1).piece() || rd.pieceIs(i) {
		return
	}
	if p == "" && !before.marked(markWhere) && (before.term == nil || len(before.term.roles) == 0 || before.part() != "") {
		p = rd.ratedPart(i, used)
	}
	if p != "" {
		rd.asksStrength(fig, p)
	}
}

// goodFor says whether the number at i is a load that it is asked of gear whether it
// is good for, "sling ok for 900 lb": nothing else in the message could be that load.
func (rd *reading) goodFor(i int) bool {
	t := rd.termAt(rd.past(i-1, -1, markArticle|markAt))
	asks := t.part != "" && t.intent == AskGear && !t.besides
	return asks && !rd.anyAt(func(k int) bool { return k != i && rd.elems[k].fig != nil && rd.elems[k].fig.rates() })
}

// asksStrength asks which figure of a part a number is.
func (rd *reading) asksStrength(fig *figure, p part) *Ask {
	a := fig.ask(WhichStrength, rd.text)
	a.Fields = p.both()
	rd.asks = append(rd.asks, a)
	fig.elsewhere = true
	return a
}

// pieceIs reads "the piece is 700 kilos".
func (rd *reading) pieceIs(i int) bool {
	k := rd.back(i - 1)
	return k < i-1 && (rd.at(k).piece() || rd.cued(rd.at(k), cuePiece))
}

// ratedPart is the gear right before a number, or any that is named where the
// message tells of no piece.
func (rd *reading) ratedPart(i int, used map[int]bool) part {
	switch p := rd.at(i - 1).part(); {
	case p == partSling || p == partConnector:
		return p
	case rd.pieceless():
		p, _ = rd.partOf(i-1, i, used)
		return p
	}
	return ""
}

// ratedRope reads "rope is 1/2 in 10,400 lb" and "3/4 rope with 20,000 lb
// strength": a figure of the rope's, whatever else the message tells.
func (rd *reading) ratedRope(i int) part {
	j := rd.past(i-1, -1, markMade|markRating)
	thick := rd.at(j).fig != nil && rd.ofRope(j)
	if thick || rd.ropeRow(i) || rd.cued(rd.at(i+1), cueStrength) && rd.part() == partRope {
		return partRope
	}
	return ""
}

// ropeRow says whether the number at i ends a row of figures that begins with how
// thick and how long a rope is: "12 mm, 50 m, 3.8 tonne".
func (rd *reading) ropeRow(i int) bool {
	k, long := i-1, false
	for ; rd.at(k).pause == 2 || rd.far(k); k-- {
		long = long || rd.far(k)
	}
	return long && rd.at(k).fig != nil && rd.ofRope(k) && !rd.asksFor(AskLower)
}

// part is the one kind of gear that a message names, "" for none or several.
func (rd *reading) part() part {
	only := part("")
	for _, e := range rd.elems {
		switch p := e.part(); {
		case p == "" || p == only:
		case only != "":
			return ""
		default:
			only = p
		}
	}
	return only
}

// isOf reads "the rope is now 6 tonne" and "rope strength 6 tonne": of which part
// a mass is told, where it is told of no piece and of no weight.
func (rd *reading) isOf(i int) part {
	k, is := i-1, false
	for rd.at(k).part() == "" && (rd.at(k).marked(markIs|markRating) && !rd.at(k).marked(markAt|markRelation) || rd.at(k).polite() && !rd.person(k)) {
		is = is || rd.at(k).marked(markIs|markRating)
		k--
	}
	of := func(i int) bool { return rd.elems[i].piece() || rd.at(i).plays(Weight) }
	if rd.elems[i].fig.dim == dimCount || !is && !rd.at(k).marked(markRating) || rd.anyAt(of) || rd.ropeTurned() && rd.inLine(i) {
		return ""
	}
	return rd.at(k).part()
}

// describedGear reads "today the drum is the small one, 500 kg": the gear that a
// message is about, where its one number has no other owner and nothing is asked.
func (rd *reading) describedGear(i int) part {
	owner := func(k int) bool {
		e, t := rd.elems[k], rd.termAt(k)
		return k != i && e.fig != nil || e.piece() || t.unnamed || t.lifts || len(t.roles) > 0 && e.part() == "" ||
			t.intent != "" && e.part() == "" || t.bears || rd.at(k).marked(markRelation) || rd.cued(e, cueHolds)
	}
	if rd.elems[i].fig.dim == dimCount || rd.at(i).pause == 0 && rd.at(i-1).pause == 0 || rd.anyAt(owner) {
		return ""
	}
	k := 0
	for k < i && rd.elems[k].part() == "" && (rd.elems[k].marked(markArticle|markAdverb|markTrailing) || rd.at(k).polite()) {
		k++
	}
	if rd.anyAt(func(n int) bool {
		return n > k && n < i && rd.at(n).marked(markIs) && !rd.at(n).marked(markMade|markIn)
	}) {
		return rd.at(k).part()
	}
	return ""
}

// wantsWorking reads "working load for a 70 kN rope": whoever asks for the one
// figure of a rope names the rope by the other.
func (rd *reading) wantsWorking(i int) bool {
	j := rd.past(i-1, -1, markArticle)
	return rd.elems[i].fig.dim != dimCount && j < i-1 && rd.at(j).marked(markWhere|markIs) && rd.at(j-1).strength() == working &&
		!rd.at(j-1).spent && rd.at(i+1).part() == partRope
}

// pieceless says whether the message is about gear and names no piece.
func (rd *reading) pieceless() bool {
	gear := false
	for i, e := range rd.elems {
		if e.piece() || rd.termAt(i).unnamed || rd.cued(e, cuePiece) {
			return false
		}
		gear = gear || e.term != nil && e.term.intent == AskGear
	}
	return gear
}

// ratingAsk asks what a number beside gear is, where it has no word for it.
func (rd *reading) ratingAsk(i int) *Ask {
	fig := rd.elems[i].fig
	if !fig.rates() {
		return nil
	}
	fields := []Field{fig.sure}
	if fig.sure == "" {
		p := rd.partBeside(i-1, i+1)
		if p == "" {
			return nil
		}
		fields = p.both()
	}
	a := fig.ask(WhichStrength, rd.text)
	a.Fields = fields
	if fig.dim == dimCount {
		a.inUnit(rd.capacityUnit(i))
	}
	return a
}

// inUnit asks for the unit of a strength, or lends it the one that all else of
// the message is told in: then only which figure it is stays in doubt.
func (a *Ask) inUnit(u *unitWord) {
	switch {
	case u == nil || u.dim != dimMass || len(a.Fields) < 2:
		a.Kind = NoUnit
	case u.factor == pound.factor:
		a.Choices = []Choice{{Words: a.Words + " lb"}}
	case u.factor == 1:
		a.Choices = []Choice{{Words: a.Words + " kg"}}
	default:
		a.Kind = NoUnit
	}
}

// factors reads "at 5:1" beside a strength as a design factor. A ratio that
// could be parts of line as well is asked about.
func (rd *reading) factors() {
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimRatio {
			continue
		}
		switch {
		case rd.at(i - 1).marked(markAt):
			e.fig.sure = DesignFactor
		case rd.at(i+1).plays(DesignFactor) || rd.at(rd.past(i-1, -1, markIs)).plays(DesignFactor):
		case e.fig.low < 5 || rd.lifts():
		case rd.loaded():
			a := e.fig.ask(TwoReadings, rd.text)
			a.Fields = []Field{DesignFactor, Parts}
			rd.asks = append(rd.asks, a)
			e.fig.elsewhere = true
		default:
			e.fig.sure = DesignFactor
		}
	}
}

// lifts says whether the message speaks of lifting or of people on the rope.
func (rd *reading) lifts() bool {
	for _, e := range rd.elems {
		if e.term != nil && (e.term.intent == AskLift || e.term.intent == AskRaise) || e.plays(People) {
			return true
		}
	}
	return false
}

// loaded says whether the message tells of a load besides the strengths.
func (rd *reading) loaded() bool {
	for _, e := range rd.elems {
		if e.piece() || e.fig != nil && e.fig.rates() && e.fig.sure == "" {
			return true
		}
	}
	return false
}
