package drop

import (
	"math"

	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// Where the method holds.
var (
	// Drops are the falls before the line is tight.
	Drops = limits.Range[unit.Length]{Low: 0, High: 10,
		Why: "no line in a tree is asked to stop a longer fall"} // common practice, no source
	// Runs are how far the line is let run, braked, once it is tight.
	Runs = limits.Range[unit.Length]{Low: 0, High: 30, Why: slip} // common practice, no source
)

// Peak is the most a line pulls that stops a fall by its stretch alone, held
// fast at its end:
//
//	P = W·(1 + √(1 + 2·h·k/W))
//
// in N, with W the weight in N, h the fall before the line is tight in m and k
// the stiffness in N/m: 2·W for a load set on at once, with no fall at all.
// It holds within rope.Loads, Drops and Stiffnesses.
//
// Errors: a line is no straight spring. The spar that bends, the knots that
// tighten and the piece that turns take some off, and a stiffer line than
// planned puts some on.
//
// Source: energy; worked problems of strength-of-materials textbooks.
func Peak(heavy unit.Mass, drop unit.Length, k Stiffness) (unit.Force, error) {
	return Braked(heavy, drop, 0, k)
}

// Braked is the least peak of a line that is let run: it stretches until its
// pull is P, and from then on runs at P, as over a perfect brake.
//
//	P²/2k + P·s = W·(h + s + P/k)
//	P = W − k·s + √(k²·s² + W² + 2·k·W·h)
//
// in the terms of Peak, with s the run in m. With no run it is Peak; on a line
// that does not stretch, Average. It holds as Peak, and within Runs.
//
// Errors: no hand brakes as evenly. A run that ends in a jerk is a fall of
// its own, from as high as it ran.
//
// Source: derived here from the energy.
func Braked(heavy unit.Mass, drop, run unit.Length, k Stiffness) (unit.Force, error) {
	if err := check(heavy, drop, run); err != nil {
		return 0, err
	}
	if err := Stiffnesses.Check(limits.Stiffness, k); err != nil {
		return 0, err
	}
	weight := float64(heavy.Weight())
	slid := float64(k) * float64(run)
	squares := weight * (weight + 2*float64(k)*float64(drop))
	// The same, without the difference of two large numbers.
	return unit.Force(weight + squares/(slid+math.Sqrt(slid*slid+squares))), nil
}

// Average is the pull that stops the piece over a run, were it even all the
// way. Whatever the brake, the peak is no less:
//
//	F = W·(1 + h/s)
//
// in the terms of Braked, with s all the way from tight line to standstill,
// stretch and run together. It holds within rope.Loads, Drops and Runs, for a
// run above nought.
//
// Source: energy.
func Average(heavy unit.Mass, drop, run unit.Length) (unit.Force, error) {
	if err := check(heavy, drop, run); err != nil {
		return 0, err
	}
	if run == 0 {
		return 0, &limits.Missing{Quantity: limits.Run}
	}
	return heavy.Weight() * unit.Force(1+drop/run), nil
}

// rising is the peak of a pull that rises evenly from nothing to the end of
// the run: twice the average. It is infinite for a fall without a run.
func rising(heavy unit.Mass, drop, run unit.Length) unit.Force {
	if drop == 0 {
		return 2 * heavy.Weight()
	}
	return 2 * heavy.Weight() * unit.Force(1+drop/run)
}

func check(heavy unit.Mass, drop, run unit.Length) error {
	if err := rope.Loads.Check(limits.Weight, heavy); err != nil {
		return err
	}
	if err := Drops.Check(limits.Drop, drop); err != nil {
		return err
	}
	return Runs.Check(limits.Run, run)
}
