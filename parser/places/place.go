package places

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// place gives the numbers that no words claimed the place that the trade
// leaves them, and returns those it leaves none.
func place(rd *reading.Reading, claimed Bound) (full Bound, loose []int) {
	full = slices.Clone(claimed)
	placeKnown(rd, full)
	var lengths []int
	for i, e := range rd.Elems {
		if full[i] != "" || e.Fig == nil {
			continue
		}
		switch f := alone[e.Fig.Dim]; {
		case e.Fig.Rope && !full.Has(parser.RopeDiameter):
			full[i] = parser.RopeDiameter
		case e.Fig.Elsewhere || e.Fig.Falling || e.Fig.Rope || e.Fig.Sure != "":
			loose = append(loose, i)
		case e.Fig.Dim == parser.DimLength && !atPlace(rd, i):
			lengths = append(lengths, i)
		case f == parser.Weight && gear.AsksFor(rd, parser.AskCutPlan) && !full.Has(parser.Limit, parser.Weight) && mayCarry(rd, i):
			full[i] = parser.Limit // "how long for 150 kg, 40 cm"
		case f == parser.Weight && !rd.At(i+1).Piece() && namedMass(rd, full, i):
			loose = append(loose, i)
		case f == parser.Weight && !full.Has(parser.Limit) && rd.At(i+1).Plays(parser.Limit) && rd.EndsBreath(i+2):
			loose = append(loose, i) // whatever a piece may weigh, it does not weigh that
		case f == "" || full.Has(f) || f == parser.Weight && rd.ThicknessBeside(e.Fig) && !rd.At(i+1).Piece() && !handled(rd, i) && !weighedAt(rd, i):
			loose = append(loose, i)
		default:
			full[i] = f
		}
	}
	return full, append(loose, placeLengths(rd, full, lengths)...)
}

// placeKnown gives the numbers that are told what they are their places, before one that
// is not takes any of them: "block WLL 4000, small one 1500. Piece is 500 lb".
func placeKnown(rd *reading.Reading, full Bound) {
	for i, e := range rd.Elems {
		switch {
		case full[i] != "" || e.Fig == nil:
		case e.Fig.Told != "":
			full[i] = e.Fig.Told
		case e.Fig.Sure != "" && takes(e.Fig.Sure, e.Fig):
			full[i] = e.Fig.Sure
		case e.Fig.Claimed != "":
			full[i] = e.Fig.Claimed
		}
	}
}

// Has says whether any number has one of the fields.
func (b Bound) Has(fields ...parser.Field) bool {
	return slices.ContainsFunc(b, func(f parser.Field) bool { return f != "" && slices.Contains(fields, f) })
}

// mayCarry says whether a mass where it is asked how long a piece may be is what it may weigh:
// its thickness is told here or was before, or the length is asked "at" it. A piece that is
// said to weigh it weighs it.
func mayCarry(rd *reading.Reading, i int) bool {
	if rd.Worded(parser.Weight) || rd.At(i+1).Piece() && !rd.At(i-1).Plays(parser.Limit) {
		return false // "stay under 300 lb sugar maple 18 in" names the piece behind its limit
	}
	return rd.ThicknessBeside(rd.Elems[i].Fig) || rd.Before.Has(parser.Across...) || rd.At(i-1).Marked(lexicon.MarkAt)
}

// atPlace says whether a long length stands "at" somewhere: "22 ft at 35 ft".
func atPlace(rd *reading.Reading, i int) bool {
	return rd.At(i-1).Marked(lexicon.MarkAt) && !rd.Elems[i].Fig.Unit.Fine
}

// Listed says whether the number is one of two of a kind, "hitched at 35 ft
// and 40 ft", and has no words of its own: what the one is should be what the
// other is.
func Listed(rd *reading.Reading, i int, f parser.Field) bool {
	if fig := rd.Elems[i].Fig; fig.Claimed != "" || fig.Told != "" {
		return false
	}
	twin := rd.At(i-1).Marked(lexicon.MarkAnd) && alike(rd, i, i-2) || rd.At(i+1).Marked(lexicon.MarkAnd) && alike(rd, i, i+2)
	words := rd.At(rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkWhere)).Plays(f) || rd.At(rd.Past(i-1, -1, lexicon.MarkIs)).Plays(f)
	return twin && !words
}

func alike(rd *reading.Reading, i, j int) bool {
	a, b := rd.At(i).Fig, rd.At(j).Fig
	return a != nil && b != nil && a.Unit == b.Unit
}

// handled says whether the mass at i is what is lowered or lifted, "can i lower
// 900 lb with it", where the sizes are of no piece.
func handled(rd *reading.Reading, i int) bool {
	in := rd.TermAt(i - 1).Intent
	return (in == parser.AskLower || in == parser.AskLift) && !slices.ContainsFunc(rd.Elems, func(e reading.Element) bool {
		return e.Piece() || e.Fig != nil && e.Fig.Unit != nil && e.Fig.Unit.Fine && !e.Fig.Rope
	})
}

// weighedAt reads "log 350 lb" and "drop 200 kg on it": what is named right before a mass,
// or dropped, weighs that, whatever else is told to be so thick.
func weighedAt(rd *reading.Reading, i int) bool {
	before, next := rd.At(i-1), rd.At(i+1)
	if before.LeadsTo(parser.DropHeight) {
		return next.Fig == nil && gear.Part(next) == ""
	}
	named := rd.TermAt(i-1).Shape != "" || rd.TermAt(i-1).Unnamed
	return named && (rd.EndsBreath(i+1) || next.Marked(lexicon.MarkWhere))
}

// alone is the field of a number that stands without words, by dimension. A
// mass beside sizes is none of them unless it names the piece.
var alone = map[parser.Dimension]parser.Field{parser.DimMass: parser.Weight, parser.DimForce: parser.Weight, parser.DimRatio: parser.Parts}

// placeLengths places the lengths that no words claimed: at most one across
// and one along.
func placeLengths(rd *reading.Reading, full Bound, free []int) (loose []int) {
	thick, long := full.Has(parser.Across...), full.Has(parser.Length)
	switch {
	case len(free) == 1:
		return placeOne(rd, full, free[0], thick, long)
	case len(free) == 2 && !thick && !long:
		return placeTwo(rd, full, free[0], free[1])
	case len(free) == 2 && !thick && rd.Has(lexicon.MarkTaper) && taper(rd, full, free[0], free[1]):
		return nil
	case len(free) == 3 && !thick && !long && rd.Has(lexicon.MarkTaper):
		return placeTaper(rd, full, free)
	case len(free) > 1 && !thick:
		return placeFine(rd, full, free)
	}
	return free
}

// placeFine places the one number in inches or the like among several, so
// that only the rest must be asked about.
func placeFine(rd *reading.Reading, full Bound, free []int) []int {
	var rest []int
	at := -1
	for _, i := range free {
		if fig := rd.Elems[i].Fig; at < 0 && fig.Unit.Fine && !fig.Pair && !fig.Falling && fig.High <= reading.Roundest {
			at = i
			continue
		} else if fig.Unit.Fine {
			return free
		}
		rest = append(rest, i)
	}
	if at >= 0 {
		full[at] = parser.Diameter
	}
	return rest
}

func placeOne(rd *reading.Reading, full Bound, i int, thick, long bool) []int {
	fig := rd.Elems[i].Fig
	slender := fig.High <= reading.Roundest
	switch {
	case (full.Has(parser.Weight) || OnlyRope(rd)) && !thick && !fig.Unit.Fine && !rd.At(i+1).Piece() && !howLong(rd, i):
		return []int{i} // the weight is known, or does not matter: why tell the length?
	case thick && !long && (rd.At(i+1).Cross || rd.At(i-1).Cross) && !fig.Pair && !fig.Falling && !rd.Has(lexicon.MarkRound):
		full[i] = parser.Length // "80 cm por 60 de grueso"
	case thick && !long && (BehindRound(rd, i) || roundNext(rd, i)) && fig.High < thickest(rd, full):
		full[i] = parser.Length // "1,10 m de ancho, rodajas de 30 cm"
	case thick && fig.Unit.Fine && fig.Low < 3*thickest(rd, full):
		return []int{i} // a second thickness, or a short length
	case fig.Pair && !thick:
		full[i] = parser.ButtDiameter // and the tip, see quantities
	case fig.Pair || fig.Falling:
		return []int{i}
	case !thick && fig.Unit.Fine && fig.High < ThinnestPiece:
		return []int{i} // "1/2 in" is rather a rope's
	case !thick && (fig.Unit.Fine && slender || long && slender && fig.Unit.System == parser.Metric):
		full[i] = parser.Diameter
	case !thick && beforeRound(rd, i) && fig.High <= 3:
		full[i] = parser.Diameter
	case !long && (!fig.Unit.Fine || !slender || thick) && (thick || fig.Unit.System == parser.Imperial || !slender):
		full[i] = parser.Length
	default:
		return []int{i}
	}
	return nil
}

// ThinnestPiece is the thinnest that a number without words is taken for across a
// piece, in metres.
const ThinnestPiece = 0.03

// OnlyRope says whether the message asks for rope and names no piece.
func OnlyRope(rd *reading.Reading) bool {
	rope := false
	for _, e := range rd.Elems {
		rope = rope || e.Term != nil && e.Term.Intent == parser.AskRope
		if e.Piece() {
			return false
		}
	}
	return rope
}

// thickest is the largest number placed across the piece.
func thickest(rd *reading.Reading, full Bound) float64 {
	most := 0.0
	for i, f := range full {
		if parser.Thickness(f) {
			most = max(most, rd.Elems[i].Fig.High)
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
func placeTwo(rd *reading.Reading, full Bound, i, j int) []int {
	a, b := rd.Elems[i].Fig, rd.Elems[j].Fig
	if a.Pair && !b.Pair {
		full[i], full[j] = parser.ButtDiameter, parser.Length
		return nil
	}
	if b.Pair && !a.Pair {
		full[i], full[j] = parser.Length, parser.ButtDiameter
		return nil
	}
	if a.Falling || b.Falling || a.Pair || b.Pair {
		return []int{i, j}
	}
	if a.High > b.High {
		i, j, a, b = j, i, b, a
	}
	// now a is the smaller
	round := beforeRound(rd, i) || beforeRound(rd, j) || rd.Has(lexicon.MarkRound) && b.High <= roundWidth
	switch {
	case round && a.Unit == b.Unit && a.Unit.Fine && rd.Crossed(i, j) && rd.Has(lexicon.MarkRound):
		full[i], full[j] = parser.Length, parser.Diameter // "22 in x 16 in": a round is wider than long
		return nil
	case rd.Crossed(i, j) && a.Unit == b.Unit && !round && (a.Low == b.Low && a.High == b.High || i < j && a.High <= reading.Roundest && b.Low >= 2*a.High):
		// "35 cm x 80 cm": told as thick by long, and longer than thick
	case a.Unit.Fine && !b.Unit.Fine && !round:
	case b.Unit.Fine && !a.Unit.Fine && !round && a.Unit.System == parser.Imperial:
		a, b, i, j = b, a, j, i // 30 in and 2 ft: a short round
	case a.Unit.Fine != b.Unit.Fine && beforeRound(rd, i) && a.High <= 3:
	case round:
		return []int{i, j}
	case a.Unit.System == parser.Metric && a.High <= 1 && b.Low >= 3*a.High && (b.Low > reading.Roundest || rd.Crossed(i, j)):
	case a.Unit.Fine && rd.Crossed(i, j) && b.Low >= 4*a.High:
	case a.Unit.System == parser.Imperial && a.High <= thickLog && b.Low >= 3*a.High && rd.Crossed(i, j) && !rd.Has(lexicon.MarkRound): // "2 ft by 6 ft"
	default:
		return []int{i, j}
	}
	if a.High > 3 {
		return []int{i, j}
	}
	full[i], full[j] = parser.Diameter, parser.Length
	return nil
}

// taper reads two thicknesses as butt and tip where the message says that the
// piece tapers.
func taper(rd *reading.Reading, full Bound, i, j int) bool {
	a, b := rd.Elems[i].Fig, rd.Elems[j].Fig
	if !a.Unit.Fine || !b.Unit.Fine || a.Low == b.Low {
		return false
	}
	if a.High < b.High {
		i, j = j, i
	}
	full[i], full[j] = parser.ButtDiameter, parser.TipDiameter
	return true
}

func placeTaper(rd *reading.Reading, full Bound, free []int) []int {
	var fine, coarse []int
	for _, i := range free {
		if rd.Elems[i].Fig.Unit.Fine {
			fine = append(fine, i)
		} else {
			coarse = append(coarse, i)
		}
	}
	if len(coarse) != 1 || !taper(rd, full, fine[0], fine[1]) {
		return free
	}
	full[coarse[0]] = parser.Length
	return nil
}
