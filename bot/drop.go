package bot

import (
	"slices"

	"heft/calc/drop"
	"heft/calc/gear"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// workDrop answers what a piece that falls onto its line may pull.
func (a *answer) workDrop() error {
	q := a.question
	if slices.Contains(q.Notes, "rope-no-stretch") {
		a.refuse(a.voice.word("A line that hardly stretches: no figure. It pulls harder than any rope I have figures for; do not let a piece fall on it."))
		return nil
	}
	res, err := a.weighed()
	if err != nil {
		return err
	}
	s := fallOf(q, res.Weight)
	fall, err := drop.Plan(s)
	if err != nil {
		return err
	}
	working, err := gear.WorkingLoad(s.Break, factorOf(q))
	if err != nil {
		return err
	}
	if namesKnot(q) {
		working *= unit.Force(gear.Keeps(knotOf(q)).Kept.Low)
	}
	a.status, a.result = Answered, &res
	o := &dropObject{PeakLow: float64(fall.Peak.Low), Peak: float64(fall.Peak.High), Block: float64(fall.Block.High)}
	a.figures = func(all *object) { all.Drop = o }
	a.strain = &strain{line: fall.Peak.High, block: fall.Block.High}
	a.tellDrop(s, fall)
	stop, err := drop.RunFor(s.Weight.High, s.Drop, working)
	if err != nil {
		a.problems = append(a.problems, a.voice.say("The rope's working load is %s: no run spares it that. Take a piece well under %s.",
			a.voice.pullHad(working), a.voice.atMost((working/2).Held())))
		return nil
	}
	o.Run = float64(stop.Plan)
	a.lines = append(a.lines, a.voice.say("Let it run %s or more to stay within %s, the rope's working load.",
		a.voice.alongUp(stop.Plan), a.voice.pullHad(working)))
	return nil
}

// fallOf is the fall as it was told.
func fallOf(q parser.Question, w piece.Weight) drop.Setup {
	s := drop.Setup{
		Weight: unit.Range[unit.Mass]{Low: w.Low, High: w.High},
		Drop:   fallTold(q).High,
		Run:    q.Length(parser.RunLength).Low,
		Break:  unit.Force(low(q, parser.RopeBreak)),
		Rope:   q.Length(parser.RopeLength).Low,
		Hitch:  q.Length(parser.HitchHeight).Low,
		Class:  classOf(q),
	}
	if s.Rope == 0 {
		s.Rope = s.Hitch // the line comes down to a drum at the foot of the tree
	}
	return s
}

// fallTold is how far the piece falls: as it was told, or by where its block hangs.
func fallTold(q parser.Question) unit.Range[unit.Length] {
	if !q.FallFromBlock() {
		return q.Length(parser.DropHeight)
	}
	return unit.Exactly(drop.FromBlock(q.Length(parser.Length).High, q.Length(parser.BlockBelow).High))
}

// orBlockBelow offers to work the fall out, where the piece is as long as was told:
// how far the block is below the cut is better known than the fall.
func (a *answer) orBlockBelow() {
	q, v := a.question, a.voice
	if q.Intent != parser.AskDrop || !q.Has(parser.Length) || q.Has(parser.BlockBelow) || !slices.Contains(a.needs, parser.DropHeight) {
		return
	}
	a.lines = append(a.lines, v.say("Or how far the block is below the cut, like “%s”: then I work the fall out.", v.typed([]parser.Field{parser.BlockBelow})))
}

// dropObject is a drop as scripts read it: the heavy ends, and the light end of
// the peak.
type dropObject struct {
	PeakLow float64 `json:"peak_low_n"`
	Peak    float64 `json:"peak_force_n"`
	Block   float64 `json:"block_peak_n"`
	Run     float64 `json:"run_m,omitempty"`
}

func (a *answer) tellDrop(s drop.Setup, f drop.Fall) {
	v, q := a.voice, a.question
	piece, falls := capital(a.piece()), v.along(fallTold(q))
	head := v.say("%s, falls %s, held fast: line up to %s, top block up to %s.", piece, falls, v.load(f.Peak.High), v.load(f.Block.High))
	if slices.Contains(q.Notes, "snubbed") {
		head = v.say("%s, falls %s, snubbed, held fast: line up to %s, top block up to %s.", piece, falls, v.load(f.Peak.High), v.load(f.Block.High))
	}
	if s.Run > 0 {
		head = v.say("%s, falls %s, let run %s: line up to %s, top block up to %s.", piece, falls,
			v.along(q.Length(parser.RunLength)), v.load(f.Peak.High), v.load(f.Block.High))
	}
	a.lines = []string{head}
	if q.FallFromBlock() {
		a.lines = append(a.lines, v.say("Fall worked out: its length and twice the %s that the block is below the cut, tied at the butt, no slack. Slack comes on top: then type the fall, like “%s”.",
			v.along(q.Length(parser.BlockBelow)), v.typed([]parser.Field{parser.DropHeight})))
	}
	a.tellWeight()
	a.lines = append(a.lines,
		v.say("A bound, no measurement: the line sees %s to %s, few forces in trees are published.", v.pullHad(f.Peak.Low), v.pull(f.Peak.High)),
		v.say("That is up to %s%% of the rope's strength, before any knot.", trimmed(100*f.OfBreak+0.5, 0)))
	if line := a.dropMovedBy(s, f.Peak.High); line != "" {
		a.lines = append(a.lines, line)
	}
	a.lines = append(a.lines, a.ropePlanned(s))
	a.cautions = append(a.cautions, v.word("A smaller piece is the surest way to less. Negative rigging is the worst case: ask whether it must be."))
}
