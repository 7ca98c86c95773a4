package bot

import (
	"slices"

	"heft/parser"
)

// ofTravel are the facts that how far a lift goes hangs on.
var ofTravel = []parser.Field{parser.Apart, parser.Rise, parser.LoadHeight, parser.CutHeight, parser.HitchHeight, parser.Parts, parser.Closed, parser.RopeLength}

// stillAsked are the notes of before, without that of how far a lift goes where a message
// tells or asks something else, and without what was asked of one piece of a plan.
func stillAsked(before, now parser.Question) []string {
	sized := now.Has(acrossFields...) || now.Asks // a thickness is told, or something else is asked
	before.Notes = slices.DeleteFunc(slices.Clone(before.Notes), func(n string) bool {
		return slices.Contains(planOnes, n) || n == parser.ThickWanted && sized || n == parser.MovedByHand && now.Asks && now.Intent != parser.AskWeight
	})
	only := len(now.Quantities) > 0 && !now.Asks
	for _, x := range now.Quantities {
		only = only && slices.Contains(ofTravel, x.Field)
	}
	if only {
		return before.Notes
	}
	return slices.DeleteFunc(slices.Clone(before.Notes), func(n string) bool { return n == parser.TravelWanted })
}

// goesOnLifting says whether a message about how far a lift goes is about the lift of
// before, or about a limb of which it was only asked where to tie: it tells no piece of its
// own. "Limb is at 9" names the one that is lifted.
func (t Turn) goesOnLifting(q parser.Question) bool {
	was := t.question
	lifted := was.Intent == parser.AskLift || was.Intent == parser.AskRaise && !was.Has(parser.Tie, parser.BlockHeight, parser.LimbAngle)
	return q.OfTravel() && !tellsAnew(q) && lifted
}
