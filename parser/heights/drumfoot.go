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
// tree, as a drum no way off it: what was told before of how far that is holds no more.
func DrumToFoot(rd *reading.Reading) {
	away, told := rd.Before.Get(parser.DrumAway)
	if !told || rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil }) {
		return
	}
	for i, e := range rd.Elems {
		if !e.Marked(lexicon.MarkStation) {
			continue
		}
		_, to := rd.Span(e.Start, func(o reading.Element) bool { return o.Pause > 0 })
		words := strings.TrimSpace(scan.Fold(strings.TrimSpace(rd.Text[e.End:to])))
		if !rd.In.Cued(words, lexicon.CueDrumFoot) {
			continue
		}
		last := i + 1
		for last < len(rd.Elems) && rd.Elems[last].End <= to {
			last++
		}
		unit := scan.Metre
		if away.System == parser.Imperial {
			unit = scan.Foot
		}
		fig := &reading.Figure{Unit: unit, Dim: parser.DimLength, Told: parser.DrumAway, Start: e.Start, End: e.End}
		rd.Elems = slices.Replace(rd.Elems, i, last, reading.Element{Start: e.Start, End: e.End, Fig: fig})
		return
	}
}
