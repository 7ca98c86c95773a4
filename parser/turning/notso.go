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

// lessHolds says whether a bare "no" at i stands between a number at p of which the lesser
// serves and a greater one at n, "limit 500 lb no 800": that puts right or denies, and the
// lesser is kept. "No, 800" and "no make that 800" put right.
func lessHolds(rd *reading.Reading, i, p, n int) bool {
	is, not := rd.At(p).Fig, rd.At(n).Fig
	bare := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkMade) == n && (rd.TermAt(i).Denies || rd.TermAt(i).Lacks)
	at := p
	for rd.At(at-1).Marked(lexicon.MarkIs|lexicon.MarkPronoun|lexicon.MarkMade) || rd.At(at-1).Pause == 2 {
		at-- // "the limit, its 500 now no 800"
	}
	return bare && is != nil && not != nil && lessServes(rd, at) && more(not, is)
}

// more says whether one number is more than another that may lack its unit, "500 no 800 lb":
// it is lent, so that the other can be left out.
func more(not, is *reading.Figure) bool {
	if is.Unit != nil || not.Unit == nil {
		return not.In(is) > is.High
	}
	if not.High/not.Unit.Factor <= is.High {
		return false
	}
	is.Lent(not.Unit)
	return true
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
