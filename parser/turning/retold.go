package turning

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What puts a number right need not stand right behind it: "11 in 22 ft, no make that 13
// in" tells by its unit which of the two is wrong, and "block at 40, drop 3 ft, no wait
// block at 45" by what stands before it.

// How many times another number the one that puts it right can be, and how many times
// another at least is told of something else.
const mostApart, elsewhere = 2, 4

// onlyOfUnit finds the one number before i that is told in the unit of that at n, and is
// not far from it, -1 for none and for any that may be meant besides: one without a unit,
// or in another, "8 in 2 ft sorry 14 in".
func onlyOfUnit(rd *reading.Reading, i, n int) int {
	b, found := rd.At(n).Fig, -1
	if b == nil || b.Unit == nil || b.Pair {
		return -1
	}
	words := RoleBehind(rd, n)
	for p := range i {
		a := rd.Elems[p].Fig
		if a == nil || a.Unit == nil && CountedBy(rd, p+1) {
			continue
		}
		apart := max(a.High/b.High, b.High/a.High)
		switch one := a.Unit == b.Unit; {
		case a.Pair, a.Unit == nil:
			return -1
		case a.Dim != b.Dim, one && apart >= elsewhere, !one && apart > mostApart:
		case !one, apart > mostApart, found >= 0, words != "" && RoleBehind(rd, p) != words:
			return -1
		default:
			found = p
		}
	}
	return found
}

// nearerThan says whether another number before i than that at p may be the one that the
// bare number at n puts right: "11 in 22 ft, no make that 13".
func nearerThan(rd *reading.Reading, i, p, n int) bool {
	apart := func(k int) float64 {
		x, y := rd.Elems[k].Fig.High, rd.Elems[n].Fig.In(rd.Elems[k].Fig)
		return max(x, y) / min(x, y)
	}
	for k := range i {
		if a := rd.Elems[k].Fig; k != p && a != nil && !a.Pair && a.Unit != nil && a.High > 0 && RoleBehind(rd, k) == "" && apart(k) < apart(p) {
			return true
		}
	}
	return false
}

// retoldToo finds what the numbers behind that at n put right besides: "8 in 10 ft, no
// wait its 11 in, 12 ft". The places stand in the order of the text.
func retoldToo(rd *reading.Reading, i, p, n int) []int {
	out := []int{p}
	for k := n + 1; k < len(rd.Elems); k++ {
		e, fig := rd.Elems[k], rd.Elems[k].Fig
		if fig == nil && e.Pause != 2 && !e.Marked(lexicon.MarkAnd) && (e.Pause > 0 || !saysNothing(rd, k)) {
			break
		}
		if fig == nil || fig.Unit == nil || rd.Elems[n].Fig != nil && fig.Unit == rd.Elems[n].Fig.Unit {
			continue
		}
		if q := onlyOfUnit(rd, i, k); q > p {
			out = append(out, q)
		} else if q >= 0 {
			out = append([]int{q}, out...)
		}
	}
	return out
}

// placeAnew reads "block at 40 ft, drop 3 ft, no make that block at 45 ft" at the words
// that take back: what leads to the number says which one is wrong. It says whether it did.
func placeAnew(rd *reading.Reading, i int) bool {
	k := i + 1
	for rd.At(k).Pause == 2 || rd.At(k).Pause == 0 && rd.At(k).Fig == nil && k < len(rd.Elems) && saysNothing(rd, k) {
		k++
	}
	n, p := leadsTo(rd, k), -1
	if n < 0 || rd.TermAt(i).Lacks {
		return false
	}
	for q := range i {
		if m := leadsTo(rd, q); m > 0 && rd.Word(rd.Elems[q]) == rd.Word(rd.Elems[k]) {
			if p >= 0 {
				return false
			}
			p = q
		}
	}
	if p < 0 {
		return false
	}
	m := leadsTo(rd, p)
	a, b := rd.Elems[m].Fig, rd.Elems[n].Fig
	if a.Pair || b.Pair || a.Unit != b.Unit || a.Dim != b.Dim || a.High > mostApart*b.High || b.High > mostApart*a.High {
		return false
	}
	clearDoubt(rd, i, k)
	Blank(rd, p, m+1)
	return true
}

// leadsTo is the number that the words at k lead to, which stand before it, -1 for none.
func leadsTo(rd *reading.Reading, k int) int {
	e := rd.At(k)
	if e.Fig != nil || !e.Looks(lexicon.After) || k < 0 || k >= len(rd.Elems) {
		return -1
	}
	n := rd.Past(k+1, +1, lexicon.MarkAt|lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkWhere)
	if rd.At(n).Fig == nil || RoleBehind(rd, n) != "" {
		return -1
	}
	return n
}
