package bot

import (
	"slices"

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
			return s.say("%s %s break", k.name, number)
		case k.marked:
			return s.say("%s %s WLL", k.name, number)
		}
	}
	return number
}

// askStrength asks whether a number beside gear is what it breaks at or its
// working load: the one is many times the other.
func (a *answer) askStrength(ask *parser.Ask) {
	bare := trimQuote(ask.Words)
	a.lines = []string{a.voice.say("%s: is that the %s's break strength or its working load? Type one:", quote(ask.Words), partNames[partOf(ask.Fields[0])])}
	for _, f := range ask.Fields {
		a.choose(a.voice.strengthOf(f, bare))
	}
}

// choose adds a choice to an ask-back.
func (a *answer) choose(typed string) {
	a.choices = append(a.choices, typed)
	a.lines = append(a.lines, a.voice.say("%s. %s", trimmed(float64(len(a.choices)), 0), typed))
}

// askTonOfGear asks which ton the strength of gear was told in.
func (a *answer) askTonOfGear(ask *parser.Ask) {
	a.lines = []string{a.voice.say("Which ton is %s? And is it what the %s breaks at, or its working load? Type one:",
		quote(ask.Words), partNames[partOf(ask.Fields[0])])}
	if len(ask.Fields) == 1 {
		a.lines = []string{a.voice.say("Which ton is %s? Type it in pounds or kilograms:", quote(ask.Words))}
	}
	for _, f := range ask.Fields {
		for _, c := range ask.Choices {
			a.choose(a.voice.strengthOf(f, typedMass(c)))
		}
	}
}

// answersGear says whether a message tells the strength that was asked about.
func (t Turn) answersGear(q parser.Question) bool {
	return t.pending != nil && gearAsk(t.pending) && slices.ContainsFunc(t.pending.Fields, func(f parser.Field) bool { return q.Has(f) })
}

// gearAsk says whether an ask is about the strength of gear: the rest of the
// question waits for it.
func gearAsk(ask *parser.Ask) bool { return len(ask.Fields) > 0 && partOf(ask.Fields[0]) != "" }
