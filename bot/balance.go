package bot

import (
	"slices"

	"heft/calc/balance"
	"heft/calc/limits"
	"heft/calc/unit"
	"heft/parser"
)

// workBalance answers where a piece balances, and what a tag line pulls that
// holds it aside.
func (a *answer) workBalance() error {
	q := a.question
	res, err := a.weighed()
	if err != nil {
		return err
	}
	o := &balanceObject{}
	a.status, a.result = Answered, &res
	a.figures = func(all *object) { all.Balance = o }
	head := []string{a.voice.say("%s: plan on %s", capital(a.piece()), a.voice.heavy(res.Weight.High))}
	told := false
	if point := res.Weight.Balance; point > 0 {
		o.Point, told = float64(point), true
		head = append(head, a.tellBalance(point, q.Length(parser.Length).High))
	}
	if q.Has(parser.Sideways) {
		told = true
		tag, err := a.tellTag(o)
		if err != nil {
			return err
		}
		head = append(head, tag)
	}
	if !told {
		return &limits.Missing{Quantity: limits.Length}
	}
	a.lines = slices.Insert(a.lines, 0, clauses(head...))
	a.tellWeight()
	return nil
}

// balanceObject is balance as scripts read it.
type balanceObject struct {
	Point float64 `json:"point_m,omitempty"`
	Tag   float64 `json:"tag_line_n,omitempty"`
}

// tellBalance says where to tie, and returns where it balances.
func (a *answer) tellBalance(point, length unit.Length) string {
	v := a.voice
	a.lines = append(a.lines, v.say("Half its length, %s, is as far out as it can be: brush and a fork move it.", v.alongDown(length/2)))
	ways := unit.Range[unit.Length]{Low: point, High: length / 2}
	// Where there is an error, this piece leaves no such point.
	if ties, err := balance.Ties(ways, length, balance.ButtHeavy); err == nil {
		a.lines = append(a.lines, v.say("Butt down: tie beyond %s from the cut.", v.alongUp(ties.Low)))
	}
	if ties, err := balance.Ties(ways, length, balance.TipHeavy); err == nil {
		a.lines = append(a.lines, v.say("Tip down: tie nearer than %s from the cut.", v.alongDown(ties.High)))
	}
	a.cautions = append(a.cautions, v.word("A side branch rolls it as it comes free: take it off first, or add a tag line. Lift a little and look before you cut through."))
	return v.say("balances about %s from the cut", v.alongDown(point))
}

// tellTag says what the rope carries while a level tag line holds the piece
// aside, and returns what that line pulls.
func (a *answer) tellTag(o *balanceObject) (string, error) {
	q, v := a.question, a.voice
	aside := q.Length(parser.Sideways).High
	tag, err := balance.TagLine(a.result.Weight.High, q.Length(parser.LineOut).Low, aside, 0)
	if err != nil {
		return "", err
	}
	o.Tag = float64(tag.Pull)
	a.lines = append(a.lines, v.say("The rope it hangs on then carries %s. Assumed: a level tag line, the piece at rest.", v.load(tag.Line)))
	return v.say("tag line %s to hold it %s aside", v.pull(tag.Pull), v.along(unit.Exactly(aside))), nil
}
