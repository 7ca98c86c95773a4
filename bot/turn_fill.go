package bot

import (
	"slices"
	"strings"

	"heft/parser"
)

// filled reads a bare mass or force, "300 lb", as the one quantity that was
// asked about: without its word it would be taken for the weight of a piece. A ton of gear
// is asked about once more where it was not said which of its two strengths it is.
func (t Turn) filled(r crewReader, text string, q parser.Question, err error) (parser.Question, error, bool) {
	if err != nil || t.pending == nil || t.pending.Kind != parser.Missing && t.pending.Kind != parser.NoUnit && t.pending.Kind != parser.WhichTon {
		return q, err, false
	}
	bare := len(q.Quantities) == 1 && q.Has(parser.Weight) && q.Species == nil && q.Shape == nil && !q.FollowUp
	if x, _ := q.Get(parser.Weight); !bare || len(x.Words) != len(text) {
		return q, err, false
	}
	var wanted []parser.Field
	for _, f := range t.pending.Fields {
		if f == parser.Weight {
			return q, err, false
		}
		if f == parser.Limit || f == parser.Payload || partOf(f) != "" {
			wanted = append(wanted, f)
		}
	}
	switch ton := t.pending.Kind == parser.WhichTon; {
	case ton && len(wanted) == 2 && partOf(wanted[0]) == partOf(wanted[1]):
		words := worded(wanted[0], text)
		full, err := r.Read(words[:strings.LastIndex(words, " ")]) // without what kind of strength it is
		return full, err, err != nil
	case len(wanted) != 1:
		return q, err, false
	}
	full, err := r.Read(worded(wanted[0], text))
	return full, err, err == nil && full.Has(wanted[0])
}

// fillsInDoubt says whether a message with words in doubt tells nothing for sure but sizes that
// the talk still lacks: "24 att the bottom". It is no other piece, whatever the words are.
func (t Turn) fillsInDoubt(q parser.Question, ask *parser.Ask) bool {
	if !t.known || ask == nil || !ofWords(ask) || q.Species != nil || q.Asks || len(q.Quantities) == 0 {
		return false
	}
	lacks := t.question.Missing()
	across := slices.ContainsFunc(acrossFields, func(f parser.Field) bool { return slices.Contains(lacks, f) })
	other := func(x parser.Quantity) bool {
		return !slices.Contains(lacks, x.Field) && !(across && slices.Contains(acrossFields, x.Field))
	}
	return !slices.ContainsFunc(q.Quantities, other)
}

// ofPlansLimit reads a mass that a talk about a cut plan is told, and nothing besides, as the
// limit of the plan: "600 lbs", "what if 800 lb", "mejor 300 kg". A plan has no other.
func (t Turn) ofPlansLimit(r crewReader, text string, q parser.Question, err error) (parser.Question, error, bool) {
	x, told := q.Get(parser.Weight)
	alone := err == nil && len(q.Quantities) == 1 && told && q.Species == nil && q.Shape == nil && !q.Asks && x.End <= len(text)
	if !t.known || t.question.Intent != parser.AskCutPlan || !alone || q.Intent != parser.AskWeight {
		return q, err, false
	}
	full, err := r.ReadAfter(text[:x.Start]+worded(parser.Limit, text[x.Start:x.End])+text[x.End:], t.question)
	if err != nil || !full.Has(parser.Limit) || len(full.Quantities) != 1 {
		return q, nil, false
	}
	return full, nil, true
}

// onlyPayload says whether a message tells the payload that was asked about with the first
// piece of a talk: the piece waits for it, and none is counted yet.
func (t Turn) onlyPayload(q parser.Question) bool {
	return t.wants(parser.Payload) && q.Has(parser.Payload) && !t.question.Pieceless() && len(t.tree.pieces) == 0
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

// toldOtherwise says whether a quantity of before is told anew by another name: how far the
// rope turns at the one redirect by the angle between its legs there, or that by the turn.
func toldOtherwise(x parser.Quantity, before, now parser.Question) bool {
	redirect := slices.IndexFunc(before.Notes, parser.Redirecting)
	if redirect < 0 || before.Has(parser.Turn) == before.Has(parser.BlockAngle) {
		return false
	}
	turns := 0
	for _, y := range slices.Concat(before.Quantities, now.Quantities) {
		if y.Field == parser.Turn {
			turns++
			if y.At != "" && y.At != before.Notes[redirect] {
				return false
			}
		}
	}
	legs := x.Field == parser.Turn && now.Has(parser.BlockAngle) && !now.Has(parser.Turn)
	turn := x.Field == parser.BlockAngle && now.Has(parser.Turn) && !now.Has(parser.BlockAngle)
	return turns == 1 && (legs || turn) && !slices.Contains(now.Notes, parser.TopBlock)
}

// withoutCrotch are the notes of before, without the natural crotch that a block takes the
// place of: "and over a block".
func withoutCrotch(notes []string, now parser.Question) []string {
	if !slices.Contains(now.Notes, overBlock) || slices.Contains(now.Notes, naturalCrotch) {
		return notes
	}
	return slices.DeleteFunc(slices.Clone(notes), func(n string) bool { return n == naturalCrotch })
}

// withoutItsHitch are the notes of before, without that of what a sling's figure was told
// for where the sling is told anew.
func withoutItsHitch(notes []string, now parser.Question) []string {
	if !now.Has(parser.SlingWorking, parser.SlingBreak) {
		return notes
	}
	return slices.DeleteFunc(slices.Clone(notes), func(n string) bool { return n == parser.NoteRatedBasket })
}

// overBlock is the note of the word file for a rope that runs over a block instead of wood.
const overBlock = parser.NoteOverBlock
