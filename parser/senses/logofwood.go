package senses

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// LogOfWood reads "send just the log after, 320 by 1.5" as a log of wood: what the day's
// was asked has no size.
func LogOfWood(rd *reading.Reading) {
	if !rd.AnyAt(rd.Is(Sized)) || rd.AnyAt(func(i int) bool { return rd.TermAt(i).Shape != "" }) {
		return // "the log of the limb, 12 in x 4 ft" is the day's
	}
	for i, e := range rd.Elems {
		words := scan.SplitWords(rd.Text[e.Start:e.End])
		if rd.TermAt(i).Intent == parser.AskLog && len(words) > 0 && rd.In.Cued(strings.TrimSuffix(words[len(words)-1], ","), lexicon.CueWoodLog) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Shape: parser.Log} })
		}
	}
}

// Sized says whether a size of wood is told at i: a length, or two of them crossed.
func Sized(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return e.Cross || e.Fig != nil && (e.Fig.Pair || e.Fig.Unit != nil && e.Fig.Dim != parser.DimMass && e.Fig.Dim != parser.DimCount)
}
