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
	parser.AskRope:      append(slices.Clone(ofLowering), parser.SecondRope),
	parser.AskLift:      append(slices.Clone(ofHauling), parser.HitchHeight, parser.DrumAway, parser.TrunkAcross),
	parser.AskRaise:     append(slices.Clone(ofHauling), parser.LimbAngle, parser.Tie, parser.BlockHeight, parser.HitchHeight, parser.BlockBehind, parser.BlockOut, parser.Sideways, parser.Closed),
	parser.AskNotch:     {parser.LimbAngle},
	parser.AskCutPlan:   {parser.People},
	parser.AskDrop:      {parser.DropHeight, parser.BlockBelow, parser.RunLength, parser.RopeBreak, parser.RopeLength, parser.HitchHeight, parser.RopeDiameter, parser.Strands},
	parser.AskGear:      {parser.RopeDiameter, parser.BlockAngle},
	parser.AskSwing:     {parser.LineOut, parser.BlockHeight, parser.Sideways, parser.StartAngle, parser.HitchHeight, parser.ObstacleOut, parser.ObstacleHeight},
	parser.AskBalance: {parser.LineOut, parser.Sideways, parser.Tie, parser.SecondTie, parser.LegAngle, parser.SecondLeg,
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
	parser.Turn, parser.Redirects, parser.DrumAway, parser.DrumAcross, parser.TrunkAcross, parser.Alike,
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
		if a.idleForce(x.Field) || x.Field == parser.BlockBelow && !q.FallFromBlock() || !usedBy(q.Intent, x.Field) && !a.isGears(x.Field) || slices.Contains(gearFacts, x.Field) && a.unchecked() || a.idleAngle(x.Field) {
			left = append(left, x.Field)
		}
	}
	a.tellGirth()
	a.tellFixes()
	a.tellPassed()
	if q.Intent == parser.AskLower && q.Noted("snubbed") {
		a.problems = append(a.problems, a.voice.word("Held fast is NOT in these figures, which are for lowering steady."))
	}
	if len(left) > 0 {
		v := a.voice
		a.lines = append(a.lines, v.say("NOT taken into account: %s. Ask for that by itself.", v.and(nouns(v, left))))
	}
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
