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

// notchOnStem refuses a notch that is asked for in a talk about a log, or about how a stem is
// cut, where no limb and no angle are told: nothing is stood up there, and how a cut is laid
// out no method here says.
func (t Turn) notchOnStem(q parser.Question, ask *parser.Ask) *parser.Ask {
	was := t.question
	stem := was.Intent == parser.AskCutPlan || was.Shape != nil && was.Shape.Value == parser.Log
	if ask != nil || q.Intent != parser.AskNotch || !t.known || !stem || was.Limb() || q.Limb() || q.Has(parser.LimbAngle) || was.Has(parser.LimbAngle) || q.Noted(parser.NoteTop) || q.Noted(parser.NoteTillLevel) || tellsAnew(q) {
		return ask
	}
	return &parser.Ask{Kind: parser.Beyond, Danger: "notch"}
}
