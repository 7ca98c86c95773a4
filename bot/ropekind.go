package bot

import (
	"math"
	"strings"

	"heft/calc/drop"
	"heft/calc/unit"
	"heft/parser"
)

// A ropeKind is a note of the word file that says what a rope stretches like,
// and its class.
type ropeKind struct {
	note  string
	class drop.Class
}

var ropeKinds = []ropeKind{
	{"rope-static", drop.Static}, {"rope-low-stretch", drop.LowStretch}, {"rope-stretchy", drop.Stretchy},
	{"rope-double-braid", drop.DoubleBraid}, {"rope-three-strand", drop.ThreeStrand}, {"rope-kernmantle", drop.Kernmantle},
}

// kindName is what to call a rope of a kind.
var kindName = map[string]string{
	"rope-static": "static rope", "rope-low-stretch": "low-stretch rope", "rope-stretchy": "stretchy rope",
	"rope-double-braid": "double braid", "rope-three-strand": "three-strand", "rope-kernmantle": "kernmantle",
}

// kindsOf are the kinds that a question names.
func kindsOf(q parser.Question) []ropeKind {
	var out []ropeKind
	for _, k := range ropeKinds {
		for _, n := range q.Notes {
			if n == k.note {
				out = append(out, k)
			}
		}
	}
	return out
}

// classOf is the stretch of the rope that was named; of two kinds, any of
// both.
func classOf(q parser.Question) drop.Class {
	var c drop.Class
	for _, k := range kindsOf(q) {
		c = c.With(k.class)
	}
	return c
}

// ropePlanned says what rope was planned on.
func (a *answer) ropePlanned(s drop.Setup) string {
	v, q := a.voice, a.question
	name := v.word("rope")
	if kinds := kindsOf(q); len(kinds) > 0 {
		var names []string
		for _, k := range kinds {
			names = append(names, v.word(kindName[k.note]))
		}
		name = strings.Join(names, ", ")
	}
	if x, ok := q.Get(parser.RopeDiameter); ok {
		name = quote(x.Words) + " " + name
	}
	if s.Class == drop.Stretchy {
		return v.say("Assumed: %s of %s stretches, at its stiffest a soft double braid, new and dry, legs side by side.", v.alongDown(s.Rope), name)
	}
	return v.say("Assumed: %s of %s stretches, planned on the stiffest sold, new and dry, legs side by side.", v.alongDown(s.Rope), name)
}

// dropMovedBy says which input moves the peak most. The weight is planned on
// its heavy end already.
func (a *answer) dropMovedBy(s drop.Setup, base unit.Force) string {
	v := a.voice
	var trials []trial
	try := func(s drop.Setup, say func(force string) string) {
		f, err := drop.Plan(s)
		switch {
		case err == nil:
			trials = append(trials, trial{f.Peak.High, say(v.heavy(f.Peak.High.Held()))})
		case s.Drop <= drop.Drops.High:
			trials = append(trials, trial{unit.Force(math.Inf(1)), say(v.word("it may break"))})
		}
	}
	higher := s
	higher.Drop = v.further(s.Drop)
	try(higher, func(f string) string {
		return v.say("If it falls %s, not %s: %s.", v.along(unit.Exactly(higher.Drop)), v.along(unit.Exactly(s.Drop)), f)
	})
	if shorter := s; v.shorter(s.Rope) >= drop.Ropes.Low {
		shorter.Rope = v.shorter(s.Rope)
		try(shorter, func(f string) string {
			return v.say("If %s of rope, not %s: %s.", v.along(unit.Exactly(shorter.Rope)), v.along(unit.Exactly(s.Rope)), f)
		})
	}
	if s.Run > 0 {
		less := s
		less.Run = v.shorter(s.Run)
		try(less, func(f string) string {
			return v.say("If it runs %s, not %s: %s.", v.along(unit.Exactly(less.Run)), v.along(unit.Exactly(s.Run)), f)
		})
	}
	return movedMost(base, trials)
}
