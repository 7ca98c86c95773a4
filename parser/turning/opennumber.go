package turning

import (
	"heft/parser"
	"heft/parser/reading"
	"heft/parser/scan"
)

// OpenNumber makes the ask about "a few feet" one about how many they are: the word stands
// in the place of a number.
func OpenNumber(rd *reading.Reading, a *parser.Ask) {
	if a.Kind != parser.Twist || a.Turning != parser.TurnsSeveral {
		return
	}
	word, end := scan.NextWord(rd.Text[a.End:])
	if rd.In.Units[word] == nil {
		return
	}
	a.Turning, a.End = parser.TurnsOpen, a.End+end
	a.Words = rd.Text[a.Start:a.End]
}
