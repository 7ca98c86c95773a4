package heights

import (
	"slices"

	"heft/parser"
	"heft/parser/reading"
)

// A notch is asked for by how far the piece is to turn on its hinge: "so the top holds on
// till it's horizontal". A top stands upright before; how a limb lies must be told.

// TillLevel notes that the notch is one of a top, where no angle is told. Of anything but
// a notch the words ask nothing.
func TillLevel(rd *reading.Reading, q *parser.Question) {
	if q.Intent != parser.AskNotch {
		q.Notes = slices.DeleteFunc(q.Notes, func(n string) bool { return n == parser.NoteTillLevel })
		return
	}
	top := func(i int) bool { return rd.TermAt(i).TopEnd && rd.TermAt(i).Shape == parser.Limb }
	if q.Noted(parser.NoteTillLevel) && !q.Has(parser.LimbAngle) && rd.AnyAt(top) {
		q.Notes = append(q.Notes, parser.NoteTop)
	}
}
