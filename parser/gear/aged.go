package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Gear that is old has no figure that holds. "Old rope" says so by itself; "the rope is
// old", "the old 5/8 rope" and "sling breaks at 9,000 lb but its pretty old" say so of the
// thing that was named last before it, or right behind.

// Aged notes gear that is told to be old as worn.
func Aged(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !rd.Cued(e, lexicon.CueAged) || !agedAhead(rd, i) && !agedBehind(rd, i) && !agedSo(rd, i) {
			continue
		}
		rd.Elems = slices.Insert(rd.Elems, i+1, reading.Element{Start: e.End, End: e.End, Term: &scan.Term{Note: parser.Worn}})
		return
	}
}

// agedAhead reads "old 5/8 rope": gear right behind the word, by its thickness or not.
func agedAhead(rd *reading.Reading, i int) bool {
	k := rd.Past(i+1, +1, lexicon.MarkAdjective)
	for rd.At(k).Fig != nil && thinAsGear(rd, k) || rd.At(k).Fig != nil && OfRope(rd, k) {
		k++
	}
	return cordOr(rd, k) != ""
}

// agedBehind reads "eslinga de 3/4 vieja": gear right before it.
func agedBehind(rd *reading.Reading, i int) bool {
	k := i - 1
	for rd.At(k).Marked(lexicon.MarkMade|lexicon.MarkAdjective) || rd.At(k).Fig != nil && (thinAsGear(rd, k) || OfRope(rd, k)) {
		k--
	}
	return rd.At(k).Pause == 0 && cordOr(rd, k) != "" && rd.EndsBreath(i+1)
}

// agedSo reads "is old", "its getting pretty old", of gear or its label that was named last
// before it. What is denied is not.
func agedSo(rd *reading.Reading, i int) bool {
	const most = 4 // words: "it is getting really old"
	is := -1
	for k := i - 1; k >= 0 && i-k <= most && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if rd.TermAt(k).Denies {
			return false
		}
		if rd.At(k).Marked(lexicon.MarkIs) || rd.Cued(rd.At(k), lexicon.CueItIs) || rd.Cued(rd.At(k), lexicon.CueWas) {
			is = k
		}
	}
	if is < 0 {
		return false
	}
	for k := is; k >= 0; k-- {
		switch t := rd.TermAt(k); {
		case cordOr(rd, k) != "", t.Strength != "", t.Label, k < is && rd.Cued(rd.At(k), lexicon.CueOnTag):
			return true
		case rd.At(k).Piece(), t.Unnamed, t.Human, t.Someone:
			return false
		}
	}
	return false
}
