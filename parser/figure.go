package parser

import (
	"math"
	"strings"

	"heft/calc/unit"
)

// figure is one number, or a range of two, with its unit.
type figure struct {
	low, high float64 // SI; degrees
	unit      *unitWord
	dim       dimension
	pair      bool // butt and tip in one breath: "14/10 in"; low is the tip
	falling   bool // "14 to 10 in": a taper, or a range told backwards
	start     int
	end       int
}

func (f *figure) words(text string) string { return text[f.start:f.end] }

// single turns one quantity of the tree into a figure.
func single(text string, q *quantity, borrowed *unitWord) (*figure, *Ask) {
	f := &figure{start: q.Number.Pos.Offset, end: q.Number.Pos.Offset + len(q.Number.Value), unit: borrowed}
	if q.Minus != nil {
		f.start = q.Minus.Pos.Offset
	}
	if q.Unit != nil {
		f.end = q.Unit.Pos.Offset + len(q.Unit.Value)
		f.unit = unitsTyped[strings.TrimSuffix(fold(q.Unit.Value), ".")]
	}
	v, ok := value(q.Number.Value)
	if !ok || twoPoints(q.Number.Value, f.unit) {
		return f, f.ask(OddNumber, text)
	}
	if q.Minus != nil {
		v = -v
	}
	if f.unit == nil {
		f.low, f.high = v, v
		return f, nil
	}
	if f.unit.unsure {
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
	if pointed.MatchString(number) {
		return u.dim == dimMass || u.dim == dimForce || u.factor == float64(unit.Millimetre)
	}
	heavy := u.factor == float64(unit.Tonne) || u.factor == float64(unit.Kilonewton)
	return grouped.MatchString(number) && (heavy || u.dim == dimLength && u.system == Metric)
}

func whichTon(f *figure, text string, v float64) *Ask {
	a := f.ask(WhichTon, text)
	a.Fields = []Field{Weight}
	for _, t := range tons {
		a.Choices = append(a.Choices, Choice{Words: t.words, Field: Weight, System: t.system, Value: v * float64(t.factor)})
	}
	return a
}

func (f *figure) ask(k Kind, text string) *Ask {
	return &Ask{Kind: k, Words: f.words(text), Start: f.start, End: f.end}
}

// figures turns a measure of the tree into one figure, or into two where the
// join between them was only a pause.
func figures(text string, m *measure) ([]*figure, *Ask) {
	if m.Second == nil {
		f, ask := single(text, m.First, nil)
		return []*figure{f}, ask
	}
	second, ask2 := single(text, m.Second, nil)
	var borrowed *unitWord
	if m.First.Unit == nil {
		borrowed = second.unit
	}
	if m.Join.Type == tokColon {
		borrowed = nil
	}
	first, ask := single(text, m.First, borrowed)
	if ask != nil || ask2 != nil {
		return []*figure{first, second}, firstAsk(ask, ask2)
	}
	return join(text, m, first, second)
}

func firstAsk(asks ...*Ask) *Ask {
	for _, a := range asks {
		if a != nil {
			return a
		}
	}
	return nil
}

func join(text string, m *measure, a, b *figure) ([]*figure, *Ask) {
	whole := *a
	whole.end = b.end
	both := &whole
	switch {
	case m.Join.Type == tokColon:
		return ratio(text, both, a, b)
	case a.unit != b.unit && m.Second.Unit != nil:
		return unlike(text, m, both, a, b)
	case a.unit != nil && b.unit == nil:
		return []*figure{a, b}, b.ask(NoUnit, text)
	case m.Join.Type == tokSlash:
		both.pair = true
		both.low, both.high = b.low, a.high
		if a.low <= b.low || a.dim != dimLength {
			return []*figure{both}, both.ask(TwoReadings, text)
		}
		return []*figure{both}, nil
	case m.Join.Type == tokDash && m.First.Unit != nil && b.high > 1.3*a.low:
		return []*figure{both}, both.ask(TwoReadings, text)
	}
	both.low, both.high = math.Min(a.low, b.low), math.Max(a.high, b.high)
	both.falling = a.low > b.low
	return []*figure{both}, nil
}

// ratio reads "2:1" as two parts of line.
func ratio(text string, both, a, b *figure) ([]*figure, *Ask) {
	if a.unit != nil || b.unit != nil || b.low != 1 {
		return []*figure{both}, both.ask(OddNumber, text)
	}
	both.dim = dimRatio
	return []*figure{both}, nil
}

// unlike joins two numbers of different units: 6'-4" is one length, "14 in -
// 22 ft" is two numbers, "50 cm to 1 m" is a range.
func unlike(text string, m *measure, both, a, b *figure) ([]*figure, *Ask) {
	switch {
	case m.Join.Type == tokHyphen && feetInches(a, b):
		both.low, both.high = a.low+b.low, a.low+b.low
		return []*figure{both}, nil
	case m.Join.Type == tokDash || m.Join.Type == tokHyphen:
		return []*figure{a, b}, nil
	case m.Join.Type == tokTo && a.dim == b.dim && a.low < b.low && b.low <= 3*a.low:
		both.low, both.high = a.low, b.high
		return []*figure{both}, nil
	}
	return []*figure{both}, both.ask(TwoReadings, text)
}

// feetInches says whether two numbers can be one length in feet and inches.
func feetInches(a, b *figure) bool {
	foot, inch := unitsTyped["ft"], unitsTyped["in"]
	return a.unit == foot && b.unit == inch && a.low == a.high && b.low == b.high &&
		b.low < 12*inch.factor && b.low > 0 && a.low == math.Trunc(a.low/foot.factor+1e-9)*foot.factor
}
