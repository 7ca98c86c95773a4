package parser

import (
	"github.com/alecthomas/participle/v2/lexer"

	"heft/calc/unit"
)

// figure is one number, or a range of two, with its unit.
type figure struct {
	low, high float64 // SI; degrees
	unit      *unitWord
	dim       dimension
	pair      bool   // butt and tip in one breath: "14/10 in"; low is the tip
	falling   bool   // "14 to 10 in": a taper, or a range told backwards
	elsewhere bool   // a number of the surroundings: "30 ft from the house"
	rope      bool   // how thick a rope is: "5/8 double braid"
	girth     bool   // how far round the piece was told, and made its thickness
	told      Field  // what its neighbours say that it is, whatever else is near: "turns 30°"
	sideless  bool   // how far the top block is off, which way not said
	at        string // the block that a turn is at
	sure      Field  // what it is, whatever other words stand around it
	claimed   Field  // taken by words that no role knows: the far side of a swing
	unclear   Kind   // why a number of an obstacle must be asked about
	start     int
	end       int
}

func (f *figure) words(text string) string { return text[f.start:f.end] }

func (f *figure) ask(k Kind, text string) *Ask {
	a := &Ask{Kind: k, Words: f.words(text), Start: f.start, End: f.end}
	switch {
	case f.dim == dimCount && f.low == f.high:
		a.Number = f.low
	case f.dim == dimLength:
		a.Metres = f.high
	case f.dim == dimMass || f.dim == dimForce:
		a.Mass = true
	}
	return a
}

// single turns a number of the tree and its unit into a figure. The unit of
// the number it is joined to is borrowed where it has none.
func (t *tongue) single(text string, number, typed *lexer.Token, borrowed *unitWord) (*figure, *Ask) {
	f := &figure{start: number.Pos.Offset, end: number.Pos.Offset + len(number.Value), unit: borrowed}
	if typed != nil {
		f.end = typed.Pos.Offset + len(typed.Value)
		f.unit = t.unit(typed.Value)
	}
	v, ok := t.value(number.Value)
	switch {
	case !ok || twoPoints(number.Value, f.unit):
		return f, f.ask(OddNumber, text)
	case f.unit == nil:
		f.low, f.high = v, v
		return f, nil
	case f.unit.unsure:
		return f, whichTon(f, text, v)
	}
	f.dim, f.low, f.high = f.unit.dim, v*f.unit.factor, v*f.unit.factor
	return f, nil
}

// twoPoints says whether a point or comma in the number could be read in two
// ways: "1.400 kg" is 1.4 kg here and 1,400 kg elsewhere; "1,400 m" likewise.
func twoPoints(number string, u *unitWord) bool {
	if u == nil {
		return false
	}
	if pointed(number) {
		return u.dim == dimMass || u.dim == dimForce || u.factor == float64(unit.Millimetre)
	}
	heavy := u.factor == float64(unit.Tonne) || u.factor == float64(unit.Kilonewton)
	return grouped(number) && (heavy || u.dim == dimLength && u.system == Metric)
}

func whichTon(f *figure, text string, v float64) *Ask {
	a := f.ask(WhichTon, text)
	a.Fields = []Field{Weight}
	for _, t := range tons {
		a.Choices = append(a.Choices, Choice{Words: t.words, Field: Weight, System: t.system, Value: v * float64(t.factor)})
	}
	return a
}
