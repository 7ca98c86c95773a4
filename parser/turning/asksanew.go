package turning

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Crews stop in the middle of a question and ask another: "how heavy is a red oak 12 in 4
// ft, i mean how many wraps for a red oak 14 in 6 ft".

// asksAnew puts aside what was asked before the word at i, "i mean", where that begins a
// question anew, and says whether it does. Without a number or a tree of its own the new one
// goes on about what was told.
func asksAnew(rd *reading.Reading, i int) bool {
	if rd.TermAt(i).Denies || i == 0 || !rd.TypedAfter(i, lexicon.CueAsks) {
		return false
	}
	from := askedFrom(rd, i)
	if from == i {
		return false
	}
	fact := func(k int) bool { return rd.Elems[k].Fig != nil || rd.TermAt(k).Tree != nil }
	if rd.AnyAt(func(k int) bool { return k > i && fact(k) }) {
		rd.Pass(from, i+1, reading.Element{Start: rd.Elems[from].Start, End: rd.Elems[i].End, Term: &scan.Term{Chatter: true}})
		return true
	}
	for k := from; k < i; k++ {
		if t := rd.TermAt(k); t.Intent != "" && !fact(k) {
			rd.Alter(k, func(t *scan.Term) { *t = scan.Term{Chatter: true} })
		}
	}
	rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
	return true
}

// askedFrom is where the question begins that is asked before the element at i, in its
// sentence; i where none is.
func askedFrom(rd *reading.Reading, i int) int {
	from := i
	for k := i - 1; k >= 0 && rd.Elems[k].Pause <= 2; k-- {
		word, _ := scan.NextWord(rd.Text[rd.Elems[k].Start:])
		if rd.TermAt(k).Intent != "" || rd.CuedAs(word, lexicon.CueAsks) {
			from = k
		}
	}
	return from
}
