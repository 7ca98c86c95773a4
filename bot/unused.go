package bot

import (
	"slices"

	"heft/parser"
)

// ofPiece are the facts that every answer about a piece takes into account.
var ofPiece = []parser.Field{
	parser.Diameter, parser.ButtDiameter, parser.MidDiameter, parser.TipDiameter, parser.Length, parser.Weight, parser.Limit,
}

// uses are the facts that an answer takes into account besides.
var uses = map[parser.Intent][]parser.Field{
	parser.AskWeight:    {parser.Alike},
	parser.AskLower:     append(slices.Clone(ofLowering), parser.PersonPull),
	parser.AskBlockLoad: append(slices.Clone(ofLowering), parser.LimbAngle),
	parser.AskRope:      append(slices.Clone(ofLowering), parser.SecondRope, parser.LandsOut),
	parser.AskLift:      append(slices.Clone(ofHauling), parser.HitchHeight, parser.DrumAway, parser.TrunkAcross, parser.Apart, parser.Rise, parser.LoadHeight, parser.CutHeight, parser.Closed, parser.RopeLength),
	parser.AskRaise:     append(slices.Clone(ofHauling), parser.LimbAngle, parser.Tie, parser.BlockHeight, parser.HitchHeight, parser.BlockBehind, parser.BlockOut, parser.Sideways, parser.Closed),
	parser.AskNotch:     {parser.LimbAngle},
	parser.AskCutPlan:   {parser.People, parser.LongestPiece},
	parser.AskDrop:      {parser.DropHeight, parser.BlockBelow, parser.HitchAbove, parser.HitchToBlock, parser.MiddleAbove, parser.RunLength, parser.RopeBreak, parser.RopeLength, parser.HitchHeight, parser.RopeDiameter, parser.Strands},
	parser.AskGear:      {parser.RopeDiameter, parser.BlockAngle},
	parser.AskSwing:     {parser.Tie, parser.TieAlong, parser.PieceHeight, parser.LineOut, parser.BlockHeight, parser.Sideways, parser.StartAngle, parser.HitchHeight, parser.ObstacleOut, parser.ObstacleHeight},
	parser.AskBalance: {parser.LineOut, parser.BlockHeight, parser.PieceHeight, parser.Sideways, parser.Tie, parser.TieAlong, parser.SecondTie, parser.LegAngle, parser.SecondLeg,
		parser.BlockAngle, parser.People, parser.Lines, parser.SideBranch, parser.SideBranchOut},
	parser.AskTree:   {parser.Payload, parser.Alike},
	parser.AskAnchor: {parser.Tie, parser.HitchHeight, parser.StartAngle},
}

// ofHauling are the facts of a tackle and of what pulls on it.
var ofHauling = []parser.Field{
	parser.Parts, parser.People, parser.WinchPull, parser.PersonPull, parser.Efficiency, parser.Turn, parser.Redirects,
}

var ofLowering = []parser.Field{
	parser.HitchHeight, parser.Wraps, parser.People, parser.BlockAngle, parser.RopeLength, parser.Parts,
	parser.Turn, parser.Redirects, parser.Tail, parser.DrumAway, parser.DrumAcross, parser.TrunkAcross, parser.Alike,
}

// ofFall says whether a fall may be worked out from a field.
func ofFall(f parser.Field) bool {
	return f == parser.BlockBelow || f == parser.HitchAbove || f == parser.HitchToBlock || f == parser.MiddleAbove
}

// tellUnused names the numbers that the answer does not take into account, so
// that nobody believes it did.
func (a *answer) tellUnused() {
	q := a.question
	var left []parser.Field
	for _, x := range q.Quantities {
		if x.Field == parser.LegAngle && q.Intent == parser.AskBalance {
			continue // two lines to one point, not a sling's legs
		}
		if q.Intent == parser.AskAnchor && (x.Field == parser.Turn || x.Field == parser.BlockAngle) && slices.ContainsFunc(q.Notes, parser.Redirecting) {
			continue // how the redirect pulls on its anchor
		}
		if x.Field == parser.BlockAngle && q.Intent == parser.AskGear && betweenLegs(q) {
			continue // of the sling's legs
		}
		if x.Field == parser.Sideways && q.Intent == parser.AskBalance && q.Noted(parser.NoteEitherEnd) {
			left = append(left, x.Field)
			continue
		}
		if x.Field == parser.HitchHeight && q.Intent == parser.AskBalance && q.Has(parser.Sideways) && q.ByHeights() {
			continue // the line that it hangs on follows from it
		}
		if x.Field == parser.People && q.Noted(parser.MovedByHand) {
			continue // who rolls or carries it, which is said by itself
		}
		if (q.LimitedByGear() || q.CutForFall()) && slices.Contains(gearFacts, x.Field) {
			continue // it sets the limit
		}
		if a.question.OfTravel() && (x.Field == parser.RopeLength && a.question.Has(parser.Parts) || slices.Contains(ofHauling, x.Field)) {
			continue // it is held against what the tackle takes, or pulls once the weight is asked for
		}
		if x.Field == parser.BlockHeight && q.Intent == parser.AskBalance && (!q.Has(parser.Sideways) || q.Has(parser.LineOut)) {
			left = append(left, x.Field) // only what is pulled aside hangs on its line
			continue
		}
		if a.idlePlace(x.Field) {
			left = append(left, x.Field)
			continue
		}
		if a.idleForce(x.Field) || ofFall(x.Field) && !q.FallFromBlock() && !q.FallWanted() || !usedBy(q.Intent, x.Field) && !a.isGears(x.Field) || slices.Contains(gearFacts, x.Field) && a.unchecked() || a.idleAngle(x.Field) {
			left = append(left, x.Field)
		}
	}
	a.tellGirth()
	a.tellFixes()
	a.tellPassed()
	if q.Intent == parser.AskLower && q.Noted("snubbed") {
		a.problems = append(a.problems, a.voice.word("Held fast is NOT in these figures, which are for lowering steady."))
	}
	a.tellRopeOfLift()
	if len(left) > 0 && !q.CutForFall() {
		v := a.voice
		a.lines = append(a.lines, v.say("NOT taken into account: %s. Ask for that by itself.", v.and(nouns(v, left))))
	}
}

// tellRopeOfLift says what the rope at hand of a lift is held against, where that is not told.
func (a *answer) tellRopeOfLift() {
	if q := a.question; q.Intent != parser.AskLift || !q.Has(parser.RopeLength) || q.OfTravel() || q.Has(parser.HitchHeight) {
		return
	}
	a.lines = append(a.lines, a.voice.say("Rope: tell me how high the top block is, like “%s”. Then I hold yours against it.", a.voice.typed([]parser.Field{parser.HitchHeight})))
}

// idlePlace says whether a height of a lift that is told just now changes no figure of it
// yet: it is kept for where to tie. So it is with the size of a piece where only a rope is.
func (a *answer) idlePlace(f parser.Field) bool {
	q := a.question
	if q.Intent == parser.AskRope && a.result != nil && a.result.Weight.High == 0 && isSize(f) {
		return true // nothing hangs on it that could be so large
	}
	if q.Intent != parser.AskLift || slices.Contains(a.kept, string(f)) {
		return false
	}
	placed := q.Has(parser.HitchHeight) && q.Has(parser.Rise)
	switch f {
	case parser.CutHeight:
		return !placed
	case parser.LoadHeight:
		return !q.Has(parser.HitchHeight) && !q.Has(parser.Rise)
	}
	return false
}

// tellGirth says what was made of a girth: how thick the piece is.
func (a *answer) tellGirth() {
	v := a.voice
	for _, x := range a.question.Quantities {
		if x.Girth {
			a.lines = append(a.lines, v.say("Girth %s ÷ 3.14: %s across.", trimQuote(x.Words), v.across(a.question.Length(x.Field))))
		}
	}
}

// tellFixes says how words were read that were mended, or say less than was made of
// them, where the answer has not said it yet.
func (a *answer) tellFixes() {
	for _, f := range a.question.Fixes {
		if line := a.voice.say("Read %s as %s.", quote(f.Words), quote(f.As)); !slices.Contains(a.lines, line) {
			a.lines = append(a.lines, line)
		}
	}
}

// tellPassed names the numbers and words that are of no piece and no gear.
func (a *answer) tellPassed() {
	if passed := a.question.Passed; len(passed) > 0 {
		a.lines = append(a.lines, a.voice.say("Passed over: %s.", a.voice.and(wordsOf(passed))))
	}
}

// wordsOf quotes what was said.
func wordsOf(said []parser.Said[string]) []string {
	out := make([]string, len(said))
	for i, s := range said {
		out[i] = quote(s.Words)
	}
	return out
}

// tellsNothing says whether a message of a talk tells and asks nothing that was understood:
// "its got all its leaf on". Its answer would be that of before, as if it had been heard.
func tellsNothing(q parser.Question) bool {
	said := q.Asks || q.SaysUnits || q.Clear || q.Hello || q.Explain != "" || q.Obstacle != nil
	return !said && q.Empty() && len(q.Guessed) == 0 && len(q.Notes) == 0 && q.Intent == parser.AskWeight
}

// tellNothingNew says that a message changes no figure.
func (a *answer) tellNothingNew(q parser.Question, text string) {
	if a.leaned && tellsNothing(q) {
		a.problems = append(a.problems, a.voice.say("%s tells me nothing new: the figures are as before.", quote(text)))
	}
}
