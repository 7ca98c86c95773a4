package parser

import "strings"

// "Not sure the crotch is sound" is no talk: wood that somebody doubts is a tree in
// doubt, and no figure is given for it.

// doubted says whether the words at i doubt that wood is sound: "dont know if the
// tree is safe". Whether it holds so much is a question like any.
func (rd *reading) doubted(i int) bool {
	if !rd.doubts(i) {
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

// doubts says whether words of doubt begin at i.
func (rd *reading) doubts(i int) bool {
	const longest = 4
	words := splitWords(rd.text[rd.elems[i].start:min(len(rd.text), rd.elems[i].start+longest*12)])
	for n := 1; n <= min(longest, len(words)); n++ {
		if rd.in.cues[cueDoubts][strings.Join(words[:n], " ")] {
			return true
		}
	}
	return false
}
