package parser

// Who measures in metres weighs in kilograms, and who weighs in kilograms
// measures in centimetres: a bare number of such a message is told in them too,
// in a language of the decimal comma. English mixes inches with kilograms.

// kilograms is the kilogram for a bare mass at i where all lengths are metric and
// nothing else tells of a unit, nil elsewhere. A weight has its word before it:
// behind "2 metros 20" stands what is asked for.
func (rd *reading) kilograms(i int, f Field) *unitWord {
	const least, most = 20, 20000 // less may be tonnes or people
	n := rd.elems[i].fig.high
	told := f == Limit || f == Weight && rd.at(rd.back(i-1)).plays(Weight)
	if !rd.in.comma || !told || n < least || n > most || !rd.onlyMetric(dimLength) {
		return nil
	}
	return unitNamed["kilogram"]
}

// centimetres is the centimetre for a bare thickness where only kilograms are
// told or asked for: fewer may be inches all the same.
func (rd *reading) centimetres(n float64) *unitWord {
	const least, most = 30, 200
	if !rd.in.comma || n < least || n > most || !rd.onlyMetric(dimMass) {
		return nil
	}
	return centimetre
}

// onlyMetric says whether a number of the dimension is told in a metric unit, or
// asked for in one, and nothing in any other system.
func (rd *reading) onlyMetric(d dimension) bool {
	metric := false
	for i, e := range rd.elems {
		asked := rd.termAt(i).units
		switch {
		case asked == Imperial, e.fig != nil && e.fig.unit != nil && e.fig.unit.system == Imperial:
			return false
		case asked == Metric && d == dimMass, e.fig != nil && e.fig.unit != nil && e.fig.dim == d && e.fig.unit.system == Metric && !rd.thinRope(e.fig):
			metric = true
		}
	}
	return metric
}

// thinRope says whether a length is as thin as a rope, whose millimetres crews
// tell in whatever system they work.
func (rd *reading) thinRope(f *figure) bool {
	return f.dim == dimLength && f.unit.fine && f.high < thickestRope
}
