package parser

import "strings"

// What stands where the rope ends, and how long the rope is, are told in a
// question about its reach in words that elsewhere are of other things.

// treeTall passes over how tall the tree is, "tree is 70 ft tall", where the hitch
// and the rope are told and no piece: what the rope takes hangs on the hitch.
func (rd *reading) treeTall() {
	if rd.anyAt(func(i int) bool { return rd.elems[i].piece() }) || !rd.anyAt(rd.hitched) {
		return
	}
	for i := 0; i+2 < len(rd.elems); i++ {
		j := rd.past(i+1, +1, markIs)
		fig := rd.at(j).fig
		if !rd.cued(rd.elems[i], cueTree) || fig == nil || fig.dim != dimLength && fig.dim != dimCount || fig.short() {
			continue
		}
		if j > i+1 && rd.at(j+1).marked(markTall) {
			rd.pass(i, j+2)
		}
	}
}

// doesIt reads "will 180 ft do it, hitch at 66 ft": the length of the rope, where
// a hitch is told and no piece.
func (rd *reading) doesIt(i int) bool {
	fig := rd.elems[i].fig
	if !fig.far() || fig.told != "" || rd.anyAt(func(k int) bool { return rd.elems[k].piece() }) || !rd.anyAt(rd.hitched) {
		return false
	}
	const marks = "¿?¡!,.;:"
	bare := func(words []string, i int) string {
		if i < 0 || i >= len(words) {
			return ""
		}
		return strings.ToLower(strings.Trim(words[i], marks))
	}
	behind, before := strings.Fields(rd.text[fig.end:]), strings.Fields(rd.text[:fig.start])
	last := bare(before, len(before)-1)
	return (last == "will" || last == "would") && bare(behind, 0) == "do" && bare(behind, 1) == "it"
}

// numberHere stands in a pattern for the number that it is about.
const numberHere = "\x00"

// doesRope reads "will 200 make it, 90 ft up" and "¿alcanzan 40 m, polea a 18 m?":
// the rope, where nothing else is told but how high its block is.
func (rd *reading) doesRope(l *layout) {
	high := rd.anyAt(func(i int) bool { return rd.elems[i].plays(HitchHeight) && (rd.far(i-1) || rd.far(i+1)) })
	if !high || rd.anyAt(func(i int) bool {
		return rd.elems[i].piece() || rd.sized(i) || rd.heavy(i) || rd.elems[i].plays(People)
	}) {
		return
	}
	for i := range rd.elems {
		fig := rd.elems[i].fig
		bare := fig != nil && fig.dim == dimCount && fig.unit == nil && shortestRope <= fig.low && fig.high <= longestRope
		if !bare && !fig.far() || fig.told != "" || fig.pair || !l.doesRope.MatchString(rd.text[:fig.start]+numberHere+rd.text[fig.end:]) {
			continue
		}
		if !rd.lentRope(i) {
			fig.sure = RopeLength // its unit is asked for
			continue
		}
		fig.told = RopeLength
		if rd.at(i + 1).marked(markFollow) {
			rd.alter(i+1, func(t *term) { *t = term{intent: AskRope} })
		}
	}
}

// reaches reads "will the 200 footer make the ground" and "¿llega la de 40?" as
// questions about the rope, where a rope, a hitch or a drum is spoken of and no
// piece whose reach could be meant.
func (rd *reading) reaches() {
	if rd.pullAsked() {
		return
	}
	spoken := rd.anyAt(func(i int) bool {
		return rd.reachAsked(i) || rd.hitched(i) || rd.footer(i) || rd.elems[i].part() != "" || rd.elems[i].marked(markStation)
	})
	if !spoken || rd.anyAt(rd.sized) || rd.anyAt(func(i int) bool { return rd.termAt(i).intent == AskSwing || rd.elems[i].plays(Sideways) }) {
		return
	}
	for i := range rd.elems {
		if rd.termAt(i).reaches {
			rd.alter(i, func(t *term) { t.ask, t.intent, t.besides = "", AskRope, true })
		}
	}
}

// pullAsked reads "¿llega?" as whether the pull is enough, where a lift is asked for
// and no length of rope is told: then it asks for nothing more.
func (rd *reading) pullAsked() bool {
	rope := func(i int) bool { return rd.elems[i].plays(RopeLength) || rd.termAt(i).intent == AskRope }
	pulled := func(i int) bool {
		return rd.elems[i].plays(WinchPull) || rd.elems[i].plays(Parts) || rd.elems[i].fig != nil && rd.elems[i].fig.dim == dimRatio
	}
	if !rd.asksFor(AskLift) && !rd.anyAt(pulled) || rd.anyAt(rope) {
		return false
	}
	for i := range rd.elems {
		if rd.termAt(i).reaches {
			rd.alter(i, func(t *term) { t.ask = "" })
		}
	}
	return true
}

// reaching finds both where the message asks for rope, or tells how long it is.
func (rd *reading) reaching(l *layout) {
	rd.treeTall()
	rd.reaches()
	rd.doesRope(l)
	rd.ropesByLength(l)
	rd.ropeCut(l)
	for i := range rd.elems {
		if rd.doesIt(i) {
			rd.elems[i].fig.told = RopeLength
		}
	}
	if !rd.anyAt(func(i int) bool { return rd.termAt(i).intent == AskRope || rd.elems[i].plays(RopeLength) }) {
		rd.running()
		return
	}
	defer rd.running()
	for i := range rd.elems {
		fig := rd.elems[i].fig
		if fig == nil || fig.told != "" {
			continue
		}
		after := rd.text[fig.end:]
		if fig.dim == dimCount && fig.unit == nil && l.awayFromTree(after) != "" && rd.endStands(i) {
			rd.lentRope(i) // "ground guy 30 off"
		}
		if !fig.far() {
			continue
		}
		if away := l.awayFromTree(after); away != "" && rd.endStands(i) {
			rd.tell(i, DrumAway, away)
		} else if rd.itsLength(i) {
			fig.told = RopeLength
		}
	}
}

// endStands says whether a winch, or whoever has the rope in hand, stands right
// before a number: "winch 10 m from the tree", "ground man 25 ft back".
func (rd *reading) endStands(i int) bool {
	const farthest = 5 // words: "ground man wants to be 25 ft back"
	for j := i - 1; j >= 0 && j >= i-farthest; j-- {
		switch e := rd.elems[j]; {
		case e.term == nil && rd.text[e.start:e.end] == "to": // "wants to be"
		case e.term == nil:
			return false
		case e.plays(WinchPull) || e.term.ropeEnd:
			return true
		}
	}
	return false
}

// itsLength reads "is the rope long enough? its 45 m": a length that follows
// right behind the question, and is of nothing else.
func (rd *reading) itsLength(i int) bool {
	j := rd.past(rd.back(i-1), -1, markPronoun|markArticle)
	if j == i-1 || rd.at(j).pause == 0 || rd.at(i-1).marked(markAt) || !rd.endsBreath(i+1) && !rd.at(i+1).polite() {
		return false
	}
	for j >= 0 && rd.elems[j].pause > 0 {
		j--
	}
	return rd.termAt(j).intent == AskRope && !rd.anyAt(func(k int) bool { return k != i && rd.beside(k, RopeLength) })
}
