package parser

import "strings"

// "Not sure the crotch is sound" is no talk: wood that somebody doubts is a tree in
// doubt, and no figure is given for it.

// doubted says whether the words at i doubt that wood is sound: "dont know if the
// tree is safe". Whether it holds so much is a question like any.
func (rd *reading) doubted(i int) bool {
	if rd.doubts(i) == 0 {
		return false
	}
	wood := false
	for k := i + 1; k < len(rd.elems) && rd.elems[k].pause == 0 && rd.elems[k].fig == nil; k++ {
		e, t := rd.elems[k], rd.termAt(k)
		switch {
		case t.shape != "", t.tree != nil, t.block == NaturalCrotch, rd.cued(e, cueTree), rd.cued(e, cueAnchor):
			wood = true
		case wood && rd.cued(e, cueSound):
			return rd.endsBreath(k+1) || rd.cued(rd.at(k+1), cueClause)
		case !e.polite() && !t.ofThese && !e.marked(markIs|markArticle|markPronoun|markUnsure|markAdverb|markAdjective):
			return false
		}
	}
	return false
}

// doubts is how many letters the words of doubt have that begin at i, 0 where none do.
func (rd *reading) doubts(i int) int {
	const longest = 4
	start := rd.elems[i].start
	text, n := rd.text[start:], 0
	for words := ""; n < len(text) && strings.Count(words, " ") < longest; {
		word, letters := nextWord(text[n:])
		if word == "" {
			break
		}
		n += letters
		if words = strings.TrimSpace(words + " " + word); rd.in.cues[cueDoubts][words] {
			return n
		}
	}
	return 0
}
