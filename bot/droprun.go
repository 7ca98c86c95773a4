package bot

import (
	"heft/calc/drop"
	"heft/calc/gear"
	"heft/calc/unit"
)

// tellRun says how far a piece must be let run so that its fall stays within the rope's
// working load. That is the rope's as it left the shop, less a knot that was named; what is
// left of it with one that was not is said beside it, as somebody tied the piece.
func (a *answer) tellRun(o *dropObject, s drop.Setup, working unit.Force) {
	v := a.voice
	stop, err := drop.RunFor(s.Weight.High, s.Drop, working)
	if err != nil {
		a.problems = append(a.problems, v.say("The rope's working load is %s: no run spares it that. Take a piece well under %s.",
			v.pullHad(working), v.atMost((working/2).Held())))
		return
	}
	o.Run = float64(stop.Plan)
	a.lines = append(a.lines, v.say("Let it run %s or more to stay within %s, the rope's working load.", v.alongUp(stop.Plan), v.pullHad(working)))
	if namesKnot(a.question) {
		return
	}
	knotted := working * unit.Force(gear.Keeps(gear.AnyOtherKnot).Kept.Low)
	if stop, err = drop.RunFor(s.Weight.High, s.Drop, knotted); err != nil {
		a.problems = append(a.problems, v.say("A knot that you do not name leaves %s of the rope's working load: no run spares it that. Name it, or take a smaller piece.", v.pullHad(knotted)))
		return
	}
	a.lines = append(a.lines, v.say("A knot that you do not name leaves %s of that: let it run %s or more.", v.pullHad(knotted), v.alongUp(stop.Plan)))
}
