package turning

import (
	"slices"
	"strings"

	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What somebody said or thought gives way to what was measured: "i said 18 in, but he has
// measured it as 21". The first is passed over, and said so.

// MeasuredAnew passes over such a number.
func MeasuredAnew(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !rd.Cued(e, lexicon.CueBut) {
			continue
		}
		p, n := saidAt(rd, i), measuredAt(rd, i)
		if p < 0 || n < 0 {
			continue
		}
		a, b := rd.Elems[p].Fig, rd.Elems[n].Fig
		x, y := a.High, b.In(a)
		one := b.Unit == a.Unit || b.Unit == nil && RoleBehind(rd, n) == "" && !CountedBy(rd, n+1)
		if a.Unit == nil || a.Pair || b.Pair || !one || x > mostApart*y || y > mostApart*x || RoleBehind(rd, n) != "" && RoleBehind(rd, p) != RoleBehind(rd, n) {
			continue
		}
		if b.Unit == nil {
			b.Lent(a.Unit)
		}
		rd.Pass(p, p+1)
		return
	}
}

// saidAt is the number before the "but" at i that somebody only said or thought, -1 for
// none.
func saidAt(rd *reading.Reading, i int) int {
	for p := i - 1; p >= 0 && rd.Elems[p].Pause < 4; p-- {
		if rd.Elems[p].Fig == nil {
			continue
		}
		from := p
		for from > 0 && rd.Elems[from-1].Pause == 0 && rd.Elems[from-1].Fig == nil {
			from--
		}
		start := 0
		if from > 0 {
			start = rd.Elems[from-1].End
		}
		if anyWord(rd, start, rd.Elems[p].Start, lexicon.CueThought) {
			return p
		}
		return -1
	}
	return -1
}

// measuredAt is the number behind the "but" at i that is told as measured, -1 for none.
func measuredAt(rd *reading.Reading, i int) int {
	for n := i + 1; n < len(rd.Elems) && rd.Elems[n].Pause == 0; n++ {
		if t := rd.TermAt(n); t.Denies || t.Corrects || t.Tree != nil {
			return -1
		}
		if rd.Elems[n].Fig == nil {
			continue
		}
		if anyWord(rd, rd.Elems[i].End, rd.Elems[n].Start, lexicon.CueTaped) {
			return n
		}
		return -1
	}
	return -1
}

// anyWord says whether a word of a kind stands in the text from one place to another.
func anyWord(rd *reading.Reading, from, to int, cue scan.Cue) bool {
	return slices.ContainsFunc(scan.SplitWords(rd.Text[from:to]), func(w string) bool { return rd.CuedAs(strings.Trim(w, "¿¡?!"), cue) })
}
