package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A mass is a figure of gear's label where the gear is named right behind it, or where it
// is told with the rope beside the figures of other gear. Taken for the piece's weight it
// would change the piece under the crew's hands.

// LabelledAhead is the gear that has the number at i right before its name, with an article
// before it: "is the 24,000 lb block sling fine". Of a name of several words the last is the
// gear. What goes on to tell of a load, a strength or a place is read by its own words.
func LabelledAhead(rd *reading.Reading, i int) scan.Part {
	fig, k := rd.Elems[i].Fig, i+1
	if fig.Dim != parser.DimMass || fig.Unit == nil || !rd.At(i-1).Marked(lexicon.MarkArticle) || Part(rd.At(k)) == "" && !blockHolder(rd, k) {
		return ""
	}
	for Part(rd.At(k+1)) != "" || blockHolder(rd, k+1) {
		k++
	}
	next := rd.At(k + 1)
	if next.Piece() || next.Fig != nil || next.Plays(parser.Weight) || Strength(next) != "" || rd.TermAt(k+1).Rated || rd.TermAt(k+1).Unnamed {
		return ""
	}
	if p := Part(rd.At(k)); p != "" {
		return p
	}
	return lexicon.PartSling // what holds the block
}

// blockHolder says whether the word at i names what holds the block.
func blockHolder(rd *reading.Reading, i int) bool { return rd.TermAt(i).Note == parser.NoteHoldsBlock }

// WithStrength says whether the number at i is a figure of the rope's that is told "with" it,
// "the line is 9/16 with 13,000 lb", and another figure of gear behind it: the crew goes
// through its gear, and no piece is told there. How thick it is goes to the rope as well.
func WithStrength(rd *reading.Reading, i int) bool {
	j := rd.Past(i-2, -1, lexicon.MarkArticle)
	of := rd.Past(j-1, -1, lexicon.MarkIs|lexicon.MarkMade)
	thin := rd.At(j).Fig.Short() && rd.Elems[j].Fig.High <= reading.ThickestRope && Part(rd.At(of)) == lexicon.PartRope
	rope := thin || rd.At(j).Fig != nil && OfRope(rd, j) || Part(rd.At(j)) == lexicon.PartRope
	if !rd.Cued(rd.At(i-1), lexicon.CueHaving) || !rope || Part(rd.At(i+1)) != "" {
		return false
	}
	piece := func(k int) bool {
		return rd.Elems[k].Piece() || rd.TermAt(k).Unnamed || rd.Elems[k].Plays(parser.Weight)
	}
	besides := func(k int) bool {
		fig := rd.At(rd.Past(k+1, +1, lexicon.MarkIs|lexicon.MarkRating|lexicon.MarkMade)).Fig
		return k > i && Part(rd.Elems[k]) != "" && fig != nil && Rates(fig)
	}
	if rd.AnyAt(piece) || !rd.AnyAt(besides) {
		return false
	}
	if thin {
		rd.Elems[j].Fig.Rope = true
	}
	return true
}
