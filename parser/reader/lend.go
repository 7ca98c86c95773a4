package reader

import (
	"heft/parser"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/lines"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Some numbers go without a unit because another just told it, or because only
// one is told there.

// leastTurn is more turns than are on any drum: of a redirect they are degrees.
const leastTurn = 20

// lend gives such numbers their unit: the tip of "12 in at the butt, 6 at the
// tip" is in inches, and what is "between the legs" in degrees.
func lend(rd *reading.Reading) {
	sizes.MetresByComma(rd)
	sizes.StemSizes(rd)
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Dim != parser.DimCount || e.Fig.Unit != nil || e.Fig.Elsewhere {
			continue
		}
		next := rd.At(rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkWhere|lexicon.MarkArticle))
		switch {
		case heights.Slants(rd, i):
			continue
		case rd.At(i - 1).LeadsTo(parser.People): // "somos dos, punta 6 pulgadas"
			continue
		case lines.RopeMillimetres(rd, i):
			e.Fig.Lent(scan.UnitNamed["millimetre"])
		case rd.CrossedCompound(i):
			e.Fig.Lent(scan.Inch)
		case rd.CrossedFine(i):
			e.Fig.Lent(rd.At(i + 2).Fig.Unit)
		case sizes.RoundUnit(rd, i) != nil:
			e.Fig.Lent(sizes.RoundUnit(rd, i))
		case sizes.Drawn(rd, i) != nil && (next.Plays(parser.Length) || next.Plays(parser.Diameter)):
			e.Fig.Lent(sizes.Drawn(rd, i))
		case sizes.MillimetresAcross(rd, i):
			e.Fig.Lent(scan.UnitNamed["millimetre"])
		case legAngle(rd, i):
			e.Fig.Unit, e.Fig.Dim = scan.Degree, parser.DimAngle
		case next.Plays(parser.Wraps) && e.Fig.Low >= leastTurn && e.Fig.High <= 180 && rd.Has(lexicon.MarkDeflects):
			e.Fig.Unit, e.Fig.Dim = scan.Degree, parser.DimAngle // "redirect at the base 180 turn"
		case sizes.Angled(next) && e.Fig.Low >= 1 && e.Fig.High <= 180:
			e.Fig.Unit, e.Fig.Dim = scan.Degree, parser.DimAngle
		case next.Plays(parser.TipDiameter) || next.Plays(parser.ButtDiameter) || next.Plays(parser.MidDiameter):
			if u := sizes.ThicknessUnit(rd, i); u != nil && e.Fig.High*u.Factor >= sizes.ThinnestEnd {
				e.Fig.Lent(u)
			}
		}
		if e.Fig.Unit == nil {
			e.Fig.Lent(bareUnit(rd, i))
		}
	}
}

// legAngle reads "sling angle from horizontal 30": words for nothing but an angle lead
// to the bare number at i.
func legAngle(rd *reading.Reading, i int) bool {
	words, fig := rd.At(rd.Back(i-1)), rd.Elems[i].Fig
	return words.LeadsTo(parser.LegAngle) && rd.Cued(words, lexicon.CueAngle) && fig.Low >= 1 && fig.High <= 90
}
