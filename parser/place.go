package parser

import "slices"

// place gives the numbers that no words claimed the place that the trade
// leaves them, and returns those it leaves none.
func (rd *reading) place(claimed bound) (full bound, loose []int) {
	full = slices.Clone(claimed)
	var lengths []int
	for i, e := range rd.elems {
		if full[i] != "" || e.fig == nil {
			continue
		}
		switch f := alone[e.fig.dim]; {
		case e.fig.told != "":
			full[i] = e.fig.told
		case e.fig.sure != "" && takes(e.fig.sure, e.fig):
			full[i] = e.fig.sure
		case e.fig.claimed != "":
			full[i] = e.fig.claimed
		case e.fig.rope && !full.has(RopeDiameter):
			full[i] = RopeDiameter
		case e.fig.elsewhere || e.fig.falling || e.fig.rope || e.fig.sure != "":
			loose = append(loose, i)
		case e.fig.dim == dimLength && !rd.atPlace(i):
			lengths = append(lengths, i)
		case f == Weight && rd.asksFor(AskCutPlan) && !full.has(Limit, Weight) && rd.thicknessBeside(e.fig) && !rd.worded(Weight):
			full[i] = Limit // "how long for 150 kg, 40 cm"
		case f == Weight && !rd.at(i+1).piece() && rd.namedMass(full, i):
			loose = append(loose, i)
		case f == "" || full.has(f) || f == Weight && rd.thicknessBeside(e.fig) && !rd.at(i+1).piece() && !rd.handled(i):
			loose = append(loose, i)
		default:
			full[i] = f
		}
	}
	return full, append(loose, rd.placeLengths(full, lengths)...)
}

// has says whether any number has one of the fields.
func (b bound) has(fields ...Field) bool {
	return slices.ContainsFunc(b, func(f Field) bool { return f != "" && slices.Contains(fields, f) })
}

// worded says whether the message has words for a field.
func (rd *reading) worded(f Field) bool {
	return rd.anyAt(func(i int) bool { return rd.elems[i].plays(f) })
}

// atPlace says whether a long length stands "at" somewhere: "22 ft at 35 ft".
func (rd *reading) atPlace(i int) bool {
	return rd.at(i-1).marked(markAt) && !rd.elems[i].fig.unit.fine
}

// listed says whether the number is one of two of a kind, "hitched at 35 ft
// and 40 ft", and has no words of its own: what the one is should be what the
// other is.
func (rd *reading) listed(i int, f Field) bool {
	if fig := rd.elems[i].fig; fig.claimed != "" || fig.told != "" {
		return false
	}
	twin := rd.at(i-1).marked(markAnd) && rd.alike(i, i-2) || rd.at(i+1).marked(markAnd) && rd.alike(i, i+2)
	words := rd.at(rd.past(i+1, +1, markIs|markWhere)).plays(f) || rd.at(rd.past(i-1, -1, markIs)).plays(f)
	return twin && !words
}

func (rd *reading) alike(i, j int) bool {
	a, b := rd.at(i).fig, rd.at(j).fig
	return a != nil && b != nil && a.unit == b.unit
}

// handled says whether the mass at i is what is lowered or lifted, "can i lower
// 900 lb with it", where the sizes are of no piece.
func (rd *reading) handled(i int) bool {
	in := rd.termAt(i - 1).intent
	return (in == AskLower || in == AskLift) && !slices.ContainsFunc(rd.elems, func(e element) bool {
		return e.piece() || e.fig != nil && e.fig.unit != nil && e.fig.unit.fine && !e.fig.rope
	})
}

// alone is the field of a number that stands without words, by dimension. A
// mass beside sizes is none of them unless it names the piece.
var alone = map[dimension]Field{dimMass: Weight, dimForce: Weight, dimRatio: Parts}

// placeLengths places the lengths that no words claimed: at most one across
// and one along.
func (rd *reading) placeLengths(full bound, free []int) (loose []int) {
	thick, long := full.has(across...), full.has(Length)
	switch {
	case len(free) == 1:
		return rd.placeOne(full, free[0], thick, long)
	case len(free) == 2 && !thick && !long:
		return rd.placeTwo(full, free[0], free[1])
	case len(free) == 2 && !thick && rd.has(markTaper) && rd.taper(full, free[0], free[1]):
		return nil
	case len(free) == 3 && !thick && !long && rd.has(markTaper):
		return rd.placeTaper(full, free)
	case len(free) > 1 && !thick:
		return rd.placeFine(full, free)
	}
	return free
}

// placeFine places the one number in inches or the like among several, so
// that only the rest must be asked about.
func (rd *reading) placeFine(full bound, free []int) []int {
	var rest []int
	at := -1
	for _, i := range free {
		if fig := rd.elems[i].fig; at < 0 && fig.unit.fine && !fig.pair && !fig.falling && fig.high <= roundest {
			at = i
			continue
		} else if fig.unit.fine {
			return free
		}
		rest = append(rest, i)
	}
	if at >= 0 {
		full[at] = Diameter
	}
	return rest
}

func (rd *reading) placeOne(full bound, i int, thick, long bool) []int {
	fig := rd.elems[i].fig
	slender := fig.high <= roundest
	switch {
	case (full.has(Weight) || rd.onlyRope()) && !thick && !fig.unit.fine && !rd.at(i+1).piece() && !rd.howLong(i):
		return []int{i} // the weight is known, or does not matter: why tell the length?
	case thick && !long && (rd.at(i+1).cross || rd.at(i-1).cross) && !fig.pair && !fig.falling && !rd.has(markRound):
		full[i] = Length // "80 cm por 60 de grueso"
	case thick && !long && rd.behindRound(i) && fig.high < rd.thickest(full):
		full[i] = Length // "1,10 m de ancho, rodajas de 30 cm"
	case thick && fig.unit.fine && fig.low < 3*rd.thickest(full):
		return []int{i} // a second thickness, or a short length
	case fig.pair && !thick:
		full[i] = ButtDiameter // and the tip, see quantities
	case fig.pair || fig.falling:
		return []int{i}
	case !thick && fig.unit.fine && fig.high < thinnestPiece:
		return []int{i} // "1/2 in" is rather a rope's
	case !thick && (fig.unit.fine && slender || long && slender && fig.unit.system == Metric):
		full[i] = Diameter
	case !thick && rd.beforeRound(i) && fig.high <= 3:
		full[i] = Diameter
	case !long && (!fig.unit.fine || !slender || thick) && (thick || fig.unit.system == Imperial || !slender):
		full[i] = Length
	default:
		return []int{i}
	}
	return nil
}

// thinnestPiece is the thinnest that a number without words is taken for across a
// piece, in metres.
const thinnestPiece = 0.03

// onlyRope says whether the message asks for rope and names no piece.
func (rd *reading) onlyRope() bool {
	rope := false
	for _, e := range rd.elems {
		rope = rope || e.term != nil && e.term.intent == AskRope
		if e.piece() {
			return false
		}
	}
	return rope
}

// thickest is the largest number placed across the piece.
func (rd *reading) thickest(full bound) float64 {
	most := 0.0
	for i, f := range full {
		if thickness(f) {
			most = max(most, rd.elems[i].fig.high)
		}
	}
	return most
}

// thickLog is the thickest that a log is told to be in feet, before its length:
// four of them.
const thickLog = 1.22

// placeTwo places two lengths that no words claimed. Inches go across and
// feet along. Two numbers in one unit are told apart only where one is far
// longer and the other could be no length.
func (rd *reading) placeTwo(full bound, i, j int) []int {
	a, b := rd.elems[i].fig, rd.elems[j].fig
	if a.pair && !b.pair {
		full[i], full[j] = ButtDiameter, Length
		return nil
	}
	if b.pair && !a.pair {
		full[i], full[j] = Length, ButtDiameter
		return nil
	}
	if a.falling || b.falling || a.pair || b.pair {
		return []int{i, j}
	}
	if a.high > b.high {
		i, j, a, b = j, i, b, a
	}
	// now a is the smaller
	round := rd.beforeRound(i) || rd.beforeRound(j) || rd.has(markRound) && b.high <= roundWidth
	switch {
	case round && a.unit == b.unit && a.unit.fine && rd.crossed(i, j) && rd.has(markRound):
		full[i], full[j] = Length, Diameter // "22 in x 16 in": a round is wider than long
		return nil
	case rd.crossed(i, j) && a.unit == b.unit && !round && (a.low == b.low && a.high == b.high || i < j && a.high <= roundest && b.low >= 2*a.high):
		// "35 cm x 80 cm": told as thick by long, and longer than thick
	case a.unit.fine && !b.unit.fine && !round:
	case b.unit.fine && !a.unit.fine && !round && a.unit.system == Imperial:
		a, b, i, j = b, a, j, i // 30 in and 2 ft: a short round
	case a.unit.fine != b.unit.fine && rd.beforeRound(i) && a.high <= 3:
	case round:
		return []int{i, j}
	case a.unit.system == Metric && a.high <= 1 && b.low >= 3*a.high && (b.low > roundest || rd.crossed(i, j)):
	case a.unit.fine && rd.crossed(i, j) && b.low >= 4*a.high:
	case a.unit.system == Imperial && a.high <= thickLog && b.low >= 3*a.high && rd.crossed(i, j) && !rd.has(markRound): // "2 ft by 6 ft"
	default:
		return []int{i, j}
	}
	if a.high > 3 {
		return []int{i, j}
	}
	full[i], full[j] = Diameter, Length
	return nil
}

// crossed says whether two numbers stand as "14 in x 96 in".
func (rd *reading) crossed(i, j int) bool {
	if i > j {
		i, j = j, i
	}
	return j == i+2 && rd.at(i+1).cross
}

// taper reads two thicknesses as butt and tip where the message says that the
// piece tapers.
func (rd *reading) taper(full bound, i, j int) bool {
	a, b := rd.elems[i].fig, rd.elems[j].fig
	if !a.unit.fine || !b.unit.fine || a.low == b.low {
		return false
	}
	if a.high < b.high {
		i, j = j, i
	}
	full[i], full[j] = ButtDiameter, TipDiameter
	return true
}

func (rd *reading) placeTaper(full bound, free []int) []int {
	var fine, coarse []int
	for _, i := range free {
		if rd.elems[i].fig.unit.fine {
			fine = append(fine, i)
		} else {
			coarse = append(coarse, i)
		}
	}
	if len(coarse) != 1 || !rd.taper(full, fine[0], fine[1]) {
		return free
	}
	full[coarse[0]] = Length
	return nil
}
