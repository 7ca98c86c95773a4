package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// OtherEndings leaves out an eye splice that is told behind other gear than the rope: "sling
// 22,000 spliced" is how the sling was made. As the rope's it would take less off the rope's
// strength than its knot does.
func OtherEndings(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Note == parser.EyeSplice && ofOtherGear(rd, i) {
			rd.Alter(i, func(t *scan.Term) { t.Note, t.Overlook = "", true })
		}
	}
}

// ofOtherGear says whether the nearest gear before the ending at i is not the rope, and no
// rope is told right behind the ending: "sling 22,000, spliced rope".
func ofOtherGear(rd *reading.Reading, i int) bool {
	const most = 3
	roped := func(k int) bool { return Part(rd.At(k)) == lexicon.PartRope || rd.At(k).Marked(lexicon.MarkCord) }
	for k := i + 1; k <= i+most && k < len(rd.Elems) && (k == i+1 || rd.At(k).Pause == 0) && rd.At(k).Fig == nil; k++ {
		if roped(k) {
			return false
		}
	}
	for k := i - 1; k >= 0; k-- {
		switch {
		case roped(k):
			return false
		case Part(rd.At(k)) == lexicon.PartSling:
			return true
		case Part(rd.At(k)) != "" && !ledTo(rd, k), rd.At(k).Piece():
			return false
		}
	}
	return false
}
