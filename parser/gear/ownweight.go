package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// DrumWeighs passes over what the drum itself weighs, "el tambor es nuevo y pesa como 60
// kilos": it hangs on no rope, and another load is told.
func DrumWeighs(rd *reading.Reading) {
	for i := range rd.Elems {
		if !Heavy(rd, i) || !rd.AnyAt(func(k int) bool { return k != i && Heavy(rd, k) }) {
			continue
		}
		weighs := i - 1
		for rd.TermAt(weighs).Note == "about" || rd.At(weighs).Marked(lexicon.MarkBound) && !rd.At(weighs).Plays(parser.Weight) {
			weighs--
		}
		if !rd.At(weighs).Plays(parser.Weight) {
			continue
		}
		k := weighs - 1
		for k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil && Part(rd.At(k)) == "" && !rd.At(k).Piece() && !rd.TermAt(k).Unnamed {
			k--
		}
		if Part(rd.At(k)) == lexicon.PartDrum {
			rd.Pass(weighs, i+1)
			return
		}
	}
}
