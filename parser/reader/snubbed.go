package reader

import (
	"heft/parser"
	"heft/parser/reading"
	"heft/parser/senses"
)

// snubOrRun notes that it is asked whether to stop a piece dead or to let it run; where
// both are told, it asks.
func snubOrRun(rd *reading.Reading, q *parser.Question) []*parser.Ask {
	switch both := q.Noted(parser.Snubbed) && q.Has(parser.RunLength); {
	case both && senses.SnubOrRun(rd):
		q.Notes = append(q.Notes, parser.SnubOrRun)
	case both:
		return []*parser.Ask{snubbedRun(rd)}
	}
	return nil
}

// snubbedRun asks about a line that is held fast and let run as well.
func snubbedRun(rd *reading.Reading) *parser.Ask {
	for _, e := range rd.Elems {
		if e.Term != nil && e.Term.Note == parser.Snubbed {
			return clash(rd, e, parser.RunLength)
		}
	}
	return nil
}
