package reader

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/places"
	"heft/parser/reading"
)

// obstacles claims the numbers of what a swing may strike.
func obstacles(rd *reading.Reading, before parser.Question) {
	if !gear.Swings(rd) && !gear.LeansOn(rd, before) {
		return
	}
	for i, e := range rd.Elems {
		kind := gear.Obstacle(e)
		if kind == "" {
			continue
		}
		told := gear.Told(rd, i)
		gear.Eliminate(rd, told, kind, i)
		if len(told) == 0 && !gear.VerbBefore(rd, i) || kind == parser.Standing && e.Piece() && !gear.Stands(rd, told) && !gear.VerbBefore(rd, i) {
			continue
		}
		gear.Settle(rd, told)
		rd.Struck = rd.Struck || gear.VerbBefore(rd, i)
		if rd.Obstacle == nil {
			rd.Obstacle = said(rd, e, kind)
		}
		if e.Term.Shape != "" { // the trunk that is swung past is no log
			t := *e.Term
			t.Shape, t.Roles = "", nil
			rd.Elems[i].Term = &t
		}
	}
	if rd.Obstacle == nil && before.Obstacle != nil {
		gear.Named(rd, before)
	} else if rd.Obstacle == nil {
		places.UnnamedPast(rd)
	}
}
