package bot

import (
	"math"

	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// travelOf is how a lift moves, as it was told, at the worse ends: the blocks as near one
// another and the rise as far as they may be.
func travelOf(q parser.Question) tackle.Travel {
	return tackle.Travel{
		Parts: int(q.Count(parser.Parts)), Apart: apartOf(q),
		Rise: q.Length(parser.Rise).High, Closed: q.Length(parser.Closed).High,
	}
}

// workTravel answers how far a lift goes and how much rope comes in. No weight has a part
// in it.
func (a *answer) workTravel() error {
	t := travelOf(a.question)
	if a.upsideDown() {
		return nil
	}
	r, err := tackle.Run(t)
	if err != nil {
		return err
	}
	if a.refusedTravel(t, r) {
		return nil
	}
	v := a.voice
	a.status = Answered
	a.figures = func(o *object) { o.Travel = traveledOf(t, r) }
	a.lines = []string{clauses(a.travelHead(t, r)...)}
	if t.Parts == 0 {
		a.lines = append(a.lines, v.word("How much rope comes in hangs on the parts of line: as far as it rises, for each of them."))
	}
	a.tellWhereTied(r)
	a.tellKept(t, r)
	a.tellRopeInTackle(t, r)
	if len(a.question.MissingPiece()) > 0 {
		a.lines = append(a.lines, v.word("NO FORCES here: for the pull and what the tree carries tell me the weight."))
	}
	a.shown = a.travelWorking(t, r)
	a.cautions = append(a.cautions, v.word("Keep the blocks apart: stop before they meet. Nobody under the load."))
	return nil
}

// travelHead is what was asked: how much rope, how much room.
func (a *answer) travelHead(t tackle.Travel, r tackle.Traveled) []string {
	v := a.voice
	rise, apart := v.along(unit.Exactly(t.Rise)), v.along(unit.Exactly(t.Apart))
	var head []string
	switch {
	case t.Rise > 0 && t.Apart > 0:
		head = append(head, v.say("Up %s the blocks do not meet: %s of %s left between them", rise, v.alongDown(r.Left), apart))
	case t.Apart > 0:
		head = append(head, v.say("Blocks %s apart: up %s at most, or they meet", apart, v.alongDown(r.Most)))
	case t.Parts > 0:
		return []string{v.say("Up %s on %s:1: %s of rope to pull", rise, count(t.Parts), v.alongUp(r.Haul)),
			v.say("blocks %s apart at the start, or more", v.alongUp(r.Start))}
	default:
		return []string{v.say("Up %s: blocks %s apart at the start, or more", rise, v.alongUp(r.Start))}
	}
	switch {
	case t.Parts > 0 && t.Rise > 0:
		head = append(head, v.say("%s of rope to pull on %s:1", v.alongUp(r.Haul), count(t.Parts)))
	case t.Parts > 0:
		head = append(head, v.say("%s of rope to pull for that on %s:1", v.alongUp(unit.Length(t.Parts)*v.tenthOf(r.Most)), count(t.Parts)))
	}
	return head
}

// refusedTravel refuses a lift whose blocks meet on the way.
func (a *answer) refusedTravel(t tackle.Travel, r tackle.Traveled) bool {
	v := a.voice
	noRoom := t.Apart > 0 && r.Most == 0
	if !r.Meet && !noRoom {
		return false
	}
	apart := v.along(unit.Exactly(t.Apart))
	if noRoom {
		a.refuse(v.say("DO NOT: %s between the blocks is no room to lift.", apart))
	} else {
		a.refuse(v.say("DO NOT: the blocks meet. %s apart they let it up %s at most, not %s.", apart, v.alongDown(r.Most), v.along(unit.Exactly(t.Rise))))
	}
	a.figures = func(o *object) { o.Travel = traveledOf(t, r) }
	a.tellRoom(t, r)
	a.tellKept(t, r)
	a.lines = append(a.lines, v.word("Blocks that meet stop the lift: who goes on pulling breaks rope, blocks or the anchor."))
	return true
}

// tellKept says what is kept between the blocks, and that it is to be measured.
func (a *answer) tellKept(t tackle.Travel, r tackle.Traveled) {
	v, keep := a.voice, a.voice.alongUp(r.Keep)
	if t.Closed > 0 && t.Closed >= r.Keep {
		a.lines = append(a.lines, v.say("Kept free: your %s for blocks, slings and hitch.", keep))
		return
	}
	a.lines = append(a.lines, v.say("Assumed: %s kept free for blocks, slings and hitch (common practice, no source). Measure yours: “blocks take up %s”.", keep, v.typedRoom()))
}

// tenthOf is a length rounded down as it is spoken.
func (s speaker) tenthOf(l unit.Length) unit.Length {
	step := unit.Foot / 10
	if s.metric {
		step = 0.1
	}
	return unit.Length(math.Floor(float64(l/step)+1e-6)) * step
}

// typedRoom is how a crew types what its tackle takes up.
func (s speaker) typedRoom() string {
	if s.metric {
		return "1 m"
	}
	return "3 ft"
}

// tellRopeInTackle says how much of the rope at hand the tackle takes, and what is left
// for the leg down to the hands.
func (a *answer) tellRopeInTackle(t tackle.Travel, r tackle.Traveled) {
	v, rope := a.voice, a.question.Length(parser.RopeLength).Low
	between := t.Parts
	if a.question.Noted(parser.HaulUp) {
		between-- // the haul is one of the parts
	}
	inside := unit.Length(between) * max(t.Apart, r.Start)
	if rope == 0 || t.Parts == 0 {
		return
	}
	if inside >= rope {
		a.problems = append(a.problems, v.say("YOUR %s OF ROPE IS TOO SHORT: %s is in the tackle alone, blocks %s apart.", v.along(unit.Exactly(rope)), v.alongUp(inside), v.alongUp(max(t.Apart, r.Start))))
		return
	}
	a.lines = append(a.lines, v.say("Of your %s of rope, %s is in the tackle with the blocks %s apart: %s left for the leg down to the hands, knots and tail.",
		v.along(unit.Exactly(rope)), v.alongUp(inside), v.alongUp(max(t.Apart, r.Start)), v.alongDown(rope-inside)))
}

// tellTravel adds to a lift how far it goes, where that is told.
func (a *answer) tellTravel() error {
	t := travelOf(a.question)
	if t.Apart == 0 && t.Rise == 0 {
		return nil
	}
	r, err := tackle.Run(t)
	if err != nil {
		return err
	}
	a.lines = append(a.lines, clauses(a.travelHead(t, r)...))
	a.tellWhereTied(r)
	if t.Apart > 0 {
		a.tellKept(t, r)
	}
	figures := a.figures
	a.figures = func(o *object) { figures(o); o.Travel = traveledOf(t, r) }
	return nil
}

// travelWorking shows where the figures come from.
func (a *answer) travelWorking(t tackle.Travel, r tackle.Traveled) (out []string) {
	v := a.voice
	if t.Rise > 0 && t.Parts > 0 {
		out = append(out, v.say("Rope to pull: %s × %s = %s.", count(t.Parts), v.along(unit.Exactly(t.Rise)), v.alongUp(r.Haul)))
	}
	if t.Apart > 0 {
		out = append(out, v.say("Most it comes up: %s − %s = %s.", v.along(unit.Exactly(t.Apart)), v.alongUp(r.Keep), v.alongDown(r.Most)))
	}
	if t.Rise > 0 && t.Apart == 0 {
		out = append(out, v.say("Apart at the start: %s + %s = %s.", v.along(unit.Exactly(t.Rise)), v.alongUp(r.Keep), v.alongUp(r.Start)))
	}
	return out
}

// travelObject is how far a lift goes as scripts read it.
type travelObject struct {
	Haul      float64 `json:"haul_travel_m,omitempty"`
	Most      float64 `json:"rise_max_m,omitempty"`
	Start     float64 `json:"apart_min_m,omitempty"`
	Left      float64 `json:"left_m,omitempty"`
	TwoBlocks bool    `json:"two_blocks"`
}

func traveledOf(t tackle.Travel, r tackle.Traveled) *travelObject {
	o := &travelObject{Haul: tidy(float64(r.Haul)), Most: tidy(float64(r.Most)), Start: tidy(float64(r.Start)), TwoBlocks: r.Meet}
	if t.Apart > 0 && t.Rise > 0 && r.Left > 0 {
		o.Left = tidy(float64(r.Left))
	}
	return o
}
