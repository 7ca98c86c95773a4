package bot

import (
	"slices"
	"strings"

	"heft/parser"
)

// A bare length is what was asked for, or may be.

// bareLength is an ask about a length of a follow-up that has no word for what it is, and
// could be others than what the reader takes it for: "10 ft?", of a piece that hangs 5 ft
// aside, "80 ft", of one that is 10 ft long, and "5 ft" where the fall was asked for, unless
// it is said to be another. Nil where it could not.
func (d *Desk) bareLength(q parser.Question, ev Event, before Turn, text string, another bool) *parser.Ask {
	if !q.Bare || !before.known || ev.lent || len(q.Quantities) != 1 || q.Quantities[0].End > len(text) {
		return nil
	}
	x := q.Quantities[0]
	if !typedNumber.MatchString(x.Words) {
		return nil // told by words alone, "drum on the same tree"
	}
	if !strings.HasSuffix(string(x.Field), "_m") || slices.Contains(acrossFields, x.Field) || before.wants(x.Field) && !bareNumber(before.pending) && len(before.lengthsWanted(x.Field)) == 0 {
		return nil
	}
	had, told := before.question.Get(x.Field)
	if told && near(had, x) && (another || len(before.lengthsWanted(x.Field)) == 0) {
		return nil
	}
	fields := append([]parser.Field{x.Field}, before.lengthsWanted(x.Field)...)
	ask := &parser.Ask{Kind: parser.Loose, Fields: fields, Words: text[x.Start:x.End], Start: x.Start, End: x.End}
	phrases := d.phrasesOf(q, ask, ev, before)
	if len(phrases) == 0 && !told {
		return nil
	}
	return ask
}

// lengthsWanted are the lengths that were asked for, other than that of a field and than
// how thick the piece is.
func (t Turn) lengthsWanted(but parser.Field) (out []parser.Field) {
	for _, f := range t.fieldsWanted() {
		if f != but && strings.HasSuffix(string(f), "_m") && !slices.Contains(acrossFields, f) {
			out = append(out, f)
		}
	}
	return out
}

// fieldsWanted are the facts that were asked for: beside which of several trees it is, those
// that were missing as well. How far the block is below the cut tells a fall.
func (t Turn) fieldsWanted() (fields []parser.Field) {
	switch p := t.pending; {
	case p == nil:
		return nil
	case p.Kind == parser.WhichAngle:
		return []parser.Field{parser.BlockAngle, parser.Turn}
	case p.Kind == parser.WhichTree:
		fields = t.question.Missing()
	case p.Kind == parser.Missing:
		fields = p.Fields
	}
	if slices.Contains(fields, parser.DropHeight) && t.question.FallByBlock() {
		fields = append(slices.Clip(fields), parser.BlockBelow)
	}
	return fields
}
