package parser

// A rope is dry as wood is: "600 lb limb, dry rope", "the rope is dry". What is
// said of gear says nothing of the piece.

// dryGear takes what is said of gear off the wood. Where a piece or a number
// stands right before it, "limb dry rope", it stays the wood's.
func (rd *reading) dryGear() {
	for i, e := range rd.elems {
		if rd.termAt(i).condition != Dead || e.fig != nil {
			continue
		}
		before := rd.at(i - 1)
		ahead := rd.at(i+1).part() != "" && !before.piece() && before.fig == nil && !rd.termAt(i-1).unnamed
		behind := before.marked(markIs) && rd.at(i-2).part() != "" && !rd.at(i+1).piece()
		if ahead || behind {
			rd.alter(i, func(t *term) { t.condition = "" })
		}
	}
}
