package bot

import (
	"slices"

	"heft/parser"
)

// manyChoices is how many choices of an ask-back fit on a phone.
const manyChoices = 8

// askBack words one short question: what is in doubt, what to type, and what was
// passed over.
func (d *Desk) askBack(a *answer, ask *parser.Ask) {
	d.askAbout(a, ask)
	if !a.unexplained() {
		a.tellPassed()
	}
}

func (d *Desk) askAbout(a *answer, ask *parser.Ask) {
	a.status, a.asked = Needs, ask
	a.needs = a.neededWith(ask)
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
	case parser.WhichLimit:
		a.askLimit(ask)
		return
	case parser.WhichParts:
		a.askParts(ask)
		return
	case parser.TwoReadings:
		a.askReading(ask)
	case parser.WhichAngle:
		a.askAngle(ask)
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

// neededWith are the facts that are in doubt, and of those that are missing besides as many
// as make two.
func (a *answer) neededWith(ask *parser.Ask) []parser.Field {
	needs := slices.Clone(ask.Fields)
	if methods[a.question.Intent] == nil {
		return needs
	}
	for _, f := range a.question.Missing() {
		told := f == parser.Turn && ask.Kind == parser.WhichAngle || f == parser.SpeciesField && inDoubt(a.question, f)
		if !told && !slices.Contains(needs, f) && len(needs) < 2 {
			needs = append(needs, f)
		}
	}
	return needs
}

// plainAsks are the ask-backs that need only the words in doubt.
var plainAsks = map[parser.Kind]string{
	parser.OddNumber:  "I cannot read %s as one number. Type it plain: 1400 kg, 14.5 in, 2:1.",
	parser.WhichAngle: "Angle of what? If %s is between the two legs of the rope at the block, type “30° between the legs”. If it is how far the rope turns there, “rope turns 30°”.",
	parser.WhichHitch: "Rigged %s, or as you said before it? One at a time, like “sling 4,000 lb WLL, choked”.",
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
	told = told || ask.Kind == parser.NoUnit && a.load(inFigures(ask))
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
	if a.unexplained() {
		a.lines = []string{v.word("Nothing stands in this thread yet, so there is nothing to explain. Ask below the answer that you mean."),
			v.say("Or type the piece, like “show the numbers, %s”.", example(v))}
		a.needs = nil
		return
	}
	if a.question.Empty() && !a.pieceAside() {
		a.lines = []string{v.say("What piece? Tree, diameter and length, like “%s”.", example(v))}
		if a.question.Intent == parser.AskCutPlan {
			a.lines = []string{v.say("Of what piece? Tree, diameter and the most it may weigh, like “%s”.", exampleLimit(v))}
		}
		a.needs = a.question.Missing()
		return
	}
	if a.askWeight() || a.offerParts() {
		return
	}
	a.lines = []string{v.say("I still need %s. Type it like “%s”.", v.and(nouns(v, a.calledHere(a.needs))), v.typed(a.calledHere(a.needs)))}
	if a.question.WeightWanted() {
		a.lines = append(a.lines, v.word("Or tell me tree, diameter and length, and I work the weight out."))
	}
	a.orSling()
	a.orBlockBelow()
	a.runRather()
	a.mustHold()
	a.lines = append(a.lines, a.gotSoFar()...)
	a.orAnyTree()
}

// unexplained says whether something is to be explained where nothing was answered yet.
func (a *answer) unexplained() bool { return a.question.Explain != "" && a.question.Empty() }

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

// exampleLimit is what asks how long a piece may be.
func exampleLimit(s speaker) string {
	if s.metric {
		return s.word("red oak 50 cm, max 300 kg")
	}
	return s.word("red oak 20 in, max 600 lb")
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

// askAngle asks what an angle is between: of a notch it is the limb's, up or down.
func (a *answer) askAngle(ask *parser.Ask) {
	if !a.ofLimbsAngle() {
		a.lines = []string{plainly(a.voice, ask)}
		return
	}
	a.needs = []parser.Field{parser.LimbAngle}
	ask.Fields = a.needs
	a.lines = []string{a.voice.say("Is the limb %s above level, or below?", quote(ask.Words))}
}

// ofLimbsAngle says whether the only angle that an answer rests on is the limb's.
func (a *answer) ofLimbsAngle() bool {
	return a.question.Intent == parser.AskNotch || a.question.Intent == parser.AskRaise && !a.question.Has(parser.LimbAngle)
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
