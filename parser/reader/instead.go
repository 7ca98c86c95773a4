package reader

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/senses"
	"heft/parser/talk"
)

// instead reads "3 ft instead of 4 on that 28 in oak log, how much do we save" as a list
// of two, which differ in one number: their weights tell the difference.
func (r *Reader) instead(rd *reading.Reading) []parser.Said[string] {
	if !talk.Typed(rd, lexicon.CueSaves) {
		return nil
	}
	for _, aside := range rd.Passed {
		is, not := before(rd, aside.Start), r.otherNumber(rd, aside.Words)
		if is == nil || not == nil || is.Dim != parser.DimLength || strings.Contains(aside.Words, "\n") {
			continue
		}
		rest := rd.Text[is.End:aside.Start] + rd.Text[aside.End:]
		words := not.Words(aside.Words)
		if not.Unit == nil {
			words += " " + strings.TrimLeft(is.Words(rd.Text), "0123456789., ")
		}
		one, other := senses.Stretch(rd.Text, 0, len(rd.Text)), senses.Stretch(rd.Text, 0, len(rd.Text))
		one.Value = rd.Text[:is.End] + rest
		other.Value = rd.Text[:is.Start] + words + rest
		if wholePiece(r.Read(one.Value)) && wholePiece(r.Read(other.Value)) {
			return []parser.Said[string]{one, other}
		}
	}
	return nil
}

// before is the number right before a place in the text, with at most what it measures
// between them: "3 ft long instead of 4 ft". It is nil for none.
func before(rd *reading.Reading, at int) *reading.Figure {
	for i := len(rd.Elems) - 1; i >= 0; i-- {
		e := rd.Elems[i]
		switch {
		case e.End > at:
		case e.Fig != nil:
			return e.Fig
		case len(rd.TermAt(i).Roles) == 0:
			return nil
		}
	}
	return nil
}

// otherNumber is the number in the words of what was put aside, "instead of 4", nil for
// none.
func (r *Reader) otherNumber(rd *reading.Reading, words string) (out *reading.Figure) {
	part := r.part(words, rd.In)
	if len(part.Elems) == 0 || !part.Elems[0].Marked(lexicon.MarkContrast) {
		return nil
	}
	for _, e := range part.Elems {
		switch {
		case e.Fig == nil:
		case out != nil:
			return nil
		default:
			out = e.Fig
		}
	}
	return out
}
