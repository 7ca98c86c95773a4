package parser

import "slices"

// How far a piece falls before its rope holds it is never worked out from where
// the block hangs: the tie, the slack and the length of the piece are in it too.
// A block below the cut, a catch or a line that runs asks for the fall.

// belowCut passes over how far a block is below the cut, "block 40 cm below the
// cut", and says so: the fall is asked for all the same.
func (rd *reading) belowCut() {
	for i := 0; i < len(rd.elems); i++ {
		if !rd.termAt(i).belowCut || !rd.blockBefore(i+1) {
			continue
		}
		rd.alter(i, func(t *term) { t.intent, t.besides = AskDrop, false })
		under := rd.elems[i]
		if at := i - 1; rd.lengthAt(at) {
			rd.pass(at, i+1, under)
			i = at
			continue
		}
		if at := rd.past(rd.forth(i+1), +1, markAt); rd.lengthAt(at) && at > i+1 && rd.endsBreath(at+1) {
			rd.pass(i, at+1, under)
		}
	}
}

func (rd *reading) lengthAt(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && fig.dim == dimLength && fig.told == ""
}

// blockBefore says whether a block is named before i in the same breath,
// or in the words right there.
func (rd *reading) blockBefore(i int) bool {
	for j := i - 1; j >= 0 && rd.elems[j].pause == 0; j-- {
		if rd.elems[j].part() == partBlock {
			return true
		}
		if rd.elems[j].piece() {
			return false
		}
	}
	return false
}

// single are the units that are told without a number: "a foot".
var single = []string{"foot", "metre", "meter"}

// singleUnits reads "a foot under the cut" as one foot.
func (rd *reading) singleUnits() {
	for i := 1; i < len(rd.elems); i++ {
		a, e := rd.elems[i-1], rd.elems[i]
		if rd.word(a) != "a" || !slices.Contains(single, rd.word(e)) || !e.marked(markUnit) || rd.at(i-2).fig != nil {
			continue
		}
		u := rd.in.units[rd.word(e)]
		f := &figure{low: u.factor, high: u.factor, unit: u, dim: dimLength, start: a.start, end: e.end}
		rd.elems = slices.Replace(rd.elems, i-1, i+1, element{start: a.start, end: e.end, fig: f})
	}
}
