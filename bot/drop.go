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
	if q.FallWanted() {
		a.tellFallOnly()
		return nil
	}
	res, err := a.weighed()
	if err != nil {
		return err
	}
	s := fallOf(q, res.Weight)
	run := s
	if q.Noted(parser.SnubOrRun) {
		s.Run = 0 // planned on the worse of the two
	}
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
	a.tellUnrated()
	if err := a.orLetRun(s, run, fall); err != nil {
		return err
	}
	a.tellRun(o, s, working)
	return nil
}

// orLetRun puts what is left of a snubbed fall where it is let run beside it in the first
// line, where both were asked for.
func (a *answer) orLetRun(held, run drop.Setup, f drop.Fall) error {
	if run.Run == held.Run {
		return nil
	}
	soft, err := drop.Plan(run)
	if err != nil {
		return err
	}
	v, q := a.voice, a.question
	a.lines[0] = v.say("%s, falls %s: snubbed, line up to %s, top block up to %s; let run %s, line up to %s, top block up to %s.",
		capital(a.piece()), v.along(fallTold(q)), v.load(f.Peak.High), v.load(f.Block.High),
		v.along(q.Length(parser.RunLength)), v.load(soft.Peak.High), v.load(soft.Block.High))
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
	if q.Has(parser.MiddleAbove) {
		return unit.Exactly(drop.OfMiddle(q.Length(parser.MiddleAbove).High))
	}
	return unit.Exactly(drop.FromBlock(q.Length(parser.Length).High, blockBelow(q)))
}

// blockBelow is how far the block is below the cut at most: no hitch is below the cut.
func blockBelow(q parser.Question) unit.Length {
	if q.Has(parser.BlockBelow) {
		return q.Length(parser.BlockBelow).High
	}
	return q.Length(parser.HitchToBlock).High
}

// fallSoFar is what is told of a fall, and of the rope that it falls onto.
func (a *answer) fallSoFar() (said []string) {
	q, v := a.question, a.voice
	if q.Intent != parser.AskDrop {
		return nil
	}
	for _, x := range q.Quantities {
		if words := ofFallSaid[x.Field]; words != "" {
			said = append(said, v.say(words, v.along(q.Length(x.Field))))
		}
	}
	if q.Noted(parser.Snubbed) {
		said = append(said, v.word("snubbed"))
	}
	return said
}

// ofFallSaid are the facts of a fall, as they are said back.
var ofFallSaid = map[parser.Field]string{
	parser.DropHeight: "falls %s", parser.BlockBelow: "block %s below the cut", parser.HitchToBlock: "block %s below the hitch",
	parser.MiddleAbove: "middle %s above the block", parser.RunLength: "let run %s", parser.RopeLength: "%s of rope",
}

// orBlockBelow offers to work the fall out, where the piece is as long as was told:
// how far the block is below the cut is better known than the fall.
func (a *answer) orBlockBelow() {
	q, v := a.question, a.voice
	if !q.FallByBlock() || !slices.Contains(a.needs, parser.DropHeight) {
		return
	}
	a.lines = append(a.lines, v.say("Or how far the block is below the cut, like “%s”: then I work the fall out.", v.typed([]parser.Field{parser.BlockBelow})))
}

// runRather answers whether a line is to be let run or held fast, which hangs on no figure,
// where one is missing for them.
func (a *answer) runRather() {
	if q := a.question; q.Intent == parser.AskDrop && q.Noted(parser.LetRun) && q.Noted(parser.Snubbed) {
		a.lines = append(a.lines, a.voice.word("Let it run rather than snub it: a hard stop pulls far harder."))
	}
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
		a.tellFallFromBlock()
	}
	a.tellWeight()
	a.lines = append(a.lines,
		v.say("A bound, no measurement: the line sees %s to %s, few forces in trees are published.", v.pullHad(f.Peak.Low), v.pull(f.Peak.High)),
		v.say("That is up to %s%% of the rope's strength, before any knot.", trimmed(100*f.OfBreak+0.5, 0)))
	a.tellDrumFall(f)
	if line := a.dropMovedBy(s, f.Peak.High); line != "" {
		a.lines = append(a.lines, line)
	}
	a.lines = append(a.lines, a.ropePlanned(s))
	a.cautions = append(a.cautions, v.word("A smaller piece is the surest way to less. Negative rigging is the worst case: ask whether it must be."))
}

// tellDrumFall says what a fall puts on the drum, where that is asked.
func (a *answer) tellDrumFall(f drop.Fall) {
	if a.drumAsked() {
		a.lines = append(a.lines, a.voice.say("Drum, and the sling that holds it: up to the line's %s.", a.voice.load(f.Peak.High)))
	}
}

// tellFallFromBlock says how the fall was worked out.
func (a *answer) tellFallFromBlock() {
	v, typed := a.voice, a.voice.typed([]parser.Field{parser.DropHeight})
	if a.question.Has(parser.MiddleAbove) {
		middle := v.along(unit.Exactly(a.question.Length(parser.MiddleAbove).High))
		a.lines = append(a.lines, v.say("Fall worked out: twice the %s from block to middle, no slack. Slack comes on top: then type the fall, like “%s”.", middle, typed))
		return
	}
	below := v.along(unit.Exactly(blockBelow(a.question)))
	if !a.question.Has(parser.BlockBelow) {
		a.lines = append(a.lines, v.say("Fall worked out: its length and twice the %s from hitch to block, as if tied right at the cut, no slack. Slack comes on top: then type the fall, like “%s”.", below, typed))
		return
	}
	a.lines = append(a.lines, v.say("Fall worked out: its length and twice the %s that the block is below the cut, tied at the butt, no slack. Slack comes on top: then type the fall, like “%s”.", below, typed))
}

// tellFallOnly answers how far a piece falls where nothing is told of its rope.
func (a *answer) tellFallOnly() {
	v, q := a.voice, a.question
	a.status = Answered
	switch far := q.BelowHitch(); {
	case far <= 0:
		a.lines = []string{v.say("Falls up to %s before the rope holds it.", v.along(fallTold(q)))}
		a.tellFallFromBlock()
	default:
		a.lines = []string{v.say("The hitch falls %s at most before the rope holds: twice the %s from hitch to block, no slack.", v.along(unit.Exactly(drop.OfHitch(far))), v.along(unit.Exactly(far)))}
		a.tellMiddle()
	}
	a.lines = append(a.lines, v.word("How hard it then pulls: tell me its weight, and the strength and length of the rope."))
	a.cautions = append(a.cautions, v.word("A smaller piece is the surest way to less. Negative rigging is the worst case: ask whether it must be."))
}

// tellMiddle says that the middle of a piece falls further than its hitch.
func (a *answer) tellMiddle() {
	v, q := a.voice, a.question
	if !q.FallFromBlock() {
		a.lines = append(a.lines, v.word("The middle of a piece that stands on its cut falls further, by its own length at most. Slack comes on top."))
		return
	}
	a.lines = append(a.lines, v.say("The middle of the piece falls up to %s, its length and twice how far the block is below the cut: a force is worked out from that. Slack comes on top.", v.along(fallTold(q))))
}
