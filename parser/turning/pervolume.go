package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/reading"
)

// PerVolume passes over a weight that is told by the cubic foot or metre, "62 lb per cubic
// foot": it is no piece's, and what we count with is said instead.
func PerVolume(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Note == parser.NotePerVolume && gear.Heavy(rd, i-1) {
			Blank(rd, i-1, i)
		}
	}
}
