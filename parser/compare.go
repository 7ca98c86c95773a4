package parser

import (
	"cmp"
	"slices"
	"strings"
	"unicode/utf8"
)

// compared reads "which is heavier, white oak 40 cm x 2 m or poplar 35 cm x 3 m"
// as a list of two: their weights say which.
func (r *Reader) compared(rd *reading) []Said[string] {
	at := slices.IndexFunc(rd.elems, func(e element) bool { return e.term != nil && e.term.compares })
	if at < 0 {
		return r.twoAt(rd, Said[string]{}, stretch(rd.text, 0, len(rd.text)), false)
	}
	head, both := stretch(rd.text, 0, rd.elems[at].start), stretch(rd.text, rd.elems[at].end, len(rd.text))
	if both.Value == "" {
		head, both = both, head // "ash 14 in 8 ft or oak 12 in 8 ft, which is heavier?"
	}
	for _, from := range rd.pieceStarts(both) {
		if two := r.twoAt(rd, head, stretch(rd.text, from, both.End), true); two != nil {
			return two
		}
	}
	return nil
}

// pieceStarts are the places where the first of two pieces may begin: where both are told, or
// behind a comma, with nothing but talk before it, "to chuck over the hedge, an ash …".
func (rd *reading) pieceStarts(both Said[string]) []int {
	out := []int{both.Start}
	for i, e := range rd.elems {
		switch {
		case e.start < both.Start:
		case e.pause == 2:
			return append(out, e.end)
		case !rd.weightless(i), slices.ContainsFunc(rd.asks, func(a *Ask) bool { return a.Start >= both.Start && a.Start < e.end }):
			return out
		}
	}
	return out
}

// twoAt reads two pieces with "vs" between them, or "or" where it is asked which.
func (r *Reader) twoAt(rd *reading, head, both Said[string], asked bool) []Said[string] {
	for _, gap := range rd.versus(both, asked) {
		left, right := rd.oneOf(stretch(rd.text, both.Start, gap[0])), rd.oneOf(stretch(rd.text, gap[1], both.End))
		a, b := left, right
		if asked {
			a, b = r.likeOther(rd, left, head, right), r.likeOther(rd, right, head, left)
		}
		if r.whole(a.Value) && r.whole(b.Value) && (asked || r.treeIn(rd.in, a.Value) != "" && r.treeIn(rd.in, b.Value) != "") {
			return []Said[string]{r.anyOne(rd, a), r.anyOne(rd, b)}
		}
	}
	return nil
}

// versus finds where the words stand that part two pieces: "vs", "heavier than", and
// "or" where it is asked which.
func (rd *reading) versus(both Said[string], asked bool) (out [][2]int) {
	const most = 3 // words, "weighs more than"
	var starts []int
	var words []string
	for n := both.Start; n < both.End; {
		word, letters := nextWord(rd.text[n:both.End])
		if word == "" {
			_, size := utf8.DecodeRuneInString(rd.text[n:])
			n += size
			starts, words = nil, nil
			continue
		}
		starts, words = append(starts, n), append(words, word)
		n += letters
		for k := max(0, len(words)-most); k < len(words); k++ {
			j, join := rd.in.joins[words[k]]
			if one := asked && k == len(words)-1 && (join && j == or || rd.in.cues[cueBothOf][words[k]]); one || rd.in.cues[cueVersus][strings.Join(words[k:], " ")] {
				out = append(out, [2]int{starts[k], n})
				break
			}
		}
	}
	return out
}

// likeOther adds to one of two pieces what is told of the other alone or before both:
// "basswood. what's lighter, a 16 in round 10 thick or a 12 in one 16 thick", "6 ft of
// white pine at 18 in or 4 ft of hickory".
func (r *Reader) likeOther(rd *reading, one, head, other Said[string]) Said[string] {
	a, _ := r.Read(one.Value)
	b, _ := r.Read(other.Value)
	sized := a.Has(Length) || a.Has(across...)
	switch {
	case r.whole(one.Value), !sized && r.treeIn(rd.in, one.Value) == "":
		return one // "or the block"
	case a.Shape != nil || b.Shape == nil:
	case sized:
		one.Value = rd.asShape(one.Value, b.Shape.Words)
	default:
		one.Value += " " + b.Shape.Words // "red oak or white oak, 16 in log 7 ft"
	}
	if r.treeIn(rd.in, one.Value) == "" {
		one.Value = cmp.Or(r.treeIn(rd.in, head.Value), r.treeIn(rd.in, other.Value)) + " " + one.Value
	}
	a, _ = r.Read(one.Value)
	for _, fields := range [][]Field{across, {Length}} {
		if a.Has(fields...) {
			continue
		}
		for _, x := range b.Quantities {
			if slices.Contains(fields, x.Field) {
				one.Value += " " + x.Words
				break
			}
		}
	}
	return one
}

// treeIn is what the first tree in a text is called there, "" for none.
func (r *Reader) treeIn(in *tongue, text string) string {
	for _, e := range r.part(text, in).elems {
		if e.term != nil && e.term.tree != nil {
			return text[e.start:e.end]
		}
	}
	return ""
}

// asShape puts the shape for "one" in a text: "a 12 in one 16 thick".
func (rd *reading) asShape(text, shape string) string {
	for word := range lettered(text) {
		if rd.in.numbers[fold(word)].value == 1 {
			return strings.Replace(text, word, shape, 1)
		}
	}
	return text
}

// anyOne takes any of the trees that share a name: between two pieces it hangs on the
// sizes.
func (r *Reader) anyOne(rd *reading, one Said[string]) Said[string] {
	for _, e := range r.part(one.Value, rd.in).elems {
		if e.term == nil || e.term.tree == nil || len(e.term.tree.others) == 0 || !genus(e.term.tree.sci) {
			continue
		}
		one.Value = one.Value[:e.start] + rd.in.any + " " + one.Value[e.start:]
		break
	}
	return one
}

// oneOf leaves out the word that only says that a piece is another: "o uno de chopo
// de 50 cm".
func (rd *reading) oneOf(part Said[string]) Said[string] {
	word, n := nextWord(part.Value)
	of, _ := nextWord(part.Value[n:])
	if rd.in.numbers[word].value != 1 || !rd.in.leads[of] {
		return part
	}
	return stretch(rd.text, part.Start+n, part.End)
}

// stretch is a part of the text without what only parts it from the rest.
func stretch(text string, start, end int) Said[string] {
	const marks = " ,:?!."
	start += len(text[start:end]) - len(strings.TrimLeft(text[start:end], marks))
	words := strings.TrimRight(text[start:end], marks)
	return Said[string]{Value: words, Words: words, Start: start, End: start + len(words)}
}
