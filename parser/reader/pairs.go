package reader

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Two pieces alike are told as "both logs", "a pair of logs" or "two stems, both 20 cm
// 2 m long, weigh the pair". Their sizes are those of each.

// pairOfPieces makes the number two of the words that name both pieces right before their
// name: "both red oak limbs", "a pair of logs".
func pairOfPieces(rd *reading.Reading) {
	counted := func(i int) bool { return rd.Elems[i].Fig.Several() && places.ManyAt(rd, i+1) }
	if rd.AnyAt(counted) {
		return
	}
	for i, e := range rd.Elems {
		if !twosome(rd, i) || rd.At(i-1).Fig != nil || !places.ManyAt(rd, rd.Past(i+1, +1, lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkArticle)) {
			continue
		}
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Fig: &reading.Figure{Low: 2, High: 2, Start: e.Start, End: e.End}}
		for rd.At(i + 1).Marked(lexicon.MarkMade | lexicon.MarkRelation | lexicon.MarkArticle) {
			rd.Elems = append(rd.Elems[:i+1], rd.Elems[i+2:]...)
		}
		return
	}
}

// ofThePair takes the doubt from "both" before the sizes of two pieces, and from "the
// pair", once it is told that there are two. Before a weight, which may be that of both
// together, it stays.
func ofThePair(rd *reading.Reading) {
	for i := range rd.Elems {
		if !twosome(rd, i) {
			continue
		}
		next := i + 1
		for rd.At(next).Marked(lexicon.MarkIs|lexicon.MarkRelation|lexicon.MarkPronoun|lexicon.MarkArticle) || rd.TermAt(next).Note == "about" || rd.At(next).Polite() {
			next++
		}
		fig := rd.At(next).Fig
		sized := fig != nil && (fig.Dim == parser.DimLength || fig.Dim == parser.DimCount && fig.Low < stops.Lightest)
		if sized || fig == nil && rd.EndsBreath(next) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		}
	}
}

// twosome says whether the word at i is one for two of a kind.
func twosome(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Ask == parser.Twist && rd.Cued(rd.Elems[i], lexicon.CueTwosome)
}
