package parser

import (
	"slices"
	"strconv"
)

// treesOf are the trees of the pairs as they were typed: one for all, or one before
// every pair that is of another, or one behind every pair; nil where they do not
// tell.
func (rd *reading) treesOf(pairs []sizesAt) []string {
	all := rd.treesIn(0, len(rd.elems))
	switch {
	case len(all) == 0:
		return nil
	case len(all) == 1:
		return slices.Repeat(all, len(pairs))
	}
	if trees := rd.treesBefore(pairs); trees != nil {
		return trees
	}
	var out []string
	for k, p := range pairs { // "14 in x 6 ft of red oak, 12 in x 8 ft of white pine"
		end := len(rd.elems)
		if k+1 < len(pairs) {
			end = pairs[k+1].across
		}
		out = append(out, rd.treesIn(p.along+1, end)...)
		if len(out) != k+1 || rd.pausesBeforeTree(p.along+1, end) {
			return nil
		}
	}
	if len(rd.treesIn(0, pairs[0].across)) > 0 {
		return nil
	}
	return out
}

// treesBefore reads "red oak 14 in x 6 ft, 12 x 8, white pine 16 x 10".
func (rd *reading) treesBefore(pairs []sizesAt) (out []string) {
	past, now := 0, ""
	for _, p := range pairs {
		here := rd.treesIn(past, p.across)
		if len(here) > 1 || len(here) == 1 && past > 0 && rd.clings(past, p.across) {
			return nil
		}
		if len(here) == 1 {
			now = here[0]
		}
		if now == "" {
			return nil
		}
		past = p.along + 1
		out = append(out, now)
	}
	if len(rd.treesIn(past, len(rd.elems))) > 0 {
		return nil
	}
	return out
}

// treesIn are the trees that a stretch of the message names.
func (rd *reading) treesIn(from, to int) (out []string) {
	for _, e := range rd.elems[from:to] {
		if e.term != nil && e.term.tree != nil {
			out = append(out, rd.text[e.start:e.end])
		}
	}
	return out
}

// clings says whether the tree of a stretch stands closer to what is before it: "8 ft
// white pine, 12 in".
func (rd *reading) clings(from, to int) bool {
	parted := func(e element) bool { return e.pause > 0 || e.marked(markAnd) }
	return !rd.pausesBeforeTree(from, to) && slices.ContainsFunc(rd.elems[from:to], parted)
}

// pausesBeforeTree says whether a pause or an "and" stands before the tree of a
// stretch.
func (rd *reading) pausesBeforeTree(from, to int) bool {
	for _, e := range rd.elems[from:to] {
		switch {
		case e.pause > 0 || e.marked(markAnd):
			return true
		case e.term != nil && e.term.tree != nil:
			return false
		}
	}
	return false
}

// manyOf is how many there are of the piece whose sizes are the pair, "" where it is
// not told: "2 red oak logs 14 in x 5 ft".
func (rd *reading) manyOf(past int, p sizesAt, pairs []sizesAt) string {
	for i := past; i < p.across; i++ {
		if words := rd.ofOnePair(i, pairs); words != "" {
			return words
		}
	}
	return ""
}

// ofOnePair is the number at i where it is how many there are of the next piece
// alone: several are named right behind it with their own tree, and it could not
// count them all.
func (rd *reading) ofOnePair(i int, pairs []sizesAt) string {
	fig := rd.elems[i].fig
	if fig == nil || inPair(pairs, i) || !fig.several() || !rd.manyAt(i+1) || rd.countsAll(i, pairs) || len(rd.treesIn(0, len(rd.elems))) < 2 {
		return ""
	}
	other := func(k int) bool { return k != i && rd.elems[k].fig != nil && !inPair(pairs, k) }
	if fig.bare(float64(len(pairs))) && !rd.anyAt(other) {
		return "" // of "2 red oak logs 14 in x 5 ft, white pine 12 in x 8 ft" it could be all
	}
	for k := i + 1; k < len(rd.elems) && rd.at(k).fig == nil; k++ {
		if rd.at(k).pause > 0 {
			return "" // "4 logs: red oak 14 in x 5 ft, …"
		}
	}
	return strconv.Itoa(int(fig.low))
}

// numbersOne says whether the number at i only tells one piece from the others: "log 1
// is hickory 14 in by 5 ft, log 2 …".
func (rd *reading) numbersOne(i int, pairs []sizesAt) bool {
	label := func(i, n int) bool {
		return rd.at(i).fig.bare(float64(n)) && (rd.termAt(i-1).shape != "" || rd.termAt(i-1).unnamed)
	}
	past, found := 0, false
	for k, p := range pairs {
		at := -1
		for j := past; j < p.across; j++ {
			if label(j, k+1) {
				at = j
			}
		}
		if at < 0 {
			return false
		}
		found = found || at == i
		past = p.along + 1
	}
	return found
}

// aboutElse says whether the words at i tell of something that is no piece, or of
// more of one than two numbers can: an end, a rope, a roof.
func (rd *reading) aboutElse(i int) bool {
	e := rd.elems[i]
	if e.marked(markPlace | markStation | markPart | markGear | markSide | markCord | markTaper | markAt | markWhere&^markIn) {
		return true
	}
	return e.term != nil && slices.ContainsFunc(e.term.roles, func(r role) bool {
		return !r.soft && !slices.Contains([]Field{Diameter, Length, Weight, Alike}, r.field)
	})
}

// askedOf says whether the message asks what pieces weigh, where what it tells could
// be one piece and something else.
func (rd *reading) askedOf(pairs []sizesAt) bool {
	crossed := !slices.ContainsFunc(pairs, func(p sizesAt) bool { return !rd.crossed(p.across, p.along) })
	each := func(i int) bool { return rd.termAt(i).each }
	return crossed || rd.asksFor(AskWeight) || rd.asksFor(AskTree) || rd.anyAt(each) || rd.heldTo(pairs) >= 0
}

// heldTo is the weight that every piece is held against, -1 for none: "…, which one is
// over 600 lb". Without such words it could be that of all of them.
func (rd *reading) heldTo(pairs []sizesAt) int {
	for i := pairs[len(pairs)-1].along + 1; i+2 < len(rd.elems); i++ {
		if rd.termAt(i).ofThese && rd.at(i+1).marked(markBound) && rd.heavy(i+2) {
			return i + 2
		}
	}
	return -1
}
