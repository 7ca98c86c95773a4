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

// FeetInches reads "3 ft 6 x 17 in" and "six foot two long" as feet and inches: a bare
// number right behind whole feet that counts nothing, where another number tells how thick
// the piece is.
func (rd *Reading) FeetInches() {
	for i := 0; i+1 < len(rd.Elems); i++ {
		feet, inches := rd.Elems[i].Fig, rd.Elems[i+1].Fig
		if feet == nil || inches == nil || feet.Unit != scan.Foot || !wholeUpTo(feet, mostFeet) || inches.Unit != nil || inches.Dim != parser.DimCount || !wholeUpTo(inches, mostInches) || !rd.countsNothing(i+2) {
			continue
		}
		thick := func(k int) bool {
			return k != i && k != i+1 && rd.Elems[k].Fig.Short() && rd.Elems[k].Fig.Low > ThickestRope
		}
		if !rd.AnyAt(thick) {
			continue
		}
		sum := *feet
		sum.End = inches.End
		sum.Low += inches.Low * scan.Inch.Factor
		sum.High = sum.Low
		rd.Join(i, i+2, &sum)
	}
}

// The most whole feet that inches are told behind, and the most inches that are no foot.
const (
	mostFeet   = 200
	mostInches = 11
)

// wholeUpTo says whether a number is one whole number, and no more of its unit than that.
func wholeUpTo(f *Figure, most float64) bool {
	n := f.Low
	if f.Unit != nil {
		n /= f.Unit.Factor
	}
	const slip = 1e-6
	return f.Low == f.High && n >= 1 && n <= most+slip && n-float64(int(n+slip)) < slip
}

// countsNothing says whether nothing at i is counted by the number before it: no wraps,
// no people, no gear.
func (rd *Reading) countsNothing(i int) bool {
	e := rd.At(i)
	if i >= len(rd.Elems) || e.Pause > 0 || e.Cross || e.Polite() || e.Plays(parser.Length) && !e.Plays(parser.Weight) {
		return true
	}
	return e.Fig == nil && (e.Marked(lexicon.MarkAnd|lexicon.MarkWhere|lexicon.MarkAt) || e.Term != nil && (e.Term.Tree != nil || e.Term.Shape != ""))
}
