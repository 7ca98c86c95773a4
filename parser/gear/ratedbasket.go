package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A sling's label has one figure a hitch. "Rated 2600 basket" and "basket rating 2,600 lb"
// tell the one for a basket, which is twice that of its single leg already: doubled again
// it would let twice as much be put on it.

// RatedBaskets notes that a sling's figure is told for a basket.
func RatedBaskets(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Sure != parser.SlingWorking && e.Fig.Sure != parser.SlingBreak {
			continue
		}
		if at := basketBeside(rd, i); at >= 0 {
			of := rd.Elems[at]
			rd.Elems = slices.Insert(rd.Elems, at+1, reading.Element{Start: of.End, End: of.End, Term: &scan.Term{Note: parser.NoteRatedBasket}})
			return
		}
	}
}

// basketBeside finds the basket that the figure at i is told for, -1 for none: right
// behind it, or before it with no more than the word for a rating between.
func basketBeside(rd *reading.Reading, i int) int {
	links := func(k int) bool {
		e := rd.At(k)
		return e.Pause == 0 && e.Fig == nil && e.Term != nil && e.Term.Note != parser.NoteBasket &&
			(e.Spent || Strength(e) != "" || bears(rd, k) || e.Term.Rated || e.Term.Label || e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkRating|lexicon.MarkIn|lexicon.MarkMade))
	}
	k := i + 1
	for links(k) {
		k++
	}
	if rd.TermAt(k).Note == parser.NoteBasket {
		return k
	}
	k = i - 1
	for links(k) || Part(rd.At(k)) == lexicon.PartSling && rd.At(k).Pause == 0 {
		k--
	}
	of := k > 0 && rd.At(k-1).Pause == 0 && figured(rd, rd.Past(k-1, -1, lexicon.MarkIn)) // "capacidad en canasta"
	if rd.TermAt(k).Note == parser.NoteBasket && (of || figured(rd, k+1)) {
		return k
	}
	return -1
}

// figured says whether the element at i is the word for what stands on a label.
func figured(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Rated || bears(rd, i) || Strength(rd.At(i)) != "" || rd.At(i).Marked(lexicon.MarkRating) && !rd.At(i).Marked(lexicon.MarkIs)
}

// bears says whether the word at i tells what gear holds: "en canasta aguanta".
func bears(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Bears || rd.Cued(rd.At(i), lexicon.CueHolds)
}
