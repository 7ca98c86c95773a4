package bot

import (
	"slices"
	"strconv"
	"strings"

	"heft/calc/gear"
	"heft/parser"
)

// partOf is the piece of gear that a strength belongs to; "" where the field
// is no strength.
func partOf(f parser.Field) gear.Part {
	for _, k := range kit {
		if f == k.breaks || f == k.marked {
			return k.part
		}
	}
	return ""
}

// strengthOf is how to type a strength, so that it can only be one thing.
func (s speaker) strengthOf(f parser.Field, number string) string {
	for _, k := range kit {
		switch f {
		case k.breaks:
			return s.say("%s %s break", s.word(partNames[k.part]), number)
		case k.marked:
			return s.say("%s %s WLL", s.word(partNames[k.part]), number)
		}
	}
	return number
}

// askStrength asks whether a number beside gear is what it breaks at or its
// working load: the one is many times the other.
func (a *answer) askStrength(ask *parser.Ask) {
	v, bare := a.voice, inFigures(ask)
	for _, c := range ask.Choices {
		bare = c.Words // with the unit that it was lent
	}
	a.lines = []string{v.say("%s: is that the %s's break strength or its working load? Type one:", quote(ask.Words), a.gearCalled(ask.Fields[0]))}
	for _, f := range ask.Fields {
		if a.choose(f, bare); ask.OfTalk {
			last := &a.choices[len(a.choices)-1]
			last.Message = v.strengthOf(f, bare)
		}
	}
	if a.question.Intent == parser.AskLift && slices.Contains(ask.Fields, parser.DrumWorking) {
		a.choosePull(bare)
	}
}

// choosePull adds that a drum pulls so much: what crews lift with may be a winch.
func (a *answer) choosePull(number string) {
	label := a.voice.say("a winch of %s", number)
	a.lines = append(a.lines, numbered(len(a.choices), label))
	a.choices = append(a.choices, Choice{label, a.voice.say("winch of %s,", number)})
}

// gearCalled is what the crew called the gear that a strength is of.
func (a *answer) gearCalled(f parser.Field) string {
	return a.partName(partOf(f))
}

// choose adds a strength to the choices of an ask-back. What it stands for is
// said in the place of the number, beside its gear.
func (a *answer) choose(f parser.Field, number string) {
	v := a.voice
	label, message := v.say("%s %s WLL", a.gearCalled(f), number), v.say("%s WLL", number)
	for _, k := range kit {
		if f == k.breaks {
			label, message = v.say("%s %s break", a.gearCalled(f), number), v.say("%s break", number)
		}
	}
	a.lines = append(a.lines, numbered(len(a.choices), label))
	a.choices = append(a.choices, Choice{label, message})
}

// askTonOfGear asks which ton the strength of gear was told in.
func (a *answer) askTonOfGear(ask *parser.Ask) {
	v := a.voice
	if len(ask.Fields) == 1 {
		a.askTon(ask)
		return
	}
	a.lines = []string{v.say("Which ton is %s? And is it what the %s breaks at, or its working load? Type one:",
		quote(ask.Words), a.gearCalled(ask.Fields[0]))}
	for _, f := range ask.Fields {
		for _, c := range ask.Choices {
			a.choose(f, typedMass(c))
		}
	}
}

// mostKilonewtons is more than any gear of a crew breaks at: past it a bare
// number is kilograms.
const mostKilonewtons = 500

// mostStamped is more than any strength that is told in kilonewtons or tonnes: a bare
// number past it is pounds or kilograms.
const mostStamped = 100

// stamped are the units that a small number on gear may have: "sling's a 22".
func (a *answer) stamped(bare string) []Choice {
	v, err := strconv.ParseFloat(strings.ReplaceAll(bare, ",", ""), 64)
	if err != nil || v >= mostStamped {
		return nil
	}
	out := []Choice{plain(bare + " kN"), plain(bare + " t")}
	if !a.voice.metric {
		out = append(out, plain(trimmed(v*1000, 0)+" lb"))
	}
	return out
}

// heavyUnit is the unit that a bare strength most likely has, in the system
// that is being spoken.
func (s speaker) heavyUnit(number string) string {
	v, err := strconv.ParseFloat(strings.ReplaceAll(number, ",", ""), 64)
	switch {
	case err == nil && v < mostStamped:
		return " kN"
	case !s.metric:
		return " lb"
	case err == nil && v <= mostKilonewtons:
		return " kN"
	}
	return " kg"
}

// answersGear says whether a message tells the strength that was asked about.
func (t Turn) answersGear(q parser.Question) bool {
	return t.pending != nil && gearAsk(t.pending) && slices.ContainsFunc(t.pending.Fields, func(f parser.Field) bool { return q.Has(f) })
}

// gearAsk says whether an ask is about the strength of gear: the rest of the
// question waits for it.
func gearAsk(ask *parser.Ask) bool { return len(ask.Fields) > 0 && partOf(ask.Fields[0]) != "" }

// holdsGear says whether a message tells only how strong gear is, of a talk with a piece:
// "block is 4,500 lb WLL", behind a lift. It is held against that load, and asks no more.
func (t Turn) holdsGear(q parser.Question, ask *parser.Ask) bool {
	tells := ask == nil && q.Intent == parser.AskGear && !q.Asks && q.Has(parser.Ratings...) && q.Pieceless()
	return t.known && tells && ofAPiece[t.question.Intent] && len(t.question.MissingPiece()) == 0
}

// completesGear says whether a message tells only how strong gear is where a question about
// a piece waits for an answer: "half inch double braid, 10k break", where it was asked how
// far the log falls. It goes with that question and begins none of the gear alone.
func (t Turn) completesGear(q parser.Question, ask *parser.Ask) bool {
	tells := ask == nil && q.Intent == parser.AskGear && !q.Asks && q.Has(parser.Ratings...) && q.Pieceless()
	waits := t.pending != nil && (t.pending.Kind == parser.Missing || t.pending.Kind == parser.WhichTree || t.pending.Kind == parser.WhichStrength)
	loaded := ofAPiece[t.question.Intent] || t.question.Intent == parser.AskGear
	return t.known && tells && waits && loaded && (!t.question.Pieceless() || t.question.Intent == parser.AskDrop)
}

// ofAPiece are the questions whose load gear that is told later can be held against.
var ofAPiece = map[parser.Intent]bool{
	parser.AskWeight: true, parser.AskLower: true, parser.AskLift: true, parser.AskRaise: true,
	parser.AskSwing: true, parser.AskDrop: true, parser.AskBlockLoad: true,
}
