package senses

import (
	"math"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Do i go up a wrap? was on 3 with about 220 kg" tells the wraps that were on without
// their word: it stands where one more is asked for.

// WrapsOn takes such a number for wraps, where none are told and nothing else is counted
// by it.
func WrapsOn(rd *reading.Reading) {
	counted := func(i int) bool {
		return rd.Elems[i].Plays(parser.Wraps) && rd.At(i-1).Fig != nil && !oneWrap(rd, i)
	}
	if !rd.AnyAt(rd.Is(oneWrap)) || rd.AnyAt(counted) {
		return
	}
	if at := rd.Only(rd.Is(onDrum)); at >= 0 {
		rd.Elems[at].Fig.Told = parser.Wraps
		uncount(rd)
	}
}

// uncount takes the number from the one wrap that is asked for, "una vuelta".
func uncount(rd *reading.Reading) {
	for i := range rd.Elems {
		if one := rd.At(i - 1); one.Fig != nil && one.Fig.Dim == parser.DimCount && one.Fig.Between(1, 1) && oneWrap(rd, i) {
			rd.Elems[i-1] = reading.Element{Start: one.Start, End: one.End, Term: &scan.Term{Marks: lexicon.MarkArticle}}
		}
	}
}

// oneWrap says whether the words up to the element at i end in one wrap more or less: "do i
// add a wrap", "le subo una vuelta".
func oneWrap(rd *reading.Reading, i int) bool {
	const words = 2
	w := scan.SplitWords(scan.Fold(rd.Text[rd.Elems[max(0, i-1)].Start:rd.Elems[i].End]))
	return len(w) >= words && rd.In.Cued(strings.Join(w[len(w)-words:], " "), lexicon.CueOneWrap)
}

// onDrum says whether the number at i is as small as wraps are and is told to be on: "was on
// 3 with", "had 3 on".
func onDrum(rd *reading.Reading, i int) bool {
	const most = 6
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Told != "" || fig.Low < 1 || fig.High > most || fig.Low != fig.High || 2*fig.Low != math.Trunc(2*fig.Low) {
		return false
	}
	ends := func(k int) bool {
		return rd.EndsBreath(k) || rd.At(k).Marked(lexicon.MarkWhere) && !rd.At(k).Marked(lexicon.MarkIn)
	}
	if rd.At(i - 1).Marked(lexicon.MarkIn) {
		return ends(i + 1)
	}
	return rd.At(i+1).Marked(lexicon.MarkIn) && ends(i+2)
}
