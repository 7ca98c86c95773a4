package turning

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// notSo passes over a number that is denied, from "not" on, and keeps that it was.
func notSo(rd *reading.Reading, from, to int) {
	rd.Pass(from, to)
	rd.NotSo = append(rd.NotSo, rd.Passed[len(rd.Passed)-1])
}

// farNumber says whether a number is told in the same breath as the one denied at j, with
// no more between them than where it is: "its 18 where he's cutting not 22". Only what was
// spoken of before may be put right so.
func farNumber(rd *reading.Reading, i, j int) bool {
	const mostWords = 5
	if rd.First || !rd.TermAt(i).Denies || !rd.SaidOut(j+1) {
		return false
	}
	for k := i - 1; k >= 0 && k >= i-mostWords; k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case e.Fig != nil:
			return k < i-1 && otherNumber(rd, k, j)
		case e.Pause > 0, t.Denies, t.Corrects, t.Ask != "", e.Marked(lexicon.MarkBound):
			return false
		}
	}
	return false
}
