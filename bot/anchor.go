package bot

import (
	"errors"
	"slices"
	"strings"

	"heft/calc/anchor"
	"heft/calc/block"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// noteLean is the note of the word file for a tree or a limb that leans.
const noteLean = "lean"

// onAnchor is what hangs on an anchor, and how.
type onAnchor struct {
	stem   anchor.Stem
	pull   anchor.Pull
	blocks bool // the pull is that of a block which the piece is rigged through
	spar   bool
	turned unit.Angle // how far the rope turns at a redirect that hangs there
}

// workAnchor screens a limb or spar that something is to hang on.
func (a *answer) workAnchor() error {
	h, err := hungOn(a.question)
	if err != nil {
		return err
	}
	r, err := anchor.Screen(h.stem, h.pull)
	if u, ok := errors.AsType[*anchor.Unscreenable](err); ok {
		a.refuse(a.voice.say("Nothing to screen it with: %s.", a.voice.word(u.Why)))
		return nil
	}
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(o *object) { o.Anchor = &anchorObject{Used: r.Used} }
	a.tellAnchor(r, h)
	return nil
}

// anchorObject is a screening as scripts read it.
type anchorObject struct {
	Used float64 `json:"used_fraction"`
}

// hungOn is the stem and the pull that a question tells of. A limb is pulled
// square to it, which bends it most; so is a spar whose pull has no angle.
// Where the anchor limb is named apart from the piece, the piece hangs from a
// block on it.
func hungOn(q parser.Question) (onAnchor, error) {
	h := onAnchor{spar: q.OnSpar() && !q.Has(parser.Tie)}
	h.stem = anchor.Stem{Scientific: q.Species.Value.Scientific, Diameter: thinnest(q)}
	if q.Condition != nil && q.Condition.Value == parser.Dead {
		h.stem.Condition = piece.Dead
	}
	h.pull = anchor.Pull{Force: q.Mass(parser.Weight).High.Weight(), Lever: q.Length(parser.Tie).High, ToAxis: 90 * unit.Degree}
	if h.spar {
		h.pull.Lever = q.Length(parser.HitchHeight).High
	}
	if x, ok := q.Get(parser.StartAngle); ok && h.spar {
		h.pull.ToAxis = unit.Angle(min(x.High, 90)) * unit.Degree
	}
	if slices.ContainsFunc(q.Notes, parser.Redirecting) {
		h.turned = turnedMost(q)
		var err error
		h.pull.Force, err = block.Load(h.pull.Force, 180*unit.Degree-h.turned)
		h.blocks = true
		return h, err
	}
	apart := slices.Contains(q.Notes, parser.NoteAnchorLimb) || slices.Contains(q.Notes, parser.NoteAnchorSpar)
	if h.blocks = apart && q.Shape != nil || slices.Contains(q.Notes, parser.NoteBlockHung); !h.blocks {
		return h, nil
	}
	var err error
	h.pull.Force, err = block.Load(h.pull.Force, 0)
	return h, err
}

// turnedMost is the most that the rope turns at a redirect: right back, where
// nothing is told of it, so that the redirect pulls with twice what is in the
// line.
func turnedMost(q parser.Question) unit.Angle {
	turned := unit.Angle(0)
	for _, b := range bends(q) {
		turned = max(turned, b.turn)
	}
	if turned == 0 {
		return 180 * unit.Degree
	}
	return turned
}

// tellRedirected says what a redirect makes of the pull in its line.
func (a *answer) tellRedirected(h onAnchor) {
	v, q := a.voice, a.question
	if h.turned == 0 {
		return
	}
	line, load := v.heavy(q.Mass(parser.Weight).High), v.heavy(h.pull.Force.Held())
	if q.Has(parser.Turn, parser.BlockAngle) {
		a.lines = append(a.lines, v.say("It holds a redirect: %s in the line, turned %s, pulls on it with %s.", line, degrees(h.turned), load))
		return
	}
	a.lines = append(a.lines, v.say("It holds a redirect: %s in the line, taken as turned right back, pulls on it with %s. Tell me how far the rope turns there.", line, load))
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

func (a *answer) tellAnchor(r anchor.Screening, h onAnchor) {
	a.lines = []string{a.anchorHead(r, h)}
	if r.Used >= 1 {
		a.problems = append(a.problems, a.voice.say("At 100%% the branches in the tests broke. Take a smaller piece, or hang it nearer the base."))
	}
	a.tellRedirected(h)
	if h.spar && slices.Contains(a.question.Notes, parser.NoteBlockHung) {
		a.lines = append(a.lines, a.voice.say("A block hangs there: %s lowered through it pulls with %s.", a.voice.heavy(a.question.Mass(parser.Weight).High), a.voice.heavy(h.pull.Force.Held())))
	}
	a.lines = append(a.lines, a.voice.say("A screening figure, never an approval: it knows nothing of decay, union, lean, included bark or roots."))
	a.tellAnchorMore(h)
	a.lines = append(a.lines, a.anchorAssumed(h))
	if r.Strength.Status == anchor.Memory || r.Strength.Basis == anchor.WeakestOfGenus {
		a.lines = append(a.lines, a.voice.say("Its strength figure is not checked for this tree: one more reason to stay far below."))
	}
	if slices.Contains(a.question.Notes, noteLean) {
		a.cautions = append(a.cautions, a.voice.say("It leans: its own weight bends it too, and that is not in the figure. The arborist looks first."))
	}
}

// anchorHead is the first line: what hangs where, and the share it takes up.
func (a *answer) anchorHead(r anchor.Screening, h onAnchor) string {
	v, q := a.voice, a.question
	tree, thick := capital(q.Species.Value.Name), v.across(unit.Exactly(h.stem.Diameter))
	load, lever := v.heavy(h.pull.Force.Held()), v.along(unit.Exactly(h.pull.Lever))
	sentence := "%s, %s thick, with %s hung %s out: uses %s of what such limbs broke at."
	switch over := r.Used >= 1; {
	case h.blocks && !h.spar && over:
		sentence = "DO NOT. %s, %s thick, a block with %s on it %s out: uses %s of what such limbs broke at."
	case h.blocks && !h.spar:
		sentence = "%s, %s thick, a block with %s on it %s out: uses %s of what such limbs broke at."
	case h.spar && over:
		sentence = "DO NOT. %s spar, %s thick, pulled with %s %s up: uses %s of what branches broke at."
	case h.spar:
		sentence = "%s spar, %s thick, pulled with %s %s up: uses %s of what branches broke at."
	case over:
		sentence = "DO NOT. %s, %s thick, with %s hung %s out: uses %s of what such limbs broke at."
	}
	return v.say(sentence, tree, thick, load, lever, percent(r.Used))
}

// tellAnchorMore says what more load, and a thinner stem, would make of it.
func (a *answer) tellAnchorMore(h onAnchor) {
	v := a.voice
	twice := h
	twice.pull.Force *= 2
	if r, err := anchor.Screen(twice.stem, twice.pull); err == nil {
		sentence := "Is that the piece, lowered through a block there? Then about twice the load, %s. Snubbed or dropped: far more."
		if h.blocks || h.spar {
			sentence = "Snubbed, the load can double at least: %s. Dropped: far more."
		}
		a.lines = append(a.lines, v.say(sentence, percent(r.Used)))
	}
	thinner := h
	thinner.stem.Diameter -= v.slip()
	if r, err := anchor.Screen(thinner.stem, thinner.pull); err == nil {
		a.lines = append(a.lines, v.say("If %s, not %s: %s.", v.across(unit.Exactly(thinner.stem.Diameter)), v.across(unit.Exactly(h.stem.Diameter)), percent(r.Used)))
	}
}

// slip is how far an eye may be off in a thickness.
func (s speaker) slip() unit.Length {
	if s.metric {
		return 2 * unit.Centimetre
	}
	return unit.Inch
}

// anchorAssumed says what was taken for granted.
func (a *answer) anchorAssumed(h onAnchor) string {
	v := a.voice
	switch square := h.pull.ToAxis == 90*unit.Degree; {
	case h.spar && square && !a.question.Has(parser.StartAngle):
		return v.say("Assumed: round, sound, green, pulled level, the worst (tell me the pull's angle off plumb), 40%% of clear wood's strength.")
	case h.spar:
		return v.say("Assumed: round, sound, green, plumb, pulled %s off plumb, 40%% of clear wood's strength.", degrees(h.pull.ToAxis))
	case a.question.Has(parser.StartAngle):
		return v.say("Assumed: round, sound, green, pulled square to the limb whatever the angle, its own weight left out, 40%% of clear wood's strength.")
	}
	return v.say("Assumed: round, sound, green, pulled square to the limb, its own weight left out, 40%% of clear wood's strength.")
}

// soFar is what was understood of a question that lacks something: of an anchor
// it is no piece, nor is what hangs on it its weight.
func (a *answer) soFar() string {
	q, v := a.question, a.voice
	if q.Intent != parser.AskAnchor {
		return strings.Join(append([]string{a.piece()}, a.fallSoFar()...), ", ")
	}
	said := []string{v.word("anchor")}
	if q.Species != nil {
		said[0] = v.say("anchor: %s", q.Species.Value.Name)
	}
	if size := a.size(); size != "" {
		said = append(said, size)
	}
	if q.Has(parser.Weight) {
		w := q.Mass(parser.Weight)
		if slices.Contains(q.Notes, parser.NoteBlockHung) {
			said = append(said, v.say("%s lowered over a block on it", v.told(w.Low, w.High)))
		} else {
			said = append(said, v.say("%s on it", v.told(w.Low, w.High)))
		}
	}
	return strings.Join(said, ", ")
}

// orSling says what to tell instead of a tie where the anchor may be a stem that
// stands, and no limb.
func (a *answer) orSling() {
	q, v := a.question, a.voice
	if q.Intent != parser.AskAnchor || q.Shape != nil || !slices.Contains(a.needs, parser.Tie) {
		return
	}
	example := v.word("hitched at 3 ft")
	if v.metric {
		example = v.word("hitched at 1 m")
	}
	a.lines = append(a.lines, v.say("Is it a stem that stands? Then how high the load is hitched on it, like “%s”.", example))
}
