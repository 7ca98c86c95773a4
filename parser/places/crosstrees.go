package places

import (
	"slices"
	"strconv"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// TreesOf are the trees of the pairs as they were typed: one for all, or one before
// every pair that is of another, or one behind every pair; nil where they do not
// tell.
func TreesOf(rd *reading.Reading, pairs []sizesAt) []string {
	all := TreesIn(rd, 0, len(rd.Elems))
	switch {
	case len(all) == 0:
		return nil
	case len(all) == 1:
		return slices.Repeat(all, len(pairs))
	}
	if trees := treesBefore(rd, pairs); trees != nil {
		return trees
	}
	var out []string
	for k, p := range pairs { // "14 in x 6 ft of red oak, 12 in x 8 ft of white pine"
		end := len(rd.Elems)
		if k+1 < len(pairs) {
			end = pairs[k+1].Across
		}
		out = append(out, TreesIn(rd, p.Along+1, end)...)
		if len(out) != k+1 || pausesBeforeTree(rd, p.Along+1, end) {
			return nil
		}
	}
	if len(TreesIn(rd, 0, pairs[0].Across)) > 0 {
		return nil
	}
	return out
}

// treesBefore reads "red oak 14 in x 6 ft, 12 x 8, white pine 16 x 10".
func treesBefore(rd *reading.Reading, pairs []sizesAt) (out []string) {
	past, now := 0, ""
	for _, p := range pairs {
		here := TreesIn(rd, past, p.Across)
		if len(here) > 1 || len(here) == 1 && past > 0 && clings(rd, past, p.Across) {
			return nil
		}
		if len(here) == 1 {
			now = here[0]
		}
		if now == "" {
			return nil
		}
		past = p.Along + 1
		out = append(out, now)
	}
	if len(TreesIn(rd, past, len(rd.Elems))) > 0 {
		return nil
	}
	return out
}

// TreesIn are the trees that a stretch of the message names.
func TreesIn(rd *reading.Reading, from, to int) (out []string) {
	for _, e := range rd.Elems[from:to] {
		if e.Term != nil && e.Term.Tree != nil {
			out = append(out, rd.Text[e.Start:e.End])
		}
	}
	return out
}

// clings says whether the tree of a stretch stands closer to what is before it: "8 ft
// white pine, 12 in".
func clings(rd *reading.Reading, from, to int) bool {
	parted := func(e reading.Element) bool { return e.Pause > 0 || e.Marked(lexicon.MarkAnd) }
	return !pausesBeforeTree(rd, from, to) && slices.ContainsFunc(rd.Elems[from:to], parted)
}

// pausesBeforeTree says whether a pause or an "and" stands before the tree of a
// stretch.
func pausesBeforeTree(rd *reading.Reading, from, to int) bool {
	for _, e := range rd.Elems[from:to] {
		switch {
		case e.Pause > 0 || e.Marked(lexicon.MarkAnd):
			return true
		case e.Term != nil && e.Term.Tree != nil:
			return false
		}
	}
	return false
}

// ManyOf is how many there are of the piece whose sizes are the pair, "" where it is
// not told: "2 red oak logs 14 in x 5 ft".
func ManyOf(rd *reading.Reading, past int, p sizesAt, pairs []sizesAt) string {
	for i := past; i < p.Across; i++ {
		if words := ofOnePair(rd, i, pairs); words != "" {
			return words
		}
	}
	return ""
}

// ofOnePair is the number at i where it is how many there are of the next piece
// alone: several are named right behind it with their own tree, and it could not
// count them all.
func ofOnePair(rd *reading.Reading, i int, pairs []sizesAt) string {
	fig := rd.Elems[i].Fig
	if fig == nil || inPair(pairs, i) || !fig.Several() || !ManyAt(rd, i+1) || countsAll(rd, i, pairs) || len(TreesIn(rd, 0, len(rd.Elems))) < 2 {
		return ""
	}
	other := func(k int) bool { return k != i && rd.Elems[k].Fig != nil && !inPair(pairs, k) }
	if Bare(fig, float64(len(pairs))) && !rd.AnyAt(other) {
		return "" // of "2 red oak logs 14 in x 5 ft, white pine 12 in x 8 ft" it could be all
	}
	for k := i + 1; k < len(rd.Elems) && rd.At(k).Fig == nil; k++ {
		if rd.At(k).Pause > 0 {
			return "" // "4 logs: red oak 14 in x 5 ft, …"
		}
	}
	return strconv.Itoa(int(fig.Low))
}

// numbersOne says whether the number at i only tells one piece from the others: "log 1
// is hickory 14 in by 5 ft, log 2 …".
func numbersOne(rd *reading.Reading, i int, pairs []sizesAt) bool {
	label := func(i, n int) bool {
		return Bare(rd.At(i).Fig, float64(n)) && (rd.TermAt(i-1).Shape != "" || rd.TermAt(i-1).Unnamed)
	}
	past, found := 0, false
	for k, p := range pairs {
		at := -1
		for j := past; j < p.Across; j++ {
			if label(j, k+1) {
				at = j
			}
		}
		if at < 0 {
			return false
		}
		found = found || at == i
		past = p.Along + 1
	}
	return found
}

// aboutElse says whether the words at i tell of something that is no piece, or of
// more of one than two numbers can: an end, a rope, a roof.
func aboutElse(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	if e.Marked(lexicon.MarkPlace | lexicon.MarkStation | lexicon.MarkPart | lexicon.MarkGear | lexicon.MarkSide | lexicon.MarkCord | lexicon.MarkTaper | lexicon.MarkAt | lexicon.MarkWhere&^lexicon.MarkIn) {
		return true
	}
	return e.Term != nil && slices.ContainsFunc(e.Term.Roles, func(r scan.Role) bool {
		return !r.Soft && !slices.Contains([]parser.Field{parser.Diameter, parser.Length, parser.Weight, parser.Alike}, r.Field)
	})
}

// AskedOf says whether the message asks what pieces weigh, where what it tells could
// be one piece and something else.
func AskedOf(rd *reading.Reading, pairs []sizesAt) bool {
	crossed := !slices.ContainsFunc(pairs, func(p sizesAt) bool { return !rd.Crossed(p.Across, p.Along) })
	each := func(i int) bool { return rd.TermAt(i).Each }
	return crossed || gear.AsksFor(rd, parser.AskWeight) || gear.AsksFor(rd, parser.AskTree) || rd.AnyAt(each) || HeldTo(rd, pairs) >= 0
}

// HeldTo is the weight that every piece is held against, -1 for none: "…, which one is
// over 600 lb". Without such words it could be that of all of them.
func HeldTo(rd *reading.Reading, pairs []sizesAt) int {
	return heldFrom(rd, pairs[len(pairs)-1].Along+1)
}

// heldFrom is such a weight behind a place.
func heldFrom(rd *reading.Reading, from int) int {
	for i := from; i+2 < len(rd.Elems); i++ {
		over := rd.At(i+1).Marked(lexicon.MarkBound) || rd.Cued(rd.Elems[i], lexicon.CueGoesOver) && rd.At(i+1).Marked(lexicon.MarkMade)
		if rd.TermAt(i).OfThese && over && gear.Heavy(rd, i+2) {
			return i + 2
		}
	}
	return -1
}

// HeldBehind is what to type before a piece that is held against the weight told behind
// the element at i, and where that stands; "" and -1 where none is.
func HeldBehind(rd *reading.Reading, i int) (limit string, at int) {
	if at = heldFrom(rd, i+1); at >= 0 {
		limit = "max " + rd.Elems[at].Fig.Words(rd.Text) + ", " // a word of every language
	}
	return limit, at
}

// ManyAt says whether the words from an element on name a piece in the plural;
// what it is like, and a size, may stand before its name.
func ManyAt(rd *reading.Reading, i int) bool {
	for ; rd.At(i).Marked(lexicon.MarkAdjective) || rd.At(i).Piece() && rd.TermAt(i).Shape == "" || gear.Far(rd, i) || FineAt(rd, i); i++ {
	}
	e := rd.At(i)
	return e.Piece() && e.Term.Shape != "" && strings.HasSuffix(scan.Fold(rd.Text[e.Start:e.End]), "s")
}

// Already passes over how many pieces came down before this one, "dropped 3 pieces
// already", and takes "dropped the block to 30 ft" for where it hangs now: neither
// tells how far a piece falls.
func Already(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if !rd.TermAt(i).LetFall {
			continue
		}
		j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
		switch {
		case rd.At(j).Fig.Several() && (ManyAt(rd, j+1) || rd.TermAt(j+1).Unnamed):
			k := j + 1
			for rd.At(k).Piece() || rd.TermAt(k).Unnamed {
				k++
			}
			rd.Pass(i, k)
		case stops.Hardware(rd, j):
			rd.Alter(i, func(t *scan.Term) { t.Roles, t.Intent = nil, "" })
		case stops.DroppedOn(rd, i):
			rd.Alter(i, func(t *scan.Term) { t.Intent = parser.AskDrop })
		}
	}
}
