package bot

import (
	"slices"
	"strings"

	"heft/calc/unit"
	"heft/parser"
)

// A number in doubt is tried as each thing that it may be: the message is read with the
// words that make it plain, and what it comes to stands beside the choice. Whoever asked
// has the answer at once, and one tap settles which it is. Nothing is taken for granted.

const (
	mostTried = 4 // readings that are shown
	deepTried = 2 // numbers of one message that are tried together
)

// triedFields are what a number with a unit and no place may be, besides what is missing.
var triedFields = []parser.Field{parser.Length, parser.HitchHeight, parser.ButtDiameter, parser.Diameter, parser.Weight, parser.Limit,
	parser.DropHeight, parser.LineOut, parser.Sideways, parser.RopeLength}

// triedFirst are what such a number may be where that is asked.
var triedFirst = map[parser.Intent][]parser.Field{
	parser.AskLift: {parser.Rise}, parser.AskDrop: {parser.DropHeight, parser.BlockBelow}, parser.AskSwing: {parser.Sideways, parser.ObstacleOut},
}

// choosing are the kinds of asks whose choices say all that a number may be.
var choosing = map[parser.Kind]bool{parser.NoUnit: true, parser.WhichStrength: true, parser.WhichTon: true, parser.WhichAngle: true, parser.Girth: true}

// reading is a number in the words that make it plain, and what it comes to.
type reading struct {
	label  string       // what is tapped, and stands in the place of the number then
	field  parser.Field // "" where the words only put a unit to it
	text   string
	likely bool   // it is shown even where more is to be asked then
	told   bool   // the message is read with the number as that
	comes  string // what the message comes to; "" where more is to be asked
}

// tryReadings puts what a message comes to behind each reading of a number in doubt.
func (d *Desk) tryReadings(a *answer, ev Event, before Turn, text string, ask *parser.Ask) {
	if ask.Start >= ask.End || ask.End > len(text) || ev.tried >= deepTried {
		return
	}
	ev.tried++
	var all []reading
	for _, r := range a.readings(text, ask) {
		if r = d.try(r, ev, before); r.comes != "" || r.likely || r.told {
			all = append(all, r)
		}
	}
	answered := slices.ContainsFunc(all, func(r reading) bool { return r.comes != "" })
	switch {
	case !answered && ev.tried > 1:
	case !answered:
		if d.tellWithout(a, ev, before, text, ask); ask.Kind == parser.Loose && len(a.choices) == 0 {
			a.offerReadings(ask, text, all)
		}
	case choosing[ask.Kind]:
		a.tellChoices(all)
	default:
		all = slices.DeleteFunc(all, func(r reading) bool { return r.comes == "" && !r.likely })
		a.tellReadings(ask, all[:min(len(all), mostTried)])
	}
}

// tellWithout offers to leave a number out that is of nothing told, with what the message
// comes to then: it may be talk of something else, "a 14 in tree" of an anchor. Only who
// typed it knows, and says so by a tap.
func (d *Desk) tellWithout(a *answer, ev Event, before Turn, text string, ask *parser.Ask) {
	if ask.Kind != parser.Loose || len(a.choices) > 0 || strings.Contains(ask.Words, ":") {
		return
	}
	ev.Text = strings.TrimSpace(text[:ask.Start] + " " + text[ask.End:])
	rest, _ := d.consider(ev, before)
	if rest.status != Answered || rest.comesToNothing() || methods[rest.question.Intent] == nil || rest.leaned {
		return
	}
	leave := a.voice.say("leave out “%s”", trimQuote(ask.Words))
	a.lines = append(a.lines, a.voice.say("%s: %s", numbered(0, leave), rest.lines[0]))
	a.choices = []Choice{{leave, ev.Text}}
}

// offerReadings offers what a number may be where more is to be asked whichever it is,
// and to leave it out.
func (a *answer) offerReadings(ask *parser.Ask, text string, all []reading) {
	all = slices.DeleteFunc(all, func(r reading) bool { return !r.told })
	if len(all) == 0 {
		return
	}
	besides, needs := a.lines[1:], a.needs
	a.tellReadings(ask, all[:min(len(all), mostTried-1)])
	leave := a.voice.say("leave out “%s”", trimQuote(ask.Words))
	a.lines = append(a.lines, numbered(len(a.choices), leave))
	a.choices = append(a.choices, Choice{leave, strings.TrimSpace(text[:ask.Start] + " " + text[ask.End:])})
	a.tried, a.needs = nil, needs
	a.lines = append(a.lines, besides...)
}

// try reads a message with a number made plain. Where that leaves another number in
// doubt that can be but one thing, both are made plain.
func (d *Desk) try(r reading, ev Event, before Turn) reading {
	ev.Text = r.text
	rest, _ := d.consider(ev, before)
	if rest.question.InRow {
		r.comes = d.inRow(ev, before, rest.question)
		return r
	}
	if parts := piecesOf(rest.question); len(parts) > 1 {
		r.comes = d.listed(ev, before, parts)
		return r
	}
	r.told = rest.tells(r.field, r.label)
	switch {
	case !r.told:
	case rest.status == Answered && !rest.comesToNothing():
		r.comes = rest.lines[0]
		if len(rest.counted) > 0 {
			r.comes = rest.comesTo()
		}
	case rest.whichWeighs() != "":
		r.comes = rest.whichWeighs()
	case len(rest.tried) == 1 && rest.tried[0].comes != "":
		inner := rest.tried[0]
		r.label, r.text, r.comes = r.label+", "+inner.label, inner.text, inner.comes
	}
	return r
}

// listed is what a list of pieces comes to in all; "" where any is in doubt.
func (d *Desk) listed(ev Event, before Turn, parts []string) string {
	all, _ := d.several(ev, before, parts)
	if slices.ContainsFunc(all.answers, func(a answer) bool { return a.status != Answered || a.result == nil }) {
		return ""
	}
	return all.reply().lines[0]
}

// inRow is what several loads come to that are asked about at once: the wraps that each
// is started with, or what the top block sees; "" where any is in doubt.
func (d *Desk) inRow(ev Event, before Turn, q parser.Question) string {
	all, _ := d.several(ev, before, piecesOf(q))
	var each []string
	for _, a := range all.answers {
		switch {
		case a.status != Answered || a.result == nil:
			return ""
		case a.question.Intent == parser.AskBlockLoad:
			each = append(each, a.voice.load(a.result.Block))
		case a.result.Lowering != nil:
			each = append(each, wraps(float64(a.result.Lowering.Start)))
		}
	}
	if len(each) != len(all.answers) {
		return ""
	}
	v := all.answers[0].voice
	if all.answers[0].question.Intent == parser.AskBlockLoad {
		return v.say("top block %s", v.and(each))
	}
	return v.say("start with %s wraps", v.and(each))
}

// tellChoices puts what a message comes to behind the choices that leave an answer.
func (a *answer) tellChoices(all []reading) {
	for i, c := range a.choices {
		for _, r := range all {
			if at := slices.Index(a.lines, numbered(i, c.Label)); r.label == c.Label && r.comes != "" && at >= 0 {
				a.lines[at] = a.voice.say("%s: %s", numbered(i, c.Label), r.comes)
			}
		}
	}
}

// tellReadings asks which reading it is, with what each comes to.
func (a *answer) tellReadings(ask *parser.Ask, all []reading) {
	a.tried = all
	head := a.voice.say("What is %s?", quote(ask.Words))
	if len(all) == 2 && all[0].field == "" {
		head = a.voice.say("%s or %s?", quote(all[0].label), quote(all[1].label))
	}
	a.lines, a.choices, a.needs = []string{head}, nil, nil
	for i, r := range all {
		line := numbered(i, r.label)
		if r.comes != "" {
			line = a.voice.say("%s: %s", line, r.comes)
		}
		a.lines = append(a.lines, line)
		a.choices = append(a.choices, Choice{r.label, r.text})
	}
}

// whichWeighs is the range of what to plan on where nothing but which of some trees it
// is is asked; "" where more is.
func (a *answer) whichWeighs() string {
	if a.asked == nil || a.asked.Kind != parser.WhichTree || a.question.Intent != parser.AskWeight {
		return ""
	}
	var least, most unit.Mass
	for _, c := range a.asked.Choices {
		w := planWith(a.question, c)
		if w == 0 {
			return ""
		}
		if least == 0 || w < least {
			least = w
		}
		most = max(most, w)
	}
	if least == 0 {
		return ""
	}
	return a.voice.say("which %s? Plan on %s to %s", trimQuote(strings.ToLower(a.asked.Words)), a.voice.heavy(least), a.voice.heavy(most))
}

// readings are what a number in question may be, in the words that make it plain.
func (a *answer) readings(text string, ask *parser.Ask) (out []reading) {
	if choosing[ask.Kind] {
		for _, c := range a.choices {
			out = append(out, reading{label: c.Label, text: c.Message})
		}
		return out
	}
	if two := a.twoTackles(text, ask); two != nil {
		return two
	}
	if ask.Kind != parser.Loose && (ask.Kind != parser.TwoReadings || len(ask.Fields) < 2) || len(a.choices) > 0 {
		return nil
	}
	fields := ask.Fields
	if ask.Kind == parser.Loose {
		fields = slices.Concat(triedFirst[a.question.Intent], a.needs, triedFields)
	}
	heavy := ask.Mass || weighty.MatchString(ask.Words)
	for _, f := range fields {
		if h := hint[f]; h == "" || heavy != isHeavy(f) || !possible(f, ask) || f == parser.Limit && !weighty.MatchString(ask.Words) || a.question.Has(f) && !slices.Contains(ask.Fields, f) {
			continue
		}
		words := strings.Trim(a.voice.say(hint[f], trimQuote(ask.Words)), "“”")
		if slices.ContainsFunc(out, func(r reading) bool { return r.label == words || isAcross(r.field) && isAcross(f) }) {
			continue
		}
		shown := strings.Contains(strings.Join(a.lines, "\n"), quote(words))
		out = append(out, reading{label: words, field: f, text: text[:ask.Start] + words + text[ask.End:], likely: shown})
	}
	return out
}

// twoTackles are both of two tackles that are told, "2:1 or 3:1", each by itself.
func (a *answer) twoTackles(text string, ask *parser.Ask) []reading {
	x, ok := a.question.Get(parser.Parts)
	if !ok || ask.Kind != parser.Loose || !strings.Contains(ask.Words, ":") || !strings.Contains(x.Words, ":") || x.End > ask.Start {
		return nil
	}
	first := text[:x.Start] + text[x.Start:x.End] + text[ask.End:]
	second := text[:x.Start] + text[ask.Start:]
	return []reading{{label: x.Words, text: first, likely: true}, {label: ask.Words, text: second, likely: true}}
}

// isAcross says whether a field is how thick a piece is.
func isAcross(f parser.Field) bool { return slices.Contains(acrossFields, f) }

// tells says whether a message rests on a number as the words beside it make it plain.
func (a *answer) tells(f parser.Field, typed string) bool {
	return f == "" || slices.ContainsFunc(a.question.Quantities, func(x parser.Quantity) bool {
		return (x.Field == f || isAcross(f) && isAcross(x.Field)) && strings.Contains(typed, x.Words)
	})
}
