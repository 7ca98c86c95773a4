package bot

import (
	"slices"

	"heft/parser"
)

// byHaul is the choice that a message stands for which says no more than what block the
// rope to pull leaves, where that was asked: "end comes out the top one".
func (d *Desk) byHaul(text string, before Turn) (message string, stood Turn, ok bool) {
	if before.pending == nil || before.pending.Kind != parser.WhichParts || before.before == nil {
		return "", before, false
	}
	q, err := before.reread(d.reader, text)
	told := haulNote(q)
	if err != nil || told == "" || len(q.Quantities) > 0 || tellsPiece(q) || q.Asks {
		return "", before, false
	}
	for _, c := range before.choices {
		if is, _ := d.reader.Read(c.Label); haulNote(is) == told {
			return c.Message, *before.before, true
		}
	}
	return "", before, false
}

// haulNote is the note of a question that says what block the rope to pull leaves, "" for
// none.
func haulNote(q parser.Question) string {
	for _, n := range []string{parser.HaulUp, parser.HaulDown} {
		if slices.Contains(q.Notes, n) {
			return n
		}
	}
	return ""
}
