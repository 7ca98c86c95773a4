package reader

import (
	"cmp"
	"errors"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
)

// compared reads "which is heavier, white oak 40 cm x 2 m or poplar 35 cm x 3 m"
// as a list of two: their weights say which.
func (r *Reader) compared(rd *reading.Reading) []parser.Said[string] {
	at := slices.IndexFunc(rd.Elems, func(e reading.Element) bool { return e.Term != nil && e.Term.Compares })
	if two := r.instead(rd); two != nil {
		return two
	}
	if at < 0 {
		return r.twoAt(rd, parser.Said[string]{}, senses.Stretch(rd.Text, 0, len(rd.Text)), false)
	}
	head, both := senses.Stretch(rd.Text, 0, rd.Elems[at].Start), senses.Stretch(rd.Text, rd.Elems[at].End, len(rd.Text))
	if both.Value == "" {
		head, both = both, head // "ash 14 in 8 ft or oak 12 in 8 ft, which is heavier?"
	}
	for _, from := range senses.PieceStarts(rd, both) {
		if two := r.twoAt(rd, head, senses.Stretch(rd.Text, from, both.End), true); two != nil {
			return two
		}
	}
	return nil
}

// twoAt reads two pieces with "vs" between them, or "or" where it is asked which.
func (r *Reader) twoAt(rd *reading.Reading, head, both parser.Said[string], asked bool) []parser.Said[string] {
	for _, gap := range senses.Versus(rd, both, asked) {
		left, right := senses.OneOf(rd, senses.Stretch(rd.Text, both.Start, gap[0])), senses.OneOf(rd, senses.Stretch(rd.Text, gap[1], both.End))
		a, b := left, right
		if asked {
			a, b = r.likeOther(rd, left, head, right), r.likeOther(rd, right, head, left)
		}
		if r.whole(a.Value) && r.whole(b.Value) && (asked || r.treeIn(rd.In, a.Value) != "" && r.treeIn(rd.In, b.Value) != "") {
			return []parser.Said[string]{r.anyOne(rd, a), r.anyOne(rd, b)}
		}
	}
	return nil
}

// likeOther adds to one of two pieces what is told of the other alone or before both:
// "basswood. what's lighter, a 16 in round 10 thick or a 12 in one 16 thick", "6 ft of
// white pine at 18 in or 4 ft of hickory".
func (r *Reader) likeOther(rd *reading.Reading, one, head, other parser.Said[string]) parser.Said[string] {
	b, _ := r.Read(other.Value)
	one.Value = r.unitLike(one.Value, b)
	a, _ := r.Read(one.Value)
	sized := a.Has(parser.Length) || a.Has(parser.Across...)
	switch {
	case r.whole(one.Value), !sized && r.treeIn(rd.In, one.Value) == "":
		return one // "or the block"
	case a.Shape != nil || b.Shape == nil:
	case sized:
		if as := senses.AsShape(rd, one.Value, b.Shape.Words); as != one.Value {
			one.Value = as
		} else {
			one.Value += " " + b.Shape.Words // "elm log 20 in 4 ft or 18 in 6 ft"
		}
	default:
		one.Value += " " + b.Shape.Words // "red oak or white oak, 16 in log 7 ft"
	}
	if r.treeIn(rd.In, one.Value) == "" {
		one.Value = cmp.Or(r.treeIn(rd.In, head.Value), r.treeIn(rd.In, other.Value)) + " " + one.Value
	}
	a, _ = r.Read(one.Value)
	for _, fields := range [][]parser.Field{parser.Across, {parser.Length}} {
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

// unitLike adds to a piece whose thickness has no unit that of the other: "8 ft of oak at 18
// in or 6 ft of post oak at 16".
func (r *Reader) unitLike(text string, other parser.Question) string {
	_, err := r.Read(text)
	a, bare := errors.AsType[*parser.Ask](err)
	if !bare || a.Kind != parser.NoUnit {
		return text
	}
	for _, x := range other.Quantities {
		unit := strings.TrimLeft(x.Words, "0123456789.,/ ½¼¾")
		if !slices.Contains(parser.Across, x.Field) || unit == "" || unit == x.Words {
			continue
		}
		if with := text[:a.End] + " " + unit + text[a.End:]; r.whole(with) {
			return with
		}
	}
	return text
}

// treeIn is what the first tree in a text is called there, "" for none.
func (r *Reader) treeIn(in *scan.Tongue, text string) string {
	for _, e := range r.part(text, in).Elems {
		if e.Term != nil && e.Term.Tree != nil {
			return text[e.Start:e.End]
		}
	}
	return ""
}

// anyOne takes any of the trees that share a name: between two pieces it hangs on the
// sizes.
func (r *Reader) anyOne(rd *reading.Reading, one parser.Said[string]) parser.Said[string] {
	for _, e := range r.part(one.Value, rd.In).Elems {
		if e.Term == nil || e.Term.Tree == nil || len(e.Term.Tree.Others) == 0 || !parser.Genus(e.Term.Tree.Sci) {
			continue
		}
		one.Value = one.Value[:e.Start] + rd.In.Any + " " + one.Value[e.Start:]
		break
	}
	return one
}
