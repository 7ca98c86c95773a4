package limits

import (
	"math"

	"heft/calc/unit"
)

// slack is how far, as a share of the bound, a value may lie beyond it: a
// bound said in feet must not be missed by the last bit of the conversion.
const slack = 1e-9

// Above says whether v lies above the bound by more than the last bits of a
// conversion: 12 in are not above 1 ft. It is for bounds of nought and more.
func Above[T ~float64](v, bound T) bool {
	return float64(v) > float64(bound)*(1+slack)
}

// Range is where a method holds, both ends included.
type Range[T ~float64] struct {
	Low, High T
	Why       string // why it ends there, one short plain clause
}

// Check returns an *OutOfRange for a value that is not a number or not within
// the range.
func (r Range[T]) Check(q Quantity, v T) error {
	low, high, got := float64(r.Low), float64(r.High), float64(v)
	if got >= low-slack*math.Abs(low) && got <= high+slack*math.Abs(high) {
		return nil
	}
	return &OutOfRange{Quantity: q, Got: got, Low: low, High: high, Why: r.Why}
}

// CheckBoth checks the two ends of a range said, and returns a
// *Contradiction where they are the wrong way round.
func (r Range[T]) CheckBoth(q Quantity, v unit.Range[T]) error {
	if err := r.Check(q, v.Low); err != nil {
		return err
	}
	if err := r.Check(q, v.High); err != nil {
		return err
	}
	if Above(v.Low, v.High) {
		return &Contradiction{First: q, Second: q, Got: float64(v.Low), Limit: float64(v.High),
			Why: "the low end lies above the high end"}
	}
	return nil
}

// Domain is one range of validity as a row of a table.
type Domain struct {
	Method    string // the package whose formulas it guards
	Quantity  Quantity
	Low, High float64 // in the unit of the quantity's suffix
	Why       string
}

// Domain is the range as a row of a table.
func (r Range[T]) Domain(method string, q Quantity) Domain {
	return Domain{Method: method, Quantity: q, Low: float64(r.Low), High: float64(r.High), Why: r.Why}
}
