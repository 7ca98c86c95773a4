package lines

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// DrumLeg passes over how far it is from the block to the drum, "52 ft block to drum": that
// is one leg of the rope, and neither how long the rope at hand is nor how high the block
// hangs. In a line that stops a fall it is the rope in play, and stays.
func DrumLeg(rd *reading.Reading) {
	falls := func(e reading.Element) bool {
		return e.Term != nil && e.Term.Intent == parser.AskDrop || e.Plays(parser.DropHeight) || e.Plays(parser.RunLength)
	}
	if rd.Before.Intent == parser.AskDrop || slices.ContainsFunc(rd.Elems, falls) || !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Intent == parser.AskRope }) {
		return
	}
	for i, e := range rd.Elems {
		far := func(k int) bool { return gear.Far(rd, k) && rd.Elems[k].Fig.Told == "" }
		switch {
		case !rd.Cued(e, lexicon.CueDrumLeg):
		case i > 0 && far(i-1):
			rd.Pass(i-1, i+1)
			return
		default:
			if j := rd.Past(i+1, +1, lexicon.MarkIs); j < len(rd.Elems) && far(j) {
				rd.Pass(i, j+1)
				return
			}
		}
	}
}
