package gear

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Which of the two figures of a label a number is, the thickness of the rope may tell: no
// half-inch rope has 10,000 lb as its working load, so that is what it breaks at. The
// answer says how it was read.

// SettleThin takes such numbers for what the rope breaks at, and the doubt from them.
func SettleThin(rd *reading.Reading) {
	thick := thickest(rd)
	if thick == 0 {
		return
	}
	for i, e := range rd.Elems {
		at := asksRope(rd, e.Fig)
		if at < 0 {
			continue
		}
		unit := e.Fig.Unit
		if unit == nil {
			unit = unitOffered(rd.Asks[at])
		}
		if unit == nil || !overworks(e.Fig, unit, thick) {
			continue
		}
		words := e.Fig.Words(rd.Text)
		as := words + " MBS"
		if e.Fig.Unit == nil {
			e.Fig.Lent(unit)
			as = rd.Asks[at].Choices[0].Words + " MBS"
		}
		rd.Asks = slices.Delete(rd.Asks, at, at+1)
		e.Fig.Sure, e.Fig.Elsewhere = parser.RopeBreak, false
		rd.Fixes = append(rd.Fixes, parser.Fix{Words: words, As: as})
		rd.Elems[i].Spent = true
	}
}

// asksRope is the ask which figure of the rope's label a number is, -1 for none.
func asksRope(rd *reading.Reading, fig *reading.Figure) int {
	if fig == nil {
		return -1
	}
	return slices.IndexFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.WhichStrength && a.Start == fig.Start && slices.Contains(a.Fields, parser.RopeBreak)
	})
}

// unitOffered is the unit that an ask was lent for a bare number, nil for none.
func unitOffered(a *parser.Ask) *scan.UnitWord {
	switch {
	case len(a.Choices) != 1:
		return nil
	case strings.HasSuffix(a.Choices[0].Words, " lb"):
		return scan.Pound
	case strings.HasSuffix(a.Choices[0].Words, " kg"):
		return scan.UnitNamed["kilogram"]
	}
	return nil
}

// thickest is how thick the rope of a message is at most, in metres; 0 where it is not told.
func thickest(rd *reading.Reading) (most float64) {
	for i, e := range rd.Elems {
		switch {
		case e.Fig == nil || !OfRope(rd, i):
		case e.Fig.Dim == parser.DimCount:
			most = max(most, e.Fig.High*scan.Inch.Factor)
		default:
			most = max(most, e.Fig.High)
		}
	}
	return most
}

// overworks says whether a number is more than the working load of any rope so thick, in
// metres. A rope of steel or of the strongest fibre breaks at less than strongest a square
// metre of its thickness squared, and works at a fifth of that: common practice, no source.
func overworks(fig *reading.Figure, unit *scan.UnitWord, thick float64) bool {
	const strongest, factor, gravity = 1e9, 5, 9.80665
	force := fig.Low
	if fig.Unit == nil {
		force *= unit.Factor
	}
	if unit.Dim == parser.DimMass {
		force *= gravity
	}
	return force*factor > strongest*thick*thick
}

// InchRope says whether a rope is told by inches, and nothing in metres: its strength is
// in pounds.
func InchRope(rd *reading.Reading) bool {
	inches := func(i int) bool {
		f := rd.Elems[i].Fig
		return f != nil && (rd.Fraction(f) || f.Unit == scan.Inch) && ThinPart(rd, i) == lexicon.PartRope
	}
	metric := func(i int) bool {
		f := rd.Elems[i].Fig
		return f != nil && f.Unit != nil && f.Unit.System == parser.Metric
	}
	return rd.AnyAt(inches) && !rd.AnyAt(metric)
}
