package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// TurnedBy names how the word at i could turn the meaning.
func TurnedBy(rd *reading.Reading, i int) parser.Turning {
	switch t := rd.TermAt(i); {
	case t.Ask != parser.Twist:
		return ""
	case t.Fresh:
		return parser.TurnsPiece
	case t.Denies:
		return parser.TurnsDenied
	case t.Corrects && t.Lacks && rd.At(i+1).Pause == 0 && rd.At(i+1).Fig == nil:
		return parser.TurnsDenied // "no drum"
	case t.Corrects:
		return parser.TurnsBack
	case perLength(rd, i):
		return parser.TurnsLength
	case ofPeople(rd, i):
		return parser.TurnsPeople
	case t.Each:
		return parser.TurnsSeveral
	case t.Quarter, t.Marks&lexicon.MarkHalf != 0:
		return parser.TurnsPart
	default:
		return t.Turning
	}
}
