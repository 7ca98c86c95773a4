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
// half-inch rope has 10,000 lb as its working load, so that is what it breaks at; no rope for
// trees has 16,000. The answer says how it was read.

// neverMarked is more than the working load that gear of a kind is marked with which a tree
// is rigged with, in newtons: a "16,000 lb rope" breaks at that. Common practice, no source.
// Read so, no more is let on it than a label would allow.
var neverMarked = map[scan.Part]float64{lexicon.PartRope: 30e3, lexicon.PartBlock: 150e3, lexicon.PartSling: 150e3}

// SettleThin takes such numbers for what the rope breaks at, or other gear that is never
// marked with as much, and the doubt from them.
func SettleThin(rd *reading.Reading) {
	thick := thickest(rd)
	for i, e := range rd.Elems {
		at, p := asksLabel(rd, e.Fig)
		if at < 0 {
			continue
		}
		unit := e.Fig.Unit
		if unit == nil {
			unit = unitOffered(rd.Asks[at])
		}
		thin := p == lexicon.PartRope && thick > 0 && unit != nil && overworks(e.Fig, unit, thick)
		if unit == nil || !thin && force(e.Fig, unit) <= neverMarked[p] {
			continue
		}
		words := e.Fig.Words(rd.Text)
		as := words + " MBS"
		if e.Fig.Unit == nil {
			e.Fig.Lent(unit)
			as = rd.Asks[at].Choices[0].Words + " MBS"
		}
		rd.Asks = slices.Delete(rd.Asks, at, at+1)
		e.Fig.Sure, e.Fig.Elsewhere = Field(p, lexicon.Breaking), false
		rd.Fixes = append(rd.Fixes, parser.Fix{Words: words, As: as})
		rd.Elems[i].Spent = true
	}
}

// asksLabel is the ask which figure of the label of a rope, a block or a sling a number is,
// and of which of them; -1 for none.
func asksLabel(rd *reading.Reading, fig *reading.Figure) (int, scan.Part) {
	if fig == nil {
		return -1, ""
	}
	for p := range neverMarked {
		at := slices.IndexFunc(rd.Asks, func(a *parser.Ask) bool {
			return a.Kind == parser.WhichStrength && a.Start == fig.Start && slices.Equal(a.Fields, Both(p))
		})
		if at >= 0 {
			return at, p
		}
	}
	return -1, ""
}

// PastMarked is the gear right beside the number at i that is never marked with as much as a
// working load, where the number is no load on it: "400 lb log, 16,000 lb rope".
func PastMarked(rd *reading.Reading, i int) scan.Part {
	fig := rd.Elems[i].Fig
	p := PartBeside(rd, i-1, i+1)
	k := rd.Past(PastIs(rd, i-1), -1, lexicon.MarkRating|lexicon.MarkIs)
	if most := neverMarked[p]; most == 0 || fig.Unit == nil || force(fig, fig.Unit) <= most || Part(rd.At(i+1)) == "" && (on(rd, k) || rd.At(k).Plays(parser.People)) {
		return ""
	}
	return p
}

// force is a number in newtons, by its unit or the one that it is lent.
func force(fig *reading.Figure, unit *scan.UnitWord) float64 {
	const gravity = 9.80665
	f := fig.Low
	if fig.Unit == nil {
		f *= unit.Factor
	}
	if unit.Dim == parser.DimMass {
		f *= gravity
	}
	return f
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
	const strongest, factor = 1e9, 5
	return force(fig, unit)*factor > strongest*thick*thick
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
