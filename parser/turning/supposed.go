package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
)

// What is supposed of a weight is no weight: "if it weighs over 1000 lb we split
// it" tells the most that it may weigh. And what a cut is planned for is what each piece
// may weigh: "longest 60 cm ash for 250 kg".

// Supposed reads a bound that the weight is only to be held against as the limit, where
// the sizes tell the weight and nothing but that, or where to cut, is asked for.
func Supposed(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.TermAt(i).Supposes {
			continue
		}
		at := rd.Past(i, +1, lexicon.MarkBound) // "if it's over", "if it weighs"
		if at == i && rd.At(i+1).Marked(lexicon.MarkBound) {
			at = i + 2
		}
		if at > i && heavyOrBare(rd, at) && (SizedWhole(rd) || gear.AsksFor(rd, parser.AskCutPlan)) {
			rd.Elems[i].Term, rd.Elems[at-1].Term = &scan.Term{}, &scan.Term{}
			sizes.Limited(rd, at)
		}
	}
}

// heavyOrBare says whether the number at i is a mass, or may be one without its unit.
func heavyOrBare(rd *reading.Reading, i int) bool {
	const least = 100 // what is less is rather no weight
	fig := rd.At(i).Fig
	return fig != nil && (fig.Dim == parser.DimMass || fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= least)
}

// AsksOfPiece says whether what stands before i asks for a yes or a no, in one breath
// with the tree: "is a white ash log …", not "is dave …".
func AsksOfPiece(rd *reading.Reading, i int) bool {
	word, _ := scan.NextWord(rd.Text)
	apart := func(e reading.Element) bool { return e.Pause > 1 || rd.In.Cued(rd.Word(e), lexicon.CueItself) }
	return rd.In.Cued(word, lexicon.CueAsking) && len(places.TreesIn(rd, 0, i)) == 1 && !slices.ContainsFunc(rd.Elems[:i], apart)
}

// AsksOver says whether the clause that ends in the bound at i asks it of the piece, "is
// that over 200 lb", "does the big one go over 200 kg", and nothing but the weight is
// asked for.
func AsksOver(rd *reading.Reading, i int) bool {
	asks := func(k int) bool {
		first, _, _ := strings.Cut(rd.Word(rd.Elems[k]), " ")
		return rd.In.Cued(first, lexicon.CueAsking)
	}
	k := i - 1
	for ; k >= 0 && i-k <= stops.Few && rd.Elems[k].Pause == 0 && !asks(k); k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		if e.Fig != nil || t.Human || t.Someone || t.Note != "" || !e.Piece() && !e.Polite() && !t.OfThese && !e.Marked(lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkAdverb|lexicon.MarkAdjective|lexicon.MarkIs) {
			return false
		}
	}
	if k < 0 || !asks(k) || k == i-1 && !strings.Contains(rd.Word(rd.Elems[k]), " ") {
		return false // "is over 200 lb" tells
	}
	end := i + 2
	if rd.Cued(rd.At(i+1), lexicon.CueThan) {
		end++
	}
	next := rd.At(end)
	return (rd.EndsBreath(end) || rd.Cued(next, lexicon.CueClause) || next.Polite() || rd.TermAt(end).Note == "about") && !rd.AnyAt(rd.Is(BesidesWeight))
}

// OverAlone says whether the bound at i and its number are asked by themselves behind
// the sizes: "red oak limb 12 in 18 ft, over 500 lb?".
func OverAlone(rd *reading.Reading, i int) bool {
	return !stops.Kit(rd, i-1) && (rd.At(i-1).Pause > 0 || rd.At(i-1).Fig != nil || rd.At(i-1).Piece() || rd.At(i-1).Plays(parser.Length)) && i+2 < len(rd.Elems) && askedAt(rd, i+2)
}

// SizedWhole says whether the message tells the tree, a thickness and a length,
// and asks for nothing but the weight.
func SizedWhole(rd *reading.Reading) bool {
	tree := func(i int) bool { return rd.TermAt(i).Tree != nil }
	long := func(i int) bool {
		return gear.Far(rd, i) && (rd.At(i+1).Plays(parser.Length) || rd.At(i-1).Plays(parser.Length) || gear.SizedLong(rd, i))
	}
	return rd.AnyAt(tree) && rd.AnyAt(long) && !rd.AnyAt(rd.Is(BesidesWeight))
}

// BesidesWeight says whether the element at i asks for more than the weight, or
// tells of what only matters to more.
func BesidesWeight(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return e.Plays(parser.Wraps) || e.Plays(parser.People) || e.Plays(parser.Limit) && !e.Marked(lexicon.MarkBound) || e.Plays(parser.HitchHeight) || e.Plays(parser.DropHeight) ||
		rd.TermAt(i).Intent == parser.AskLower || slices.Contains(lexicon.Special, rd.TermAt(i).Intent)
}

// CutFor reads the only mass of a cut plan as its limit where "for" leads to it.
func CutFor(rd *reading.Reading) {
	at := rd.Only(rd.Is(gear.Heavy))
	if at < 0 || !gear.AsksFor(rd, parser.AskCutPlan) || !rd.SaidOut(at+1) || !rd.Cued(rd.At(at-1), lexicon.CueFor) {
		return
	}
	places.Claim(rd, at, parser.Limit)
}
