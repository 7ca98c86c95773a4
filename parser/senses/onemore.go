package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// A wrap more or less than what is told is asked about in few words: "3 vueltas, ¿una
// más?", "le quito media vuelta". Of one more, the answer for those that are told
// says whether they hold; of one less, it is asked what is left.

// oneMore reads the wrap at i, which is no count of its own.
func oneMore(rd *reading.Reading, i int) {
	fig := rd.At(i).Fig
	if fig == nil || fig.Unit != nil || fig.Dim != parser.DimCount || fig.Pair || fig.Low > 1 || fig.Low != fig.High || !rd.At(i+1).Plays(parser.Wraps) {
		return
	}
	told, end := otherWraps(rd, i), i+2
	tries := i == 0 || rd.At(i-1).Pause > 0 || rd.Cued(rd.At(i-1), lexicon.CueTries)
	switch off := rd.Cued(rd.At(i-1), lexicon.CueTakesOff); {
	case off && (told < 0 || rd.Elems[told].Fig.Low-fig.Low < 1):
		rd.Alter(i-1, func(t *scan.Term) { t.Ask = parser.Twist })
	case told < 0:
		turning.LessThanMeant(rd, i)
	case rd.Cued(rd.At(end), lexicon.CueMore) && tries:
		turning.Blank(rd, i, end+1)
	case (off || rd.Cued(rd.At(end), lexicon.CueFewer)) && rd.Elems[told].Fig.Low-fig.Low >= 1:
		count := rd.Elems[told].Fig
		count.Low, count.High = count.Low-fig.Low, count.High-fig.Low
		if rd.Cued(rd.At(end), lexicon.CueFewer) {
			end++
		}
		for k := i; k < end; k++ {
			rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{Chatter: true}}
		}
	}
}

// otherWraps finds the one count of wraps besides that at i, -1 for none and for
// more than one.
func otherWraps(rd *reading.Reading, i int) int {
	found := -1
	for k, e := range rd.Elems {
		if k == i || !rd.At(k+1).Plays(parser.Wraps) || e.Fig == nil || e.Fig.Dim != parser.DimCount || e.Fig.Unit != nil {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = k
	}
	return found
}
