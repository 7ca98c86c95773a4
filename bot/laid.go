package bot

import (
	"cmp"
	"slices"
	"strings"

	"heft/calc/rope"
	"heft/calc/unit"
	"heft/parser"
)

// layoutOf is where the drum and the dead end are, as it was told.
func layoutOf(q parser.Question) rope.Layout {
	l := rope.Layout{Away: q.Length(parser.DrumAway).High, Lands: q.Length(parser.LandsOut).High, Drum: q.Length(parser.DrumAcross).High, Extra: q.Length(parser.Tail).High}
	if slices.Contains(q.Notes, parser.DeadEndOnTrunk) {
		l.Trunk = q.Length(parser.TrunkAcross).High
	}
	return l
}

// ropeHead is the line that serves alone: how much rope, and whether theirs
// reaches.
func (a *answer) ropeHead(need unit.Length) string {
	v := a.voice
	length, hitch := v.ropeNeeded(need), v.along(a.question.Length(parser.HitchHeight))
	have := a.question.Length(parser.RopeLength)
	end, short := a.shortRope()
	switch {
	case a.question.Has(parser.SecondRope):
		return a.eitherRope(length, hitch)
	case have.Low <= 0:
		return v.say("Rope: %s end to end, hitched at %s.", length, hitch)
	case !short:
		return v.say("Rope: %s end to end, hitched at %s, your %s reaches.", length, hitch, v.along(have))
	case end.Low >= a.result.Laid.Hitch:
		return v.say("Rope: %s end to end, hitched at %s, your %s is TOO SHORT to lower at all.", length, hitch, v.along(have))
	}
	return v.say("Rope: %s, hitched at %s, your %s is TOO SHORT: the end comes off with the piece up to %s up.",
		length, hitch, v.along(have), v.wholeUp(end.High))
}

// eitherRope says which of two ropes reaches, the longer one first; of more, which to
// take.
func (a *answer) eitherRope(length, hitch string) string {
	v, all := a.voice, a.ropes()
	if len(all) > 2 {
		return a.whichRope(length, hitch, all)
	}
	short, long := all[0], all[1]
	sentence := "Rope: %s end to end, hitched at %s, your %s and your %s are both TOO SHORT."
	switch need := a.result.Rope; {
	case short.Low >= need:
		sentence = "Rope: %s end to end, hitched at %s, your %s reaches and so does your %s."
	case long.Low >= need:
		sentence = "Rope: %s end to end, hitched at %s, your %s reaches, your %s is TOO SHORT."
	}
	return v.say(sentence, length, hitch, v.along(long), v.along(short))
}

// whichRope names the shortest of several ropes that reaches.
func (a *answer) whichRope(length, hitch string, all []unit.Range[unit.Length]) string {
	v := a.voice
	for _, r := range all {
		if r.Low >= a.result.Rope {
			return v.say("Rope: %s end to end, hitched at %s, your %s is the shortest that reaches.", length, hitch, v.along(r))
		}
	}
	return v.say("Rope: %s end to end, hitched at %s, even your %s is TOO SHORT.", length, hitch, v.along(all[len(all)-1]))
}

// ropes are all those that could be taken, the shortest first.
func (a *answer) ropes() (out []unit.Range[unit.Length]) {
	for _, x := range a.question.Quantities {
		if x.Field == parser.RopeLength || x.Field == parser.SecondRope {
			out = append(out, unit.Range[unit.Length]{Low: unit.Length(x.Low), High: unit.Length(x.High)})
		}
	}
	slices.SortFunc(out, func(x, y unit.Range[unit.Length]) int { return cmp.Compare(x.Low, y.Low) })
	return out
}

// shortRope says whether the crew's rope is too short, and how high the piece
// hangs as its end comes to the drum.
func (a *answer) shortRope() (unit.Range[unit.Length], bool) {
	have := a.question.Length(parser.RopeLength)
	if have.Low <= 0 || have.Low >= a.result.Rope || a.question.Has(parser.SecondRope) {
		return unit.Range[unit.Length]{}, false
	}
	end, err := a.result.Laid.End(have.Low)
	return end, err == nil
}

// leastLeft is the least that is told of a rope that is longer than it must be.
const leastLeft = unit.Length(0.5)

// tellRope says what the length is made of, and what becomes of a rope that
// is too short.
func (a *answer) tellRope() {
	need, v, l := a.result.Rope, a.voice, a.result.Laid
	if need <= 0 {
		return
	}
	if sum := a.ropeSum(); l.Away > 0 {
		a.lines = append(a.lines, v.say("Rope %s: %s.", v.ropeNeeded(need), sum))
	} else {
		a.lines = append(a.lines, v.say("Rope %s: %s, drum at the foot of the tree.", v.ropeNeeded(need), sum))
	}
	if told := a.question.Length(parser.Tail); told.High > 0 && told.High < l.Tail() {
		a.lines = append(a.lines, v.say("A tail of %s is less than the %s I plan for the knot, the wraps and the hands.", v.along(told), v.ropeNeeded(l.Tail())))
	}
	if slices.Contains(a.question.Notes, parser.DeadEndOnTrunk) && l.Trunk == 0 {
		a.lines = append(a.lines, v.say("NOT in it: the dead end round the trunk, three times the trunk's thickness and a bit. Tell me how thick it is there."))
	}
	end, short := a.shortRope()
	if have := a.question.Length(parser.RopeLength).Low; a.question.Intent == parser.AskRope && have-need >= leastLeft && !a.question.HighestWanted() && !a.question.Has(parser.SecondRope) {
		a.lines = append(a.lines, v.say("Left over of your %s: %s more than that tail.", v.along(a.question.Length(parser.RopeLength)), v.wholeDown(have-need)))
	}
	if !short {
		return
	}
	have := v.along(a.question.Length(parser.RopeLength))
	switch {
	case end.Low >= l.Hitch:
		a.problems = append(a.problems, v.say("Your %s rope is too short to lower at all: nothing is left for the drum.", have))
	case end.Low > 0:
		a.problems = append(a.problems, v.say("Your %s rope is too short: its end runs through the drum with the tie %s to %s above the ground.",
			have, v.wholeDown(end.Low), v.wholeUp(end.High)))
	default:
		a.problems = append(a.problems, v.say("Your %s rope is too short: it may just reach with hardly a tail, or its end runs through the drum with the tie up to %s above the ground.",
			have, v.wholeUp(end.High)))
	}
}

// ropeSum lists what a rope's length is made of.
func (a *answer) ropeSum() string {
	v, l := a.voice, a.result.Laid
	terms := []string{v.say("%s × %s", trimmed(float64(l.Parts+1), 0), v.along(unit.Exactly(l.Hitch)))}
	if l.Lands > 0 {
		terms = append(terms, v.say("%s for landing %s out", v.alongUp(l.Out()), v.along(unit.Exactly(l.Lands))))
	}
	if l.Away > 0 {
		terms = append(terms, v.say("%s out to the drum", v.along(unit.Exactly(l.Away))))
	}
	if l.Trunk > 0 {
		terms = append(terms, v.say("%s round the trunk", v.alongUp(l.RoundTrunk())))
	}
	if on := l.OnDrum(); on > 0 {
		terms = append(terms, v.say("%s on the drum", v.alongUp(on)))
	}
	return strings.Join(append(terms, v.say("%s tail", v.ropeNeeded(l.Tail()))), " + ")
}

// tellDeadEnd says where the dead end of a moving block was taken to be.
func (a *answer) tellDeadEnd() {
	l, v := a.result.Laid, a.voice
	if l.Parts%2 != 0 || slices.Contains(a.question.Notes, parser.DeadEndOnTrunk) {
		return
	}
	l.Trunk = 20 * unit.Inch
	if v.metric {
		l.Trunk = 0.5
	}
	a.lines = append(a.lines, v.say("Dead end on the top block. Round a trunk of %s it takes %s more.", v.across(unit.Exactly(l.Trunk)), v.alongUp(l.RoundTrunk())))
}

// tellHigher says what a hitch that stands higher than it was judged to costs:
// it moves the length most.
func (a *answer) tellHigher() {
	l, more := a.result.Laid, 5*unit.Foot
	if a.voice.metric {
		more = 2
	}
	higher := l
	higher.Hitch += more
	need, err := higher.Needed()
	if err != nil {
		return
	}
	a.lines = append(a.lines, a.voice.say("A hitch %s higher: %s of rope.", a.voice.along(unit.Exactly(more)), a.voice.ropeNeeded(need)))
}

// ropeEndObject is how high the tie hangs as the end of a short rope comes to
// the drum, as scripts read it.
type ropeEndObject struct {
	Low  float64 `json:"low_m"`
	High float64 `json:"high_m"`
}

// ropeEnd writes the end of a short rope into the object.
func (a *answer) ropeEnd(o *object) {
	if end, short := a.shortRope(); short {
		o.RopeEnd = &ropeEndObject{float64(end.Low), float64(end.High)}
	}
}
