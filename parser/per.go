package parser

// "Per" asks for one of what is told of: "load per leg", "how much per metre". Behind a
// number it says whose that is, and stays in doubt.

// per takes the doubt from the word at i before a leg of those that are told of.
func (rd *reading) per(i int) {
	prev := rd.at(i - 1)
	if prev.fig != nil || prev.plays(Wraps) || prev.plays(Weight) && rd.heavy(i-2) || prev.strength() != "" || rd.kit(i-1) {
		return
	}
	if rd.legAt(i + 1) {
		rd.alter(i, func(t *term) { *t = term{marks: markArticle} })
	}
}

// legAt says whether what stands at i, and nothing behind it, is one of the legs that
// the message tells of elsewhere.
func (rd *reading) legAt(i int) bool {
	leg := func(k int) bool { return rd.elems[k].marked(markTwins|markBridle) || rd.elems[k].plays(Legs) }
	one := rd.cued(rd.at(i), cueOneLeg) || i < len(rd.elems) && leg(i)
	return one && rd.at(i+1).fig == nil && rd.anyAt(func(k int) bool { return k != i && leg(k) })
}

// perLength says whether the word at i asks for what a foot or a metre of a stick weighs
// whose thickness is told, and no length: one of them is what to type.
func (rd *reading) perLength(i int) bool {
	u, per := rd.in.units[rd.word(rd.at(i+1))], rd.cued(rd.at(i), cuePer)
	if !per || u == nil || u.dim != dimLength || u.fine || !rd.at(i+1).marked(markUnit) || rd.at(i-1).fig != nil {
		return false
	}
	thick := 0
	for k, e := range rd.elems {
		switch in := rd.termAt(k).intent; {
		case in != "" && in != AskWeight && !rd.termAt(k).besides, rd.kit(k), e.plays(Length), rd.far(k):
			return false
		case e.fig != nil && (rd.fineAt(k) || rd.at(k+1).plays(Diameter)):
			thick++
		case e.fig != nil:
			return false
		}
	}
	return thick == 1
}

// wrapRule says whether it is asked of wraps by the pound, "1 wrap per 200 lb, is that a
// thing", and of no piece.
func (rd *reading) wrapRule() bool {
	rule, other := false, false
	for i, e := range rd.elems {
		k := rd.past(i+1, +1, markTrailing|markRelation)
		if rd.cued(rd.at(k), cueFor) {
			k++
		}
		per := rd.cued(rd.at(k), cuePer) || rd.cued(rd.at(k), cueEvery)
		rule = rule || (e.plays(Wraps) || rd.termAt(i).intent == AskLower) && per && rd.heavy(k+1)
		other = other || e.piece() || rd.termAt(i).unnamed || e.plays(People) && rd.at(i-1).fig != nil || e.fig != nil && e.fig.dim == dimLength
	}
	return rule && !other && !rd.anyAt(func(i int) bool { return rd.heavy(i) && !rd.cued(rd.at(i-1), cuePer) && !rd.cued(rd.at(i-1), cueEvery) })
}
