package parser

import "slices"

// Some numbers go without a unit because another just told it, or because only
// one is told there.

// lend gives such numbers their unit: the tip of "12 in at the butt, 6 at the
// tip" is in inches, and what is "between the legs" in degrees.
func (rd *reading) lend() {
	rd.metresByComma()
	rd.stemSizes()
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimCount || e.fig.unit != nil || e.fig.elsewhere {
			continue
		}
		next := rd.at(rd.past(i+1, +1, markAt|markWhere|markArticle))
		switch {
		case rd.slants(i):
			continue
		case rd.at(i - 1).leadsTo(People): // "somos dos, punta 6 pulgadas"
			continue
		case rd.ropeMillimetres(i):
			e.fig.lent(unitNamed["millimetre"])
		case rd.crossedFine(i):
			e.fig.lent(rd.at(i + 2).fig.unit)
		case rd.drawn(i) != nil && (next.plays(Length) || next.plays(Diameter)):
			e.fig.lent(rd.drawn(i))
		case next.angled() && e.fig.low >= 1 && e.fig.high <= 180:
			e.fig.unit, e.fig.dim = degree, dimAngle
		case next.plays(TipDiameter) || next.plays(ButtDiameter) || next.plays(MidDiameter):
			if u := rd.thicknessUnit(i); u != nil && e.fig.high*u.factor >= thinnestEnd {
				e.fig.lent(u)
			}
		}
		if e.fig.unit == nil {
			e.fig.lent(rd.bareUnit(i))
		}
	}
}

// lent gives a bare number a unit, where there is one.
func (f *figure) lent(u *unitWord) {
	if u != nil {
		f.unit, f.dim, f.low, f.high = u, u.dim, f.low*u.factor, f.high*u.factor
	}
}

// short says whether the number is a length in inches, millimetres or the like.
func (f *figure) short() bool { return f != nil && f.dim == dimLength && f.unit.fine }

// thinnestEnd is thinner than any end of a piece is told, in metres: "350 at the butt,
// leaning 1.2 at the tip" has no tip of 1.2 mm.
const thinnestEnd = 0.01

// drawn is the millimetre where all sizes are told in it but the number at i,
// which is too large for any other unit: "600 mm beech round, 400 long".
func (rd *reading) drawn(i int) (u *unitWord) {
	const least, millimetre, thinnest = 100, 0.001, 0.1 // what is thinner is rope
	if rd.elems[i].fig.low < least {
		return nil
	}
	for _, e := range rd.elems {
		switch {
		case !e.fig.short(), e.fig.unit.factor == millimetre && e.fig.high < thinnest:
		case e.fig.unit.factor != millimetre:
			return nil
		default:
			u = e.fig.unit
		}
	}
	return u
}

// leadsTo says whether the words of an element take the number behind them for
// the field.
func (e element) leadsTo(f Field) bool {
	return slices.ContainsFunc(e.term.rolesOf(f), func(r role) bool { return r.side&after != 0 })
}

// angled says whether the words of an element stand behind an angle and
// nothing else.
func (e element) angled() bool {
	if e.term == nil || e.marked(markPlace) { // "two trees 30 apart"
		return false
	}
	for _, r := range e.term.roles {
		if (r.field == BlockAngle || r.field == LimbAngle) && r.side&before != 0 {
			return true
		}
	}
	return false
}

// thicknessUnit is the unit that another end of the piece was told in, nil for
// none, or for several.
func (rd *reading) thicknessUnit(but int) (u *unitWord) {
	for i, e := range rd.elems {
		if i == but || !rd.fineAt(i) || !rd.endBeside(i) {
			continue
		}
		if u != nil && u != e.fig.unit {
			return nil
		}
		u = e.fig.unit
	}
	return u
}

// endBeside says whether the words of an end of the piece stand right beside a
// number.
func (rd *reading) endBeside(i int) bool {
	for _, e := range []element{rd.at(rd.past(i+1, +1, markAt|markWhere|markArticle)), rd.at(rd.past(i-1, -1, markIs))} {
		if e.plays(TipDiameter) || e.plays(ButtDiameter) || e.plays(MidDiameter) {
			return true
		}
	}
	return false
}
