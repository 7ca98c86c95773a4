package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What a crew did last week is no size of the piece at hand.

// FormerWork passes over a sentence of a talk that tells how long the pieces of another day
// were: "last week we were cutting five feet at that width". One that names a piece or asks
// for something is read.
func FormerWork(rd *reading.Reading) {
	if rd.First {
		return
	}
	for from := 0; from < len(rd.Elems); {
		to := from
		for to < len(rd.Elems) && rd.Elems[to].Pause < 4 {
			to++
		}
		if from < to && formerWork(rd, from, to) {
			start, end := rd.Elems[from].Start, rd.Elems[to-1].End
			rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
				return a.Kind == parser.Unknown && a.Start >= start && a.End <= max(end, startOf(rd, to))
			})
			Blank(rd, from, to)
		}
		from = to + 1
	}
}

// formerWork says whether a sentence from one element up to another tells lengths of another
// day, and nothing else.
func formerWork(rd *reading.Reading, from, to int) bool {
	lengths := 0
	for k := from; k < to; k++ {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case e.Fig != nil && e.Fig.Dim == parser.DimLength:
			lengths++
		case e.Fig != nil, t.Tree != nil, t.Shape != "", t.Unnamed, t.Stop != "", e.Plays(parser.Weight), e.Plays(parser.Limit), e.Plays(parser.HitchHeight):
			return false
		}
	}
	text := rd.Text[rd.Elems[from].Start:startOf(rd, to)]
	asked := strings.ContainsAny(rd.Text[rd.Elems[from].Start:min(len(rd.Text), startOf(rd, to)+1)], "?¿")
	return lengths > 0 && !asked && typedWithin(rd, text, lexicon.CueOtherDay) && typedWithin(rd, text, lexicon.CueDidCut)
}

// typedWithin says whether words of a cue are typed anywhere in a stretch of the text.
func typedWithin(rd *reading.Reading, text string, c scan.Cue) bool {
	for at := 0; at < len(text); {
		if rd.Begin(c, text[at:]) {
			return true
		}
		n := strings.IndexByte(text[at:], ' ')
		if n < 0 {
			return false
		}
		at += n + 1
	}
	return false
}
