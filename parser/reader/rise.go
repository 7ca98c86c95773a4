package reader

import (
	"slices"

	"heft/parser"
	"heft/parser/reading"
	"heft/parser/turning"
)

// riseOnly passes over how far a load comes up where the question is no lift: nothing
// hangs on it there. It is said back.
func riseOnly(rd *reading.Reading, q *parser.Question) {
	x, ok := q.Get(parser.Rise)
	if !ok || q.Intent == parser.AskLift {
		return
	}
	q.Quantities = slices.DeleteFunc(q.Quantities, func(x parser.Quantity) bool { return x.Field == parser.Rise })
	q.Passed = append(slices.Clone(q.Passed), parser.Said[string]{Value: x.Words, Words: x.Words, Start: x.Start, End: x.End})
	rd.Passed = q.Passed
}

// placesInLift says whether a message that asks where to tie, or whether blocks meet, is
// about a straight lift: it tells how far the load comes up, or its talk stands at one.
func placesInLift(rd *reading.Reading, q parser.Question) bool {
	asked := q.Noted(parser.TieWanted) || q.Noted(parser.BlocksMeet)
	told := q.Has(parser.Rise) || q.Has(parser.LoadHeight) && (turning.Lifting(rd) || rd.LiftsOn())
	raised := q.Has(parser.BlockHeight, parser.LimbAngle, parser.BlockBehind, parser.BlockOut) || q.Has(parser.Tie) && !q.Has(parser.Apart)
	return asked && (told || rd.Before.Intent == parser.AskLift) && !raised
}
