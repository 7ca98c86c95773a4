package limits

import (
	"fmt"
	"math"
	"strconv"
)

// OutOfRange names a quantity outside the range in which a method holds. Got,
// Low and High are in the unit of the quantity's suffix.
type OutOfRange struct {
	Quantity       Quantity
	Got, Low, High float64
	Why            string // one short plain clause
}

// Error says it in plain English and SI.
func (e *OutOfRange) Error() string {
	name, unit := e.Quantity.words()
	if math.IsNaN(e.Got) {
		return name + " is not a number"
	}
	return fmt.Sprintf("%s %s%s is outside %s to %s%s: %s",
		name, figure(e.Got), unit, figure(e.Low), figure(e.High), unit, e.Why)
}

// Contradiction names two quantities that cannot both be right. Got is what
// was said of the first, Limit what the second allows it.
type Contradiction struct {
	First, Second Quantity
	Got, Limit    float64
	Why           string // one short plain clause
}

// Error says it in plain English and SI.
func (e *Contradiction) Error() string {
	first, unit := e.First.words()
	second, _ := e.Second.words()
	return fmt.Sprintf("%s %s%s against %s%s by the %s: %s",
		first, figure(e.Got), unit, figure(e.Limit), unit, second, e.Why)
}

// Missing names a quantity without which there is no answer.
type Missing struct{ Quantity Quantity }

// Error says it in plain English.
func (e *Missing) Error() string {
	name, _ := e.Quantity.words()
	return name + " is missing"
}

// figure writes a number as a person would, to four places that count.
func figure(v float64) string {
	return strconv.FormatFloat(v, 'g', 4, 64)
}
