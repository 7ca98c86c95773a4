package bot

import (
	"math"
	"slices"

	"heft/calc"
	"heft/calc/piece"
	"heft/calc/rope"
	"heft/calc/unit"
	"heft/parser"
)

// explain puts the working, or what was taken for granted, in the place of an
// answer's advice.
func (a *answer) explain(what string) {
	if what == "" || a.status != Answered {
		return
	}
	head, rest := a.lines[:1:1], a.lines[1:]
	if lowers[a.question.Intent] || a.question.Intent == parser.AskWeight {
		rest = nil // the advice; its figures come again with the working
	}
	switch weighed := a.result != nil && a.result.Weight.High > 0; {
	case len(a.shown) > 0 && !weighed:
		a.lines = slices.Concat(head, a.shown, a.lines[1:], a.calculator())
	case what == parser.ExplainBrush && weighed:
		a.lines = append(head, a.brush()...)
	case what == parser.ExplainAssumed && weighed:
		a.lines = []string{a.voice.say("Taken for granted, besides %s:", a.piece())}
		a.tellAssumed()
		if a.result.Rope > 0 {
			a.lines = append(a.lines, a.tail())
		}
		a.lines = append(a.lines, rest...)
	case weighed:
		a.lines = slices.Concat(head, a.working(), a.shown, rest, a.calculator())
		if rest == nil {
			a.tellPassed() // its line went with the advice
		}
	}
}

// ofLast takes "does that include the leaves" in a talk for a question about its last
// answer; elsewhere it is one about all.
func (t Turn) ofLast(q parser.Question) parser.Question {
	if t.known && q.Intent == parser.AskHelp && q.Topic == parser.TopicLeaves {
		q.Intent, q.Topic, q.Explain = parser.AskWeight, "", parser.ExplainBrush
	}
	return q
}

// brush says whether branches, leaves and bark are in a weight.
func (a *answer) brush() []string {
	if a.result.Weight.Method == piece.ByCrew {
		return []string{a.voice.word("It is your weight, taken as you said it: whatever you counted is in it.")}
	}
	return []string{a.leaves(), a.voice.word("Bark is in it.")}
}

// calculator says which calculator it was, and why its figures are not those
// of the answer to the last digit.
func (a *answer) calculator() []string {
	return []string{a.voice.say("Worked out to the last digit; answers are rounded to the safe side. Calculator %s.", calc.Version)}
}

// working shows how the figures follow from one another.
func (a *answer) working() []string {
	w, v := a.result.Weight, a.voice
	var out []string
	if w.Method != piece.ByCrew && w.Heavy > 0 {
		out = append(out,
			v.say("Wood with bark: %s, likely %s.", v.densities(w.Light, w.Heavy), v.density(w.Green)),
			v.say("Volume, %s: %s, likely %s.", v.word(methodWords[w.Method]), v.volumes(volume(w.Low, w.Light), volume(w.High, w.Heavy)), v.volume(volume(w.Likely, w.Green))),
			v.say("Density × volume: %s–%s, likely %s.", v.exact(w.Low), v.exact(w.High), v.exact(w.Likely)))
	}
	if l := a.result.Lowering; l != nil {
		at := float64(l.Start)
		held := rope.Hold(w.High.Weight(), rope.Slick, l.Start)
		out = append(out, v.say("Wraps: %s × e^(−2π × %s × %s) = %s at the hand; one person is planned for %s.",
			v.exact(w.High), trimmed(float64(rope.Slick), 2), trimmed(at, 1), v.exact(held.Held()), v.exact(handsOf(a.question).Each.Held())))
	}
	if a.result.Block > 0 {
		out = append(out, v.say("Top block: 2 × %s × cos(%s° ÷ 2) = %s.", v.exact(w.High), trimmed(between(a.question), 1), v.exact(a.result.Block.Held())))
	}
	if need := a.result.Rope; need > 0 {
		legs := float64(1 + max(1, int(a.question.Count(parser.Parts))))
		out = append(out, v.say("Rope: %s × %s + %s = %s.", trimmed(legs, 0),
			v.along(unit.Exactly(a.question.Length(parser.HitchHeight).High)), v.ropeNeeded(a.result.Laid.Tail()), v.ropeNeeded(need)))
	}
	return out
}

// exact says a mass to the pound or the kilogram, as it is worked with.
func (s speaker) exact(m unit.Mass) string {
	n, u := s.unitOfMass(m)
	return grouped(math.Round(n)) + u
}

func between(q parser.Question) float64 {
	x, _ := q.Get(parser.BlockAngle)
	return x.Low
}

func volume(m unit.Mass, d unit.Density) float64 { return float64(m) / float64(d) }

// methodWords name the rule that gave a volume.
var methodWords = map[piece.Method]string{
	piece.ByCylinder: "a cylinder on the diameter", piece.ByFrustum: "butt to tip",
	piece.ByNewton: "butt, middle and tip", piece.ByLimbForm: "a share of the cylinder on the butt, by weighed branches",
}

// density says a density, cubic feet or cubic metres.
func (s speaker) density(d unit.Density) string {
	if s.metric {
		return grouped(math.Round(float64(d)/10)*10) + " kg/m³"
	}
	return grouped(math.Round(float64(d/unit.PoundPerCubicFoot))) + " lb/ft³"
}

func (s speaker) densities(low, high unit.Density) string {
	if s.metric {
		return span(grouped(math.Floor(float64(low)/10)*10), grouped(math.Ceil(float64(high)/10)*10)) + " kg/m³"
	}
	return span(grouped(math.Floor(float64(low/unit.PoundPerCubicFoot))), grouped(math.Ceil(float64(high/unit.PoundPerCubicFoot)))) + " lb/ft³"
}

const cubicFoot = 0.3048 * 0.3048 * 0.3048

func (s speaker) volume(m3 float64) string { return s.volumes(m3, m3) }

func (s speaker) volumes(low, high float64) string {
	if s.metric {
		return span(trimmed(low, 2), trimmed(high, 2)) + " m³"
	}
	return span(trimmed(low/cubicFoot, 1), trimmed(high/cubicFoot, 1)) + " ft³"
}

// saysWhy takes a number out of a message that asks why the last answer is what it is: "Jim
// says 3 was plenty, why more" tells no length, nor does "why do two inches do that" a
// thickness. It is said to be passed over. What is said to be so, "why, its only 20", or is
// asked to be changed in so many words, is told.
func (t Turn) saysWhy(q parser.Question, ask *parser.Ask, text string) (parser.Question, *parser.Ask) {
	other := q.Asks && q.Intent != t.question.Intent && q.Intent != parser.AskWeight
	told := other || q.Stated && !t.saidBefore(ask) || q.PutsRight || len(q.NotSo) > 0 || q.BareAt || q.Species != nil || q.Shape != nil
	if !t.known || q.Explain == "" || told || t.pending != nil && t.pending.Kind == parser.Missing {
		return q, ask
	}
	pass := func(value, words string, start, end int) {
		q.Passed = append(slices.Clone(q.Passed), parser.Said[string]{Value: value, Words: words, Start: start, End: end})
	}
	switch {
	case bareNumber(ask) && len(q.Quantities) == 0 && ask.End <= len(text):
		pass(inFigures(ask), text[ask.Start:ask.End], ask.Start, ask.End)
		q.InDoubt = nil
		return q, nil
	case ask == nil && len(q.Quantities) > 0 && !slices.ContainsFunc(q.Quantities, func(x parser.Quantity) bool {
		return !isSize(x.Field) && x.Field != parser.People && x.Field != parser.Wraps
	}):
		for _, x := range q.Quantities {
			pass(exact(x), x.Words, x.Start, x.End)
		}
		q.Quantities = nil
	}
	return q, ask
}

// saidBefore says whether the number in doubt is one that the talk has told: "why so much on
// the block when its only 200" tells nothing new of a log of 200 lb.
func (t Turn) saidBefore(ask *parser.Ask) bool {
	return bareNumber(ask) && len(toldBy([]parser.Said[string]{{Value: ask.Words}}, t.question)) > 0
}
