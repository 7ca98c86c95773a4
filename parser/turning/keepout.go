package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How far people shall stay off is told to a crew, and is no size of the piece: "nobody
// stands inside 40 ft when the top comes", "keep everybody 40 ft back", "que nadie esté a
// menos de 12 m". Read as a length it would change the weight.

// KeepOut passes over it, and says so.
func KeepOut(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if !rd.Elems[i].Fig.Far() {
			continue
		}
		to := i + 1
		if rd.TypedAfter(i, lexicon.CueKeptOff) {
			to++
		} else if !rd.TypedBefore(i, lexicon.CueKeptOut) {
			continue
		}
		if from, start := keptFrom(rd, i); from >= 0 {
			passKept(rd, from, min(to, len(rd.Elems)), start)
		}
	}
}

// keptFrom finds the element that is the first behind where people are told of in the breath
// of the number at i, and where their words start in the text; -1 for none.
func keptFrom(rd *reading.Reading, i int) (from, start int) {
	const far = 8
	from = i
	for from > 0 && i-from < far && rd.At(from-1).Pause == 0 && rd.At(from-1).Fig == nil && !rd.At(from-1).Piece() {
		from--
	}
	at := 0
	if from > 0 {
		at = rd.Elems[from-1].End
	}
	for ; at < rd.Elems[i].Start; at++ {
		begins := !scan.LetterBefore(rd.Text, at)
		if begins && (rd.SaidTo(lexicon.CueNoOne, at) >= 0 || rd.SaidTo(lexicon.CueEverybody, at) >= 0) {
			for from < i && rd.Elems[from].Start < at {
				from++
			}
			return from, at
		}
	}
	return -1, 0
}

// passKept passes over the words from a place in the text up to an element, and leaves those
// from another on in their places as talk.
func passKept(rd *reading.Reading, from, to, start int) {
	end := rd.Elems[to-1].End
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind == parser.Unknown && a.Start >= start && a.End <= end })
	rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return p.Start >= start && p.End <= end })
	words := rd.Text[start:end]
	rd.Passed = append(rd.Passed, parser.Said[string]{Value: words, Words: words, Start: start, End: end})
	for k := from; k < to; k++ {
		rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{Chatter: true}}
	}
}
