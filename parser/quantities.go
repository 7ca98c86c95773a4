package parser

import (
	"slices"

	"heft/calc/unit"
)

// fillQuantities binds every number to its field. It asks about those that
// have none or clash, and about the first that is only a bound.
func (rd *reading) fillQuantities(q *Question) (asks []*Ask, bound *Ask) {
	readings := assign(rd)
	if len(readings) == 0 {
		return []*Ask{{Kind: TooMuch, Words: rd.text, End: len(rd.text)}}, nil
	}
	limb := q.Shape != nil && q.Shape.Value == Limb
	if len(readings) > 1 {
		return []*Ask{rd.twoReadings(readings, limb)}, nil
	}
	full := readings[0]
	for i, e := range rd.elems {
		if e.fig == nil {
			continue
		}
		f := full[i]
		if f == "" || e.fig.dim == dimLength && rd.listed(i, f) {
			asks = append(asks, rd.looseAsk(i, full, limb))
			continue
		}
		if clash := rd.add(q, e.fig, f, limb); clash != nil {
			asks = append(asks, clash)
		}
	}
	return asks, rd.boundAsk(full, limb)
}

// add appends the quantity of a figure, or two of a pair.
func (rd *reading) add(q *Question, fig *figure, f Field, limb bool) *Ask {
	if f == Diameter && limb {
		f = ButtDiameter
	}
	x := Quantity{Field: f, Low: si(f, fig, fig.low), High: si(f, fig, fig.high), Words: fig.words(rd.text), Start: fig.start, End: fig.end, At: fig.at, Girth: fig.girth}
	if fig.unit != nil {
		x.System = fig.unit.system
	} else if f == RopeDiameter {
		x.System = Imperial // a fraction of an inch
	}
	if fig.pair {
		tip := x
		x.Low = x.High
		tip.Field, tip.High = TipDiameter, tip.Low
		q.Quantities = append(q.Quantities, tip)
	}
	if old, ok := q.Get(f); ok && f != Turn {
		if old.Low == x.Low && old.High == x.High {
			return nil
		}
		a := fig.ask(Conflict, rd.text)
		a.Fields = []Field{f}
		return a
	}
	q.Quantities = append(q.Quantities, x)
	return nil
}

// si converts a figure to the unit of its field: a weight told as a force
// becomes the mass, a pull told as a mass the force.
func si(f Field, fig *figure, v float64) float64 {
	switch want := dimensionOf[f]; {
	case want == dimMass && fig.dim == dimForce:
		return float64(unit.Force(v).Held())
	case want == dimForce && fig.dim == dimMass:
		return float64(unit.Mass(v).Weight())
	case f == RopeDiameter && fig.dim == dimCount:
		return v * float64(unit.Inch) // the trade tells ropes in fractions of an inch
	}
	return v
}

// looseAsk words the question about a number that found no place.
func (rd *reading) looseAsk(i int, full bound, limb bool) *Ask {
	fig := rd.elems[i].fig
	if fig.sure != "" && fig.dim == dimCount && dimensionOf[fig.sure] == dimLength {
		a := fig.ask(NoUnit, rd.text) // only the unit is in doubt
		a.Fields, a.Choices = []Field{fig.sure}, []Choice{{Field: fig.sure}}
		return a
	}
	if a := rd.ratingAsk(i); a != nil {
		return a
	}
	switch {
	case fig.unclear != "":
		return fig.obstacleAsk(rd.text)
	case fig.sideless:
		a := fig.ask(WhichSide, rd.text)
		a.Fields = []Field{BlockBehind}
		return a
	case fig.dim == dimCount && !fig.elsewhere:
		return rd.unitAsk(i, full, limb)
	case fig.dim == dimAngle:
		a := fig.ask(WhichAngle, rd.text)
		a.Fields = []Field{BlockAngle}
		return a
	case fig.falling && fig.unit != nil && fig.unit.fine:
		a := fig.ask(TwoReadings, rd.text)
		a.Fields = []Field{ButtDiameter, TipDiameter}
		return a
	}
	a := fig.ask(Loose, rd.text)
	if fig.falling {
		a.Kind = TwoReadings
	}
	if a.Fields = open(full, limb); rd.onlyRope() && !full.has(HitchHeight) {
		a.Fields = []Field{HitchHeight}
	}
	if rd.swings() || rd.tagsAlone() && rd.has(markTug) {
		a.Fields = append(rd.untold(Sideways, LineOut), a.Fields...)
	}
	return a
}

// open lists the sizes that have no number yet, or the hitch where all others
// have.
func open(full bound, limb bool) []Field {
	var out []Field
	if !full.has(Diameter, ButtDiameter, MidDiameter) {
		out = append(out, acrossField(limb))
	}
	if !full.has(Length) {
		out = append(out, Length)
	}
	if len(out) == 0 && !full.has(HitchHeight) {
		out = append(out, HitchHeight)
	}
	return out
}

func acrossField(limb bool) Field {
	if limb {
		return ButtDiameter
	}
	return Diameter
}

// twoReadings asks about the first number that no reading places, or else
// about the first that they place apart.
func (rd *reading) twoReadings(readings []bound, limb bool) *Ask {
	for i, e := range rd.elems {
		if e.fig != nil && !slices.ContainsFunc(readings, func(b bound) bool { return b[i] != "" }) {
			return rd.looseAsk(i, readings[0], limb)
		}
	}
	for i, e := range rd.elems {
		if e.fig == nil {
			continue
		}
		a := e.fig.ask(TwoReadings, rd.text)
		everywhere := true
		for _, b := range readings {
			f := b[i]
			if everywhere = everywhere && f != ""; f == "" {
				continue
			}
			if f == Diameter {
				f = acrossField(limb)
			}
			if !slices.Contains(a.Fields, f) {
				a.Fields = append(a.Fields, f)
				a.Choices = append(a.Choices, Choice{Field: f})
			}
		}
		if len(a.Fields) > 1 || len(a.Fields) == 1 && !everywhere {
			return a
		}
	}
	return &Ask{Kind: TwoReadings, Words: rd.text, End: len(rd.text)}
}
