package bot

import (
	"heft/calc/unit"
	"heft/parser"
)

// workLevelNotch answers how wide a notch must open for a piece that is to hang on until
// it lies level: a top from upright, a limb from its angle.
func (a *answer) workLevelNotch() error {
	from := unit.Angle(low(a.question, parser.LimbAngle)) * unit.Degree
	top := a.question.Noted(parser.NoteTop)
	if top {
		from = 90 * unit.Degree
	}
	opening, err := a.notchBetween(from, 0)
	if err != nil {
		return err
	}
	v := a.voice
	a.lines = []string{
		v.say("Open the notch %s°: it closes, and the hinge parts, when the piece lies level.", trimmed(opening.Degrees(), 0)),
		v.say("From %s° above level to level. Less opening parts the hinge early.", trimmed(from.Degrees(), 1)),
	}
	if top {
		a.lines = append(a.lines, v.word("Assumed: the top stands upright. If it leans away from its fall, open that much more."))
	}
	a.lines = append(a.lines, v.word("How thick the hinge must be, and whether it holds on, I do not work out."))
	return nil
}
