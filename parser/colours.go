package parser

import "slices"

// The colour of a sling says which one is meant, and nothing of how good it is; that
// of wood may say that it rots.

// colours passes over what tells the colour of gear: "the red sling", "my rope is
// green".
func (rd *reading) colours() {
	for i, e := range rd.elems {
		if rd.cued(e, cueColour) && rd.ofKitAlone(i-1, i+1) {
			rd.said(e.start, e.end)
			rd.elems[i].term = &term{chatter: true}
		}
	}
	rd.asks = slices.DeleteFunc(rd.asks, func(a *Ask) bool {
		prev, next, _ := rd.around(a)
		colour := a.Kind == Unknown && rd.in.cues[cueColour][fold(a.Words)] && rd.ofKitAlone(prev, next)
		if colour {
			rd.said(a.Start, a.End)
		}
		return colour
	})
}

// said keeps in mind what is passed over, to say it back.
func (rd *reading) said(start, end int) {
	words := rd.text[start:end]
	rd.passed = append(rd.passed, Said[string]{Value: words, Words: words, Start: start, End: end})
}

// ofKitAlone says whether what stands between two elements is said of gear, and of no
// wood and no number.
func (rd *reading) ofKitAlone(prev, next int) bool {
	of := rd.pastIs(prev)
	if rd.at(prev).fig != nil || rd.at(next).fig != nil || rd.wooden(of) || rd.wooden(next) {
		return false
	}
	return rd.rigs(of) || rd.rigs(next) || rd.termAt(next).intent == AskGear
}
