package bot

import (
	"slices"

	"heft/calc"
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
	"heft/parser"
)

// workLower answers what a piece weighs and how it is lowered.
func (a *answer) workLower() error {
	if a.question.MostWanted() {
		return a.workMostLowered()
	}
	res, err := calc.Work(jobOf(a.question))
	if err != nil {
		return err
	}
	a.status, a.result = Answered, &res
	a.strain = loweringStrain(res)
	a.tell()
	a.figures = a.ropeEnd
	return a.alsoPath(res)
}

// loweringStrain is a piece hanging still on one part of line; nil where
// nothing is lowered.
func loweringStrain(res calc.Result) *strain {
	if res.Block <= 0 {
		return nil
	}
	return &strain{line: res.Weight.High.Weight(), block: res.Block}
}

// workRope answers how much rope a hitch takes, with or without a piece.
func (a *answer) workRope() error {
	q := a.question
	if q.HighestWanted() {
		return a.workHighest()
	}
	if q.Has(parser.Weight) || q.Species != nil && q.Has(parser.Length) && q.Has(acrossFields...) {
		return a.workLower()
	}
	laid := layoutOf(q)
	laid.Hitch, laid.Parts = q.Length(parser.HitchHeight).High, max(1, int(q.Count(parser.Parts)))
	laid.Wraps = rope.Wraps(q.Count(parser.Wraps))
	need, err := laid.Needed()
	if err != nil {
		return err
	}
	a.status, a.result = Answered, &calc.Result{Rope: need, Laid: laid}
	a.lines, a.shown = []string{a.ropeHead(need)}, []string{a.tail()}
	a.tellRope()
	a.tellDeadEnd()
	a.tellHigher()
	a.figures = a.ropeEnd
	return nil
}

// tail says what the rope behind the drum is for.
func (a *answer) tail() string {
	return a.voice.say("The %s tail is for the knot, the wraps and the hands.", a.voice.ropeNeeded(layoutOf(a.question).Tail()))
}

// tell words an answer: one line that serves alone, then the loads, the rope,
// what was assumed and what to watch.
func (a *answer) tell() {
	v := a.voice
	a.lines = []string{a.headline()}
	if n := a.many(); n > 1 {
		w := a.result.Weight
		times := unit.Mass(n)
		a.lines = append(a.lines, v.say("All %s: plan on %s, likely %s. What follows is for one at a time.", count(n), v.heavy(w.High*times), v.heavy(w.Likely*times)))
	}
	a.tellWeight()
	a.tellWraps()
	a.tellHands()
	a.tellBlock()
	a.tellDrum()
	a.tellRope()
	a.tellAssumed()
	a.picture()
	a.cautions = append(a.cautions, a.watch()...)
}

// picture shows a lower whose hitch is known.
func (a *answer) picture() {
	q := a.question
	if a.result.Lowering == nil || !q.Has(parser.HitchHeight) {
		return
	}
	l := lowering{
		Hitch: q.Length(parser.HitchHeight).High, Parts: max(1, int(q.Count(parser.Parts))),
		People: max(1, int(q.Count(parser.People))), Away: q.Length(parser.DrumAway).High,
	}
	if x, ok := q.Get(parser.BlockAngle); ok {
		between := unit.Angle(x.Low) * unit.Degree
		l.Between = &between
	}
	a.scene = lowerScene(a.voice, a.pictured(), *a.result, l)
	a.scene.Verdict = a.lowerVerdict()
	a.scene.Asked = true
}

// lowerVerdict is what is wrong with a lower, in a word or two.
func (a *answer) lowerVerdict() string {
	if a.result.AtWraps != nil {
		switch runs, slips := a.judgeWraps(); {
		case a.question.Slipped():
			return a.voice.word("TOO FEW WRAPS")
		case runs:
			return a.voice.word("RUNS AWAY")
		case slips:
			return a.voice.word("TOO FEW WRAPS")
		}
	}
	if _, over := a.overLimit(); over {
		return a.voice.word("OVER LIMIT")
	}
	return ""
}

// headline says what the piece was taken to be, the weight to plan on, and
// what that means for the wraps: it serves alone as a phone notification.
func (a *answer) headline() string {
	if a.question.Intent == parser.AskRope && a.result.Rope > 0 {
		return a.ropeHead(a.result.Rope)
	}
	v := a.voice
	piece := a.piece()
	if n := a.many(); n > 1 {
		piece = v.say("each of %s, %s", count(n), piece)
	}
	head := []string{v.say("%s: plan on %s", capital(piece), v.heavy(a.result.Weight.High))}
	if limit, over := a.overLimit(); over {
		head = append(head, v.say("OVER your limit of %s", limit))
	} else if a.question.Intent == parser.AskWeight && a.question.Has(parser.Limit) && !slices.Contains(a.ofJob, parser.Limit) {
		head = append(head, v.say("within your limit of %s", limit))
	}
	switch {
	case a.question.Intent == parser.AskBlockLoad:
		head = append(head, v.say("top block %s", v.load(a.result.Block)))
		if a.drumAsked() {
			head = append(head, v.say("drum %s", v.load(a.result.Weight.High.Weight())))
		}
	case a.result.Lowering != nil:
		head = append(head, a.wrapsHead())
	}
	return clauses(head...)
}

// many is how many such pieces there are.
func (a *answer) many() int { return max(1, int(a.question.Count(parser.Alike))) }

// overLimit says the crew's limit, and whether the heavy end is over it.
func (a *answer) overLimit() (limit string, over bool) {
	said := a.question.Mass(parser.Limit)
	return a.voice.atMost(said.Low), said.High > 0 && a.result.Weight.High > said.Low
}

// tellPastLimit says that the crew's limit is held against the piece alone,
// where the piece is within it and the block sees more.
func (a *answer) tellPastLimit() {
	limit := a.question.Mass(parser.Limit).Low
	if limit == 0 || a.strain == nil || a.result == nil || a.result.Weight.High == 0 {
		return
	}
	if _, over := a.overLimit(); over || !limits.Above(a.strain.block, limit.Weight()) {
		return
	}
	a.cautions = append(a.cautions, a.voice.say("Your limit of %s is for the piece. The block sees more.", a.voice.atMost(limit)))
}

// wrapsHead says the wraps to start with, and what becomes of those that the
// crew named.
func (a *answer) wrapsHead() string {
	v := a.voice
	start := v.turns(float64(a.result.Lowering.Start))
	if a.result.AtWraps == nil {
		return v.say("start with %s", start)
	}
	named := v.turns(a.question.Count(parser.Wraps))
	switch least, most := a.judgeWraps(); {
	case a.question.Slipped() && !most:
		return v.say("%s SLIPPED, start with %s", named, start)
	case least:
		return v.say("%s LET IT RUN AWAY, start with %s", named, start)
	case most:
		return v.say("%s TOO FEW, start with %s", named, start)
	case a.question.TooMany() && a.beyondStart():
		return v.say("%s hold it, more than the %s to start with", named, start)
	}
	return v.say("%s hold it", named)
}

// judgeWraps says whether the wraps that the crew named are too few even on a
// drum that grips, and whether they may be on a slick one.
func (a *answer) judgeWraps() (evenGrippy, onSlick bool) {
	can := handsOf(a.question).Force()
	return a.result.AtWraps.Low > can, a.result.AtWraps.High > can
}

// beyondStart says whether the crew named more wraps than are started with: the
// piece may not run.
func (a *answer) beyondStart() bool {
	return rope.Wraps(a.question.Count(parser.Wraps)) > a.result.Lowering.Start
}

func (a *answer) tellWraps() {
	l := a.result.Lowering
	if l == nil || a.question.Intent == parser.AskBlockLoad {
		return
	}
	if a.question.Slipped() {
		a.tellSlipped()
		return
	}
	if at := a.result.AtWraps; at != nil {
		a.tellAtWraps(*at)
		return
	}
	v, hold, least := a.voice, a.voice.pull(l.Hold), wraps(float64(l.Least))
	if n := int(a.question.Count(parser.People)); n > 1 {
		a.lines = append(a.lines, v.say("%s people hold up to %s. Will not run? Half a wrap off, never under %s.", count(n), hold, least))
		return
	}
	a.lines = append(a.lines, v.say("One person holds up to %s. Will not run? Half a wrap off, never under %s.", hold, least))
}

// tellAtWraps says what the hand feels at the wraps that the crew named.
func (a *answer) tellAtWraps(at unit.Range[unit.Force]) {
	v := a.voice
	named, hand := v.turns(a.question.Count(parser.Wraps)), v.pull(at.High)
	people := max(1, a.question.Count(parser.People))
	can := v.held(handsOf(a.question))
	switch grippy, slick := a.judgeWraps(); {
	case !grippy && !slick:
		a.lines = append(a.lines, v.say("At %s the hand holds up to %s on a slick rope.", named, hand))
		if a.beyondStart() && a.result.Lowering.Least > 0 {
			a.lines = append(a.lines, v.say("Will not run? Half a wrap off, never under %s.", wraps(float64(a.result.Lowering.Least))))
		}
	case people > 1:
		a.problems = append(a.problems, v.say("At %s the hand holds up to %s on a slick rope. %s people hold %s.",
			named, hand, count(int(people)), can))
	default:
		a.problems = append(a.problems, v.say("At %s the hand holds up to %s on a slick rope. One person holds %s.", named, hand, can))
	}
}

func (a *answer) tellBlock() {
	if a.result.Block <= 0 {
		return
	}
	v := a.voice
	if x, ok := a.question.Get(parser.BlockAngle); ok {
		a.lines = append(a.lines, v.say("Top block sees %s lowering steady, %s° between the legs. Lift, snub or drop: more.",
			v.load(a.result.Block), trimmed(x.Low, 1)))
		return
	}
	if a.question.Noted(naturalCrotch) { // its drag takes the rope's lower leg some of the pull
		a.lines = append(a.lines, v.say("The fork sees up to %s lowering steady. Lift, snub or drop: more.", v.load(a.result.Block)))
		return
	}
	a.lines = append(a.lines, v.say("Top block sees %s lowering steady. Lift, snub or drop: more.", v.load(a.result.Block)))
	a.tellDrumAside()
}

// drumAsked says whether it is asked what the drum, or the sling that holds it, bears.
func (a *answer) drumAsked() bool { return slices.Contains(a.question.Notes, parser.NoteDrumLoad) }

// tellDrum says what the line puts on the drum: no more than the piece weighs, for
// the block's friction helps whoever holds it.
func (a *answer) tellDrum() {
	if a.drumAsked() {
		a.lines = append(a.lines, a.voice.say("Drum, and the sling that holds it: up to %s along the rope, and what the hand pulls the same way. Lift, snub or drop: more.",
			a.voice.load(a.result.Weight.High.Weight())))
	}
}
