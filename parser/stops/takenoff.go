package stops

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// offEnd names the lines of what comes off the end of a piece, "take the last 8 ft of brush
// off first by hand": where the piece is told, that is no size of it, and we take nothing off
// one. Where nothing else is, the end is the piece.
const offEnd = "off-end"

// OffEnd keeps such a line only where a piece is told that it is taken off, and names it as
// what is left of a piece.
func OffEnd(rd *reading.Reading, told []reading.Element) []reading.Element {
	told = slices.DeleteFunc(told, func(e reading.Element) bool {
		return e.Term.Danger == offEnd && !wholeTold(rd, e)
	})
	for _, e := range told {
		if e.Term.Danger == offEnd {
			e.Term.Danger = "rest"
		}
	}
	return told
}

// wholeTold says whether the length of a piece is told besides what the element names, or was
// before: then that comes off it. An end that is told with its own thickness is the piece.
func wholeTold(rd *reading.Reading, off reading.Element) bool {
	long, thick := false, false
	for k, e := range rd.Elems {
		if e.Start >= off.Start && e.End <= off.End || e.Fig == nil || rd.At(k-1).Marked(lexicon.MarkAt) {
			continue
		}
		long = long || e.Fig.Far() && !rd.At(k-1).LeadsTo(parser.HitchHeight)
		thick = thick || e.Fig.Short() && !e.Fig.Rope
	}
	return long || !thick && rd.Before.Has(parser.Length)
}
