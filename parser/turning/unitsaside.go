package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/sizes"
)

// "Todo en libras y pies, nada de metros" and "kilos from now on, not pounds" ask
// for one system and put the other aside: what is put aside is never the one that
// is kept.

// UnitsAside leaves out the units that a message denies, where it tells other ones, or all its
// numbers are in others: "14 in 10 ft and dont tell me in newtons". Denied alone they stay in
// doubt.
func UnitsAside(rd *reading.Reading) {
	unitOfNumber(rd)
	numbers := rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil })
	for i := range rd.Elems {
		end := deniedUnits(rd, i)
		if end > 0 && numbers && rd.Cued(rd.At(i+1), lexicon.CueAnswersIn) && rd.EndsBreath(end) && allInOthers(rd, i+1, end) {
			Blank(rd, i, end)
		}
		if end == 0 || numbers || !rd.AnyAt(func(k int) bool { return (k < i || k >= end) && otherSystem(rd, k, i+1, end) }) {
			continue
		}
		Blank(rd, i, end)
	}
}

// unitOfNumber leaves out the unit that is denied in the breath behind a number that has
// another of the same kind: "18 pulgadas, no pies".
func unitOfNumber(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.At(i-1).Pause != 2 {
			continue
		}
		fig, denied := rd.At(i-2).Fig, rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkIs|lexicon.MarkIn)
		u := rd.In.Units[rd.Word(rd.At(denied))]
		if fig == nil || fig.Unit == nil || u == nil || !rd.At(denied).Marked(lexicon.MarkUnit) || !sizes.Denial(rd, i) || !rd.EndsBreath(denied+1) {
			continue
		}
		mayTell := rd.TermAt(i).Corrects && !rd.TermAt(i).Denies && u.Factor > fig.Unit.Factor // "350 lb, no kilos" may put it right
		if u.Dim == fig.Dim && u.Factor != fig.Unit.Factor && !mayTell {
			Blank(rd, i, denied+1)
		}
	}
}

// allInOthers says whether every number with a unit is told in another system than the units
// from one element to another, and some number is.
func allInOthers(rd *reading.Reading, from, to int) bool {
	told := false
	for _, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Unit == nil || e.Fig.Unit.System == "" {
			continue
		}
		told = true
		if rd.AnyAt(func(k int) bool { return from <= k && k < to && systemAt(rd, k) == e.Fig.Unit.System }) {
			return false
		}
	}
	return told
}

// deniedUnits finds where the units end that the word at i denies, 0 for none.
func deniedUnits(rd *reading.Reading, i int) (end int) {
	if !sizes.Denial(rd, i) {
		return 0
	}
	if rd.Cued(rd.At(i+1), lexicon.CueAnswersIn) {
		i++ // "dont tell me in newtons"
	}
	for k := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAnd|lexicon.MarkIs|lexicon.MarkIn); systemAt(rd, k) != ""; k = rd.Past(k+1, +1, lexicon.MarkAnd) {
		end = k + 1
	}
	return end
}

// otherSystem says whether the units at k are of another system than all those from
// one element to another.
func otherSystem(rd *reading.Reading, k, from, to int) bool {
	told := systemAt(rd, k)
	return told != "" && !rd.AnyAt(func(j int) bool { return from <= j && j < to && systemAt(rd, j) == told })
}

// systemAt is the system that is asked for at i, or that of a unit without a number.
func systemAt(rd *reading.Reading, i int) parser.System {
	e, t := rd.At(i), rd.TermAt(i)
	if t.Units != "" || !e.Marked(lexicon.MarkUnit) {
		return t.Units
	}
	if u := rd.In.Units[rd.Word(e)]; u != nil {
		return u.System
	}
	return ""
}
