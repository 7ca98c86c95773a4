package calc

import (
	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/rope"
	"heft/calc/unit"
	"heft/calc/wood"
)

// Work works a job out. A weight comes from the piece, from the crew, or from
// both: then the plan runs from the lighter light end to the heavier heavy
// end. Everything of the lower is planned on the heavy end.
//
// The error is that of the first step that refuses: see piece.Weigh,
// rope.Plan, rope.Lowering.Past, rope.Held, rope.Layout.Needed and block.Load; or a *limits.Missing or
// *limits.OutOfRange for the weight. Then there is no result at all.
func Work(j Job) (Result, error) {
	var r Result
	if err := r.weigh(j); err != nil {
		return Result{}, err
	}
	if j.Lower || !j.Hitch.IsZero() {
		if err := r.lower(j); err != nil {
			return Result{}, err
		}
	}
	if j.Wraps != 0 {
		held, err := rope.Held(r.Weight.Low, r.Weight.High, rope.Wraps(j.Wraps))
		if err != nil {
			return Result{}, err
		}
		r.AtWraps = &held
	}
	if j.Slipped && r.Lowering != nil {
		past, err := r.Lowering.Past(rope.Wraps(j.Wraps))
		if err != nil {
			return Result{}, err
		}
		r.Lowering = &past
	}
	return r, nil
}

// weigh finds the weight to plan with.
func (r *Result) weigh(j Job) error {
	if j.Piece == nil && j.Given.IsZero() {
		return &limits.Missing{Quantity: limits.Weight}
	}
	if !j.Given.IsZero() {
		if err := GivenWeights.CheckBoth(limits.Weight, j.Given); err != nil {
			return err
		}
		r.Weight = given(j.Given)
	}
	if j.Piece == nil {
		return nil
	}
	w, err := piece.Weigh(*j.Piece)
	if err != nil {
		return err
	}
	r.assumeOfWood(j.Piece)
	if j.Given.IsZero() {
		r.Weight = w
		return nil
	}
	r.Assumed = append(r.Assumed, HeavierOfTwo)
	r.Disagreement = limits.Above(w.Low, j.Given.Low) || limits.Above(j.Given.High, w.High)
	calculated := w
	r.Weight, r.Piece = heavier(r.Weight, w), &calculated
	return nil
}

// assumeOfWood notes what the weighing of a piece takes for granted.
func (r *Result) assumeOfWood(p *piece.Piece) {
	r.Assumed = append(make([]Assumption, 0, 10), OverBark)
	if p.Condition == piece.Green {
		r.Assumed = append(r.Assumed, GreenWood)
	}
	switch p.Wood.Basis {
	case wood.GenusAverage:
		r.Assumed = append(r.Assumed, GenusAverage)
	case wood.GroupDefault:
		r.Assumed = append(r.Assumed, GroupDefault)
	}
}

// given is the crew's own weight, as it was said.
func given(said unit.Range[unit.Mass]) piece.Weight {
	w := piece.Weight{Low: said.Low, Likely: said.Middle(), High: said.High,
		Spread: []piece.Source{piece.Given}, Method: piece.ByCrew}
	if !said.Single() {
		w.Spread = append(w.Spread, piece.SaidRange)
	}
	return w
}

// heavier joins the crew's weight and the calculated: the outer ends, and the
// heavier of what is likely.
func heavier(crew, calculated piece.Weight) piece.Weight {
	w := calculated
	w.Low = min(w.Low, crew.Low)
	w.Likely = max(w.Likely, crew.Likely)
	w.High = max(w.High, crew.High)
	w.Spread = append(crew.Spread, calculated.Spread...)
	return w
}

// lower plans the lower, the load on the block and, where the height of the
// hitch is known, the rope.
func (r *Result) lower(j Job) error {
	r.assumeForLowering(&j)
	var between unit.Angle
	if j.Between != nil {
		between = *j.Between
	}
	plan, err := rope.Plan(r.Weight.Low, r.Weight.High, rope.Hands{People: j.People, Each: j.Each})
	if err != nil {
		return err
	}
	r.Lowering = &plan
	if r.Block, err = block.Load(r.Weight.High.Weight(), between); err != nil {
		return err
	}
	if err := rope.PartsOfLine.Check(limits.Parts, float64(j.Parts)); err != nil || j.Hitch.IsZero() {
		return err
	}
	if err := rope.Hitches.CheckBoth(limits.HitchHeight, j.Hitch); err != nil {
		return err
	}
	laid := j.Laid
	laid.Hitch, laid.Parts, laid.Wraps = j.Hitch.High, j.Parts, max(plan.Start, rope.Wraps(j.Wraps))
	r.Rope, err = laid.Needed()
	r.Laid = laid
	return err
}

// assumeForLowering fills in what the crew did not say of the lower.
func (r *Result) assumeForLowering(j *Job) {
	r.Assumed = append(r.Assumed, SlickRope, NoDrop)
	if j.People == 0 {
		j.People = 1
		r.Assumed = append(r.Assumed, OnePerson)
	}
	if j.Each == 0 {
		j.Each = rope.PerPerson
	}
	if j.Between == nil {
		r.Assumed = append(r.Assumed, StraightLegs)
	}
	if j.Parts == 0 {
		j.Parts = 1
		r.Assumed = append(r.Assumed, SimpleLower)
	}
	if j.Parts > 1 {
		r.Assumed = append(r.Assumed, WholeOnDrum)
	}
}
