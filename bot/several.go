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
// on another, or where the message is to be stopped as a whole. What is asked
// of all of them, "how many loads", it returns by itself.
func (d *Desk) parts(text string) (parts []string, whole parser.Question) {
	split := strings.FieldsFunc(text, func(r rune) bool { return r == '\n' || r == ';' || r == '?' })
	if len(split) < 2 && !strings.Contains(text, ":") {
		return nil, whole
	}
	all, err := d.reader.Read(text)
	if len(split) < 2 || stops(err) || len(all.Pieces) > 0 {
		return piecesOf(all), parser.Question{Compares: all.Compares, TakesMost: all.TakesMost, InRow: all.InRow}
	}
	for _, s := range split {
		q, err := d.reader.Read(s)
		if q.Has(parser.Payload) {
			whole = q
		}
		switch {
		case strings.TrimSpace(s) == "", (q.Empty() || q.Intent == parser.AskTree && q.Pieceless()) && err == nil:
			// a greeting, "total?", or what is asked of all
		case !alone(q, err):
			return nil, whole
		default:
			parts = append(parts, strings.TrimSpace(s))
		}
	}
	if len(parts) > mostPartsRead {
		return nil, whole
	}
	return parts, whole
}

// piecesOf are the messages of a list of pieces.
func piecesOf(q parser.Question) (parts []string) {
	for _, p := range q.Pieces {
		parts = append(parts, p.Value)
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
type several struct {
	answers []answer
	whole   parser.Question // what is asked of all of them
}

func (d *Desk) several(ev Event, before Turn, parts []string) (several, Turn) {
	var all several
	var turn Turn
	whole, _ := d.reader.Read(ev.Text) // its language is that of the parts that tell none
	language := cmp.Or(whole.Language, before.language)
	for _, text := range parts {
		one := ev
		one.Text = text
		a, t := d.consider(one, Turn{language: language})
		before.tree = Turn{tree: before.tree}.counting(a)
		turn, turn.language, turn.tree = t, language, before.tree
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
	}
	sum, heaviest = added(s.picked())
	return sum, heaviest, true
}

// treeObject is a list of pieces as scripts read it: the heavy ends.
type treeObject struct {
	Total    float64 `json:"total_kg"`
	Heaviest float64 `json:"heaviest_kg"`
	Pieces   int     `json:"pieces"`
	Loads    int     `json:"loads,omitempty"` // of a truck's payload
}

// reply answers all parts in one message: the sum first, then a line or two
// each.
func (s several) reply() Reply {
	voice := s.answers[0].voice
	r := Reply{status: s.status(), voice: voice}
	sum, heaviest, ok := s.total()
	ok = ok && !s.whole.InRow
	head := voice.say("%s questions, not all answered.", count(len(s.answers)))
	if s.whole.InRow && s.status() == Answered {
		head = voice.say("%s asked at once, each by itself:", count(len(s.answers)))
	}
	trips, err := tripsOf(s.picked(), s.whole)
	if s.whole.Compares && ok && len(s.answers) == 2 {
		head = s.heavier()
	} else if ok {
		head = voice.treeHead(len(s.picked()), sum, heaviest, trips, s.whole)
	}
	r.lines = []string{head}
	if err != nil && ok {
		r.lines = append(r.lines, voice.tripsProblem(err, trips))
	}
	r.lines = append(r.lines, s.parts()...)
	if s.whole.TakesMost && ok {
		r.lines = append(r.lines, voice.word("The heaviest takes the most wraps."))
	}
	r.lines = append(r.lines, voice.word("Ask for one by itself for its loads and what was assumed."))
	o := s.answers[0].object()
	if err != nil && ok {
		o.Problems = append(o.Problems, voice.tripsProblem(err, trips))
	}
	for _, a := range s.answers[1:] {
		o.Also = append(o.Also, a.object())
	}
	if ok {
		o.Tree = &treeObject{float64(sum.High), float64(heaviest), len(s.picked()), trips.Loads}
	}
	r.figures, r.marks = encode(o), o.marks()
	return r
}

// parts are the first line of each part and its problems, then what is in doubt of any.
func (s several) parts() (lines []string) {
	for i, a := range s.answers {
		lines = append(lines, numbered(i, a.lines[0]))
		for _, p := range a.problems {
			if p != a.lines[0] {
				lines = append(lines, p)
			}
		}
	}
	for _, a := range s.answers {
		for _, doubt := range a.inDoubt() {
			if !slices.Contains(lines, doubt) {
				lines = append(lines, doubt)
			}
		}
	}
	return lines
}

// heavier says which of two pieces weighs more, by what each is planned on. How much
// more is left open where sizes by eye are off by more.
func (s several) heavier() string {
	const first, second = 0, 1
	v := s.answers[first].voice
	a, b := s.answers[first].result.Weight.High, s.answers[second].result.Weight.High
	which := first
	if b > a {
		a, b, which = b, a, second
	}
	if a <= hardly*b {
		return v.say("2 pieces, about the same: plan on %s and %s. Sizes by eye are off by more.", v.heavy(a), v.heavy(b))
	}
	return v.say("2 pieces, number %s the heavier: plan on %s, %s for the other.", count(which+1), v.heavy(a), v.heavy(b))
}

// picked are the pieces of the answers that have a weight, each as often as it
// was told.
func (s several) picked() []picked {
	var out []picked
	for _, a := range s.answers {
		if a.result != nil {
			out = append(out, slices.Repeat([]picked{{weight: a.result.Weight}}, a.many())...)
		}
	}
	return out
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
