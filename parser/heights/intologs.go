package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
)

// IntoLogs reads "a 110 ft fir in 8 ft logs": how tall the tree stands is no log's size and
// passed over, and each log is so long.
func IntoLogs(rd *reading.Reading) {
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if !gear.Far(rd, i) || fig.Told != "" || fig.Claimed != "" || rd.TermAt(i+1).Tree == nil || !rd.At(i+2).Marked(lexicon.MarkIn) {
			continue
		}
		long := rd.At(i + 3).Fig
		if !gear.Far(rd, i+3) || long.Told != "" || rd.TermAt(i+4).Shape != parser.Log || long.High >= fig.Low {
			continue
		}
		places.Claim(rd, i+3, parser.Length)
		rd.Pass(i, i+1)
		return
	}
}
