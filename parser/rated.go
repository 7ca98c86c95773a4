package parser

// "Rated", "max" and "good for" tell of a drum, a block, a sling or a shackle what
// may be put on it: its working load, and the answer says that it was read so. A
// rope is rated by either figure, and so is what is told in kilonewtons or bears
// more than gear of its kind is marked with: that is asked about.

// mostMarked is the largest working load that gear of a kind is commonly marked
// with, in kilograms. Past it "rated" may be what it breaks at.
var mostMarked = map[part]float64{partDrum: 3000, partBlock: 4000, partSling: 3000, partConnector: 12000}

// ratedAs is the part of which the number at i is told by a word like "rated", and
// where that word stands.
func (rd *reading) ratedAs(i int) (part, int) {
	fig, at := rd.elems[i].fig, i-1
	for rd.at(at).marked(markIs|markArticle|markAt|markBound) && !rd.termAt(at).rated {
		at--
	}
	if k := rd.stampedOn(i); k >= 0 {
		return partConnector, k
	}
	if !rd.termAt(at).rated {
		if at = i + 1; !rd.termAt(at).rated || rd.at(i+2).fig != nil {
			return "", -1
		}
	}
	k := min(at, i) - 1
	for rd.between(k) {
		k--
	}
	p := rd.at(k).part()
	if p == "" && rd.at(rd.past(min(at, i)-1, -1, markIs|markRating)).marked(markPronoun) {
		p = rd.part() // "the drum … if it says max"
	}
	if p == "" && rd.at(max(at, i)+1).part() != "" && !rd.at(max(at, i)+2).piece() {
		p = rd.at(max(at, i) + 1).part() // "a 2 tonne rated block"
	}
	most := mostMarked[p]
	heavy := fig.high
	if fig.dim == dimCount {
		heavy *= pound.factor
	}
	if most == 0 || fig.dim == dimForce || heavy > most || rd.at(i+1).piece() || rd.termAt(i+1).unnamed || rd.carabiner() {
		return "", -1
	}
	onIt := rd.at(rd.past(k-1, -1, markArticle|markAdjective)).marked(markIn)
	if rd.termAt(at).marks&markBound != 0 && (onIt || rd.worded(Wraps)) {
		return "", -1 // "3 wraps on the drum, 900 lb max" may tell the most that is lowered
	}
	asking := rd.cued(rd.at(rd.past(k-1, -1, markArticle|markAdjective|markPronoun)), cueAsking)
	if (asking || rd.termAt(at).bears) && !rd.anyAt(func(k int) bool { return k != i && rd.elems[k].fig != nil && rd.elems[k].fig.rates() }) {
		return "", -1 // "is the sling good for 900 lb" asks of a load
	}
	return p, at
}

// between says whether the element at i may stand between gear and its rating: "the
// block on it says max".
func (rd *reading) between(i int) bool {
	e := rd.at(i)
	return e.fig == nil && e.pause == 0 && e.part() == "" && (e.marked(markIs|markArticle|markRating|markAt|markMade|markWhere|markPronoun|markAdjective) || e.polite() || rd.termAt(i).label || rd.termAt(i).rated || rd.termAt(i).note == "about")
}

// carabiner says whether one is named: what stands on it is what it breaks at.
func (rd *reading) carabiner() bool {
	return rd.anyAt(func(i int) bool { return rd.termAt(i).note == "carabiner" })
}

// rate makes the number at i the working load of a part, and keeps the word for it
// for the answer to say how it was read.
func (rd *reading) rate(i int, p part, at int) {
	e := rd.elems[at]
	rd.elems[i].fig.sure = p.field(working)
	rd.alter(at, func(t *term) { *t = term{marks: t.marks &^ markBound} })
	rd.elems[at].spent = true
	rd.fixes = append(rd.fixes, Fix{Words: rd.text[e.start:e.end], As: "WLL"})
}

// heldUpTo is the gear that "up to" tells the number at i of: "la polea aguanta hasta
// 400 kg", "hasta 400 kg aguanta la polea". Which of the two figures it is stays asked.
func (rd *reading) heldUpTo(i int) part {
	bears := func(k int) bool {
		return rd.at(k).fig == nil && (rd.at(k).marked(markRating|markIs|markArticle) || rd.termAt(k).bears || rd.termAt(k).intent == AskGear || rd.termAt(k).intent == AskLower)
	}
	if !rd.at(i - 1).marked(markBound) {
		return ""
	}
	k, j := i-2, i+1
	for bears(k) && rd.at(k).part() == "" {
		k--
	}
	for bears(j) && rd.at(j).part() == "" {
		j++
	}
	p := rd.at(k).part()
	if p == "" && (j > i+1 || rd.termAt(j).intent == AskGear) {
		p = rd.at(j).part()
	}
	if p == partRope && rd.asksFor(AskRope) {
		return ""
	}
	return p
}

// stampedOn finds the word that a shackle's marking is told by before the number at i,
// "the shackle says 3.25 t", -1 for none: what is stamped on one is its working load.
// What a carabiner, or anything in kilonewtons, is marked with is not.
func (rd *reading) stampedOn(i int) int {
	fig, k := rd.elems[i].fig, i-1
	if fig.unit == nil || fig.dim != dimMass || fig.high > mostMarked[partConnector] || rd.carabiner() || rd.at(i+1).strength() != "" {
		return -1
	}
	told := func(k int) bool { return rd.at(k).pause == 0 && (rd.termAt(k).label || rd.cued(rd.at(k), cueStamped)) }
	for told(k) || rd.at(k).pause == 0 && rd.at(k).marked(markIs|markArticle|markIn) {
		k--
	}
	if rd.at(k).part() != partConnector || k == i-1 || !told(k+1) && !told(i-1) {
		return -1
	}
	if told(i - 1) {
		return i - 1
	}
	return k + 1
}
