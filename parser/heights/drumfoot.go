package heights

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// DrumToFoot reads "can i move the drum to the trunk", in a talk whose drum stands off the
// tree, as a drum no way off it: what was told before of how far that is holds no more. So
// does "what if i put it at the base": of what such a talk tells, only the drum can go there.
func DrumToFoot(rd *reading.Reading) {
	away, told := rd.Before.Get(parser.DrumAway)
	if !told || rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil }) {
		return
	}
	for i, e := range rd.Elems {
		behind := e.End
		if it := rd.SaidTo(lexicon.CuePutIt, e.Start); it >= 0 {
			behind = it
		} else if !e.Marked(lexicon.MarkStation) {
			continue
		}
		_, to := rd.Span(e.Start, func(o reading.Element) bool { return o.Pause > 0 })
		if to < behind || !atFoot(rd, rd.Text[behind:to]) {
			continue
		}
		last := i + 1
		for last < len(rd.Elems) && rd.Elems[last].End <= to {
			last++
		}
		rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return a.Start >= e.Start && a.End <= to })
		unit := scan.Metre
		if away.System == parser.Imperial {
			unit = scan.Foot
		}
		fig := &reading.Figure{Unit: unit, Dim: parser.DimLength, Told: parser.DrumAway, Start: e.Start, End: e.End}
		rd.Elems = slices.Replace(rd.Elems, i, last, reading.Element{Start: e.Start, End: e.End, Fig: fig})
		return
	}
}

// atFoot says whether words behind a drum say no more than that it is at the foot of its
// tree: "is right on the same tree then".
func atFoot(rd *reading.Reading, text string) bool {
	words := scan.SplitWords(text)
	for len(words) > 0 && rd.In.Cued(words[0], lexicon.CueStandsLead) {
		words = words[1:]
	}
	for n := len(words); n > 0; n-- {
		if rd.In.Cued(strings.Join(words[:n], " "), lexicon.CueDrumFoot) {
			return true
		}
		if !rd.In.Cued(words[n-1], lexicon.CueStandsTail) {
			return false
		}
	}
	return false
}
