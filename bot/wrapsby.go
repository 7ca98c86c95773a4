package bot

import (
	"math"
	"strings"

	"heft/parser"
)

// fewestWraps and mostWraps are what wraps that are told by how many more they are may come
// to.
const (
	fewestWraps = 0.5
	mostWraps   = 12
)

// wrapsBy answers "and with one more wrap" with so many more than those that the talk stands
// at, told or said by the last answer, and says so; where there are none it is asked how
// many those are.
func (d *Desk) wrapsBy(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	if q.WrapsBy == 0 || ev.lent {
		return answer{}, Turn{}, false
	}
	wraps := before.wraps + q.WrapsBy
	if before.wraps == 0 || wraps < fewestWraps || wraps > mostWraps {
		a := answer{question: q, tree: before.tree, voice: voiceFor(ev, q)}
		d.askBack(&a, &parser.Ask{Kind: parser.Missing, Fields: []parser.Field{parser.Wraps}})
		return a, before, true
	}
	phrase := strings.Replace(speaker{language: q.Language}.word(asTyped[parser.Wraps]), "3", trimmed(wraps, 1), 1)
	ev.lent, ev.Text = true, phrase
	out, turn := d.consider(ev, before)
	out.lines = append(out.lines, out.voice.say("Read %s as “%s”.", quote(text), phrase))
	return out, turn, true
}

// wrapsMayBe says whether a bare number may be the wraps instead of those that the talk stands
// at: "fine, 4 then" behind 3½ to start with. "At 4" is a place, and 2.2 are no wraps: nobody
// counts less than a quarter of one.
func (t Turn) wrapsMayBe(x parser.Quantity, q parser.Question) bool {
	const most, least = 2, 0.25 // wraps more or fewer
	return t.wraps > 0 && math.Mod(x.Low, least) == 0 && t.question.Intent == parser.AskLower && !q.BareAt && q.Points == "" && math.Abs(x.Low-t.wraps) <= most
}

// wrapsStoodAt are the wraps that a talk stands at behind an answer: those told, or those to
// start with; 0 for none.
func (a *answer) wrapsStoodAt() float64 {
	switch {
	case a.question.Has(parser.Wraps):
		return a.question.Count(parser.Wraps)
	case a.result == nil || a.result.Lowering == nil:
		return 0
	}
	return float64(a.result.Lowering.Start)
}
