package bot

import (
	"errors"

	"heft/calc/anchor"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// workAnchor screens a limb or spar that something is to hang on.
func (a *answer) workAnchor() error {
	q := a.question
	load := q.Mass(parser.Weight).High
	stem := anchor.Stem{Scientific: q.Species.Value.Scientific, Diameter: thinnest(q)}
	if q.Condition != nil && q.Condition.Value == parser.Dead {
		stem.Condition = piece.Dead
	}
	lever := q.Length(parser.Tie).High
	r, err := anchor.Screen(stem, anchor.Pull{Force: load.Weight(), Lever: lever, ToAxis: 90 * unit.Degree})
	if u, ok := errors.AsType[*anchor.Unscreenable](err); ok {
		a.refuse(a.voice.say("Nothing to screen it with: %s.", a.voice.word(u.Why)))
		return nil
	}
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(o *object) { o.Anchor = &anchorObject{Used: r.Used} }
	a.tellAnchor(r, load, lever)
	return nil
}

// anchorObject is a screening as scripts read it.
type anchorObject struct {
	Used float64 `json:"used_fraction"`
}

// thinnest is the smallest of the thicknesses that were said: the end that
// bends first is not known.
func thinnest(q parser.Question) unit.Length {
	for _, f := range acrossFields {
		if q.Has(f) {
			return q.Length(f).Low
		}
	}
	return 0
}

func (a *answer) tellAnchor(r anchor.Screening, load unit.Mass, lever unit.Length) {
	v := a.voice
	used := trimmed(100*r.Used+0.5, 0)
	tree, thick := capital(a.question.Species.Value.Name), v.across(unit.Exactly(thinnest(a.question)))
	hung, out := v.heavy(load), v.along(unit.Exactly(lever))
	head := v.say("%s, %s thick, with %s hung %s out: uses %s%% of what such limbs broke at.", tree, thick, hung, out, used)
	if r.Used >= 1 {
		head = v.say("DO NOT. %s, %s thick, with %s hung %s out: uses %s%% of what such limbs broke at.", tree, thick, hung, out, used)
		a.problems = append(a.problems, v.say("At 100%% the branches in the tests broke. Take a smaller piece, or hang it nearer the trunk."))
	}
	a.lines = []string{head,
		v.word("A screening figure, never an approval: it knows nothing of decay, union, lean, included bark or roots."),
		v.word("A block there sees about twice the piece, a snubbed or dropped one far more: ask with that load."),
		v.say("Assumed: round, sound, green, pulled square to the limb, its own weight left out, 40%% of clear wood's strength.")}
	if r.Strength.Status == anchor.Memory || r.Strength.Basis == anchor.WeakestOfGenus {
		a.lines = append(a.lines, v.word("Its strength figure is not checked for this tree: one more reason to stay far below."))
	}
}
