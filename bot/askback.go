package bot

import (
	"slices"
	"strings"

	"heft/calc"
	"heft/calc/unit"
	"heft/parser"
)

// manyChoices is how many choices of an ask-back fit on a phone.
const manyChoices = 8

// askBack words one short question: what is in doubt, what to type, and what was
// passed over.
func (d *Desk) askBack(a *answer, ask *parser.Ask) {
	d.askAbout(a, ask)
	a.tellPassed()
}

func (d *Desk) askAbout(a *answer, ask *parser.Ask) {
	a.status, a.asked = Needs, ask
	a.needs = slices.Clone(ask.Fields)
	for _, f := range a.question.Missing() {
		if methods[a.question.Intent] != nil && (f != parser.Turn || ask.Kind != parser.WhichAngle) && !slices.Contains(a.needs, f) && len(a.needs) < 2 {
			a.needs = append(a.needs, f)
		}
	}
	v, words := a.voice, quote(ask.Words)
	switch ask.Kind {
	case parser.Missing:
		a.askMissing()
		return
	case parser.WhichTree:
		d.askTree(a, ask)
		return
	case parser.WhichTon:
		if gearAsk(ask) {
			a.askTonOfGear(ask)
			return
		}
		a.askTon(ask)
		return
	case parser.WhichStrength:
		a.askStrength(ask)
	case parser.TwoReadings:
		a.askReading(ask)
	case parser.NoUnit:
		a.lines = []string{a.unitHint(ask)}
	case parser.Loose:
		a.lines = []string{v.whatIs(ask, append(slices.Clone(a.needs), parser.HitchHeight))}
	case parser.Conflict:
		a.lines = []string{v.say("%s does not go with what came before: I have another for %s. One piece a message, please.",
			words, v.and(nouns(v, ask.Fields)))}
	case parser.TooMuch:
		a.lines = []string{v.word("That is too much at once. One piece a message, like “red oak limb 14 in, 22 ft”.")}
	case parser.Unknown:
		a.lines = []string{v.say(plainAsks[ask.Kind], words)}
		if ask.LikeStop != "" {
			a.lines = []string{v.say("%s: do you mean “%s”? Then stop, and have the qualified arborist look. If not, say it another way.", words, ask.LikeStop)}
		}
	default:
		a.lines = []string{plainly(v, ask)}
	}
	a.andMissing(ask)
}

// plainAsks are the ask-backs that need only the words in doubt.
var plainAsks = map[parser.Kind]string{
	parser.OddNumber:  "I cannot read %s as one number. Type it plain: 1400 kg, 14.5 in, 2:1.",
	parser.WhichAngle: "Angle of what? If %s is between the two legs of the rope at the block, type “30° between the legs”. If it is how far the rope turns there, “rope turns 30°”.",
	parser.WhichSide:  "%s off which way? Type it “behind the hinge”, the far side from the limb, or “out toward the limb”.",
	parser.WhichGear:  "Working load %s of what? Type it like “sling 4,000 lb WLL”, or rope, block, shackle, drum.",
	parser.FromWhere:  "From what is %s? Type it from under the block, on the far side of the swing, like “roof 12 ft past the block, 14 ft high”.",
	parser.Girth:      "%s is round the stem. Type the diameter: the girth divided by 3.14.",
	parser.BreastHigh: "%s is the trunk at chest height. Type the diameter of the piece, at the cut.",
	parser.Unknown:    "I do not know %s. Leave it out or say it another way.",
	parser.Twist:      "%s could turn the meaning round. Say it plainly, like “red oak limb 14 in, 22 ft long”.",
}

// andMissing asks in the same breath for what is missing besides, but for
// what was said in words that come next to be asked about: a crew that wrote
// "birch" is not told that the tree is missing.
func (a *answer) andMissing(ask *parser.Ask) {
	var rest []parser.Field
	for _, f := range a.needs {
		if !a.needless(ask, f) && !slices.Contains(ask.Fields, f) && !inDoubt(a.question, f) && !(isSize(f) && (a.weightAsked(ask) || a.ropeAsked(ask))) && !(f == parser.RopeBreak && a.strengthAsked(ask)) {
			rest = append(rest, f)
		}
	}
	if len(rest) > 0 {
		v := a.voice
		a.lines = append(a.lines, v.say("And %s? Type it like “%s”.", v.and(nouns(v, a.calledHere(rest))), v.typed(a.calledHere(rest))))
	}
}

// inDoubt says whether a field was said in words that come next to be asked about. How
// thick a piece is is one thing, at whichever end.
func inDoubt(q parser.Question, f parser.Field) bool {
	if slices.Contains(acrossFields, f) && slices.ContainsFunc(q.InDoubt, func(g parser.Field) bool { return slices.Contains(acrossFields, g) }) {
		return true
	}
	return slices.Contains(q.InDoubt, f)
}

// weightAsked says whether the piece was told by a weight that is asked about:
// then neither its tree nor its size is missing. An anchor is no piece.
func (a *answer) weightAsked(ask *parser.Ask) bool {
	q := a.question
	told := slices.Contains(ask.Fields, parser.Weight) || slices.Contains(q.InDoubt, parser.Weight)
	return told && q.Pieceless() && q.Intent != parser.AskAnchor && q.Intent != parser.AskCutPlan
}

// ropeAsked says whether the number that is asked about is how long a rope is, and no
// piece is told: then none is missing.
func (a *answer) ropeAsked(ask *parser.Ask) bool {
	told := slices.Contains(ask.Fields, parser.RopeLength) || slices.Contains(a.question.InDoubt, parser.RopeLength)
	return told && a.question.Pieceless() && a.question.Intent != parser.AskAnchor && a.question.Intent != parser.AskCutPlan
}

// strengthAsked says whether the gear that is asked about was told by a strength
// that is in doubt: then no other is missing.
func (a *answer) strengthAsked(ask *parser.Ask) bool {
	of := func(f parser.Field) bool {
		return slices.Contains(ask.Fields, f) || slices.Contains(a.question.InDoubt, f)
	}
	return a.question.Intent == parser.AskGear && slices.ContainsFunc(parser.Ratings, of)
}

func (a *answer) askMissing() {
	v := a.voice
	if a.question.Empty() && !a.pieceAside() {
		a.lines = []string{v.say("What piece? Tree, diameter and length, like “%s”.", example(v))}
		a.needs = a.question.Missing()
		return
	}
	if a.askWeight() {
		return
	}
	a.lines = []string{v.say("I still need %s. Type it like “%s”.", v.and(nouns(v, a.calledHere(a.needs))), v.typed(a.calledHere(a.needs)))}
	if a.question.WeightWanted() {
		a.lines = append(a.lines, v.word("Or tell me tree, diameter and length, and I work the weight out."))
	}
	a.orSling()
	a.orBlockBelow()
	if got := a.soFar(); got != v.word("piece") && got != v.word("anchor") {
		a.lines = append(a.lines, v.say("So far: %s.", got))
	}
}

// pieceAside says whether the question is about something else than a piece: gear,
// an anchor, how far a rope reaches, what a redirect carries.
func (a *answer) pieceAside() bool {
	q := a.question
	return q.Intent == parser.AskGear || q.Intent == parser.AskAnchor || q.Intent == parser.AskRope || q.OfPlaces() ||
		q.Intent == parser.AskBlockLoad && slices.ContainsFunc(q.Notes, parser.Redirecting)
}

// askWeight asks for the weight of what is lifted, or what a block holds, where
// nothing is told of the piece: it may well be known, and needs no tree.
func (a *answer) askWeight() bool {
	v, q := a.voice, a.question
	if q.Intent != parser.AskLift && q.Intent != parser.AskBlockLoad || !q.Pieceless() || !slices.ContainsFunc(a.needs, isSize) {
		return false
	}
	a.lines = []string{v.say("I still need the weight, like “%s”, or tree, diameter and length, like “%s”.", v.typed([]parser.Field{parser.Weight}), example(v))}
	rest := slices.DeleteFunc(q.Missing(), isSize)
	a.needs = append([]parser.Field{parser.Weight}, rest...)
	if len(rest) > 0 {
		a.lines = append(a.lines, v.say("And %s? Type it like “%s”.", v.and(nouns(v, rest)), v.typed(rest)))
	}
	return true
}

// isSize says whether a field is one that a weight is worked out from.
func isSize(f parser.Field) bool {
	return f == parser.SpeciesField || f == parser.Length || f == parser.Diameter || f == parser.ButtDiameter
}

func example(s speaker) string {
	if s.metric {
		return s.word("red oak limb 35 cm, 7 m")
	}
	return s.word("red oak limb 14 in, 22 ft")
}

// askTree lists the trees that share a name, each with the weight that hangs
// on the choice where the rest is known.
func (d *Desk) askTree(a *answer, ask *parser.Ask) {
	name := strings.ToLower(ask.Words)
	v := a.voice
	a.lines = []string{v.say("Which %s? Several trees go by that name.", trimQuote(name))}
	if ask.Either {
		a.lines = []string{v.say("Which is it, %s?", trimQuote(name))}
	}
	for i, c := range ask.Choices {
		if i == manyChoices {
			break
		}
		line := numbered(i, c.Words)
		if longest := a.longestWith(c); longest != "" {
			line = numbered(i, v.say("%s: %s long at most", c.Words, longest))
		} else if w := planWith(a.question, c); w > 0 {
			line = numbered(i, v.say("%s: plan on %s", c.Words, v.heavy(w)))
		}
		a.lines = append(a.lines, line)
		a.choices = append(a.choices, plain(c.Words))
	}
	a.andMissing(ask)
}

// hardly is how much heavier the heaviest of some trees may be for the choice
// between them to be left alone: less than sizes by eye are off.
const hardly = 1.1

// anyOf is the tree to plan on where several share a name and the weight
// hardly hangs on which: any of them, where that is the heaviest, or the heaviest
// where that one is wanted. It is none where the weight does not hang on the tree at all.
func anyOf(q parser.Question, ask *parser.Ask) (*parser.Said[parser.Species], bool) {
	if ask == nil || ask.Kind != parser.WhichTree || q.Intent == parser.AskAnchor || len(ask.Choices) == 0 {
		return nil, false
	}
	if q.Has(parser.Weight) && q.Intent != parser.AskCutPlan && !q.Has(acrossFields...) {
		return nil, true // the weight is told, and there are no sizes to hold it against
	}
	var most, least unit.Mass
	var heaviest parser.Choice
	for _, c := range ask.Choices {
		w := planWith(q, c)
		if w == 0 {
			return nil, false
		}
		if least == 0 || w < least {
			least = w
		}
		if w >= most { // the last is any of them
			most, heaviest = w, c
		}
	}
	if !ask.Heavier && (most > hardly*least || !strings.HasSuffix(heaviest.Scientific, " spp.")) {
		return nil, false
	}
	return &parser.Said[parser.Species]{Value: parser.Species{Scientific: heaviest.Scientific, Name: heaviest.Words}, Words: ask.Words, Start: ask.Start, End: ask.End}, true
}

// planWith is the heavy end with that choice of tree, 0 where it cannot be
// told yet.
func planWith(q parser.Question, c parser.Choice) unit.Mass {
	q.Species = &parser.Said[parser.Species]{Value: parser.Species{Scientific: c.Scientific, Name: c.Words}}
	anchor := q.Intent == parser.AskAnchor
	q.Intent = parser.AskWeight
	if anchor || len(q.MissingSizes()) > 0 {
		return 0
	}
	res, err := calc.Work(jobOf(q))
	if err != nil {
		return 0
	}
	return res.Weight.High
}

func (a *answer) askTon(ask *parser.Ask) {
	a.lines = []string{a.voice.say("Which ton is %s? Type it in pounds or kilograms:", quote(ask.Words))}
	for i, c := range ask.Choices {
		typed := typedMass(c)
		a.lines = append(a.lines, numbered(i, typed))
		a.choices = append(a.choices, plain(typed))
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
	v, words := a.voice, quote(ask.Words)
	switch {
	case slices.Contains(ask.Fields, parser.TipDiameter):
		a.lines = []string{v.say("%s could be butt and tip, or a range. Type “butt 14 in, tip 10 in”, or “10-14 in”.", words)}
	case len(ask.Fields) > 1:
		a.lines = []string{v.say("%s could be %s. Say which.", words, v.or(nouns(v, ask.Fields)))}
		if hints := v.hints(ask, ask.Fields); hints != "" {
			a.lines = []string{v.say("%s could be %s. Say which: %s.", words, v.or(nouns(v, ask.Fields)), hints)}
		}
	case slices.Contains(ask.Fields, parser.Length):
		a.lines = []string{v.say("%s could be one length, or a length and a thickness. Type 22'10\", or “22 ft long, 10 in across”.", words)}
	default:
		a.lines = []string{v.say("%s can be read two ways. Type it with words, like “14 in across, 22 ft long”.", words)}
	}
}
