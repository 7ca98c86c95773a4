package bot

import (
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
	a.lines = []string{capital(a.piece()) + ": plan on " + a.voice.heavy(res.Weight.High)}
	told := false
	if point := res.Weight.Balance; point > 0 {
		o.Point, told = float64(point), true
		a.tellBalance(point, q.Length(parser.Length).High)
	}
	if q.Has(parser.Sideways) {
		told = true
		if err := a.tellTag(o); err != nil {
			return err
		}
	}
	if !told {
		return &limits.Missing{Quantity: limits.Length}
	}
	a.lines[0] += "."
	a.tellWeight()
	return nil
}

// balanceObject is balance as scripts read it.
type balanceObject struct {
	Point float64 `json:"point_m,omitempty"`
	Tag   float64 `json:"tag_line_n,omitempty"`
}

func (a *answer) tellBalance(point, length unit.Length) {
	v := a.voice
	a.lines[0] += ", balances about " + v.alongDown(point) + " from the cut"
	a.lines = append(a.lines, "Half its length, "+v.alongDown(length/2)+", is as far out as it can be: brush and a fork move it.")
	ways := unit.Range[unit.Length]{Low: point, High: length / 2}
	for _, hang := range []struct {
		as   balance.Hang
		line string
	}{{balance.ButtHeavy, "Butt down: tie beyond "}, {balance.TipHeavy, "Tip down: tie nearer than "}} {
		ties, err := balance.Ties(ways, length, hang.as)
		if err != nil {
			continue // this piece leaves no such point
		}
		at := v.alongUp(ties.Low)
		if hang.as == balance.TipHeavy {
			at = v.alongDown(ties.High)
		}
		a.lines = append(a.lines, hang.line+at+" from the cut.")
	}
	a.cautions = append(a.cautions, "A side branch rolls it as it comes free: take it off first, or add a tag line. Lift a little and look before you cut through.")
}

// tellTag says what holds the piece aside on a level tag line.
func (a *answer) tellTag(o *balanceObject) error {
	q, v := a.question, a.voice
	aside := q.Length(parser.Sideways).High
	tag, err := balance.TagLine(a.result.Weight.High, q.Length(parser.LineOut).Low, aside, 0)
	if err != nil {
		return err
	}
	o.Tag = float64(tag.Pull)
	a.lines[0] += ", tag line " + v.pull(tag.Pull) + " to hold it " + v.along(unit.Exactly(aside)) + " aside"
	a.lines = append(a.lines, "The rope it hangs on then carries "+v.load(tag.Line)+". Assumed: a level tag line, the piece at rest.")
	return nil
}
