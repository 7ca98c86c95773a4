package parser

import "strings"

// Of the words before a number and those behind it, the ones that are its own say what
// it is: "he says 14 at the butt", "14 butt 8 tip 20 long".

// roleBeside is the field that a bare number right beside the words for it
// must be, where only its unit is missing: "limit 700", "hitch 70".
func (rd *reading) roleBeside(i int) []Field {
	beside := []int{rd.wordsBefore(i), i + 1}
	if rd.anyAt(rd.cuts) {
		beside = append(beside, i-1) // "cut lengths, max 250"
	}
	if rd.ofSize(i+1) || rd.wordsBehind(i) || rd.softBefore(i) {
		beside[0], beside[1] = beside[1], beside[0] // "pedazo de 35 de grueso"
	}
	for _, at := range beside {
		if t := rd.at(at).term; t != nil {
			for _, r := range t.roles {
				facing := r.side&before != 0
				if at < i {
					facing = r.side&after != 0
				}
				if dim := dimensionOf[r.field]; facing && (dim == dimMass || dim == dimForce || dim == dimLength) {
					return []Field{r.field}
				}
			}
		}
	}
	return nil
}

// wordsBehind says whether each number of a row has its words behind it: "14 butt 8 tip
// 20 long".
func (rd *reading) wordsBehind(i int) bool {
	left := rd.wordsBefore(i)
	return rd.at(i+1).looks(before) && rd.at(left).looks(before) && rd.at(left-1).fig != nil && !rd.labelFirst(i) && rd.at(i+2).fig == nil
}

// softBefore says whether the words before the number at i say much else besides, and
// it has its own behind it: "he says 14 at the butt".
func (rd *reading) softBefore(i int) bool {
	soft := false
	for _, r := range rd.termAt(rd.wordsBefore(i)).roles {
		if r.side&after != 0 && !r.soft {
			return false
		}
		soft = soft || r.side&after != 0
	}
	own := rd.at(i + 1)
	return soft && (own.plays(ButtDiameter) || own.plays(TipDiameter) || own.plays(MidDiameter) || own.plays(Length)) && own.looks(before)
}

// ofSize says whether the words at i go with the number before them: "de grueso".
func (rd *reading) ofSize(i int) bool {
	return rd.at(i).looks(before) && strings.HasPrefix(rd.word(rd.at(i)), "de ")
}

// wordsBefore finds the words that lead to the number at i: "butt about 14", "hitch
// is 35".
func (rd *reading) wordsBefore(i int) int {
	at := i - 1
	for (rd.at(at).marked(markIs|markBound) || rd.termAt(at).note == "about" && len(rd.termAt(at).roles) == 0) && !rd.at(at).plays(Weight) {
		at-- // "weighs" links, and is a weight's own word
	}
	return at
}

// thickOfCut says whether the bare number at i is how thick the stem of a cut plan is: it
// has a limit of its own beside it, and no other thickness is told, "what length of 380
// can i cut, limit 200".
func (rd *reading) thickOfCut(i int, full bound) bool {
	if !rd.asksFor(AskCutPlan) || full.has(across...) || rd.at(i+1).plays(Limit) || rd.at(rd.wordsBefore(i)).plays(Limit) || rd.at(i+1).plays(Weight) || rd.at(rd.wordsBefore(i)).plays(Weight) {
		return false
	}
	made := rd.at(i-1).marked(markMade) || rd.at(rd.wordsBefore(i)).plays(Length)
	return made && rd.anyAt(func(k int) bool {
		fig := rd.elems[k].fig
		return k != i && fig != nil && (rd.at(k+1).plays(Limit) || rd.at(rd.wordsBefore(k)).plays(Limit))
	})
}
