package reader

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/reading"
)

// cutFalls notes that the pieces of a cut plan fall: what the block sees of them is more
// than they weigh. Where each is told whole and no limit is, the fall is what is asked about.
func cutFalls(rd *reading.Reading, q *parser.Question) {
	falls := gear.AsksFor(rd, parser.AskDrop) || q.Has(parser.DropHeight, parser.RunLength, parser.BlockBelow, parser.HitchAbove, parser.HitchToBlock, parser.MiddleAbove)
	whole := q.Has(parser.Across...) && q.Has(parser.Length) && !q.Has(parser.Limit, parser.LongestPiece) && !q.Has(parser.Ratings...)
	if q.Intent == parser.AskCutPlan && whole && gear.AsksFor(rd, parser.AskDrop) {
		q.Intent = parser.AskDrop
		return
	}
	if q.Intent == parser.AskCutPlan && falls {
		q.Notes = append(slices.Clip(q.Notes), parser.CutFalls)
	}
}
