package turning

import "heft/parser/reading"

// Measured says whether a number is told, so that a greeting before it is not all
// of the message: "ok for 500?".
func Measured(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil })
}
