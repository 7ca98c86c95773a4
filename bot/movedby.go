package bot

import (
	"math"

	"heft/calc/swing"
	"heft/calc/unit"
	"heft/parser"
)

// slipOfEye is how far off a size told by eye may be (common practice, no
// source).
const slipOfEye = 1.25

// A trial is an answer with one input a slip of the eye further off, worded
// in one sentence.
type trial struct {
	force unit.Force
	words string // a whole sentence, said only where the trial is the worst
}

// movedMost is the sentence of the trial that raises a force most, empty where
// none does by a step that would be spoken.
func movedMost(base unit.Force, trials []trial) string {
	most := trial{force: base * 1.01}
	for _, t := range trials {
		if t.force > most.force {
			most = t
		}
	}
	return most.words
}

// further is a length a slip of the eye longer, in whole feet or half metres,
// as a crew would say it.
func (s speaker) further(l unit.Length) unit.Length {
	step := unit.Foot
	if s.metric {
		step = 0.5
	}
	return unit.Length(math.Ceil(float64(l/step)*slipOfEye-1e-9)) * step
}

// shorter likewise.
func (s speaker) shorter(l unit.Length) unit.Length {
	step := unit.Foot
	if s.metric {
		step = 0.5
	}
	return unit.Length(math.Floor(float64(l/step)/slipOfEye+1e-9)) * step
}

// swingMovedBy says which input moves the pull of a swing most. The weight is
// planned on its heavy end already.
func (a *answer) swingMovedBy(s swing.Setup, base unit.Force) string {
	v, q := a.voice, a.question
	var trials []trial
	try := func(s swing.Setup, say func(force string) string) {
		w, err := swing.Plan(s)
		if err != nil {
			return // past what can be planned
		}
		force := max(w.Bottom.Line, w.Askew.Line)
		trials = append(trials, trial{force, say(v.heavy(force.Held()))})
	}
	if q.Has(parser.StartAngle) {
		steeper := s
		steeper.Start = s.Start * slipOfEye
		try(steeper, func(f string) string {
			return v.say("If %s° from plumb, not %s°: %s on the line.", trimmed(math.Ceil(steeper.Start.Degrees()), 0), trimmed(s.Start.Degrees(), 0), f)
		})
		return movedMost(base, trials)
	}
	aside := q.Length(parser.Sideways).High
	tryStart := func(offset, line unit.Length, say func(string) string) {
		moved := s
		var err error
		if moved.Start, err = swing.Start(offset, line); err != nil {
			return
		}
		moved.Line = line
		try(moved, say)
	}
	out := v.further(aside)
	tryStart(out, s.Line, func(f string) string {
		return v.say("If %s to the side, not %s: %s on the line.", v.along(unit.Exactly(out)), v.along(unit.Exactly(aside)), f)
	})
	line := v.shorter(s.Line)
	tryStart(aside, line, func(f string) string {
		return v.say("If %s of line out, not %s: %s on the line.", v.along(unit.Exactly(line)), v.along(unit.Exactly(s.Line)), f)
	})
	return movedMost(base, trials)
}
