package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What a limit or gear is changed to is told with what it was: "change the limit from 800 to
// 500 lb", "cambia la eslinga de 28,000 a 22,400". That is no range, and only the second
// number holds.

// ChangedFrom passes over the first of two such numbers.
func ChangedFrom(rd *reading.Reading) {
	of := func(i int) bool { return rd.Elems[i].Plays(parser.Limit) || gear.Part(rd.Elems[i]) != "" }
	if !rd.AnyAt(of) {
		return
	}
	for i := 1; i < len(rd.Elems); i++ {
		if rd.Elems[i].Fig == nil || rd.Elems[i].Fig.Pair || !changed(rd, i) {
			continue
		}
		if fig := rd.Elems[i].Fig; fig.Low < fig.High {
			secondHolds(rd, i)
		} else if next := rd.At(i + 2).Fig; next != nil && rd.Cued(rd.At(i+1), lexicon.CueToNew) && next.Dim == fig.Dim {
			rd.Pass(i, i+2)
		} else {
			continue
		}
		rd.Changed = true
		if rd.Cued(rd.Elems[i-1], lexicon.CueFromOld) {
			rd.Elems = slices.Delete(rd.Elems, i-1, i)
			i--
		}
	}
}

// changed says whether "from" stands right before the number at i, and before that what
// is changed or that it is.
func changed(rd *reading.Reading, i int) bool {
	if !rd.TypedBefore(i, lexicon.CueFromOld) {
		return false
	}
	from, _ := rd.Span(rd.Elems[i].Start, func(e reading.Element) bool { return e.Pause > 0 })
	if anyWord(rd, from, rd.Elems[i].Start, lexicon.CueChangesIt) {
		return true
	}
	return rd.At(i-1).Plays(parser.Limit) || rd.Cued(rd.At(i-1), lexicon.CueFromOld) && rd.At(i-2).Plays(parser.Limit)
}

// secondHolds makes one number of the range at i: the one that was told last.
func secondHolds(rd *reading.Reading, i int) {
	fig := *rd.Elems[i].Fig
	numbers := figures.FindAllStringIndex(fig.Words(rd.Text), -1)
	if len(numbers) != 2 {
		return // in words
	}
	was := parser.Said[string]{Start: fig.Start, End: fig.Start + numbers[0][1]}
	was.Words = rd.Text[was.Start:was.End]
	was.Value = was.Words
	rd.Passed = append(rd.Passed, was)
	if fig.Falling {
		fig.High = fig.Low
	} else {
		fig.Low = fig.High
	}
	fig.Falling, fig.Start = false, fig.Start+numbers[1][0]
	rd.Elems[i] = reading.Element{Start: fig.Start, End: fig.End, Fig: &fig}
}
