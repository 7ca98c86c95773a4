package stops

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Not sure the crotch is sound" is no talk: wood that somebody doubts is a tree in
// doubt, and no figure is given for it.

// Doubted says whether the words at i doubt that wood is sound: "dont know if the
// tree is safe". Whether it holds so much is a question like any.
func Doubted(rd *reading.Reading, i int) bool {
	if Doubts(rd, i) == 0 {
		return false
	}
	wood := false
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k++ {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case t.Shape != "", t.Tree != nil, t.Block == parser.NaturalCrotch, rd.Cued(e, lexicon.CueTree), rd.Cued(e, lexicon.CueAnchor):
			wood = true
		case wood && rd.Cued(e, lexicon.CueSound):
			return rd.EndsBreath(k+1) || rd.Cued(rd.At(k+1), lexicon.CueClause)
		case !e.Polite() && !t.OfThese && !e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkUnsure|lexicon.MarkAdverb|lexicon.MarkAdjective):
			return false
		}
	}
	return false
}

// Doubts is how many letters the words of doubt have that begin at i, 0 where none do.
func Doubts(rd *reading.Reading, i int) int {
	const longest = 4
	start := rd.Elems[i].Start
	text, n := rd.Text[start:], 0
	for words := ""; n < len(text) && strings.Count(words, " ") < longest; {
		word, letters := scan.NextWord(text[n:])
		if word == "" {
			break
		}
		n += letters
		if words = strings.TrimSpace(words + " " + word); rd.In.Cued(words, lexicon.CueDoubts) {
			return n
		}
	}
	return 0
}
