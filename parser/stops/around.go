package stops

import (
	"heft/parser"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Around finds the elements right before and right behind what is asked about, and
// what it means itself, nil where it is not known at all.
func Around(rd *reading.Reading, a *parser.Ask) (prev, next int, of *scan.Term) {
	prev, next = -1, len(rd.Elems)
	for i, e := range rd.Elems {
		switch {
		case e.End <= a.Start:
			prev = i
		case e.Start >= a.End:
			next = min(next, i)
		case e.Term != nil:
			of = e.Term
		}
	}
	return prev, next, of
}
