package talk

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// LimitAhead says whether a message tells what a piece may weigh from a day to come and
// nothing of a piece, "limit is 800 lb from tomorrow". It does not hold yet: kept now, it
// would let go over the limit that does. "Today and tomorrow" holds now.
func LimitAhead(rd *reading.Reading) bool {
	if !Typed(rd, lexicon.CueDayAhead) || Typed(rd, lexicon.CueDayNow) || questioned(rd) {
		return false
	}
	limit := func(i int) bool { return rd.Elems[i].Plays(parser.Limit) }
	mass := func(i int) bool { return rd.Elems[i].Fig != nil && bounds.Mass(rd, i) }
	piece := func(i int) bool { return rd.Elems[i].Piece() || rd.Elems[i].Fig.Far() || rd.Elems[i].Fig.Short() }
	return rd.AnyAt(limit) && rd.AnyAt(mass) && !rd.AnyAt(piece)
}

// NotYet is the question of a job of which a limit is told that does not hold yet.
func NotYet(rd *reading.Reading) parser.Question {
	q := NotKept(rd)
	q.Notes = []string{parser.LimitAhead}
	return q
}
