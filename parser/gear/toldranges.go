package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Crews tell ranges in talk, and parts and lengths by what stands behind them:
// "110 kilos give or take 10", "2 wraps or 3", "boss says 3 wraps i say 2",
// "quarter of a tonne", "20 ft of it".

// ToldRanges makes of such words the numbers that they are.
func ToldRanges(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		switch t := rd.TermAt(i); {
		case t.GiveTake:
			rd.GiveOrTake(i)
		case t.Quarter:
			rd.QuarterOf(i)
		case t.OfIt:
			ofIt(rd, i)
		case rd.Elems[i].Plays(parser.Wraps):
			rd.EitherWraps(i)
		}
	}
}

// ofIt reads how long a piece is where so much of it is told, "a top, 20 ft of
// it", and no rope is told of, of which it could be.
func ofIt(rd *reading.Reading, i int) {
	ropes := func(k int) bool {
		e := rd.Elems[k]
		return Part(e) != "" || e.Marked(lexicon.MarkCord|lexicon.MarkGear|lexicon.MarkMoving) || e.Plays(parser.RopeLength) || e.Plays(parser.RunLength) || e.Plays(parser.DropHeight) || e.Plays(parser.Length)
	}
	if Far(rd, i-1) && rd.SaidOut(i+1) && rd.ShapedOrNamed() && !rd.AnyAt(ropes) {
		rd.Alter(i, func(t *scan.Term) { t.Roles = []scan.Role{{Field: parser.Length, Side: lexicon.Before}} })
	}
}
