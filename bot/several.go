package bot

import (
	"cmp"
	"errors"
	"slices"
	"strings"

	"heft/calc"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// mostPartsRead is how many pieces of one message are answered.
const mostPartsRead = 12

// parts divides a message into questions that stand alone: one a line, or
// parted by semicolons or question marks. It returns none where a part leans
// on another, or where the message is to be stopped as a whole.
func (d *Desk) parts(text string) []string {
	split := strings.FieldsFunc(text, func(r rune) bool { return r == '\n' || r == ';' || r == '?' })
	if len(split) < 2 {
		return nil
	}
	if _, err := d.reader.Read(text); stops(err) {
		return nil
	}
	var parts []string
	for _, s := range split {
		q, err := d.reader.Read(s)
		switch {
		case strings.TrimSpace(s) == "", q.Empty() && err == nil:
			// a greeting, or "total?"
		case !alone(q, err):
			return nil
		default:
			parts = append(parts, strings.TrimSpace(s))
		}
	}
	if len(parts) > mostPartsRead {
		return nil
	}
	return parts
}

// stops says whether the words end all arithmetic.
func stops(err error) bool {
	ask, ok := errors.AsType[*parser.Ask](err)
	return ok && ask.Final()
}

// alone says whether a part is a question about a piece of its own.
func alone(q parser.Question, err error) bool {
	ask, _ := errors.AsType[*parser.Ask](err)
	named := q.Species != nil || ask != nil && ask.Kind == parser.WhichTree
	return q.Has(parser.Weight) || named && q.Has(append(acrossFields, parser.Length)...)
}

// several are the answers to one message.
type several struct{ answers []answer }

func (d *Desk) several(ev Event, before Turn, parts []string) (several, Turn) {
	var all several
	var turn Turn
	whole, _ := d.reader.Read(ev.Text) // its language is that of the parts that tell none
	language := cmp.Or(whole.Language, before.language)
	for _, text := range parts {
		one := ev
		one.Text = text
		a, t := d.consider(one, Turn{language: language})
		turn, turn.language = t, language
		all.answers = append(all.answers, a)
	}
	return all, turn
}

// status is the worst of the parts.
func (s several) status() Status {
	worst := Answered
	for _, a := range s.answers {
		switch {
		case a.status == Refused:
			return Refused
		case a.status == Needs:
			worst = Needs
		}
	}
	return worst
}

// total adds up the weights, where every part has one.
func (s several) total() (sum piece.Weight, heaviest unit.Mass, ok bool) {
	for _, a := range s.answers {
		if a.result == nil || a.result.Weight.High <= 0 {
			return sum, 0, false
		}
		w := a.result.Weight
		sum.Low += w.Low
		sum.Likely += w.Likely
		sum.High += w.High
		heaviest = max(heaviest, w.High)
	}
	return sum, heaviest, true
}

// treeObject is a list of pieces as scripts read it: the heavy ends.
type treeObject struct {
	Total    float64 `json:"total_kg"`
	Heaviest float64 `json:"heaviest_kg"`
	Pieces   int     `json:"pieces"`
}

// reply answers all parts in one message: the sum first, then a line or two
// each.
func (s several) reply() Reply {
	voice := s.answers[0].voice
	r := Reply{status: s.status(), voice: voice}
	sum, heaviest, ok := s.total()
	head := voice.say("%s questions, not all answered.", count(len(s.answers)))
	if ok {
		head = voice.say("%s pieces: %s in all, heaviest pick %s.", count(len(s.answers)), voice.heavy(sum.High), voice.heavy(heaviest))
	}
	r.lines = []string{head}
	for i, a := range s.answers {
		r.lines = append(r.lines, numbered(i, a.lines[0]))
		for _, p := range a.problems {
			if p != a.lines[0] {
				r.lines = append(r.lines, p)
			}
		}
	}
	for _, a := range s.answers {
		for _, doubt := range a.inDoubt() {
			if !slices.Contains(r.lines, doubt) {
				r.lines = append(r.lines, doubt)
			}
		}
	}
	r.lines = append(r.lines, voice.word("Ask for one by itself for its loads and what was assumed."))
	o := s.answers[0].object()
	for _, a := range s.answers[1:] {
		o.Also = append(o.Also, a.object())
	}
	if ok {
		o.Tree = &treeObject{float64(sum.High), float64(heaviest), len(s.answers)}
	}
	r.figures = encode(o)
	return r
}

// summary is what the journal keeps of the message as a whole.
func (s several) summary() answer {
	a := s.answers[0]
	a.question.Intent = parser.AskTree
	if _, heaviest, ok := s.total(); ok {
		a.result = &calc.Result{Weight: piece.Weight{High: heaviest}}
	}
	return a
}
