package bot

import (
	"heft/parser"
)

// filled reads a bare mass or force, "300 lb", as the one quantity that was
// asked about: without its word it would be taken for the weight of a piece.
func (t Turn) filled(r crewReader, text string, q parser.Question, err error) (parser.Question, bool) {
	if err != nil || t.pending == nil || t.pending.Kind != parser.Missing && t.pending.Kind != parser.NoUnit {
		return q, false
	}
	bare := len(q.Quantities) == 1 && q.Has(parser.Weight) && q.Species == nil && q.Shape == nil && !q.FollowUp
	if x, _ := q.Get(parser.Weight); !bare || len(x.Words) != len(text) {
		return q, false
	}
	var wanted []parser.Field
	for _, f := range t.pending.Fields {
		if f == parser.Weight {
			return q, false
		}
		if f == parser.Limit || f == parser.Payload || partOf(f) != "" {
			wanted = append(wanted, f)
		}
	}
	if len(wanted) != 1 {
		return q, false
	}
	full, err := r.Read(worded(wanted[0], text))
	return full, err == nil && full.Has(wanted[0])
}

// worded is a number with the word that makes it the quantity of a field.
func worded(f parser.Field, number string) string {
	switch f {
	case parser.Limit:
		return "limit " + number
	case parser.Payload:
		return "payload " + number
	case parser.Weight:
		return number
	}
	return speaker{}.strengthOf(f, number)
}
