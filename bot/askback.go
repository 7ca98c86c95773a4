package bot

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"heft/calc"
	"heft/calc/unit"
	"heft/parser"
)

// manyChoices is how many choices of an ask-back fit on a phone.
const manyChoices = 8

// askBack words one short question: what is in doubt, and what to type.
func (d *Desk) askBack(a *answer, ask *parser.Ask) {
	a.status = Needs
	a.needs = slices.Clone(ask.Fields)
	for _, f := range a.question.Missing() {
		if methods[a.question.Intent] != nil && (f != parser.Turn || ask.Kind != parser.WhichAngle) && !slices.Contains(a.needs, f) && len(a.needs) < 2 {
			a.needs = append(a.needs, f)
		}
	}
	words := quote(ask.Words)
	switch ask.Kind {
	case parser.Missing:
		a.askMissing()
		return
	case parser.WhichTree:
		d.askTree(a, ask)
		return
	case parser.WhichTon:
		a.askTon(ask)
		return
	case parser.TwoReadings:
		a.askReading(ask)
	case parser.NoUnit:
		a.lines = []string{words + " has no unit. " + a.unitHint(ask)}
	case parser.Loose:
		a.lines = []string{"What is " + words + "? Type it with a word, like " + hints(ask.Words, a.needs) + ", or leave it out."}
	case parser.Conflict:
		a.lines = []string{words + " does not go with what came before: I have another for " + list(nouns(ask.Fields), "and") + ". One piece a message, please."}
	default:
		a.lines = []string{fmt.Sprintf(plainAsks[ask.Kind], words)}
	}
	a.andMissing(ask)
}

// plainAsks are the ask-backs that need only the words in doubt.
var plainAsks = map[parser.Kind]string{
	parser.OddNumber:  "I cannot read %s as one number. Type it plain: 1400 kg, 14.5 in, 2:1.",
	parser.WhichAngle: "Angle of what? If %s is between the two legs of the rope at the block, type “30° between the legs”. If it is how far the rope turns there, “rope turns 30°”.",
	parser.WhichSide:  "%s off which way? Type it “behind the hinge”, the far side from the limb, or “out toward the limb”.",
	parser.Girth:      "%s is round the stem. Type the diameter: the girth divided by 3.14.",
	parser.BreastHigh: "%s is the trunk at chest height. Type the diameter of the piece, at the cut.",
	parser.Unknown:    "I do not know %s. Leave it out or say it another way.",
	parser.Twist:      "%s could turn the meaning round. Say it plainly, like “red oak limb 14 in, 22 ft long”.",
	parser.TooMuch:    "That is too much at once.%.0s One piece a message, like “red oak limb 14 in, 22 ft”.",
}

// andMissing asks in the same breath for what is missing besides.
func (a *answer) andMissing(ask *parser.Ask) {
	var rest []parser.Field
	for _, f := range a.needs {
		if !slices.Contains(ask.Fields, f) {
			rest = append(rest, f)
		}
	}
	if len(rest) > 0 {
		a.lines = append(a.lines, "And "+list(nouns(rest), "and")+"? Type it like “"+a.voice.typed(rest)+"”.")
	}
}

func (a *answer) askMissing() {
	if a.question.Empty() {
		a.lines = []string{"What piece? Tree, diameter and length, like “" + example(a.voice) + "”."}
		a.needs = a.question.Missing()
		return
	}
	a.lines = []string{"I still need " + list(nouns(a.needs), "and") + ". Type it like “" + a.voice.typed(a.needs) + "”."}
	if got := a.piece(); got != "piece" {
		a.lines = append(a.lines, "So far: "+got+".")
	}
}

func example(s speaker) string {
	if s.metric {
		return "red oak limb 35 cm, 7 m"
	}
	return "red oak limb 14 in, 22 ft"
}

// askTree lists the trees that share a name, each with the weight that hangs
// on the choice where the rest is known.
func (d *Desk) askTree(a *answer, ask *parser.Ask) {
	name := strings.ToLower(ask.Words)
	a.lines = []string{"Which " + trimQuote(name) + "? Several trees go by that name."}
	for i, c := range ask.Choices {
		if i == manyChoices {
			break
		}
		line := fmt.Sprintf("%d. %s", i+1, c.Words)
		if w := planWith(a.question, c); w > 0 {
			line += ": plan on " + a.voice.heavy(w)
		}
		a.lines = append(a.lines, line)
		a.choices = append(a.choices, c.Words)
	}
	a.andMissing(ask)
}

// planWith is the heavy end with that choice of tree, 0 where it cannot be
// told yet.
func planWith(q parser.Question, c parser.Choice) unit.Mass {
	q.Species = &parser.Said[parser.Species]{Value: parser.Species{Scientific: c.Scientific, Name: c.Words}}
	q.Intent = parser.AskWeight
	if len(q.Missing()) > 0 {
		return 0
	}
	res, err := calc.Work(jobOf(q))
	if err != nil {
		return 0
	}
	return res.Weight.High
}

func (a *answer) askTon(ask *parser.Ask) {
	a.lines = []string{"Which ton is " + quote(ask.Words) + "? Type it in pounds or kilograms:"}
	for i, c := range ask.Choices {
		typed := typedMass(c)
		a.lines = append(a.lines, fmt.Sprintf("%d. %s", i+1, typed))
		a.choices = append(a.choices, typed)
	}
}

func typedMass(c parser.Choice) string {
	if c.System == parser.Metric {
		return trimmed(c.Value, 0) + " kg"
	}
	return trimmed(c.Value/0.45359237, 0) + " lb"
}

// askReading asks which of two readings was meant.
func (a *answer) askReading(ask *parser.Ask) {
	words := quote(ask.Words)
	switch {
	case slices.Contains(ask.Fields, parser.TipDiameter):
		a.lines = []string{words + " could be butt and tip, or a range. Type “butt 14 in, tip 10 in”, or “10-14 in”."}
	case len(ask.Fields) > 1:
		a.lines = []string{words + " could be " + list(nouns(ask.Fields), "or") + ". Say which: " + hints(ask.Words, ask.Fields) + "."}
	case slices.Contains(ask.Fields, parser.Length):
		a.lines = []string{words + " could be one length, or a length and a thickness. Type 22'10\", or “22 ft long, 10 in across”."}
	default:
		a.lines = []string{words + " can be read two ways. Type it with words, like “14 in across, 22 ft long”."}
	}
}

// hint shows how to type a number so that it can only be one thing.
var hint = map[parser.Field]string{
	parser.Diameter: "“%s across”", parser.ButtDiameter: "“%s butt”", parser.TipDiameter: "“%s tip”",
	parser.MidDiameter: "“%s in the middle”", parser.Length: "“%s long”", parser.HitchHeight: "“hitched at %s”",
	parser.Limit: "“limit %s”", parser.Weight: "“weighs %s”", parser.RopeLength: "“%s of rope”",
}

func hints(words string, fields []parser.Field) string {
	bare := trimQuote(words)
	fields = append(slices.Clone(fields), parser.HitchHeight)
	if weighty.MatchString(words) {
		fields = []parser.Field{parser.Weight, parser.Limit}
	}
	var out []string
	for _, f := range fields {
		if h := hint[f]; h != "" && len(out) < 3 {
			if line := fmt.Sprintf(h, bare); !slices.Contains(out, line) {
				out = append(out, line)
			}
		}
	}
	return list(out, "or")
}

// weighty is a number that can be no size.
var weighty = regexp.MustCompile(`(?i)\d\s*(lbs?|pounds?|kgs?|kilos?|tonnes?|t|k?n)$`)

// unitHint shows the number with the units it could have.
func (a *answer) unitHint(ask *parser.Ask) string {
	bare := trimQuote(ask.Words)
	if slices.Contains(ask.Fields, parser.HitchHeight) {
		return fmt.Sprintf("Type “hitched at %s ft”, “%s wraps” or “%s on the rope”. One piece a message.", bare, bare, bare)
	}
	return fmt.Sprintf("Type “%s in” or “%s ft”, cm or m.", bare, bare)
}
