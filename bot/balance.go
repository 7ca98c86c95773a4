package bot

import (
	"slices"

	"heft/calc/balance"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// workBalance answers where a piece balances and is to be tied, what rolls it,
// what lines share it, and what a tag line pulls that holds it aside.
func (a *answer) workBalance() error {
	q := a.question
	if len(q.MissingPiece()) == 0 {
		res, err := a.weighed()
		if err != nil {
			return err
		}
		a.result = &res
	}
	a.status = Answered
	o := &balanceObject{}
	a.figures = func(all *object) { all.Balance = o }
	head := capital(a.piece())
	if a.result != nil {
		head = a.voice.say("%s: plan on %s", head, a.voice.heavy(a.result.Weight.High))
	}
	var err error
	switch {
	case q.Has(parser.SideBranch):
		err = a.tellRoll(o)
	case q.Has(parser.SecondTie):
		err = a.tellShare(o)
	case q.Has(parser.LegAngle, parser.BlockAngle) && slices.Contains(q.Notes, bridled) || q.Has(parser.LegAngle):
		err = a.tellLegs(o)
	case q.Has(parser.Sideways) && !q.Noted(parser.NoteEitherEnd):
		err = a.tellTag(o, head)
	default:
		err = a.tellBalance(o, head)
	}
	if err == nil && a.result != nil {
		a.tellWeight()
	}
	return err
}

// bridled is the note of the word file for two lines to one point.
const bridled = "bridle"

// balanceObject is balance as scripts read it.
type balanceObject struct {
	Point     float64   `json:"point_m,omitempty"`
	PointLow  float64   `json:"point_low_m,omitempty"`
	PointHigh float64   `json:"point_high_m,omitempty"`
	Hang      string    `json:"hang,omitempty"` // what goes down at the tie that was told
	TieLow    *float64  `json:"tie_low_m,omitempty"`
	TieHigh   *float64  `json:"tie_high_m,omitempty"`
	Lines     []float64 `json:"lines_n,omitempty"` // on the butt line and the tip line, or on each leg
	Roll      float64   `json:"roll_moment_nm,omitempty"`
	Tag       float64   `json:"tag_line_n,omitempty"`
	TagPeople int       `json:"tag_line_people,omitempty"`
}

// points is where the piece may balance; the likely point is that of its
// sizes, or of its length alone.
func (a *answer) points(o *balanceObject) (likely unit.Length, at unit.Range[unit.Length]) {
	q := a.question
	length := q.Length(parser.Length)
	shape := shapeOf(q)
	likely = unweighed(q, shape)
	if a.result != nil && a.result.Weight.Balance > 0 {
		likely = a.result.Weight.Balance
	}
	at = piece.BalancePoints(shape, q.Has(parser.TipDiameter), likely, length.High)
	at.Low = min(at.Low, piece.BalancePoints(shape, q.Has(parser.TipDiameter), likely, length.Low).Low)
	o.Point, o.PointLow, o.PointHigh = float64(likely), float64(at.Low), float64(at.High)
	return likely, at
}

// unweighed is the likely point of a piece whose tree was not told.
func unweighed(q parser.Question, shape piece.Shape) unit.Length {
	length := q.Length(parser.Length).High
	butt, mid, tip := q.Length(parser.ButtDiameter).High, q.Length(parser.MidDiameter).High, q.Length(parser.TipDiameter).High
	switch {
	case butt > 0 && mid > 0 && tip > 0:
		return piece.NewtonBalance(butt, mid, tip, length)
	case butt > 0 && tip > 0:
		return piece.FrustumBalance(butt, tip, length)
	case shape == piece.Limb:
		return piece.LimbBalance(length)
	}
	return length / 2
}

// hangs are the notes of the word file that say how the piece is to come off.
var hangs = map[string]balance.Hang{
	"hang-level": balance.Level, "hang-butt": balance.ButtHeavy, "hang-tip": balance.TipHeavy,
}

// tellBalance says where the piece balances, and where to tie it.
func (a *answer) tellBalance(o *balanceObject, head string) error {
	v := a.voice
	likely, at := a.points(o)
	if a.question.Noted(parser.TipHeavy) {
		likely = at.High
	}
	length := a.question.Length(parser.Length).High
	a.lines = []string{v.say("%s, balances about %s from the cut.", head, v.alongDown(likely))}
	if err := a.tellTies(o, head, likely, at, length); err != nil {
		return err
	}
	if a.question.Has(parser.Tie) {
		a.tellTied(o, head, at)
	} else if a.question.Noted(parser.NoteEitherEnd) {
		a.tellEitherEnd(head, at, length)
	}
	a.lines = append(a.lines, a.between(at))
	if a.question.Shape == nil {
		a.lines = append(a.lines, v.word("Log or limb? A log balances nearer its middle."))
	}
	a.cautions = append(a.cautions, v.word("A side branch rolls it as it comes free: take it off first, or add a tag line. Lift a little and look before you cut through."))
	return nil
}

// tellTies says where it is tied to hang as asked, in the first line, or which end goes down
// where it is tied elsewhere.
func (a *answer) tellTies(o *balanceObject, head string, likely unit.Length, at unit.Range[unit.Length], length unit.Length) error {
	asked := balance.Hang("")
	for _, n := range a.question.Notes {
		if hang, ok := hangs[n]; ok {
			asked = hang
		}
	}
	for _, hang := range []balance.Hang{balance.Level, balance.ButtHeavy, balance.TipHeavy} {
		ties, err := balance.Ties(at, length, hang)
		switch {
		case err != nil && hang == asked:
			return err
		case err != nil: // this piece leaves no such point
		case hang == asked:
			low, high := tidy(float64(ties.Low)), tidy(float64(ties.High))
			o.TieLow, o.TieHigh = &low, &high
			a.lines[0] = a.tieLine(head, hang, ties, likely)
		case asked == "" || asked == balance.Level:
			if hang != balance.Level {
				a.lines = append(a.lines, a.tieElse(hang, ties))
			}
		}
	}
	return nil
}

// between says between which points it balances.
func (a *answer) between(at unit.Range[unit.Length]) string {
	v := a.voice
	if a.question.Noted(parser.TipHeavy) {
		return v.say("It balances between %s and %s. Brush toward the tip, you say: planned on %s.", v.alongDown(at.Low), v.alongUp(at.High), v.alongUp(at.High))
	}
	return v.say("It balances between %s and %s. If heavy toward the tip, not tapered: %s.", v.alongDown(at.Low), v.alongUp(at.High), v.alongUp(at.High))
}

// tellTied says first how the piece hangs from the tie that was told.
func (a *answer) tellTied(o *balanceObject, head string, at unit.Range[unit.Length]) {
	v, tie := a.voice, a.question.Length(parser.Tie)
	where := v.along(tie)
	switch {
	case tie.Low >= at.High+balance.Margin:
		o.Hang = string(balance.ButtHeavy)
		a.lines[0] = v.say("Tied %s from the cut, the BUTT goes down. %s.", where, head)
	case tie.High <= at.Low-balance.Margin:
		o.Hang = string(balance.TipHeavy)
		a.lines[0] = v.say("Tied %s from the cut, the TIP goes down. %s.", where, head)
	default:
		a.lines[0] = v.say("Tied %s from the cut, EITHER END may go down. %s.", where, head)
	}
}

// tellEitherEnd says first what goes down at either end that it may be tied at, and how far
// it then hangs down.
func (a *answer) tellEitherEnd(head string, at unit.Range[unit.Length], length unit.Length) {
	v := a.voice
	if at.Low < balance.Margin || at.High+balance.Margin > length {
		return // so short that either end may
	}
	a.lines[0] = v.say("Butt tied, the TIP goes down; tip tied, the BUTT goes down. %s.", head)
	a.lines = append(a.lines, v.say("Either way up to %s hang below the tie, and the line above it: it clears only what is further below the block than both.", v.alongUp(length)))
}

// tieLine is the answer to where to tie for the hang that was asked for.
func (a *answer) tieLine(head string, hang balance.Hang, ties unit.Range[unit.Length], likely unit.Length) string {
	v := a.voice
	switch hang {
	case balance.ButtHeavy:
		return v.say("Butt down: tie beyond %s from the cut. %s.", v.alongUp(ties.Low), head)
	case balance.TipHeavy:
		return v.say("Tip down: tie nearer than %s from the cut. %s.", v.alongDown(ties.High), head)
	}
	return v.say("Level: tie about %s from the cut, try %s to %s. %s.", v.alongDown(likely), v.alongDown(ties.Low), v.alongUp(ties.High), head)
}

// tieElse is where to tie for another hang.
func (a *answer) tieElse(hang balance.Hang, ties unit.Range[unit.Length]) string {
	if hang == balance.TipHeavy {
		return a.voice.say("Tip down: tie nearer than %s from the cut.", a.voice.alongDown(ties.High))
	}
	return a.voice.say("Butt down: tie beyond %s from the cut.", a.voice.alongUp(ties.Low))
}
