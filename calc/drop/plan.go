package drop

import (
	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// Setup is a piece about to fall onto its line. Zero was not said, but for
// Drop, where it is a load set on at once, and Run, where it is a line held
// fast.
type Setup struct {
	Weight  unit.Range[unit.Mass]
	Drop    unit.Length // before the line is tight
	Run     unit.Length // let run from there, braked all the way
	Break   unit.Force  // strength of the line, on its label
	Class   Class       // how much it stretches
	Rope    unit.Length // from the piece over the block to what holds it
	Hitch   unit.Length // height of the block above the ground
	Between unit.Angle  // the legs of the line at the block, 0 parallel
}

// Fall is what the line and the block may see.
type Fall struct {
	Static  unit.Force             // the heavy end hanging still
	Sudden  unit.Force             // the heavy end set on at once, without a fall
	Peak    unit.Range[unit.Force] // in the line: a bound at each end
	Block   unit.Range[unit.Force] // what the peak loads the block with
	OfBreak float64                // the high end of Peak over the break strength
}

// Plan bounds the peak of a fall:
//
//	low  = Braked, of the light end on the softest line
//	high = Peak, of the heavy end on the stiffest line;
//	       with a run, no more than 2·W·(1 + h/s)
//
// in N, with the ends of its Class, the latter shortened by the friction
// of a block. Twice the average is the peak of a pull that rises evenly from
// nothing over the run. The block carries both legs: see block.Load. It holds
// within the ranges of Braked and Of.
//
// The error is an *limits.OutOfRange, an *limits.Missing, or an
// *limits.Contradiction where the high end would break the line or the piece
// would be on the ground before its run is over.
//
// Errors: as Peak and Of. The bounds are those of the method, not of trees:
// no force table to hold them against was found. A knot takes up to half of
// the break strength, and a run that ends in a jerk is a fall from higher up.
//
// Source: energy. Peaks of ten times the weight and more were reported to the
// trade press from earlier studies.
func Plan(s Setup) (Fall, error) {
	soft, stiff, err := s.check()
	if err != nil {
		return Fall{}, err
	}
	heavy := s.Weight.High
	f := Fall{Static: heavy.Weight(), Sudden: 2 * heavy.Weight()}
	if f.Peak.Low, err = Braked(s.Weight.Low, s.Drop, s.Run, soft); err != nil {
		return Fall{}, err
	}
	if f.Peak.High, err = Peak(heavy, s.Drop, stiff); err != nil {
		return Fall{}, err
	}
	if s.Run > 0 {
		f.Peak.High = min(f.Peak.High, rising(heavy, s.Drop, s.Run))
	}
	if f.Peak.High >= s.Break {
		return Fall{}, &limits.Contradiction{First: limits.Tension, Second: limits.RopeBreak,
			Got: float64(f.Peak.High), Limit: float64(s.Break),
			Why: "the line may break: take a smaller piece, or let it run"}
	}
	f.OfBreak = float64(f.Peak.High / s.Break)
	return f, f.load(s.Between)
}

// load finds what the peaks load the block with.
func (f *Fall) load(between unit.Angle) (err error) {
	if f.Block.Low, err = block.Load(f.Peak.Low, between); err != nil {
		return err
	}
	f.Block.High, err = block.Load(f.Peak.High, between)
	return err
}

// check refuses what cannot be planned, and finds how soft and how stiff the
// line may be.
func (s *Setup) check() (soft, stiff Stiffness, err error) {
	if err := rope.Loads.CheckBoth(limits.Weight, s.Weight); err != nil {
		return 0, 0, err
	}
	if err := check(s.Weight.High, s.Drop, s.Run); err != nil {
		return 0, 0, err
	}
	if s.Break == 0 {
		return 0, 0, &limits.Missing{Quantity: limits.RopeBreak}
	}
	if s.Rope == 0 {
		return 0, 0, &limits.Missing{Quantity: limits.RopeLength}
	}
	if s.Hitch != 0 {
		if err := rope.Hitches.Check(limits.HitchHeight, s.Hitch); err != nil {
			return 0, 0, err
		}
		if limits.Above(s.Run, s.Hitch) {
			return 0, 0, &limits.Contradiction{First: limits.Run, Second: limits.HitchHeight,
				Got: float64(s.Run), Limit: float64(s.Hitch), Why: "the piece would be on the ground first"}
		}
	}
	return s.Class.ends(s.Break, s.Rope)
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "drop"
	return []limits.Domain{
		Drops.Domain(method, limits.Drop),
		Runs.Domain(method, limits.Run),
		Breaks.Domain(method, limits.RopeBreak),
		Ropes.Domain(method, limits.RopeLength),
		Stiffnesses.Domain(method, limits.Stiffness),
		Workings.Domain(method, limits.WorkingLoad),
	}
}
