package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
)

// CrossedLength keeps the second of two sizes that are crossed for the piece where a rope
// is told of behind a comma: "40 cm x 2 m, la soga rompe a 5 t" tells no length of rope.
func CrossedLength(rd *reading.Reading) {
	for i := 2; i < len(rd.Elems); i++ {
		across := rd.At(i - 2).Fig
		if !rd.Crossed(i-2, i) || !across.Short() || !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || rd.At(i+1).Pause == 0 {
			continue
		}
		if stops.Rope(rd, rd.Past(i+2, +1, lexicon.MarkArticle)) {
			rd.Elems[i].Fig.Sure = parser.Length
		}
	}
}
