package bot

import (
	"math"
	"slices"
	"strings"

	"heft/calc/unit"
	"heft/parser"
)

// converted says a number in the other units that a crew meets it in, to four digits and
// not rounded to plan on: "22 ft = 264 in = 670.6 cm = 6.706 m".
func (s speaker) converted(x parser.Quantity) string {
	l, m := unit.Length(x.Low), unit.Mass(x.Low)
	same := []string{exactly(m.Pounds()) + " lb", exactly(float64(m)) + " kg", exactly(float64(m.Weight()/unit.Kilonewton)) + " kN"}
	if x.Field == parser.Length {
		same = []string{exactly(l.Inches()) + " in", exactly(l.Feet()) + " ft", exactly(float64(l/unit.Centimetre)) + " cm", exactly(float64(l)) + " m"}
	}
	plain := func(words string) string {
		return strings.ToLower(strings.NewReplacer(" ", "", ",", "").Replace(words))
	}
	same = slices.DeleteFunc(same, func(words string) bool { return plain(words) == plain(x.Words) })
	all := strings.Join(append([]string{trimQuote(x.Words)}, same...), " = ")
	if x.Field == parser.Length {
		return all
	}
	return s.say("%s, hanging still.", all)
}

// exactly says a number to four digits.
func exactly(v float64) string {
	const digits = 4
	whole := 1
	for n := math.Abs(v); n >= 10; n /= 10 {
		whole++
	}
	return trimmed(v, max(0, digits-whole))
}
