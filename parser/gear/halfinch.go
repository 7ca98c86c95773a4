package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// HalfInches reads "rope half in" and "half in double braid": "in" is the short word for
// inches right beside a rope, and half of nothing is cut. "Half" alone is asked about.
func HalfInches(rd *reading.Reading) {
	for i := 0; i+1 < len(rd.Elems); i++ {
		e, unit := rd.Elems[i], rd.Elems[i+1]
		if e.Fig != nil || rd.In.Numbers[rd.Word(e)].Value != scan.Half || unit.Fig != nil || rd.In.Units[rd.Word(unit)] != scan.Inch {
			continue
		}
		named := func(k int) bool { return cordOr(rd, k) == lexicon.PartRope }
		if !named(i+2) && !named(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkArticle)) {
			continue
		}
		half := scan.Half * scan.Inch.Factor
		rd.Join(i, i+2, &reading.Figure{Low: half, High: half, Unit: scan.Inch, Dim: parser.DimLength, Rope: true, Start: e.Start, End: unit.End})
	}
}
