package bot

import (
	"math"
	"slices"

	"heft/calc"
	"heft/calc/cutplan"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// noteFromTip is the note of the word file for cutting from the thin end.
const noteFromTip = "from-tip"

// workCutPlan answers how long a piece stays under the limit, and how a stick
// of known length is divided.
func (a *answer) workCutPlan() error {
	q := a.question
	if q.CutForFall() {
		a.refuseCutForFall()
		return nil
	}
	limit, err := a.cutLimit()
	if err != nil {
		return err
	}
	if q.Noted(parser.ThickWanted) {
		return a.workThickest(limit)
	}
	stick := pieceOf(q)
	most := q.Length(parser.LongestPiece).Low
	ends, err := longestFrom(stick, limit, most)
	if err != nil {
		return err
	}
	if err := a.weighWhole(); err != nil {
		return err
	}
	a.status = Answered
	from := cutFrom(q)
	cut := ends[from]
	o := &cutPlanObject{Longest: float64(cut.Length)}
	a.figures = func(all *object) { all.CutPlan = o }
	a.tellLongest(cut, from, limit, most)
	if !stick.Tip.IsZero() && !cut.Uncut {
		a.tellBothEnds(ends[cutplan.Butt].Length, ends[cutplan.Tip].Length)
	}
	if a.result != nil && !cut.Uncut {
		if err := a.tellPieces(o, stick, limit); err != nil {
			return err
		}
		if a.tellOne(o) {
			return nil
		}
	}
	if !cut.Uncut && (from == cutplan.Butt || stick.Tip.IsZero()) {
		a.cutTo = a.voice.taped(cut.Length)
	}
	a.tellCutting(stick, from, limit)
	return nil
}

// refuseCutForFall leaves how long a piece may be that drops into the rope.
func (a *answer) refuseCutForFall() {
	a.refuse(a.voice.word("How long for what the block may see of a drop I do not work out: it hangs on the fall. Tell me one length, the fall and the rope's strength, and I say what the block sees."))
}

// weighWhole weighs what is cut, where its length is told.
func (a *answer) weighWhole() error {
	if !a.question.Has(parser.Length) {
		return nil
	}
	res, err := a.weighed()
	if err == nil {
		a.result = &res
	}
	return err
}

// tellBothEnds says how much more comes off the thin end than off the thick one.
func (a *answer) tellBothEnds(butt, tip unit.Length) {
	a.lines = append(a.lines, a.voice.say("From the butt %s at most, from the tip %s.", a.voice.taped(butt), a.voice.taped(tip)))
}

// cutFrom is the end that is cut from: the butt, where none is told.
func cutFrom(q parser.Question) cutplan.End {
	if slices.Contains(q.Notes, noteFromTip) {
		return cutplan.Tip
	}
	return cutplan.Butt
}

// longestWith says the longest piece with that choice of tree, "" where that is not
// what is asked, or cannot be told yet.
func (a *answer) longestWith(c parser.Choice) string {
	q := a.question
	q.Species = chosenTree(c, "")
	if q.Intent != parser.AskCutPlan || len(q.Missing()) > 0 || q.Noted(parser.ThickWanted) {
		return ""
	}
	from := cutplan.Butt
	if slices.Contains(q.Notes, noteFromTip) {
		from = cutplan.Tip
	}
	cut, err := cutplan.Longest(pieceOf(q), from, q.Mass(parser.Limit).Low, q.Length(parser.LongestPiece).Low)
	if err != nil || cut.Uncut {
		return ""
	}
	return a.voice.taped(cut.Length)
}

// cutSmaller says how short a piece must be that is over the limit, where its sizes
// tell that: its butt is the heaviest part of it.
func (a *answer) cutSmaller(limit string) string {
	if q := a.question; q.Has(parser.Length) && a.result.Weight.Method != piece.ByCrew && !a.result.Disagreement {
		if cut, err := cutplan.Longest(pieceOf(q), cutplan.Butt, q.Mass(parser.Limit).Low, 0); err == nil && !cut.Uncut {
			a.cutTo = a.voice.taped(cut.Length)
			return a.voice.say("Cut a smaller piece: %s at most to stay under %s.", a.voice.taped(cut.Length), limit)
		}
	}
	return a.voice.say("Cut a smaller piece: your limit is %s.", limit)
}

// longestFrom is the longest piece from each end.
func longestFrom(stick piece.Piece, limit unit.Mass, most unit.Length) (map[cutplan.End]cutplan.Cut, error) {
	ends := map[cutplan.End]cutplan.Cut{}
	for _, from := range []cutplan.End{cutplan.Butt, cutplan.Tip} {
		cut, err := cutplan.Longest(stick, from, limit, most)
		if err != nil {
			return nil, err
		}
		ends[from] = cut
	}
	return ends, nil
}

// cutPlanObject is a cut plan as scripts read it.
type cutPlanObject struct {
	Longest float64     `json:"max_length_m,omitempty"`
	Across  float64     `json:"max_diameter_m,omitempty"` // of a piece as long as it was told
	Cuts    int         `json:"cuts,omitempty"`
	Pieces  []cutObject `json:"pieces,omitempty"` // from the butt to the tip
}

type cutObject struct {
	Length  float64 `json:"length_m"`
	High    float64 `json:"high_kg"`
	Balance float64 `json:"balance_m"`
}

// tellLongest says the longest piece from an end: by its weight, or as long as the crew has
// any of them, and no limit is reached.
func (a *answer) tellLongest(cut cutplan.Cut, from cutplan.End, most unit.Mass, longest unit.Length) {
	v := a.voice
	heavy, limit := a.inLimitsUnits(cut.Heavy, most).within(cut.Heavy, most)
	sentence := "%s: %s at most to stay under %s, plan on %s."
	switch {
	case cut.Uncut && a.result != nil:
		a.lines = []string{v.say("%s: all of it stays under %s, plan on %s.", capital(a.piece()), limit, heavy)}
		return
	case longest > 0 && cut.Length >= longest && from == cutplan.Tip:
		sentence = "%s, from the tip: %s at most, as you told, under %s: plan on %s."
	case longest > 0 && cut.Length >= longest:
		sentence = "%s: %s at most, as you told, under %s: plan on %s."
	case from == cutplan.Tip:
		sentence = "%s, from the tip: %s at most to stay under %s, plan on %s."
	}
	a.lines = []string{v.say(sentence, capital(a.piece()), v.taped(cut.Length), limit, heavy)}
	if longest > 0 && cut.Length < longest {
		a.lines = append(a.lines, v.say("No piece longer than %s, as you told.", v.taped(longest)))
	}
}

// inLimitsUnits is the speaker of a limit that a piece reaches to the pound: in other units
// than it was told in, "181.44 kg" would claim what nobody measured.
func (a *answer) inLimitsUnits(planned, limit unit.Mass) speaker {
	const reached = 0.001 // of the limit
	x, told := a.question.Get(parser.Limit)
	if other := told && (x.System == parser.Metric) != a.voice.metric && x.System != ""; other && planned >= limit*(1-reached) {
		return a.voice.other()
	}
	return a.voice
}

// tellPieces says the pieces of a stick from the butt to the tip, and what
// they take against the stick in one.
func (a *answer) tellPieces(o *cutPlanObject, stick piece.Piece, limit unit.Mass) error {
	plan, err := cutplan.Pieces(stick, limit, a.voice.tapeStep(), a.question.Length(parser.LongestPiece).Low)
	if err != nil {
		return err
	}
	v := a.voice
	o.Cuts = plan.Cuts
	heaviest := unit.Mass(0)
	for _, p := range plan.Pieces {
		heaviest = max(heaviest, p.Heavy)
		o.Pieces = append(o.Pieces, cutObject{float64(p.Length), float64(p.Heavy), float64(p.Balance)})
	}
	a.lines[0] = v.say("%s %s pieces in all.", a.lines[0], count(len(plan.Pieces)))
	a.lines = append(a.lines,
		v.say("In one: %s.", a.lowered(a.result.Weight.High)),
		v.say("In %s cuts, the heaviest: %s.", count(plan.Cuts), a.lowered(heaviest)),
		v.say("%s pieces, %s cuts, from the butt:", count(len(plan.Pieces)), count(plan.Cuts)))
	a.lines = append(a.lines, a.pieceLines(plan.Pieces)...)
	return nil
}

// planOnes are the notes of what is asked of one piece of a plan.
var planOnes = []string{parser.PlanHeaviest, parser.PlanTop, parser.PlanBottom}

// tellOne says what the heaviest piece of a plan takes, or the top or the bottom one, and
// which it is, in the place of all of them; false where none is asked about.
func (a *answer) tellOne(o *cutPlanObject) bool {
	v, q, at, sentence := a.voice, a.question, 0, ""
	switch {
	case q.Noted(parser.PlanHeaviest):
		for i, p := range o.Pieces {
			if p.High > o.Pieces[at].High {
				at = i
			}
		}
		sentence = "The heaviest of %s pieces, number %s from the butt, %s long: %s."
	case q.Noted(parser.PlanTop):
		at, sentence = len(o.Pieces)-1, "The top one of %s pieces, number %s from the butt, %s long: %s."
	case q.Noted(parser.PlanBottom):
		sentence = "The bottom one of %s pieces, number %s from the butt, %s long: %s."
	default:
		return false
	}
	p := o.Pieces[at]
	a.lines = []string{
		v.say(sentence, count(len(o.Pieces)), count(at+1), v.taped(unit.Length(p.Length)), a.lowered(unit.Mass(p.High))),
		a.lines[0],
	}
	a.cautions = append(a.cautions, v.say("A fork or a swelling weighs more: cut shorter there."))
	return true
}

// pieceLines says the pieces, those that are alike in one line.
func (a *answer) pieceLines(pieces []cutplan.Piece) []string {
	v := a.voice
	var out []string
	for i := 0; i < len(pieces); {
		said := a.pieceLine(pieces[i])
		n := 1
		for i+n < len(pieces) && a.pieceLine(pieces[i+n]) == said {
			n++
		}
		if len(out) == mostPieces {
			return append(out, v.say("… and %s more.", count(len(pieces)-i)))
		}
		out = append(out, v.say("%s × %s", count(n), said))
		i += n
	}
	return out
}

func (a *answer) pieceLine(p cutplan.Piece) string {
	v := a.voice
	return v.say("%s, plan on %s, balances %s from its thick end", v.taped(p.Length), v.heavy(p.Heavy), v.alongDown(p.Balance))
}

// lowered says what a pick of a weight takes: wraps to start with and the
// load on the top block, where it can be lowered by hand.
func (a *answer) lowered(heavy unit.Mass) string {
	v := a.voice
	res, err := calc.Work(calc.Job{Given: unit.Exactly(heavy), Lower: true, People: int(a.question.Count(parser.People))})
	if err != nil || res.Lowering == nil {
		return v.say("plan on %s, more than hands and a drum lower", v.heavy(heavy))
	}
	return v.say("plan on %s, %s, top block %s", v.heavy(heavy), v.turns(float64(res.Lowering.Start)), v.load(res.Block))
}

// mostPieces is how many pieces of a plan fit on a phone.
const mostPieces = 6

func (a *answer) tellCutting(stick piece.Piece, from cutplan.End, limit unit.Mass) {
	v := a.voice
	a.lines = append(a.lines, v.say("By the heavy end of the weight. More cuts, less load on the tree; fewer cuts, less time aloft."))
	thicker, thickest := thickened(stick, v.step())
	if cut, err := cutplan.Longest(thicker, from, limit, a.question.Length(parser.LongestPiece).Low); err == nil {
		a.lines = append(a.lines, v.say("If %s, not %s: %s at most.",
			v.across(unit.Exactly(thickest)), v.across(unit.Exactly(thickest-v.step())), v.taped(cut.Length)))
	}
	a.cautions = append(a.cautions, v.say("A fork or a swelling weighs more: cut shorter there."))
}

// tapeStep is the step of a tape that pieces are cut by.
func (s speaker) tapeStep() unit.Length {
	if s.metric {
		return 5 * unit.Centimetre
	}
	return unit.Inch
}

// taped says how long to cut a piece, rounded down to the step of a tape.
func (s speaker) taped(l unit.Length) string {
	const slack = 1e-6
	step := s.tapeStep()
	return s.along(unit.Exactly(step * unit.Length(math.Floor(float64(l/step)+slack))))
}

// step is how far an eye may be off in the thickness that moves a weight.
func (s speaker) step() unit.Length {
	if s.metric {
		return 5 * unit.Centimetre
	}
	return 2 * unit.Inch
}

// thickened is a stick with all its thicknesses larger by a step, and the
// thickest of them.
func thickened(p piece.Piece, step unit.Length) (piece.Piece, unit.Length) {
	thickest := unit.Length(0)
	for _, d := range []*unit.Range[unit.Length]{&p.Diameter, &p.Butt, &p.Mid, &p.Tip} {
		if !d.IsZero() {
			d.Low, d.High = d.Low+step, d.High+step
			thickest = max(thickest, d.High)
		}
	}
	return p, thickest
}
