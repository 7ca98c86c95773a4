package parser

import "slices"

// What stands behind "instead of" is not so: "somos 2 en vez de 4", "en lugar de
// roble es nogal". It is left out and said back where the message tells what is so,
// and nothing else could belong to it.

// putAside leaves out the number or the tree behind the words at i.
func (rd *reading) putAside(i int) bool {
	j := rd.past(i+1, +1, markArticle)
	end := j + 1
	switch fig := rd.at(j).fig; {
	case fig != nil:
		if rd.countedBy(end) {
			end++
		}
		if k := rd.toldInstead(i, j); k < 0 || rd.toNumber(end) {
			return false
		} else if rd.fraction(fig) && rd.elems[k].fig.unit == inch && rd.thinRope(rd.elems[k].fig) && !rd.thicknessBeside(rd.elems[k].fig) {
			rd.claim(k, RopeDiameter) // "scratch the 5/8, we got the half inch"
		} else if rd.countedBy(j+1) && !rd.countedBy(k+1) && rd.at(j+1).plays(Wraps) {
			rd.claim(k, Wraps) // "en lugar de 3 vueltas le pongo 4"
		}
	case rd.termAt(j).tree != nil:
		if rd.toNumber(end) || rd.at(end).piece() || !rd.anyAt(func(k int) bool { return k != j && rd.otherTree(k, j) }) {
			return false
		}
	case !rd.crotchOrBlock(j) || rd.toNumber(end):
		return false
	}
	rd.blank(i, end)
	return true
}

// crotchOrBlock says whether a block stands at i and a natural crotch is told of
// besides, or the other way round: the rope runs through one of them.
func (rd *reading) crotchOrBlock(i int) bool {
	crotch := func(k int) bool { return rd.termAt(k).block == NaturalCrotch || rd.termAt(k).note == NaturalCrotch }
	block := func(k int) bool { return rd.at(k).part() == partBlock || rd.termAt(k).block != "" }
	other := func(holds func(int) bool) bool {
		return rd.anyAt(func(k int) bool { return k != i && rd.elems[k].fig == nil && holds(k) })
	}
	return crotch(i) && other(func(k int) bool { return block(k) && !crotch(k) }) || block(i) && !crotch(i) && other(crotch)
}

// blank passes over what stands from one element to another, and leaves them in
// their places: the words around keep theirs.
func (rd *reading) blank(from, to int) {
	kept := slices.Clone(rd.elems[from:to])
	for k := range kept {
		kept[k] = element{start: kept[k].start, end: kept[k].end, term: &term{chatter: true}}
	}
	rd.pass(from, to, kept...)
}

// countedBy says whether the words at i are what a number before them counts.
func (rd *reading) countedBy(i int) bool {
	e := rd.at(i)
	return e.fig == nil && (e.plays(Wraps) || e.plays(People))
}

// toNumber says whether a number that could belong to what stands before it stands
// at i, or a word that leads to one.
func (rd *reading) toNumber(i int) bool {
	e := rd.at(i)
	return e.fig != nil || e.cross || e.marked(markBy|markTaper) || e.marked(markAnd|markMade) && rd.at(rd.past(i+1, +1, markArticle)).fig != nil
}

// toldInstead finds the one number that is told in place of that at j, -1 for none
// and for more than one.
func (rd *reading) toldInstead(i, j int) int {
	found, not := -1, rd.elems[j].fig
	for k, e := range rd.elems {
		fig := e.fig
		fraction := rd.fraction(not) && fig != nil && fig.unit == inch // "scratch the 5/8"
		if k == j || fig == nil || !fraction && (fig.dim != not.dim || fig.unit != not.unit) {
			continue
		}
		if rd.countedBy(j+1) && rd.countedBy(k+1) && rd.at(j+1).plays(Wraps) != rd.at(k+1).plays(Wraps) {
			continue // "3 vueltas" and "2 hombres"
		}
		tried := rd.at(j+1).plays(Wraps) && rd.cued(rd.at(k-1), cueTries)
		if not.unit == nil && !fraction && !rd.countedBy(k+1) && !rd.at(k-1).plays(People) && !tried {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = k
	}
	return found
}
