package talk

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// LaterLimit passes over what a piece may weigh from later on where it is told what it
// may weigh now, and nothing of a piece: "limit 400 lb till lunch, then 550". It is not
// kept, and said back: whoever wants it then has to say so then.
func LaterLimit(rd *reading.Reading) {
	now, later := -1, -1
	for i := range rd.Elems {
		switch {
		case rd.Elems[i].Fig == nil:
		case now < 0 && bounds.Mass(rd, i):
			now = i
		case later >= 0 || now < 0 || !loadTold(rd, i) || !rd.TypedBefore(i, lexicon.CueLaterOn) && !rd.TypedAfter(i, lexicon.CueLaterDay):
			return
		default:
			later = i
		}
	}
	limit := func(i int) bool { return i < now && rd.Elems[i].Plays(parser.Limit) }
	if later < 0 || !rd.AnyAt(limit) || asksOrTells(rd) {
		return
	}
	rd.Changed = true
	sizes.Limited(rd, now)
	turning.Blank(rd, later, later+1)
}
