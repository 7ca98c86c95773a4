package bot

import (
	"strings"

	"heft/calc"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// piece says what the piece was taken to be.
func (a *answer) piece() string {
	q, v := a.question, a.voice
	if a.onBlock() {
		w := q.Mass(parser.Weight)
		return v.say("your load of %s on the block", v.told(w.Low, w.High))
	}
	if a.linePeak() {
		w := q.Mass(parser.Weight)
		return v.say("your peak of %s", v.told(w.Low, w.High))
	}
	if a.inLine() {
		w := q.Mass(parser.Weight)
		return v.say("%s in the line", v.told(w.Low, w.High))
	}
	if w := q.Mass(parser.Weight); a.ofPlan {
		return v.say("a piece at your limit of %s", v.told(w.Low, w.High))
	}
	said := []string{a.kind()}
	if size := a.size(); size != "" {
		said = append(said, size)
	}
	if q.Has(parser.Weight) {
		w := q.Mass(parser.Weight)
		said = append(said, v.say("your weight %s", v.told(w.Low, w.High)))
	}
	return strings.Join(said, ", ")
}

// inLine says whether the load told is the pull in a rope that a block turns, and no
// piece's.
func (a *answer) inLine() bool {
	return a.question.OnlyLine()
}

// kind names the piece by its tree, its condition and its shape.
func (a *answer) kind() string {
	q := a.question
	var condition parser.Condition
	var shape parser.Shape
	if q.Condition != nil {
		condition = q.Condition.Value
	}
	if q.Shape != nil {
		shape = q.Shape.Value
	}
	if q.Species == nil && a.goesBy != nil {
		return a.voice.say(kindsOfTree[condition][shape], trimQuote(strings.ToLower(a.goesBy.Words)))
	}
	if q.Species == nil {
		return a.voice.word(kinds[condition][shape])
	}
	return a.voice.say(kindsOfTree[condition][shape], q.Species.Value.Name)
}

// kinds are the pieces whose tree was not said, whole: another language has
// other forms for each.
var kinds = map[parser.Condition]map[parser.Shape]string{
	"":           {"": "piece", parser.Limb: "limb", parser.Log: "log"},
	parser.Dead:  {"": "dead piece", parser.Limb: "dead limb", parser.Log: "dead log"},
	parser.Green: {"": "green piece", parser.Limb: "green limb", parser.Log: "green log"},
}

// kindsOfTree are the pieces of a tree.
var kindsOfTree = map[parser.Condition]map[parser.Shape]string{
	"":           {"": "%s piece", parser.Limb: "%s limb", parser.Log: "%s log"},
	parser.Dead:  {"": "dead %s piece", parser.Limb: "dead %s limb", parser.Log: "dead %s log"},
	parser.Green: {"": "green %s piece", parser.Limb: "green %s limb", parser.Log: "green %s log"},
}

// size says the sizes as they were understood.
func (a *answer) size() string {
	q, s := a.question, a.voice
	var parts []string
	for _, f := range acrossFields {
		switch {
		case f == parser.Diameter && q.Has(f):
			parts = append(parts, s.across(q.Length(f)))
		case q.Has(f):
			parts = append(parts, s.say(thicknesses[f], s.across(q.Length(f))))
		}
	}
	if len(parts) == 0 {
		if q.Has(parser.Length) {
			return s.say("%s long", s.along(q.Length(parser.Length)))
		}
		return ""
	}
	size := strings.Join(parts, ", ")
	if q.Has(parser.Length) {
		size += " × " + s.along(q.Length(parser.Length))
	}
	return size
}

// thicknesses say where along the piece each was taken.
var thicknesses = map[parser.Field]string{
	parser.ButtDiameter: "%s butt", parser.MidDiameter: "%s middle", parser.TipDiameter: "%s tip",
}

func (a *answer) tellWeight() {
	v, w := a.voice, a.result.Weight
	if limit, over := a.overLimit(); over {
		a.problems = append(a.problems, a.cutSmaller(limit))
	}
	if a.onBlock() || a.linePeak() || a.inLine() || a.ofPlan {
		return // no piece is told of
	}
	if w.Method == piece.ByCrew {
		a.lines = append(a.lines, v.word("Your weight, not checked. Tell me tree, diameter and length and I compare."))
		return
	}
	a.lines = append(a.lines, v.say("Weight %s, likely %s (%s).",
		v.masses(w.Low, w.High), v.heavy(w.Likely), v.other().masses(w.Low, w.High)))
	if a.result.Disagreement {
		a.problems = append(a.problems, v.say("Your weight does not fit these sizes, which give %s. I plan on the heavier; check both.",
			v.masses(a.result.Piece.Low, a.result.Piece.High)))
	}
}

// Notes of the word file.
const (
	naturalCrotch = "natural-crotch" // the rope runs over wood
	replacedGear  = "replaced"       // gear that broke is told to be out of use
	wornGear      = "worn"           // the gear is used, old or has no label
)

// inDoubt lists the cautions that the wood and the gear call for, whatever is
// asked, and says where counting starts anew.
func (a *answer) inDoubt() []string {
	v := a.voice
	var out []string
	if c := a.question.Condition; c != nil && c.Value == parser.Dead {
		out = append(out, v.word("Dead wood breaks without warning: have it looked at before anyone rigs on it."))
	}
	for _, n := range a.question.Notes {
		switch n {
		case "wet":
			if a.question.Intent == parser.AskWeight && a.limbPlanned() {
				out = append(out, v.word("Rain on leaves and bark comes on top of the weight. I have no figure for that."))
			}
			if a.question.Intent == parser.AskLower {
				out = append(out, v.word("Wet or icy rope is not in these figures: no fewer wraps, rather one more, and test with a small piece first.")) // common practice, no source
				continue
			}
			out = append(out, v.word("Wet or icy rope is not covered by these figures: test with a small piece first."))
		case "bare":
			if a.limbPlanned() {
				out = append(out, v.word("Bare or not, planned with its brush on: the heavy side."))
			}
		case parser.NoBark:
			out = append(out, v.word("Bark on or off: the heavy end covers both."))
		case parser.MachineAsked:
			out = append(out, v.word("What a machine takes is on its own load chart: ask its operator."))
		case parser.MachineLimit:
			out = append(out, a.machineShare()...)
		case parser.HalfLog:
			out = append(out, v.word("Half a log: planned as the whole one, the heavy side."))
		case parser.LeavesOn:
			out = append(out, a.leaves())
		case "slipped":
			if !a.question.Slipped() {
				out = append(out, v.word("How many wraps slipped? Start with at least one more than those."))
			}
		case "iced":
			out = append(out, a.voice.word("Ice and snow are not in these figures: the piece is heavier. Have it knocked off first."))
		case "gusty":
			out = append(out, v.word("Wind is not in these figures. In gusts the qualified arborist decides whether anything is moved."))
		case "dark":
			out = append(out, v.word("Too little light to see the piece, the rope and everybody below? Then stop: what is left waits for daylight."))
		case "bare-hands":
			if a.question.Intent != parser.AskWeight {
				out = append(out, v.word("These figures are for hands in gloves: gloves on before the rope runs."))
			}
		case noteNewTree:
			if !a.question.Pieceless() {
				out = append(out, v.word("New tree: counting from this piece on."))
			}
		case parser.MovedByHand:
			out = append(out, a.byHand())
		case naturalCrotch:
			out = append(out, v.word("A natural crotch drags far more than a block: it may not run, and it wears the rope."))
			out = append(out, v.word("The drag of a fork is not in these figures: wraps as over a free block. Test with a small piece first."))
		case replacedGear:
			out = append(out, v.word("What broke or wore out stays out of use, marked. Have what else took that load looked at.")) // common practice, no source
		case wornGear:
			out = append(out, v.word("Used, old or unlabelled gear: nothing here says that it holds. Have it looked at first."))
		}
	}
	return out
}

// byHand says what falls to each of the people who lift or carry a piece, and that whether they
// can no figure here tells.
func (a *answer) byHand() string {
	v := a.voice
	caution := v.word("Whether anybody can lift, roll or carry it by hand I do not work out: on a slope it runs away with them. Ask the qualified arborist.")
	people := a.question.Count(parser.People)
	if a.result == nil || people < 2 {
		return caution
	}
	return v.say("Between %s people: %s each where they share it evenly. %s", trimmed(people, 0), v.heavy(a.result.Weight.High/unit.Mass(people)), caution)
}

// leaves says whether the figures are for a piece with its branches and leaves on.
func (a *answer) leaves() string {
	if a.limbPlanned() {
		return a.voice.word("Planned with its branches and leaves on: the heavy side.")
	}
	return a.voice.word("Branches and leaves are NOT in these figures: the piece is heavier, and balances farther toward its tip.")
}

// limbPlanned says whether the weight was worked out for a piece that may have
// its brush on.
func (a *answer) limbPlanned() bool {
	shape := a.question.Shape
	return a.result != nil && a.result.Weight.Method != piece.ByCrew && (shape == nil || shape.Value == parser.Limb)
}

// watch lists the cautions that a lower calls for.
func (a *answer) watch() []string {
	q, v := a.question, a.voice
	var out []string
	hitch, length := q.Length(parser.HitchHeight), q.Length(parser.Length)
	if hitch.High > 0 && length.High > hitch.Low {
		out = append(out, v.word("The piece is longer than the hitch is high: it will land before it hangs."))
	}
	if a.result.Lowering != nil {
		out = append(out, v.word("Nobody under the load or in the bight. Let it run, do not snub it."))
	}
	return out
}

// tellAssumed says what was taken for granted, and what the width of the
// weight comes from.
func (a *answer) tellAssumed() {
	v := a.voice
	var said []string
	for _, x := range a.result.Assumed {
		if w := assumed[x]; w != "" {
			said = append(said, v.word(w))
		}
	}
	if len(said) > 0 {
		a.lines = append(a.lines, v.say("Assumed: %s.", strings.Join(said, ", ")))
	}
	for _, f := range a.question.Fixes {
		a.lines = append(a.lines, v.say("Read %s as %s.", quote(f.Words), quote(f.As)))
	}
	var spread []string
	for _, s := range a.result.Weight.Spread {
		if w := spreadWords[s]; w != "" {
			spread = append(spread, v.word(w))
		}
	}
	if len(spread) > 0 {
		a.lines = append(a.lines, a.rangeFrom(strings.Join(spread, ", ")))
	}
}

// rangeFrom says what the width of the weight comes from, and what a slip of
// the eye costs in the size that moves it most: all thicknesses two inches, or
// five centimetres, larger.
func (a *answer) rangeFrom(spread string) string {
	heavy, thick, ok := a.ifThicker()
	if !ok {
		return a.voice.say("Range: %s.", spread)
	}
	return a.voice.say("Range: %s. At %s: %s.", spread, a.voice.across(unit.Exactly(thick)), a.voice.heavy(heavy))
}

// ifThicker is the heavy end with all thicknesses a step of the eye larger,
// and the thickest of them; false where the weight is the crew's own.
func (a *answer) ifThicker() (heavy unit.Mass, thickest unit.Length, ok bool) {
	j := jobOf(a.question)
	if j.Piece == nil || a.result.Weight.Method == piece.ByCrew {
		return 0, 0, false
	}
	thicker, thickest := thickened(*j.Piece, a.voice.step())
	w, err := piece.Weigh(thicker)
	return w.High, thickest, err == nil
}

var spreadWords = map[piece.Source]string{
	piece.TreeToTree: "tree to tree", piece.ByEye: "sizes by eye", piece.GenusAverage: "genus average only",
	piece.GroupDefault: "no figures for this tree's genus", piece.SecondTable: "two tables differ",
	piece.SpeciesOfGenus: "any tree of the genus", piece.AnyOfGroup: "any tree of the kind: one that was measured narrows it", piece.SaidRange: "the range you gave",
	piece.LimbForm: "taper and brush (only small branches were weighed)", piece.Brush: "brush", piece.ShapeUnsaid: "log or limb not said",
	piece.MaybeDry: "dry or not", piece.NoMoisture: "nobody measured how wet it is: heavy end full of water",
}

// assumed words what was taken for granted; what another line says already
// has no words here.
var assumed = map[calc.Assumption]string{
	calc.OverBark: "over bark", calc.GreenWood: "green", calc.HeavierOfTwo: "the heavier of your weight and mine",
	calc.SlickRope: "slick rope", calc.NoDrop: "no drop", calc.OnePerson: "one on the rope",
	calc.StraightLegs: "rope legs side by side", calc.WholeOnDrum: "wraps and block as for one part of line",
}

// machineShare says what share of what a machine takes a piece is, by the heavy end.
func (a *answer) machineShare() []string {
	limit := a.question.Mass(parser.Limit).Low
	if a.question.Intent == parser.AskCutPlan {
		return []string{a.voice.word("Hook and slings count too; the machine's chart is for its operator to read.")}
	}
	if limit <= 0 || a.result == nil {
		return nil
	}
	share := percent(float64(a.result.Weight.High / limit))
	return []string{a.voice.say("%s of the machine's %s as you tell it. Hook and slings count too; its chart is for its operator to read.", share, a.voice.atMost(limit))}
}
