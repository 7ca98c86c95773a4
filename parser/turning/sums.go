package turning

import (
	"math"
	"strconv"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
)

// Crews tell a load as a sum, "4,500 there minus 180 for hook and slings", "600 lb plus
// 200 lb of brush". It is worked out where both are masses in one unit, and said back as
// it came out. Of sizes, of counts, and of one kind with another, it stays in doubt.

// MassSum works out the sum at the word at i, and says whether it did.
func MassSum(rd *reading.Reading, i int) bool {
	left, right, sign := summands(rd, i)
	if sign == 0 {
		return false
	}
	a, b := rd.Elems[left].Fig, rd.Elems[right].Fig
	factor, name := 1.0, ""
	if a.Unit == nil {
		a.Lent(b.Unit)
	} else if b.Unit == nil {
		b.Lent(a.Unit)
	}
	if a.Unit != nil {
		factor, name = a.Unit.Factor, " "+strings.ToLower(unitTyped(rd, a, b))
	}
	sum := a.Low + sign*b.Low
	start, end := rd.Elems[left].Start, rd.Elems[right].End
	as := strconv.FormatFloat(math.Round(100*sum/factor)/100, 'f', -1, 64)
	rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[start:end], As: grouped(as) + name})
	whole := *a
	whole.Low, whole.High, whole.Start, whole.End = sum, sum, start, end
	rd.Elems[left] = reading.Element{Start: start, End: end, Fig: &whole}
	rd.Elems = append(rd.Elems[:left+1], rd.Elems[right+1:]...)
	forWhat(rd, left+1)
	return true
}

// summands finds the two masses of the sum at the word at i, and whether the second is
// added or taken off; 0 for neither.
func summands(rd *reading.Reading, i int) (left, right int, sign float64) {
	switch e := rd.Elems[i]; {
	case rd.TermAt(i).Ask != parser.Twist:
		return 0, 0, 0
	case rd.Cued(e, lexicon.CuePlus):
		sign = 1
	case rd.Cued(e, lexicon.CueMinus):
		sign = -1
	}
	left, right = i-1, rd.Past(i+1, +1, lexicon.MarkArticle)
	for i-left <= 2 && rd.At(left).Fig == nil && (rd.At(left).Polite() || rd.Cued(rd.At(left), lexicon.CueThere)) {
		left-- // "4,500 there minus"
	}
	if !summand(rd, left, len(rd.Elems)) || !summand(rd, right, right+1) {
		return 0, 0, 0
	}
	a, b := rd.Elems[left].Fig, rd.Elems[right].Fig
	if !oneUnit(a, b) || sign < 0 && b.In(a) >= a.In(b) {
		return 0, 0, 0
	}
	return left, right, sign
}

// summand says whether the number at i can be a mass that is added or taken off: a single
// one with such a unit, or a bare one that nothing behind it counts.
func summand(rd *reading.Reading, i, behind int) bool {
	fig := rd.At(i).Fig
	if fig == nil || fig.Pair || fig.Low != fig.High || fig.Low <= 0 {
		return false
	}
	next := rd.At(behind)
	if fig.Unit != nil {
		return fig.Dim == parser.DimMass && len(rd.TermAt(behind).Roles) == 0
	}
	return fig.Dim == parser.DimCount && fig.Low >= stops.Lightest && len(rd.TermAt(behind).Roles) == 0 && next.Fig == nil && !next.Piece() && !rd.TermAt(behind).Percent
}

// oneUnit says whether two numbers are in one unit, or one of them tells none.
func oneUnit(a, b *reading.Figure) bool {
	return a.Unit == b.Unit || a.Unit == nil || b.Unit == nil
}

// unitTyped is the unit of two numbers as it was typed.
func unitTyped(rd *reading.Reading, figs ...*reading.Figure) string {
	for _, f := range figs {
		words := f.Words(rd.Text)
		if unit := strings.TrimLeft(words, "0123456789., "); unit != "" {
			return unit
		}
	}
	return ""
}

// grouped puts the commas into a whole number: "4,320".
func grouped(digits string) string {
	whole, rest, _ := strings.Cut(digits, ".")
	for n := len(whole) - 3; n > 0; n -= 3 {
		whole = whole[:n] + "," + whole[n:]
	}
	if rest != "" {
		return whole + "." + rest
	}
	return whole
}

// forWhat passes over what was added or taken off for, "for hook and slings", up to the
// next pause or number.
func forWhat(rd *reading.Reading, i int) {
	if !rd.Cued(rd.At(i), lexicon.CueFor) && !rd.At(i).Marked(lexicon.MarkRelation|lexicon.MarkMade) {
		return
	}
	end := i
	for end < len(rd.Elems) && rd.Elems[end].Pause == 0 && rd.Elems[end].Fig == nil && !says(rd, end) {
		end++
	}
	if end < len(rd.Elems) && rd.Elems[end].Fig != nil || end == i+1 {
		return
	}
	LeaveOut(rd, i, end)
}

// says whether the word at i asks, stops or tells of something by itself: "how many wraps",
// "wet rope". The gear that was counted in does not.
func says(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	asks := t.Intent != "" && t.Intent != parser.AskGear
	told := t.Note != "" || t.Ask != "" || t.Explain != "" || t.Tree != nil || len(t.Roles) > 0
	return asks || t.Stop != "" || told && gear.Part(rd.Elems[i]) == ""
}
