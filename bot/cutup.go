package bot

import (
	"math"
	"strings"

	"heft/calc/unit"
	"heft/parser"
)

// parted is what a talk has cut into parts of one length: how long it was in one, and how
// long each part is. Who asks for other parts next means those of the whole.
type parted struct{ whole, each parser.Quantity }

// cutUp answers for one part of the piece of a talk that is cut across, "cut it in half", and
// says so. Parts of a stick that tapers or has its brush on are not alike, and of a piece
// whose length is not known none is known: those are asked about.
func (d *Desk) cutUp(q parser.Question, ask *parser.Ask, ev Event, before Turn, _ string) (answer, Turn, bool) {
	whole, ok := before.question.Get(parser.Length)
	tapers := before.question.Has(parser.TipDiameter, parser.MidDiameter) || before.question.Shape != nil && before.question.Shape.Value == parser.Limb
	if q.CutUp == nil || ask != nil && ask.Final() || ev.lent || !ok || tapers || whole.Low != whole.High {
		return answer{}, Turn{}, false
	}
	if before.parted.each == whole {
		whole = before.parted.whole
	}
	n := q.CutUp.Parts
	v := voiceFor(ev, before.question)
	v.language, v.metric = q.Language, toldMetric(whole, v.metric)
	long := v.exactly(whole.High / float64(n))
	ev.lent, ev.Text = true, strings.TrimSpace(v.say("%s long", long)+", "+q.CutUp.Rest)
	out, turn := d.consider(ev, before)
	out.lines = append(out.lines, out.voice.say("Read %s as %s pieces of %s: the figures are for one.", quote(q.CutUp.Words), count(n), long))
	if each, ok := turn.question.Get(parser.Length); ok {
		turn.parted = parted{whole, each}
	}
	return out, turn, true
}

// exactly is a length to a hundredth of the foot or the metre, never less than it is.
func (s speaker) exactly(m float64) string {
	scale, name := float64(unit.Foot), " ft"
	if s.metric {
		scale, name = float64(unit.Metre), " m"
	}
	const hundredths, slack = 100, 1e-6
	return trimmed(math.Ceil(m/scale*hundredths-slack)/hundredths, 2) + name
}
