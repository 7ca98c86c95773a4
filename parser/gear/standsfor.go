package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// OneOfKind is the gear that the number at i is a figure of which only "it" or "one" names
// beside it: "what about the block? It is a 100 kN one", "y la polea? es una de 50 kN". It is
// the last that was named; in kilonewtons no piece is weighed, whatever else was. Which of
// its two figures the number is, is asked.
func OneOfKind(rd *reading.Reading, i int) scan.Part {
	kn := kilonewtons(rd, i)
	next := rd.At(i + 1)
	one := rd.Cued(next, lexicon.CueOneLike) || pointsAtKind(rd, i-1)
	if !Heavy(rd, i) || !one && !(kn && rd.EndsBreath(i+1)) || AsksFor(rd, parser.AskBlockLoad) {
		return ""
	}
	k := i - 1
	for k >= 0 && Part(rd.At(k)) == "" && (rd.At(k).Marked(lexicon.MarkArticle|lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkPronoun) || rd.At(k).Polite() && !rd.EndsBreath(k)) {
		k--
	}
	if e := rd.At(k); e.Pause == 0 && Part(e) == "" || k == i-1 && e.Pause < 4 {
		return "" // led by other words: "we pull 12 kN"
	}
	for ; k >= 0; k-- {
		switch e := rd.Elems[k]; {
		case rd.TermAt(k).Note == parser.NoteOverBlock: // "what about the block"
			return lexicon.PartBlock
		case Part(e) != "":
			return Part(e)
		case !kn && (e.Piece() || rd.TermAt(k).Unnamed):
			return ""
		}
	}
	return ""
}

// pointsAtKind reads the "una de" that ends at i, "of the" behind "one" likewise: a number
// behind it tells one thing of its kind from the others.
func pointsAtKind(rd *reading.Reading, i int) bool {
	of := rd.Past(i, -1, lexicon.MarkArticle)
	return rd.At(of).Marked(lexicon.MarkMade) && rd.Cued(rd.At(of-1), lexicon.CueOneLike)
}

// CalledBy is the gear that the number at i is what it is called by, behind a word that asks
// whether it holds: "aguanta la eslinga de 5000 kg". No load is told by it.
func CalledBy(rd *reading.Reading, i int) scan.Part {
	if !Heavy(rd, i) || !rd.At(i-1).Marked(lexicon.MarkMade) || sizePassed(rd, i-1, i) {
		return ""
	}
	k := i - 2
	held := rd.Cued(rd.At(rd.Past(k-1, -1, lexicon.MarkArticle)), lexicon.CueHolds)
	switch p := Part(rd.At(k)); {
	case rd.TermAt(k).Note == parser.NoteHoldsBlock:
		return lexicon.PartBlock
	case bearing(rd, k) && (held || rd.TermAt(k).Intent == parser.AskGear):
		return p
	}
	return ""
}

// sizePassed says whether a size of gear was passed over between the elements at k and i: the
// words before it lead to that size, "eslinga de 2 pulgadas 900 kg", and not to what follows.
func sizePassed(rd *reading.Reading, k, i int) bool {
	return slices.ContainsFunc(rd.Passed, func(s parser.Said[string]) bool {
		return rd.At(k).End <= s.Start && s.End <= rd.At(i).Start
	})
}
