package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// MeAndOthers counts who speaks and those beside: "me n 1 other", "me and 2 more on the
// rope". Who is counted by a word of their own, "me and 2 guys", may be all of them.
func MeAndOthers(rd *reading.Reading) {
	for i := range rd.Elems {
		if n, to := aloneBeside(rd, i); n > 0 {
			countSelf(rd, i-1, to, n)
			return
		}
		n, to := othersBeside(rd, i)
		ends := to > i && rd.EndsBreath(to+1) // "me and one other" may go on to anything
		if n == 0 || !ends && !OnTackle(rd, to+1) && !(to+1 < len(rd.Elems) && pullsToo(rd, to+1)) {
			continue
		}
		countSelf(rd, i, to, n)
		return
	}
}

// countSelf makes who speaks and n others of what stands from one element to another.
func countSelf(rd *reading.Reading, i, to int, n float64) {
	start, end := rd.Elems[i].Start, rd.Elems[to].End
	rd.Elems[i] = reading.Element{Start: start, End: end, Fig: &reading.Figure{Low: n + 1, High: n + 1, Sure: parser.People, Start: start, End: end}}
	for k := i + 1; k <= to; k++ {
		rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{Chatter: true}}
	}
}

// aloneBeside are how many others stand beside who speaks and is called alone at i, "just
// me and two other guys", and the last of their words; 0 where none do.
func aloneBeside(rd *reading.Reading, i int) (n float64, to int) {
	fig := rd.At(i + 2).Fig
	if rd.TermAt(i).Count != 1 || rd.At(i-1).Fig == nil || !rd.At(i+1).Marked(lexicon.MarkAnd) || fig == nil || !fig.Between(1, 6) || !rd.TermAt(i+3).Others {
		return 0, 0
	}
	return fig.Low, i + 3
}

// othersBeside are how many stand beside who speaks in the words from i on, and the last of
// them; 0 where none do.
func othersBeside(rd *reading.Reading, i int) (n float64, to int) {
	if !rd.Cued(rd.Elems[i], lexicon.CueSelfAnd) {
		return 0, 0
	}
	j := i + 1
	if rd.At(j).Marked(lexicon.MarkAnd) || rd.Cued(rd.At(j), lexicon.CueAndShort) {
		j++
	}
	fig := rd.At(j).Fig
	switch {
	case rd.Cued(rd.Elems[i], lexicon.CueSelfAndOne):
		return 1, i
	case fig != nil && fig.Between(1, 6) && (rd.Cued(rd.At(j+1), lexicon.CueOther) || rd.Cued(rd.At(j+1), lexicon.CueMore)):
		return fig.Low, j + 1
	}
	return 0, 0
}

// MeAndNamed counts those who are named beside who speaks: "just me and Dre and Luis" are
// three. Who is named and goes on to do something else, "just me and Luis says", is not counted.
func MeAndNamed(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Low != 1 || rd.TermAt(i+1).Count != 1 || !rd.At(i+1).Plays(parser.People) {
			continue
		}
		n, j := namedFrom(rd, i+2)
		if n > 0 && (rd.EndsBreath(j) || rd.At(j).Plays(parser.People)) {
			e.Fig.Low, e.Fig.High = 1+n, 1+n
		}
		return
	}
}

// namedFrom is how many are named from the element at i on, and where that ends: "and Dre
// and Luis", ", Dre and Luis".
func namedFrom(rd *reading.Reading, i int) (n float64, end int) {
	named := func(k int) bool { return rd.TermAt(k).Someone && rd.At(k).Pause == 0 }
	for named(i+1) && (rd.At(i).Marked(lexicon.MarkAnd) || rd.At(i).Pause == 2 && rd.At(i+2).Marked(lexicon.MarkAnd) && named(i+3)) {
		n, i = n+1, i+2
	}
	return n, i
}
