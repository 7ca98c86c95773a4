package parser

import "strings"

// Who measures in metres weighs in kilograms, and who weighs in kilograms
// measures in centimetres: a bare number of such a message is told in them too,
// in a language of the decimal comma. English mixes inches with kilograms.

// kilograms is the kilogram for a bare mass at i where all lengths are metric and
// nothing else tells of a unit, nil elsewhere. A weight has its word before it:
// behind "2 metros 20" stands what is asked for.
func (rd *reading) kilograms(i int, f Field) *unitWord {
	const least, most = 20, 20000 // less may be tonnes or people
	n := rd.elems[i].fig.high
	told := f == Limit || f == Weight && (rd.at(rd.back(i-1)).plays(Weight) || rd.at(rd.wordsBefore(i)).plays(Weight))
	if !rd.in.comma || !told || n < least || n > most || !rd.only(Metric, dimLength) {
		return nil
	}
	return unitNamed["kilogram"]
}

// byMasses is the unit of a bare thickness that the masses alone leave: inches go
// with pounds, and in a language of the decimal comma centimetres with kilograms,
// where they are more than inches would be.
func (rd *reading) byMasses(n float64) *unitWord {
	const thinnest, thickestInch, leastCentimetre, mostCentimetre = 8, 36, 30, 200
	switch {
	case rd.only(Imperial, dimMass) && n >= thinnest && n <= thickestInch:
		return inch
	case rd.in.comma && rd.only(Metric, dimMass) && n >= leastCentimetre && n <= mostCentimetre:
		return centimetre
	}
	return nil
}

// cutFrom says whether the number at i ends the name of what is cut up, and no
// other thickness is told: "encino de 24, qué largo corto".
func (rd *reading) cutFrom(i int) bool {
	if !rd.asksFor(AskCutPlan) || rd.thicknessBeside(rd.elems[i].fig) {
		return false
	}
	if rd.termAt(i + 1).lowEnd {
		return rd.endsBreath(i + 2) // "tiene 50 abajo"
	}
	made := rd.at(i-1).marked(markMade) && rd.at(i-2).piece()
	return made && (rd.endsBreath(i+1) || rd.at(i+1).marked(markWhere) || rd.at(i+1).polite())
}

// anchorFrom says whether the number at i ends the name of what is anchored to, and
// no other thickness is told: "pino de 30 como anclaje".
func (rd *reading) anchorFrom(i int) bool {
	if !rd.asksFor(AskAnchor) || !rd.in.comma || rd.thicknessBeside(rd.elems[i].fig) {
		return false
	}
	next := rd.termAt(rd.past(i+1, +1, markMade|markIs|markArticle))
	return rd.at(i-1).marked(markMade) && rd.at(i-2).piece() && (next.intent == AskAnchor || next.anchors)
}

// only says whether a number of the dimension is told in a unit of the system, or
// asked for in one, and nothing in any other system.
func (rd *reading) only(s System, d dimension) bool {
	told := false
	for i, e := range rd.elems {
		asked, unit := rd.termAt(i).units, e.fig != nil && e.fig.unit != nil && e.fig.unit.system != ""
		switch {
		case asked != "" && asked != s, unit && e.fig.unit.system != s && !rd.thinRope(e.fig):
			return false
		case asked == s && d == dimMass, unit && e.fig.unit.system == s && e.fig.dim == d && !rd.thinRope(e.fig):
			told = true
		case s == Imperial && d == dimLength && rd.fraction(e.fig):
			told = true
		}
	}
	return told
}

// fraction says whether a bare number is told as only inches are: "5/8 rope".
func (rd *reading) fraction(f *figure) bool {
	return f != nil && f.dim == dimCount && f.low < 2 && strings.Contains(f.words(rd.text), "/")
}

// thinRope says whether a length is as thin as a rope, whose millimetres crews
// tell in whatever system they work.
func (rd *reading) thinRope(f *figure) bool {
	return f.dim == dimLength && f.unit != nil && f.unit.fine && f.high < thickestRope
}
