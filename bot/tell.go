package bot

import (
	"fmt"
	"math"
	"strings"

	"heft/calc"
	"heft/calc/piece"
	"heft/calc/rope"
	"heft/calc/unit"
	"heft/parser"
)

// tell words an answer: one line that serves alone, then the loads, the rope,
// what was assumed and what to watch.
func (a *answer) tell() {
	a.lines = []string{a.headline()}
	a.tellWeight()
	a.tellWraps()
	a.tellBlock()
	a.tellRope()
	a.tellAssumed()
	a.cautions = append(a.cautions, a.watch()...)
}

// headline says what the piece was taken to be, the weight to plan on, and
// what that means for the wraps: it serves alone as a phone notification.
func (a *answer) headline() string {
	if a.question.Intent == parser.AskRope && a.result.Rope > 0 {
		return a.ropeHead(a.result.Rope)
	}
	head := capital(a.piece()) + ": plan on " + a.voice.heavy(a.result.Weight.High)
	if limit, over := a.overLimit(); over {
		head += ", OVER your limit of " + limit
	}
	switch {
	case a.question.Intent == parser.AskBlockLoad:
		head += ", top block " + a.voice.load(a.result.Block)
	case a.result.Lowering != nil:
		head += ", " + a.wrapsHead()
	}
	return head + "."
}

// overLimit says the crew's limit, and whether the heavy end is over it.
func (a *answer) overLimit() (limit string, over bool) {
	said := a.question.Mass(parser.Limit)
	return a.voice.masses(said.Low, said.Low), said.High > 0 && a.result.Weight.High > said.Low
}

// wrapsHead says the wraps to start with, and what becomes of those that the
// crew named.
func (a *answer) wrapsHead() string {
	start := "start with " + turns(float64(a.result.Lowering.Start))
	if a.result.AtWraps == nil {
		return start
	}
	named := turns(a.question.Count(parser.Wraps))
	switch least, most := a.judgeWraps(); {
	case least:
		return named + " LET IT RUN AWAY, " + start
	case most:
		return named + " TOO FEW, " + start
	}
	return named + " hold it"
}

// judgeWraps says whether the wraps that the crew named are too few even on a
// drum that grips, and whether they may be on a slick one.
func (a *answer) judgeWraps() (evenGrippy, onSlick bool) {
	can := rope.PerPerson * unit.Force(max(1, a.question.Count(parser.People)))
	return a.result.AtWraps.Low > can, a.result.AtWraps.High > can
}

// piece says what the piece was taken to be.
func (a *answer) piece() string {
	q := a.question
	var b strings.Builder
	if q.Condition != nil {
		b.WriteString(string(q.Condition.Value) + " ")
	}
	if q.Species != nil {
		b.WriteString(q.Species.Value.Name + " ")
	}
	switch {
	case q.Shape != nil:
		b.WriteString(string(q.Shape.Value))
	case q.Species == nil:
		b.WriteString("piece")
	default:
		b.WriteString("piece")
	}
	if size := a.size(); size != "" {
		b.WriteString(", " + size)
	}
	if q.Has(parser.Weight) {
		w := q.Mass(parser.Weight)
		b.WriteString(", your weight " + a.voice.masses(w.Low, w.High))
	}
	return b.String()
}

// size says the sizes as they were understood.
func (a *answer) size() string {
	q, s := a.question, a.voice
	var parts []string
	ends := []struct {
		f    parser.Field
		name string
	}{{parser.ButtDiameter, "butt"}, {parser.MidDiameter, "middle"}, {parser.TipDiameter, "tip"}}
	if q.Has(parser.Diameter) {
		parts = append(parts, s.across(q.Length(parser.Diameter)))
	}
	for _, e := range ends {
		if q.Has(e.f) {
			parts = append(parts, s.across(q.Length(e.f))+" "+e.name)
		}
	}
	if len(parts) == 0 {
		return ""
	}
	size := strings.Join(parts, ", ")
	if q.Has(parser.Length) {
		size += " × " + s.along(q.Length(parser.Length))
	}
	return size
}

func (a *answer) tellWeight() {
	w := a.result.Weight
	if limit, over := a.overLimit(); over {
		a.problems = append(a.problems, "Cut a smaller piece: your limit is "+limit+".")
	}
	if w.Method == piece.ByCrew {
		a.lines = append(a.lines, "Your weight, not checked. Tell me tree, diameter and length and I compare.")
		return
	}
	a.lines = append(a.lines, fmt.Sprintf("Weight %s, likely %s (%s).",
		a.voice.masses(w.Low, w.High), a.voice.heavy(w.Likely), a.voice.other().masses(w.Low, w.High)))
	if a.result.Disagreement {
		a.problems = append(a.problems, "Your weight does not fit these sizes, which give "+
			a.voice.masses(a.result.Piece.Low, a.result.Piece.High)+". I plan on the heavier; check both.")
	}
}

func (a *answer) tellWraps() {
	l := a.result.Lowering
	if l == nil || a.question.Intent == parser.AskBlockLoad {
		return
	}
	people := "One person holds"
	if n := int(a.question.Count(parser.People)); n > 1 {
		people = fmt.Sprintf("%d people hold", n)
	}
	if at := a.result.AtWraps; at != nil {
		a.tellAtWraps(people, *at)
		return
	}
	a.lines = append(a.lines, fmt.Sprintf("%s up to %s. Will not run? Half a wrap off, never under %s.",
		people, a.voice.pull(l.Hold), wraps(float64(l.Least))))
}

// tellAtWraps says what the hand feels at the wraps that the crew named.
func (a *answer) tellAtWraps(people string, at unit.Range[unit.Force]) {
	line := fmt.Sprintf("At %s the hand holds up to %s on a slick rope.", turns(a.question.Count(parser.Wraps)), a.voice.pull(at.High))
	if grippy, slick := a.judgeWraps(); grippy || slick {
		a.problems = append(a.problems, line+" "+people+" "+a.voice.pull(rope.PerPerson*unit.Force(max(1, a.question.Count(parser.People))))+".")
		return
	}
	a.lines = append(a.lines, line)
}

func (a *answer) tellBlock() {
	if a.result.Block <= 0 {
		return
	}
	legs := ""
	if x, ok := a.question.Get(parser.BlockAngle); ok {
		legs = ", " + trimmed(x.Low, 1) + "° between the legs"
	}
	a.lines = append(a.lines, fmt.Sprintf("Top block sees %s lowering steady%s. Lift, snub or drop: more.",
		a.voice.load(a.result.Block), legs))
}

func (a *answer) ropeHead(need unit.Length) string {
	head := "Rope: " + a.voice.ropeNeeded(need) + " end to end, hitched at " + a.voice.along(a.question.Length(parser.HitchHeight))
	have := a.question.Length(parser.RopeLength)
	switch {
	case have.Low <= 0:
	case have.Low < need:
		head += ", your " + a.voice.along(have) + " is TOO SHORT"
	default:
		head += ", your " + a.voice.along(have) + " reaches"
	}
	return head + "."
}

// tellRope says what the length is made of, and what becomes of a rope that
// is too short.
func (a *answer) tellRope() {
	need := a.result.Rope
	if need <= 0 {
		return
	}
	legs := 1 + max(1, int(a.question.Count(parser.Parts)))
	a.lines = append(a.lines, fmt.Sprintf("Rope %s: %d × %s + %s tail, drum at the foot of the tree.",
		a.voice.ropeNeeded(need), legs, a.voice.along(unit.Exactly(a.question.Length(parser.HitchHeight).High)), a.voice.ropeNeeded(rope.Tail)))
	if have := a.question.Length(parser.RopeLength); have.Low > 0 && have.Low < need {
		a.problems = append(a.problems, "Your "+a.voice.along(have)+" rope is too short: its end could run through the drum.")
	}
}

// watch lists the cautions that this piece calls for.
func (a *answer) watch() []string {
	q := a.question
	var out []string
	if q.Condition != nil && q.Condition.Value == parser.Dead {
		out = append(out, "Dead wood breaks without warning: have it looked at before anyone rigs on it.")
	}
	for _, n := range q.Notes {
		if n == "wet" {
			out = append(out, "Wet or icy rope is not covered by these wraps: test with a small piece first.")
		}
	}
	hitch, length := q.Length(parser.HitchHeight), q.Length(parser.Length)
	if hitch.High > 0 && length.High > hitch.Low {
		out = append(out, "The piece is longer than the hitch is high: it will land before it hangs.")
	}
	if a.result.Lowering != nil {
		out = append(out, "Nobody under the load or in the bight. Let it run, do not snub it.")
	}
	return out
}

// tellAssumed says what was taken for granted, and what the width of the
// weight comes from.
func (a *answer) tellAssumed() {
	var said []string
	for _, x := range a.result.Assumed {
		if w := assumed[x]; w != "" {
			said = append(said, w)
		}
	}
	if len(said) > 0 {
		a.lines = append(a.lines, "Assumed: "+strings.Join(said, ", ")+".")
	}
	for _, f := range a.question.Fixes {
		a.lines = append(a.lines, "Read "+quote(f.Words)+" as "+quote(f.As)+".")
	}
	var spread []string
	for _, s := range a.result.Weight.Spread {
		if w := spreadWords[s]; w != "" {
			spread = append(spread, w)
		}
	}
	if len(spread) > 0 {
		a.lines = append(a.lines, "Range: "+strings.Join(spread, ", ")+"."+a.ifThicker())
	}
}

// ifThicker says what a slip of the eye costs in the size that moves the
// weight most: all thicknesses two inches, or five centimetres, larger.
func (a *answer) ifThicker() string {
	j := jobOf(a.question)
	if j.Piece == nil || a.result.Weight.Method == piece.ByCrew {
		return ""
	}
	step := 2 * unit.Inch
	if a.voice.metric {
		step = 5 * unit.Centimetre
	}
	thickest := unit.Length(0)
	for _, d := range []*unit.Range[unit.Length]{&j.Piece.Diameter, &j.Piece.Butt, &j.Piece.Mid, &j.Piece.Tip} {
		if !d.IsZero() {
			d.Low, d.High = d.Low+step, d.High+step
			thickest = max(thickest, d.High)
		}
	}
	w, err := piece.Weigh(*j.Piece)
	if err != nil {
		return ""
	}
	return " At " + a.voice.across(unit.Exactly(thickest)) + ": " + a.voice.heavy(w.High) + "."
}

var spreadWords = map[piece.Source]string{
	piece.TreeToTree: "tree to tree", piece.ByEye: "sizes by eye", piece.GenusAverage: "genus average only",
	piece.GroupDefault: "no figures for this tree's genus", piece.SecondTable: "two tables differ",
	piece.SpeciesOfGenus: "any tree of the genus", piece.SaidRange: "the range you gave",
	piece.LimbForm: "taper and brush (only small branches were weighed)", piece.Brush: "brush", piece.ShapeUnsaid: "log or limb not said",
	piece.MaybeDry: "dry or not",
}

// into writes the figures into the object that scripts read.
func (a *answer) into(o *object) {
	if a.figures != nil {
		defer a.figures(o)
	}
	r := a.result
	if r == nil {
		return
	}
	if w := r.Weight; w.High > 0 {
		o.Weight = &weightObject{float64(w.Low), float64(w.Likely), float64(w.High)}
	}
	if l := r.Lowering; l != nil {
		o.Lower = &lowerObject{float64(l.Start), float64(l.Least), float64(l.Most), math.Round(float64(l.Hold)*10) / 10}
	}
	o.BlockLoad, o.Rope = float64(r.Block), float64(r.Rope)
}

// assumed words what was taken for granted; what another line says already
// has no words here.
var assumed = map[calc.Assumption]string{
	calc.OverBark: "over bark", calc.GreenWood: "green", calc.HeavierOfTwo: "the heavier of your weight and mine",
	calc.SlickRope: "slick rope", calc.NoDrop: "no drop", calc.OnePerson: "one on the rope",
	calc.StraightLegs: "rope legs side by side", calc.WholeOnDrum: "wraps and block as for one part of line",
}
