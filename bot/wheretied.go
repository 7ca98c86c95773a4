package bot

import (
	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// How far apart the blocks of a lift are is also told by heights: of the top block, and
// of the tie on the load. Where one of them is told, the other follows from the rise.

// apartOf is how far apart the blocks are, 0 where that is not told: as it was told, or from
// how high the top block hangs and the load is tied.
func apartOf(q parser.Question) unit.Length {
	if q.Has(parser.Apart) || !q.Has(parser.LoadHeight) || !q.Has(parser.HitchHeight) {
		return q.Length(parser.Apart).Low
	}
	return q.Length(parser.HitchHeight).Low - q.Length(parser.LoadHeight).High
}

// upsideDown refuses a top block that is not above what the load is tied at.
func (a *answer) upsideDown() bool {
	q, v := a.question, a.voice
	if q.Has(parser.Apart) || !q.Has(parser.LoadHeight) || !q.Has(parser.HitchHeight) || apartOf(q) > 0 {
		return false
	}
	a.refuse(v.say("DO NOT: the top block at %s is not above the tie at %s. Check both heights.", v.along(q.Length(parser.HitchHeight)), v.along(q.Length(parser.LoadHeight))))
	return true
}

// tellWhereTied says how high the load may be tied at the most for the blocks to stay
// apart, or from which heights it is told how far apart they are.
func (a *answer) tellWhereTied(r tackle.Traveled) {
	v, q := a.voice, a.question
	top, tied := q.Length(parser.HitchHeight), q.Length(parser.LoadHeight)
	most := top.Low - r.Start
	switch {
	case q.Has(parser.Apart) || top.Low == 0 && tied.High == 0:
	case top.Low > 0 && tied.High > 0:
		a.lines = append(a.lines, v.say("Top block at %s, tied at %s: blocks %s apart.", v.along(top), v.along(tied), v.alongDown(apartOf(q))))
	case r.Start == 0:
	case tied.High > 0:
		a.lines = append(a.lines, v.say("Tied at %s: top block at %s, or higher.", v.along(tied), v.alongUp(tied.High+r.Start)))
	case most > 0:
		a.lines = append(a.lines, v.say("Top block at %s: tie at %s, or lower.", v.along(top), v.alongDown(most))+a.fromCut(most))
	}
}

// tellRoom says how a lift whose blocks meet gets its room.
func (a *answer) tellRoom(t tackle.Travel, r tackle.Traveled) {
	v, q := a.voice, a.question
	top, tied := q.Length(parser.HitchHeight), q.Length(parser.LoadHeight)
	a.tellWhereTied(r)
	most := top.Low - r.Start
	switch {
	case t.Rise == 0:
	case !q.Has(parser.Apart) && most > 0 && tied.High > 0:
		a.lines = append(a.lines, v.say("For %s: top block at %s or higher, or tie at %s or lower.", v.along(unit.Exactly(t.Rise)), v.alongUp(tied.High+r.Start), v.alongDown(most))+a.fromCut(most))
	default:
		a.lines = append(a.lines, v.say("For %s start with the blocks %s apart, or more: top block higher, or a shorter hitch on the load.", v.along(unit.Exactly(t.Rise)), v.alongUp(r.Start)))
		if q.Has(parser.Apart) && most > 0 {
			a.lines = append(a.lines, v.say("Top block at %s: tie at %s, or lower.", v.along(top), v.alongDown(most))+a.fromCut(most))
		}
	}
}

// fromCut says how far above the cut a height is, where that is told: "" elsewhere.
func (a *answer) fromCut(height unit.Length) string {
	cut := a.question.Length(parser.CutHeight)
	if cut.High == 0 || height <= cut.High {
		return ""
	}
	return " " + a.voice.say("That is %s above the cut.", a.voice.alongDown(height-cut.High))
}
