package reader

import (
	"slices"

	"heft/calc/unit"
	"heft/parser"
	"heft/parser/asking"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/sizes"
	"heft/parser/stops"
	"heft/parser/turning"
)

// fillQuantities binds every number to its field. It asks about those that
// have none or clash, and about the first that is only a bound.
func fillQuantities(rd *reading.Reading, q *parser.Question) (asks []*parser.Ask, bound *parser.Ask) {
	readings := places.Assign(rd)
	if len(readings) == 0 {
		return []*parser.Ask{{Kind: parser.TooMuch, Words: rd.Text, End: len(rd.Text)}}, nil
	}
	limb := q.Shape != nil && q.Shape.Value == parser.Limb
	if len(readings) > 1 {
		addAgreed(rd, q, readings, limb)
		return []*parser.Ask{twoReadings(rd, readings, limb)}, nil
	}
	full := readings[0]
	for i, e := range rd.Elems {
		if e.Fig == nil {
			continue
		}
		f := full[i]
		if f == "" || e.Fig.Dim == parser.DimLength && places.Listed(rd, i, f) {
			asks = append(asks, looseAsk(rd, i, full, limb))
			continue
		}
		for _, f := range append([]parser.Field{f}, e.Fig.Also...) {
			if clash := add(rd, q, e.Fig, f, limb); clash != nil {
				asks = append(asks, clash)
			}
		}
	}
	return asks, asking.BoundAsk(rd, full, limb)
}

// addAgreed appends the quantities that every reading takes for the same: the weight in
// "winch 1200 max, 2000 lb log", whichever the 1200 is.
func addAgreed(rd *reading.Reading, q *parser.Question, readings []places.Bound, limb bool) {
	for i, e := range rd.Elems {
		f := readings[0][i]
		other := func(b places.Bound) bool { return b[i] != f }
		if e.Fig != nil && f != "" && !slices.ContainsFunc(readings, other) {
			_ = add(rd, q, e.Fig, f, limb) // a clash is asked about once it is known which it is
		}
	}
}

// add appends the quantity of a figure, or two of a pair.
func add(rd *reading.Reading, q *parser.Question, fig *reading.Figure, f parser.Field, limb bool) *parser.Ask {
	if f == parser.Diameter && limb {
		f = parser.ButtDiameter
	}
	x := parser.Quantity{Field: f, Low: si(f, fig, fig.Low), High: si(f, fig, fig.High), Words: fig.Words(rd.Text), Start: fig.Start, End: fig.End, At: fig.At, Girth: fig.Girth, InLine: fig.InLine}
	if fig.Unit != nil {
		x.System = fig.Unit.System
	} else if f == parser.RopeDiameter {
		x.System = parser.Imperial // a fraction of an inch
	}
	if fig.Pair {
		tip := x
		x.Low = x.High
		tip.Field, tip.High = parser.TipDiameter, tip.Low
		q.Quantities = append(q.Quantities, tip)
	}
	if old, ok := q.Get(f); ok && f != parser.Turn && f != parser.SecondRope {
		if old.Low == x.Low && old.High == x.High {
			return nil
		}
		a := fig.Ask(parser.Conflict, rd.Text)
		a.Fields = []parser.Field{f}
		return a
	}
	q.Quantities = append(q.Quantities, x)
	return nil
}

// si converts a figure to the unit of its field: a weight told as a force
// becomes the mass, a pull told as a mass the force.
func si(f parser.Field, fig *reading.Figure, v float64) float64 {
	switch want := parser.DimensionOf[f]; {
	case want == parser.DimMass && fig.Dim == parser.DimForce:
		return float64(unit.Force(v).Held())
	case want == parser.DimForce && fig.Dim == parser.DimMass:
		return float64(unit.Mass(v).Weight())
	case f == parser.RopeDiameter && fig.Dim == parser.DimCount:
		return v * float64(unit.Inch) // the trade tells ropes in fractions of an inch
	}
	return v
}

// looseAsk words the question about a number that found no place.
func looseAsk(rd *reading.Reading, i int, full places.Bound, limb bool) *parser.Ask {
	fig := rd.Elems[i].Fig
	if fig.Sure != "" && fig.Dim == parser.DimCount && parser.DimensionOf[fig.Sure] == parser.DimLength {
		a := fig.Ask(parser.NoUnit, rd.Text) // only the unit is in doubt
		a.Fields, a.Choices = []parser.Field{fig.Sure}, []parser.Choice{{Field: fig.Sure}}
		return a
	}
	if a := reading.FirstAsk(heldLoad(rd, i, full), sizes.RatingAsk(rd, i)); a != nil {
		return a
	}
	switch {
	case fig.Unclear != "":
		return gear.ObstacleAsk(fig, rd.Text)
	case fig.Sideless:
		a := fig.Ask(parser.WhichSide, rd.Text)
		a.Fields = []parser.Field{parser.BlockBehind}
		return a
	case fig.Dim == parser.DimCount && !fig.Elsewhere:
		return crossedAsk(rd, i, full, unitAsk(rd, i, full, limb))
	case fig.Dim == parser.DimAngle:
		a := fig.Ask(parser.WhichAngle, rd.Text)
		a.Fields = []parser.Field{parser.BlockAngle}
		return a
	case fig.Falling && fig.Unit != nil && fig.Unit.Fine:
		a := fig.Ask(parser.TwoReadings, rd.Text)
		a.Fields = []parser.Field{parser.ButtDiameter, parser.TipDiameter}
		return a
	}
	a := fig.Ask(parser.Loose, rd.Text)
	if fig.Falling {
		a.Kind = parser.TwoReadings
	}
	if a.Fields = open(full, limb); places.OnlyRope(rd) && !full.Has(parser.HitchHeight) {
		a.Fields = []parser.Field{parser.HitchHeight}
	}
	if sizes.MaybeRise(rd, i) {
		a.Fields = append([]parser.Field{parser.Rise}, a.Fields...)
	}
	if gear.Swings(rd) || heights.TagsAlone(rd) && rd.Has(lexicon.MarkTug) {
		a.Fields = append(heights.Untold(rd, parser.Sideways, parser.LineOut), a.Fields...)
	}
	return a
}

// crossedAsk counts the length as told where the bare number at i is the second of "18x10":
// only its unit is in doubt.
func crossedAsk(rd *reading.Reading, i int, full places.Bound, a *parser.Ask) *parser.Ask {
	before := rd.At(i - 2).Fig
	if rd.At(i-1).Cross && before != nil && before.Unit == nil && !full.Has(parser.Length) && !slices.Contains(a.Fields, parser.Length) {
		a.Fields = append(slices.Clone(a.Fields), parser.Length)
	}
	return a
}

// heldLoad asks for the unit of what somebody is to hold, nil where the number at i is
// nothing of the kind: "can he hold 600 on the drum with 3 wraps" tells no strength.
func heldLoad(rd *reading.Reading, i int, full places.Bound) *parser.Ask {
	const least = 50
	fig := rd.Elems[i].Fig
	bare := fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= least
	if !bare || full.Has(parser.Weight) || !full.Has(parser.Wraps) || !rd.Cued(rd.At(i-1), lexicon.CueHolds) || !stops.Person(rd, i-2) && !rd.At(i-2).Marked(lexicon.MarkPronoun) {
		return nil
	}
	a := fig.Ask(parser.NoUnit, rd.Text)
	a.Fields, a.Choices = []parser.Field{parser.Weight}, []parser.Choice{{Field: parser.Weight}}
	return a
}

// open lists the sizes that have no number yet, or the hitch where all others
// have.
func open(full places.Bound, limb bool) []parser.Field {
	var out []parser.Field
	if !full.Has(parser.Diameter, parser.ButtDiameter, parser.MidDiameter) {
		out = append(out, parser.AcrossField(limb))
	}
	if !full.Has(parser.Length) {
		out = append(out, parser.Length)
	}
	if len(out) == 0 && !full.Has(parser.HitchHeight) {
		out = append(out, parser.HitchHeight)
	}
	return out
}

// twoReadings asks about the first number that no reading places, or else
// about the first that they place apart.
func twoReadings(rd *reading.Reading, readings []places.Bound, limb bool) *parser.Ask {
	for i, e := range rd.Elems {
		if e.Fig != nil && !slices.ContainsFunc(readings, func(b places.Bound) bool { return b[i] != "" }) {
			return looseAsk(rd, i, readings[0], limb)
		}
	}
	for i, e := range rd.Elems {
		if e.Fig == nil {
			continue
		}
		a := e.Fig.Ask(parser.TwoReadings, rd.Text)
		everywhere := true
		for _, b := range readings {
			f := b[i]
			if everywhere = everywhere && f != ""; f == "" {
				continue
			}
			if f == parser.Diameter {
				f = parser.AcrossField(limb)
			}
			if !slices.Contains(a.Fields, f) {
				a.Fields = append(a.Fields, f)
				a.Choices = append(a.Choices, parser.Choice{Field: f})
			}
		}
		if len(a.Fields) > 1 || len(a.Fields) == 1 && !everywhere {
			return a
		}
	}
	return &parser.Ask{Kind: parser.TwoReadings, Words: rd.Text, End: len(rd.Text)}
}

// A bare number is asked for its unit, and for what it is where no word tells: only
// what it can be is offered, "limit 700" a mass, "con 3 aguanto 700 lb" wraps or hands.

// unitAsk asks for the unit of a bare number, and for what it is where that is not
// told either.
func unitAsk(rd *reading.Reading, i int, full places.Bound, limb bool) *parser.Ask {
	fig := rd.Elems[i].Fig
	a := fig.Ask(parser.NoUnit, rd.Text)
	only := func(f parser.Field) { a.Fields, a.Choices = []parser.Field{f}, []parser.Choice{{Field: f}} }
	beside, rigged := bounds.RoleBeside(rd, i), gear.Rigged(rd.At(rd.Past(i-1, -1, lexicon.MarkIs)))
	tooHigh := fig.Low > asking.LongestBare && rd.At(i+1).Plays(parser.HitchHeight) && !rd.At(rd.Back(i-1)).Plays(parser.HitchHeight) && !full.Has(parser.Weight) // "1100 up there"
	switch {
	case rd.Crossed(i, i+2) && !rd.Crossed(i-2, i) && rd.At(i+2).Fig.Far() && sizes.MaybeFeet(rd, i):
		a.Fields = []parser.Field{parser.Diameter, parser.Length} // inches or feet
	case rd.Crossed(i, i+2) && !rd.Crossed(i-2, i):
		only(parser.Diameter) // "weight of 22 by 9"
	case places.ThickOfCut(rd, i, full), fig.Low >= asking.WideBare && !full.Has(parser.Across...) && asking.OfAskedWeight(rd, i):
		only(parser.Diameter)
	case gear.OnLabel(rd, i):
		a.Fields = []parser.Field{parser.RopeBreak, parser.BlockWorking, parser.SlingWorking, parser.SlingBreak}
	case beside != nil && !(beside[0] == parser.Length && asking.HeavyPiece(rd, i)) && !tooHigh && !asking.LoadOfKit(rd, i):
		only(beside[0])
		a.Fields = beside
	case pulls.PullInTalk(rd, i):
		a.Fields = []parser.Field{parser.WinchPull} // "on the capstan, says 1000 on the plate"
	case rigged != "":
		a.Fields = []parser.Field{rigged}
	case sizes.MassBeside(rd, i-1, i+1) == parser.Payload:
		a.Fields = []parser.Field{parser.Payload}
	case !full.Has(parser.Weight) && fig.Low > asking.LongestBare && (turning.Lifting(rd) || !gear.AsksFor(rd, parser.AskGear)), !full.Has(parser.Weight) && (asking.HeavyPiece(rd, i) || asking.LoadOfKit(rd, i)):
		only(parser.Weight)
	case asking.ToLower(rd, i):
		a.Fields = []parser.Field{parser.Weight}
	case full.Has(parser.Weight) && asking.WrapsOrHands(rd, i):
		a.Fields = []parser.Field{parser.Wraps, parser.People}
	default:
		a.Fields = open(full, limb)
	}
	return a
}
