package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Who asks "the sling has some years on it, will it hold a 700 lb log" means the sling: what a
// clause without a holder of its own is said of stands in the one before it.

// ToldGearHolds makes such a word ask about the gear told before it.
func ToldGearHolds(rd *reading.Reading) {
	if rd.Worded(parser.Wraps) || rd.Worded(parser.People) {
		return
	}
	for i := range rd.Elems {
		if rd.TermAt(i).Intent == parser.AskLower && toldBefore(rd, i) && (asked(rd, i) || pieceBehind(rd, i)) {
			rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskGear, false })
			heldLoad(rd, i)
		}
	}
}

// toldBefore says whether the word of holding at i has no subject but "it", and nothing is
// told before but gear that bears, no hand and no drum.
func toldBefore(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.Elems[i], lexicon.CueHolds) {
		return false
	}
	k, it := i-1, false
	for k >= 0 && rd.At(k).Pause == 0 && !rd.TermAt(k).Human && (rd.At(k).Marked(lexicon.MarkPronoun) || rd.Cued(rd.At(k), lexicon.CueAsking) || rd.Cued(rd.At(k), lexicon.CueThat)) {
		it = it || rd.At(k).Marked(lexicon.MarkPronoun)
		k--
	}
	if !it && rd.At(k).Pause == 0 || rd.AnyAt(func(n int) bool { return Part(rd.Elems[n]) == lexicon.PartDrum }) {
		return false
	}
	gear := false
	for n := 0; n <= k; n++ {
		if rd.TermAt(n).Human || rd.At(n).Piece() || rd.At(n).Fig != nil && !ofGear(rd.At(n).Fig) {
			return false
		}
		gear = gear || bearing(rd, n) && !onIt(rd, n)
	}
	return gear
}

// pieceBehind says whether a piece is named behind the word at i, in its breath: "aguanta 700
// lb de troza".
func pieceBehind(rd *reading.Reading, i int) bool {
	for k := i + 1; k < len(rd.Elems) && rd.At(k).Pause == 0; k++ {
		if rd.At(k).Piece() {
			return true
		}
	}
	return false
}
