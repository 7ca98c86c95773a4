package parser

// Rope is dry as well as wood, and what is asked to be "wet or dry" is neither: no
// piece is dead by that.

// dryGear takes such a word for nothing of the piece.
func (rd *reading) dryGear() {
	for i, e := range rd.elems {
		if rd.termAt(i).condition != Dead || !rd.cued(e, cueDryToo) {
			continue
		}
		before := rd.past(i-1, -1, markIs|markArticle)
		gear := rd.ropeOrDrum(i+1) || before >= 0 && rd.ropeOrDrum(before)
		if gear || rd.wetAt(i-1) || rd.wetAt(i-2) || rd.wetAt(i+1) || rd.wetAt(i+2) {
			rd.alter(i, func(t *term) { t.condition = "" })
		}
	}
}

func (rd *reading) ropeOrDrum(i int) bool {
	return rd.at(i).pause == 0 && (rd.rope(i) || rd.at(i).part() == partDrum)
}

// wetAt says whether the element at i tells of what is wet.
func (rd *reading) wetAt(i int) bool { return rd.at(i).pause == 0 && rd.termAt(i).note == "wet" }
