package bounds

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// DeniedFrom finds the word before the number at i, in its clause, that denies more
// than that; -1 where what is denied is a pull, a weight or what gear takes.
func DeniedFrom(rd *reading.Reading, i int) int {
	for k := i - 1; k >= 0 && i-k <= stops.Few+1; k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		if t.Ask == parser.Twist && (rd.Cued(e, lexicon.CueDenying) || t.Purpose) {
			if GearBefore(rd, k) || !t.Purpose && AnyWithin(rd, k, i, func(n int) bool { return rd.TermAt(n).Intent == parser.AskWeight }) {
				return -1
			}
			return k
		}
		if e.Pause > 0 || e.Fig != nil || t.Tree != nil || e.Marked(lexicon.MarkAnd|lexicon.MarkRating) || stops.Kit(rd, k) || rd.Cued(e, lexicon.CueClause) || rd.Cued(e, lexicon.CueGrips) {
			return -1
		}
	}
	return -1
}

// GearBefore says whether gear is named in the clause before the word at i: "el
// tambor no carga más de 500 kg" rates it.
func GearBefore(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0 && !rd.Cued(rd.Elems[k], lexicon.CueClause); k-- {
		if stops.Kit(rd, k) {
			return true
		}
	}
	return false
}

// AnyWithin says whether something holds for an element between two others.
func AnyWithin(rd *reading.Reading, from, to int, holds func(int) bool) bool {
	return rd.AnyAt(func(k int) bool { return k > from && k < to && holds(k) })
}

// Exceeds says whether the words from one element to the number at another say
// "more than".
func Exceeds(rd *reading.Reading, from, to int) bool {
	words := scan.SplitWords(rd.Text[rd.Elems[from].End:rd.Elems[to].Start])
	return rd.At(to-1).Marked(lexicon.MarkBound) || slices.ContainsFunc(words, func(w string) bool { return rd.In.Cued(w, lexicon.CueExceeds) })
}

// LimitAt makes the number at i the limit, and takes the doubt from what denies more.
// A verb that is not known changes nothing of that.
func LimitAt(rd *reading.Reading, from, i int) {
	start, end := rd.Elems[from].Start, rd.Elems[i].Start
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind == parser.Unknown && a.Start >= start && a.End <= end })
	for k := from; k < i; k++ {
		rd.Elems[k].Term = &scan.Term{}
	}
	rd.Elems[i-1].Term = &scan.Term{Roles: []scan.Role{{Field: parser.Limit, Side: lexicon.After, Soft: false}}}
}

// ManyBare says whether a number has no unit, and is more than is counted of anything.
func ManyBare(f *reading.Figure) bool {
	const most = 20
	return f != nil && f.Dim == parser.DimCount && f.Unit == nil && f.Low > most
}
