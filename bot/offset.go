package bot

import (
	"math"

	"heft/calc/hinge"
	"heft/calc/unit"
	"heft/parser"
)

// refusedSide refuses a top block that stands where no limb can be stood up
// under it, and says so.
func (a *answer) refusedSide() bool {
	q, v := a.question, a.voice
	switch out := q.Length(parser.BlockOut); {
	case q.Has(parser.Sideways):
		a.refuse(v.say("DO NOT: a top block %s to the side pulls the limb across its hinge, which tears. Bring the block in line with limb and hinge.",
			v.along(q.Length(parser.Sideways))))
	case q.Has(parser.BlockOut, parser.BlockBehind) && out.High > 0 && q.Has(parser.BlockBehind):
		a.refuse(v.say("The top block cannot be both behind the hinge and out toward the limb. Say one."))
	case out.High > 0:
		reach := math.Atan2(float64(q.Length(parser.BlockHeight).Low), float64(out.High)) * 180 / math.Pi
		a.refuse(v.say("DO NOT: a top block %s out toward the limb never brings it upright: it pulls to %s° at most, harder and harder. Set the block above the hinge or behind it.",
			v.along(out), trimmed(math.Floor(reach), 0)))
	default:
		return false
	}
	return true
}

// worstRaise works a raise out at both ends of how far the block stands behind
// the hinge and of where it is tied, and keeps one that must be refused, or else
// the one that pulls more: the near tie is harder to start and may turn the limb
// over, the far one may let the blocks meet. The most rope of all of them is
// what has to be hauled in and brought along.
func worstRaise(s hinge.Setup, q parser.Question) (hinge.Setup, hinge.Raising, error) {
	var worst hinge.Raising
	var travel, rope unit.Length
	var found bool
	at, tie, behind := s, q.Length(parser.Tie), q.Length(parser.BlockBehind)
	for _, offset := range []unit.Length{behind.Low, behind.High} {
		for _, tied := range []unit.Length{tie.High, tie.Low} {
			at.Offset, at.Tie = offset, tied
			r, err := hinge.Raise(at)
			if err != nil {
				return at, r, err
			}
			travel, rope = max(travel, r.Travel), max(rope, r.Rope)
			if !found || harder(r, worst) {
				worst, found, s = r, true, at
			}
		}
	}
	worst.Travel, worst.Rope = travel, rope
	return s, worst, nil
}

// harder says whether a raise is to be refused where another is not, or pulls
// more.
func harder(r, than hinge.Raising) bool {
	bad := func(r hinge.Raising) bool { return r.TwoBlocks != nil || r.TurnsOver }
	switch {
	case bad(r) != bad(than):
		return bad(r)
	case r.TwoBlocks != nil && than.TwoBlocks != nil:
		return r.TwoBlocks.RaiseBy > than.TwoBlocks.RaiseBy
	}
	return r.Start > than.Start
}

// tellLower says what the line sees where the limb lies ten degrees lower than
// it was judged to, where that is more.
func (a *answer) tellLower(s hinge.Setup) {
	const lower = 10 * unit.Degree
	now, err := hinge.Raise(s)
	if err != nil {
		return
	}
	s.Angle -= lower
	if then, err := hinge.Raise(s); err == nil && then.Line > now.Line {
		a.lines = append(a.lines, a.voice.say("If the limb lies 10° lower, the line sees %s.", a.voice.load(then.Line)))
	}
}

// tellOffset says where the top block was taken to stand, and what that does.
func (a *answer) tellOffset(s hinge.Setup) {
	v := a.voice
	passes := a.passes(s.Tackle)
	if n := len(s.Redirects); n > 0 {
		a.lines = append(a.lines, v.say("The haul is led over %s, counted in; they load the tree besides.", v.redirects(n)))
	}
	a.tellLeads(s.Tackle)
	a.tellLower(s)
	if s.Offset <= 0 {
		a.lines = append(a.lines, v.say("Assumed: top block straight above the hinge, balance at half length at most, %s.", passes))
		return
	}
	a.lines = append(a.lines, v.say("Assumed: balance at half length at most, %s.", passes))
	a.cautions = append(a.cautions, v.say("Block %s behind the hinge: when the hinge parts, the limb swings that far back to hang under it. Keep the climber out of there.",
		v.along(unit.Exactly(s.Offset))))
}
