package reading

import (
	"github.com/alecthomas/participle/v2/lexer"

	"heft/calc/unit"
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// Figure is one number, or a range of two, with its unit.
type Figure struct {
	Low, High float64 // SI; degrees
	Unit      *scan.UnitWord
	Dim       parser.Dimension
	Pair      bool           // butt and tip in one breath: "14/10 in"; low is the tip
	Falling   bool           // "14 to 10 in": a taper, or a range told backwards
	Elsewhere bool           // a number of the surroundings: "30 ft from the house"
	Rope      bool           // how thick a rope is: "5/8 double braid"
	InLine    bool           // a load that is told as the pull in a rope
	Girth     bool           // how far round the piece was told, and made its thickness
	Told      parser.Field   // what its neighbours say that it is, whatever else is near: "turns 30°"
	Sideless  bool           // how far the top block is off, which way not said
	At        string         // the block that a turn is at
	Sure      parser.Field   // what it is, whatever other words stand around it
	Also      []parser.Field // what else it is, of gear that is told in a list
	Claimed   parser.Field   // taken by words that no role knows: the far side of a swing
	Unclear   parser.Kind    // why a number of an obstacle must be asked about
	Start     int
	End       int
}

// Words are the words that say a figure.
func (f *Figure) Words(text string) string { return text[f.Start:f.End] }

// Ask is an ask about a figure.
func (f *Figure) Ask(k parser.Kind, text string) *parser.Ask {
	a := &parser.Ask{Kind: k, Words: f.Words(text), Start: f.Start, End: f.End}
	switch {
	case f.Dim == parser.DimCount && f.Low == f.High:
		a.Number = f.Low
	case f.Dim == parser.DimLength:
		a.Metres = f.High
	case f.Dim == parser.DimMass || f.Dim == parser.DimForce:
		a.Mass = true
	}
	return a
}

// single turns a number of the tree and its unit into a figure. The unit of
// the number it is joined to is borrowed where it has none.
func single(t *scan.Tongue, text string, number, typed *lexer.Token, borrowed *scan.UnitWord) (*Figure, *parser.Ask) {
	f := &Figure{Start: number.Pos.Offset, End: number.Pos.Offset + len(number.Value), Unit: borrowed}
	if typed != nil {
		f.End = typed.Pos.Offset + len(typed.Value)
		f.Unit = lexicon.Unit(t, typed.Value)
	}
	v, ok := value(t, number.Value)
	switch {
	case !ok || twoPoints(number.Value, f.Unit):
		return f, f.Ask(parser.OddNumber, text)
	case f.Unit == nil:
		f.Low, f.High = v, v
		return f, nil
	case f.Unit.Unsure:
		return f, whichTon(f, text, v)
	}
	f.Dim, f.Low, f.High = f.Unit.Dim, v*f.Unit.Factor, v*f.Unit.Factor
	return f, nil
}

// twoPoints says whether a point or comma in the number could be read in two
// ways: "1.400 kg" is 1.4 kg here and 1,400 kg elsewhere; "1,400 m" likewise.
func twoPoints(number string, u *scan.UnitWord) bool {
	if u == nil {
		return false
	}
	if scan.Pointed(number) {
		return u.Dim == parser.DimMass || u.Dim == parser.DimForce || u.Factor == float64(unit.Millimetre)
	}
	heavy := u.Factor == float64(unit.Tonne) || u.Factor == float64(unit.Kilonewton)
	return scan.Grouped(number) && (heavy || u.Dim == parser.DimLength && u.System == parser.Metric)
}

func whichTon(f *Figure, text string, v float64) *parser.Ask {
	a := f.Ask(parser.WhichTon, text)
	a.Fields = []parser.Field{parser.Weight}
	for _, t := range scan.Tons {
		a.Choices = append(a.Choices, parser.Choice{Words: t.Words, Field: parser.Weight, System: t.System, Value: v * float64(t.Factor)})
	}
	return a
}

// Several says whether a number can be a count of pieces.
func (f *Figure) Several() bool {
	return f != nil && f.Dim == parser.DimCount && f.Unit == nil && f.Low == f.High && f.Low >= 2 && f.Low <= mostAlike && f.Low == float64(int(f.Low))
}

// In is the number in the unit of another where it has none of its own.
func (f *Figure) In(other *Figure) float64 {
	if f.Unit == nil && other.Unit != nil {
		return f.High * other.Unit.Factor
	}
	return f.High
}

// Lent gives a bare number a unit, where there is one.
func (f *Figure) Lent(u *scan.UnitWord) {
	if u != nil {
		f.Unit, f.Dim, f.Low, f.High = u, u.Dim, f.Low*u.Factor, f.High*u.Factor
	}
}

// Short says whether the number is a length in inches, millimetres or the like.
func (f *Figure) Short() bool { return f != nil && f.Dim == parser.DimLength && f.Unit.Fine }

// Between says whether the number is a whole one without a unit, from one to another.
func (f *Figure) Between(least, most float64) bool {
	return f.Dim == parser.DimCount && f.Unit == nil && f.Low == f.High && f.Low == float64(int(f.Low)) && f.Low >= least && f.Low <= most
}

// Far says whether the number is a length in feet, metres or the like.
func (f *Figure) Far() bool { return f != nil && f.Dim == parser.DimLength && !f.Unit.Fine }
