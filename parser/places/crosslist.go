package places

import (
	"slices"
	"unicode"
	"unicode/utf8"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A crew tells several pieces in one breath: "3 logs of black walnut, 15 in x 8 ft,
// 17 x 6 and 20 by 5", "red oak 14 in 6 ft and white pine 12 in 8 ft". What all of
// them share, the tree and the units, is told once.

// crossed pairs of numbers are the sizes of one piece each.
type sizesAt struct{ Across, Along int }

// PairsOfSizes are the pairs of numbers that stand as "15 in x 8 ft" or "15 in 8 ft
// long".
func PairsOfSizes(rd *reading.Reading) (out []sizesAt) {
	for i := 0; i < len(rd.Elems); i++ {
		j := i + 1
		switch {
		case rd.At(i).Fig == nil:
			continue
		case rd.At(j).Cross && rd.At(j+1).Fig != nil:
			j++
		default:
			for rd.At(j).Pause == 1 || OnlyPlays(rd.At(j), parser.Diameter) {
				j++
			}
			if !FineAt(rd, i) || !gear.Far(rd, j) || settled(rd, i) || settled(rd, j) {
				continue
			}
		}
		out = append(out, sizesAt{i, j})
		i = j
	}
	return out
}

// settled says whether it is claimed what the number at i is.
func settled(rd *reading.Reading, i int) bool { return rd.Elems[i].Fig.Claimed != "" }

// OnlyPlays says whether the words say no more than that a number is of that field.
func OnlyPlays(e reading.Element, f parser.Field) bool {
	return e.Term != nil && len(e.Term.Roles) > 0 && !slices.ContainsFunc(e.Term.Roles, func(r scan.Role) bool { return r.Field != f })
}

// UnitsOf are the units that the pairs without their own share, nil for none. Beside
// feet, a bare thickness is in inches.
func UnitsOf(rd *reading.Reading, pairs []sizesAt) (across, along *scan.UnitWord) {
	for _, p := range pairs {
		a, b := rd.Elems[p.Across].Fig.Unit, rd.Elems[p.Along].Fig.Unit
		if across == nil && a != nil && a.Dim == parser.DimLength {
			across = a
		}
		if along == nil && b != nil && b.Dim == parser.DimLength {
			along = b
		}
	}
	if across == nil && along == scan.Foot {
		across = scan.Inch
	}
	if along == nil {
		return nil, nil
	}
	return across, along
}

// countsAll says whether the number at i is that of all pieces. Right before the
// first of two, or before one tree of several, it may be how many there are of that
// one.
func countsAll(rd *reading.Reading, i int, pairs []sizesAt) bool {
	ofTree := rd.TermAt(i+1).Tree != nil && len(TreesIn(rd, 0, len(rd.Elems))) > 1
	if ofTree || i > pairs[0].Across && i < pairs[len(pairs)-1].Across && rd.At(i+1).Piece() {
		return false
	}
	apart := i > pairs[0].Across || slices.ContainsFunc(rd.Elems[i:pairs[0].Across], func(e reading.Element) bool { return e.Pause > 0 })
	return Bare(rd.Elems[i].Fig, float64(len(pairs))) && (len(pairs) > 2 || apart)
}

// HowMany is the number of pieces, where it is told besides.
func HowMany(rd *reading.Reading, pairs []sizesAt) (out []parser.Said[string]) {
	for i, e := range rd.Elems {
		if e.Fig != nil && !inPair(pairs, i) && ofOnePair(rd, i, pairs) == "" && !numbersOne(rd, i, pairs) && !gear.Heavy(rd, i) {
			words := e.Fig.Words(rd.Text)
			out = append(out, parser.Said[string]{Value: words, Words: words, Start: e.Start, End: e.End})
		}
	}
	return out
}

// inPair says whether the element at i is a number of one of the pairs.
func inPair(pairs []sizesAt, i int) bool {
	return slices.ContainsFunc(pairs, func(p sizesAt) bool { return p.Across == i || p.Along == i })
}

// OnlyPieces says whether nothing is told or asked but the pieces, how many they
// are, and what they weigh.
func OnlyPieces(rd *reading.Reading, pairs []sizesAt) bool {
	held := HeldTo(rd, pairs)
	counted, apart := false, slices.ContainsFunc(pairs, func(p sizesAt) bool { return !rd.Crossed(p.Across, p.Along) })
	for i, e := range rd.Elems {
		switch t := rd.TermAt(i); {
		case inPair(pairs, i), ofOnePair(rd, i, pairs) != "", numbersOne(rd, i, pairs), held >= 0 && i >= held-2 && i <= held:
		case e.Fig != nil:
			if counted || !countsAll(rd, i, pairs) {
				return false
			}
			counted = true
		case apart && aboutElse(rd, i):
			return false
		case t.Ask != "" && !t.Each && !t.AtOnce, t.Stop != "", t.Note != "" && t.Note != parser.Bare, !aboutWeights(rd, t.Intent):
			return false
		case e.Marked(lexicon.MarkBound), e.Plays(parser.HitchHeight) && !onlySoft(rd, i):
			return false
		}
	}
	return true
}

// aboutWeights says whether what is asked for is what pieces weigh. "Bajando
// trozos" asks for no more where their weights are asked for.
func aboutWeights(rd *reading.Reading, in parser.Intent) bool {
	switch in {
	case "", parser.AskWeight, parser.AskTree:
		return true
	}
	if in == parser.AskLower && MostWraps(rd) {
		return true
	}
	return in == parser.AskLower && (gear.AsksFor(rd, parser.AskWeight) || gear.AsksFor(rd, parser.AskTree)) && !rd.Worded(parser.Wraps)
}

// MostWraps says whether no more is asked of wraps than which piece takes the most of them,
// "which one wants the most wraps": the heaviest does.
func MostWraps(rd *reading.Reading) bool {
	at := rd.Only(func(i int) bool { return rd.Elems[i].Plays(parser.Wraps) })
	return at > 0 && rd.At(at-1).Fig == nil && rd.TypedBefore(at, lexicon.CueMostOf)
}

// onlySoft says whether all roles of the term at i say much else besides.
func onlySoft(rd *reading.Reading, i int) bool {
	return !slices.ContainsFunc(rd.TermAt(i).Roles, func(r scan.Role) bool { return !r.Soft })
}

// ShapeOf is the shape of a pair: the last that is told between the pair before
// and it, or else the one shape of the message; "" for none.
func ShapeOf(rd *reading.Reading, from int, p sizesAt) (shape string) {
	for _, e := range rd.Elems[from:p.Across] {
		if e.Term != nil && e.Term.Shape != "" {
			shape = string(e.Term.Shape)
		}
	}
	limb, log := gear.ShapedFrom(rd, 0, parser.Limb), gear.ShapedFrom(rd, 0, parser.Log)
	switch {
	case shape != "" || limb == log:
		return shape
	case limb:
		return string(parser.Limb)
	}
	return string(parser.Log)
}

// Lendable says whether the number has that unit, or none of its own.
func Lendable(f *reading.Figure, u *scan.UnitWord) bool {
	return f.Unit == u || f.Unit == nil && f.Dim == parser.DimCount && f.Low > 0
}

// As is the number as it was typed, with the unit where it was typed without.
func As(f *reading.Figure, u *scan.UnitWord, rd *reading.Reading) string {
	words := f.Words(rd.Text)
	if last, _ := utf8.DecodeLastRuneInString(words); !unicode.IsNumber(last) && f.Unit != nil {
		return words
	}
	return words + " " + map[*scan.UnitWord]string{scan.Inch: "in", scan.Foot: "ft", scan.Centimetre: "cm", scan.Millimetre: "mm", scan.Metre: "m"}[u]
}

// FineAt says whether the number at i is a length in a unit of thickness.
func FineAt(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && fig.Dim == parser.DimLength && fig.Unit.Fine
}
