package bot

import (
	"fmt"
	"strings"

	"heft/calc"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

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

// Notes of the word file.
const (
	naturalCrotch = "natural-crotch" // the rope runs over wood
	wornGear      = "worn"           // the gear is used, old or has no label
)

// inDoubt lists the cautions that the wood and the gear call for, whatever is
// asked.
func (a *answer) inDoubt() []string {
	var out []string
	if c := a.question.Condition; c != nil && c.Value == parser.Dead {
		out = append(out, "Dead wood breaks without warning: have it looked at before anyone rigs on it.")
	}
	for _, n := range a.question.Notes {
		switch n {
		case "wet":
			out = append(out, "Wet or icy rope is not covered by these figures: test with a small piece first.")
		case naturalCrotch:
			out = append(out, "A natural crotch drags far more than a block: it may not run, and it wears the rope.")
		case wornGear:
			out = append(out, "Used, old or unlabelled gear: nothing here says that it holds. Have it looked at first.")
		}
	}
	return out
}

// watch lists the cautions that a lower calls for.
func (a *answer) watch() []string {
	q := a.question
	var out []string
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

// assumed words what was taken for granted; what another line says already
// has no words here.
var assumed = map[calc.Assumption]string{
	calc.OverBark: "over bark", calc.GreenWood: "green", calc.HeavierOfTwo: "the heavier of your weight and mine",
	calc.SlickRope: "slick rope", calc.NoDrop: "no drop", calc.OnePerson: "one on the rope",
	calc.StraightLegs: "rope legs side by side", calc.WholeOnDrum: "wraps and block as for one part of line",
}
