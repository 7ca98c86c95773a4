package redirect

import (
	"math"

	"heft/calc/unit"
)

// OnLimb is a block's load as the limb that it hangs on feels it.
type OnLimb struct {
	Along  unit.Force // positive pulls outward, negative pushes in along the limb
	Across unit.Force // bends it
}

// Pushes says whether the load goes into the limb along its length more than
// it bends it.
func (o OnLimb) Pushes() bool { return -o.Along > o.Across }

// On splits a load along and across a limb that points away from its union:
//
//	along = P·cos ψ,  across = P·sin ψ
//
// in N, with ψ the angle between load and limb. It holds within FromDowns and
// Towards.
//
// The error is a *limits.OutOfRange.
//
// Errors: a limb bends by the load across times its distance from the union;
// a limb that curves is bent by the load along it too. Neither figure says
// that the limb holds.
//
// Source: statics.
func (l Load) On(limb Direction) (OnLimb, error) {
	if err := limb.check(); err != nil {
		return OnLimb{}, err
	}
	psi := float64(between(l.Direction.vector(), limb.vector()))
	return OnLimb{
		Along:  l.Force * unit.Force(math.Cos(psi)),
		Across: l.Force * unit.Force(math.Sin(psi)),
	}, nil
}
