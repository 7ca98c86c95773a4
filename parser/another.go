package parser

import "strings"

// another reads "another 14 in red oak limb" as a piece like any: it is worked out
// by itself. "Another 15 ft" and "another 600 lb limb" could be added to what was
// said before. So is "y otra de 35 cm" where no number stands before it, and another
// rope is the only one that is told of.
func (rd *reading) another(i int) {
	if rd.ropeAlone(i+1) || rd.firstSizes(i) {
		rd.alter(i, func(t *term) { *t = term{marks: markArticle} })
		return
	}
	if rd.at(i+1).plays(Wraps) && rd.at(i+1).fig == nil && rd.cued(rd.at(i-1), cueNeeds) {
		rd.leaveOut(i, i+1) // "do i need another wrap": how many it takes answers that
		return
	}
	j := i + 1
	for rd.at(j).marked(markAdjective) || rd.fineAt(j) {
		j++
	}
	if rd.anyAt(rd.fineAt) && (rd.at(j).piece() || rd.termAt(j).unnamed) {
		rd.alter(i, func(t *term) { *t = term{marks: markArticle} })
		return
	}
	rd.theOther(i)
}

// ropeAlone says whether a rope stands at i, with the one length that is told of any.
func (rd *reading) ropeAlone(i int) bool {
	if rd.at(i).part() != partRope || !rd.at(i).marked(markCord) || !rd.far(rd.past(i+1, +1, markMade|markIs)) || rd.at(i-2).plays(HitchHeight) {
		return false
	}
	return !rd.anyAt(func(k int) bool { return k != i && rd.elems[k].part() == partRope })
}

// firstSizes says whether "otra de" at i begins all that is told of a piece: a tree
// or a thickness stands right behind it, and no piece and no number before.
func (rd *reading) firstSizes(i int) bool {
	for k := range i {
		if e := rd.elems[k]; e.fig != nil || e.piece() || rd.termAt(k).unnamed || rd.elems[k].plays(TipDiameter) || rd.elems[k].plays(ButtDiameter) {
			return false
		}
	}
	j := rd.past(i+1, +1, markMade)
	return j > i+1 && (rd.termAt(j).tree != nil || rd.fineAt(j)) && rd.anyAt(rd.fineAt)
}

// secondAtBase reads "a second one at the base" behind the word at i, where a block is
// named before it: a block that turns the rope there.
func (rd *reading) secondAtBase(i int) bool {
	for k := i + 1; k-i <= few && rd.at(k).pause == 0 && rd.at(k).fig == nil; k++ {
		words := strings.Join(splitWords(rd.text[rd.elems[i].end:rd.startOf(k)]), " ")
		if rd.atBase(k) && rd.in.cues[cueSecondOne][words] {
			rd.elems[k].term = &term{block: BaseBlock}
			return true
		}
	}
	return false
}
