package reading

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// SpokenInches reads "fourteen and three quarter inches" as one number: whole inches that
// go without their unit, and the part behind "and" that has it.
func (rd *Reading) SpokenInches() {
	const mostWhole = 100
	for i := 0; i+2 < len(rd.Elems); i++ {
		whole, part := rd.Elems[i].Fig, rd.Elems[i+2].Fig
		if whole == nil || part == nil || !rd.Elems[i+1].Marked(lexicon.MarkAnd) || part.Unit != scan.Inch || !rd.spokenPart(part) {
			continue
		}
		bare := whole.Unit == nil && whole.Dim == parser.DimCount && whole.Low == whole.High && whole.Low == float64(int(whole.Low))
		if !bare || whole.Low < 1 || whole.Low > mostWhole {
			continue
		}
		sum := *part
		sum.Start = whole.Start
		sum.Low += whole.Low * part.Unit.Factor
		sum.High = sum.Low
		rd.Join(i, i+3, &sum)
	}
}

// spokenPart says whether a number is told in words as a part of its unit: "three quarter
// inches".
func (rd *Reading) spokenPart(f *Figure) bool {
	return f.Low == f.High && f.Low > 0 && f.Low < f.Unit.Factor && f.Low != scan.Half*f.Unit.Factor && !scan.IsDigit(f.Words(rd.Text)[0])
}
