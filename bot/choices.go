package bot

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"heft/calc/wood"
	"heft/parser"
)

// Choice is a likely answer to an ask-back: what is shown, and the message
// that it stands for, which is the question anew with its doubt taken out.
type Choice struct{ Label, Message string }

// offer puts likely answers to an ask-back into the reply. A choice rewrites
// the very words in doubt, so that whatever is chosen is read like any other
// message, and is asked about again where it still leaves a doubt.
func (a *answer) offer(text string, ask *parser.Ask) {
	labels := a.choices
	if len(labels) == 0 {
		labels = a.likely(ask)
		for i, l := range labels {
			a.lines = append(a.lines, numbered(i, l.Label))
		}
	}
	if ask.Kind == parser.Missing {
		for i, l := range a.choices {
			a.choices[i].Message = strings.TrimSpace(text) + ", " + l.Message
		}
		return // nothing is in doubt: what is missing goes behind
	}
	if ask.Kind == parser.WhichTree && ask.End == 0 || ask.OfTalk {
		return // asked again, or of gear that this message does not name: a message by itself
	}
	if ask.End > len(text) || ask.Start >= ask.End {
		a.choices = nil
		return
	}
	a.choices = nil
	for _, l := range labels {
		a.choices = append(a.choices, Choice{l.Label, strings.TrimSpace(text[:ask.Start] + l.Message + text[ask.End:])})
	}
}

// pullEach is what each of the people pulls, told apart from what stands around it.
func pullEach(v speaker, pull string) Choice {
	label := v.say("each pulls %s", pull)
	return Choice{label, ", " + label + ","}
}

// likely lists what the words in doubt most likely mean, each as a crew would
// type it plainly.
func (a *answer) likely(ask *parser.Ask) []Choice {
	bare := inFigures(ask)
	switch ask.Kind {
	case parser.NoUnit:
		return a.withUnits(bare, ask)
	case parser.Girth:
		return across(ask.Words)
	case parser.WhichAngle:
		if a.ofLimbsAngle() {
			return []Choice{plain(a.voice.say("%s above level", bare)), plain(a.voice.say("%s below level", bare))}
		}
		return []Choice{plain(a.voice.say("%s between the legs", bare)), plain(a.voice.say("rope turns %s", bare))}
	case parser.Unknown:
		if (ask.Measured || !strings.ContainsAny(bare, "0123456789")) && ask.LikeStop == "" && !ask.Glued {
			return append([]Choice{{a.voice.say("leave out “%s”", bare), " "}}, a.anyTree(bare, ask)...)
		}
	}
	return nil
}

// anyTree offers to plan a piece whose tree is not known as any hardwood, or as
// any softwood, where the word stands where the tree does.
func (a *answer) anyTree(bare string, ask *parser.Ask) (out []Choice) {
	if !ask.AsTree || a.question.Intent == parser.AskAnchor || !slices.Contains(a.question.Missing(), parser.SpeciesField) {
		return nil
	}
	v := a.voice
	for _, kind := range wood.Groups() {
		name, _ := parser.Species{Scientific: kind.Scientific, Name: kind.Common}.In(v.tag())
		label := v.say("“%s” is the tree: any %s", bare, name)
		if w := planWith(a.question, parser.Choice{Words: name, Scientific: kind.Scientific}); w > 0 {
			label = v.say("“%s” is the tree: any %s, plan on %s", bare, name, v.heavy(w))
		}
		out = append(out, Choice{label, name})
	}
	return out
}

// orAnyTree offers the same where nothing but the tree is missing: whoever does not know
// it can go on with the heavy end of all of them.
func (a *answer) orAnyTree() {
	if a.question.Intent == parser.AskAnchor || !slices.Equal(a.needs, []parser.Field{parser.SpeciesField}) {
		return
	}
	v := a.voice
	for _, kind := range wood.Groups() {
		name, _ := parser.Species{Scientific: kind.Scientific, Name: kind.Common}.In(v.tag())
		w := planWith(a.question, parser.Choice{Words: name, Scientific: kind.Scientific})
		if w <= 0 {
			return
		}
		label := v.say("any %s: plan on %s", name, v.heavy(w))
		a.lines = append(a.lines, numbered(len(a.choices), label))
		a.choices = append(a.choices, Choice{label, name})
	}
}

// taped is a girth as it was told.
var taped = regexp.MustCompile(`^([0-9]+(?:\.[0-9]+)?)\s*([\pL"″]+)`)

// across is the thickness that goes with a girth, as one would type it: the
// girth over π, rounded up.
func across(girth string) []Choice {
	m := taped.FindStringSubmatch(girth)
	if m == nil {
		return nil
	}
	v, err := strconv.ParseFloat(m[1], 64)
	if err != nil {
		return nil
	}
	scale := 10.0
	if v < 20 {
		scale = 100 // told in metres, or thin
	}
	return []Choice{plain(strconv.FormatFloat(math.Ceil(v/math.Pi*scale)/scale, 'f', -1, 64) + " " + m[2] + " across")}
}

// load says whether a bare number can only be what is lowered or lifted: beside a length
// it may be how thick that is.
func (a *answer) load(bare string) bool {
	q := a.question
	hauled := q.Intent == parser.AskLower || q.Intent == parser.AskLift || q.Intent == parser.AskBlockLoad
	return hauled && tooLong(bare) && q.Species == nil && !q.Has(parser.Weight, parser.Length) && !q.Has(acrossFields...)
}

// withUnits are a number with the units it may have been meant in: those of
// the asker's system.
func (a *answer) withUnits(bare string, ask *parser.Ask) []Choice {
	fields := ask.Fields
	small := a.stamped(bare)
	switch {
	case slices.Contains(fields, parser.PersonPull):
		return []Choice{pullEach(a.voice, bare+" lb"), pullEach(a.voice, bare+" kg")}
	case slices.Contains(fields, parser.Wraps):
		return []Choice{plain(a.voice.say("%s wraps", bare)), plain(a.voice.say("%s on the rope", bare))}
	case gearAsk(ask) && small != nil:
		return small
	case a.load(bare):
		return []Choice{plain(bare + " lb"), plain(bare + " kg")}
	case light(ask):
		return []Choice{plain(hundreds(ask)), plain(trimmed(ask.Number*1000, 0) + " lb"), plain(bare + " t")}
	case inMillimetres(ask):
		return []Choice{plain(bare + " mm")}
	case fraction(bare):
		return []Choice{plain(bare + " in")}
	case belowCut(ask) && ask.Number >= leastMillimetre:
		return []Choice{plain(bare + " mm"), plain(bare + " cm")}
	case a.wideOrHeavy(ask):
		return []Choice{plain(a.voice.say("%s across", bare+" mm")), plain(bare + " kg")}
	case belowCut(ask) && ask.Number >= leastInches:
		return a.small(bare)
	case onlyLong(ask):
		return []Choice{plain(bare + " ft"), plain(bare + " m")}
	case onlyAcross(ask):
		return a.small(bare)
	case slices.Contains(fields, parser.HitchHeight):
		return nil // a count, a height or a part of a list: no two words settle it
	case !a.voice.metric && tooLong(bare):
		return []Choice{plain(bare + " lb"), plain(bare + " kg")}
	case slices.ContainsFunc(fields, isAngle) && len(fields) > 1:
		return []Choice{plain(bare + "°"), plain(bare + " ft"), plain(bare + " m")}
	case slices.ContainsFunc(fields, isAngle):
		return []Choice{plain(bare + "°")}
	case slices.ContainsFunc(fields, isHeavy):
		return []Choice{plain(bare + " lb"), plain(bare + " kg")}
	case a.voice.metric:
		return []Choice{plain(bare + " cm"), plain(bare + " m")}
	}
	return []Choice{plain(bare + " in"), plain(bare + " ft")}
}

// small is a bare number as a thickness, first in the unit the asker uses.
func (a *answer) small(bare string) []Choice {
	choices := []Choice{plain(bare + " in"), plain(bare + " cm")}
	if a.voice.metric {
		slices.Reverse(choices)
	}
	return choices
}

// plain is a choice that is shown as it is typed.
func plain(words string) Choice { return Choice{words, words} }

// chosen says which message an answer to an ask-back stands for, and what the
// conversation had established before it was asked: the number of a choice,
// or the choice itself.
func (t Turn) chosen(text string) (message string, before Turn, ok bool) {
	text = strings.TrimSpace(text)
	for i, c := range t.choices {
		if said := strings.TrimRight(text, ".)"); text == c.Message || strings.EqualFold(said, c.Label) || said == strconv.Itoa(i+1) {
			return c.Message, *t.before, true
		}
	}
	return "", t, false
}

// offering is the turn after an ask-back with choices: a choice is read as if
// the doubtful message had never been.
func (t Turn) offering(choices []Choice, before Turn) Turn {
	if len(choices) > 0 {
		before.before, before.choices = nil, nil
		t.choices, t.before = choices, &before
	}
	return t
}

// onlyLong says whether only the unit of a length is in doubt, and none that a
// crew tells in inches.
func onlyLong(ask *parser.Ask) bool {
	if len(ask.Choices) != 1 {
		return false
	}
	f := string(ask.Choices[0].Field)
	return strings.HasSuffix(f, "_m") && !strings.HasSuffix(f, "diameter_m")
}

// onlyAcross says whether a bare number can only be a thickness.
func onlyAcross(ask *parser.Ask) bool {
	return len(ask.Choices) == 1 && slices.Contains(acrossFields, ask.Choices[0].Field)
}

// inFigures is a number in question as it is to be typed: one that was spelled out,
// "two fifty", in figures.
func inFigures(ask *parser.Ask) string {
	if r, _ := utf8.DecodeRuneInString(ask.Words); ask.Number > 0 && unicode.IsLetter(r) {
		return trimmed(ask.Number, 3)
	}
	return trimQuote(ask.Words)
}

// tooLong says whether a bare number is more than any size of a piece is told
// in: it is rather a weight.
func tooLong(bare string) bool {
	v, err := strconv.ParseFloat(strings.ReplaceAll(bare, ",", ""), 64)
	return err == nil && v >= 150
}

// isAngle says whether a field is told in degrees.
func isAngle(f parser.Field) bool { return strings.HasSuffix(string(f), "_deg") }

// isHeavy says whether a field is told in pounds or kilograms.
func isHeavy(f parser.Field) bool {
	return strings.HasSuffix(string(f), "_kg") || strings.HasSuffix(string(f), "_n")
}
