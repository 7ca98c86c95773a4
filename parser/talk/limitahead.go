package talk

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// LimitAhead says whether a message tells what a piece may weigh from a day to come and
// nothing of a piece, "limit is 800 lb from tomorrow". It does not hold yet: kept now, it
// would let go over the limit that does. "Today and tomorrow" holds now; of two told for a
// day each, either may be the one that does.
func LimitAhead(rd *reading.Reading) bool {
	if !Typed(rd, lexicon.CueDayAhead) || questioned(rd) {
		return false
	}
	limit := func(i int) bool { return rd.Elems[i].Plays(parser.Limit) }
	mass := func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && (fig.Sure == "" || fig.Sure == parser.Limit) && bounds.Mass(rd, i)
	}
	told := 0
	for i := range rd.Elems {
		if mass(i) {
			told++
		}
	}
	piece := func(i int) bool { return rd.Elems[i].Piece() || rd.Elems[i].Fig.Far() || rd.Elems[i].Fig.Short() }
	return rd.AnyAt(limit) && (told > 1 || told == 1 && !Typed(rd, lexicon.CueDayNow)) && !rd.AnyAt(piece)
}

// NotYet is the question of a job of which a limit is told that does not hold yet.
func NotYet(rd *reading.Reading) parser.Question {
	q := NotKept(rd)
	q.Notes = []string{parser.LimitAhead}
	return q
}
