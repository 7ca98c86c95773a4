package parser

// Rope that is pulled "through" says nothing of how thick a piece is: "how much rope
// thru to lift 2 m".

// ropeThrough takes what it says elsewhere from such a word behind a rope, before
// what is done with it.
func (rd *reading) ropeThrough() {
	for i, e := range rd.elems {
		next := rd.termAt(i + 1).intent
		lifts := rd.asksFor(AskRope) && (next == AskLift || next == AskRaise)
		roped := lifts || rd.at(i-1).part() == partRope || rd.termAt(i-1).intent == AskRope
		if e.onlyPlays(Diameter) && roped && rd.at(i-1).fig == nil && rd.at(i+1).fig == nil {
			rd.alter(i, func(t *term) { t.roles = nil })
		}
	}
}
