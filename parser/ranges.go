package parser

import (
	"slices"
	"strings"
)

// compounds joins feet and inches that stand apart: 6'4", 6 ft 4 in. With a
// space between them they are one length only where the message has another
// thickness: "22 ft 10 in red oak" could be 22'10" or 22 ft of 10 in. Before
// the words of a thickness the inches are its own, "22 ft 6 in tip", unless
// both could be: "1 ft 2 in across".
func (rd *reading) compounds() {
	for i := 0; i+1 < len(rd.elems); i++ {
		rd.joinInches(i)
		rd.joinCentimetres(i)
		a, b := rd.at(i).fig, rd.at(i+1).fig
		if a == nil || b == nil {
			continue
		}
		tight := a.end == b.start
		inches := *b
		if tight && b.unit == nil && b.low >= 0 {
			inches.unit = inch
			inches.low, inches.high = b.low*inches.unit.factor, b.low*inches.unit.factor
		}
		across := !tight && rd.thicknessWord(i+2)
		if !feetInches(a, &inches) || across && a.low > roundest || !tight && rd.at(i+2).marked(markPlace|markPart|markGear) {
			continue
		}
		whole := *a
		whole.low, whole.high, whole.end = a.low+inches.low, a.low+inches.low, b.end
		if across && !rd.lengthElsewhere(i) || !across && !tight && !rd.thicknessBeside(b) {
			ask := whole.ask(TwoReadings, rd.text)
			ask.Fields = []Field{Length}
			whole.elsewhere = true
			rd.asks = append(rd.asks, ask)
		}
		rd.elems[i] = element{start: whole.start, end: whole.end, fig: &whole}
		rd.elems = append(rd.elems[:i+1], rd.elems[i+2:]...)
	}
}

// joinCentimetres reads "1m80" as metres and centimetres.
func (rd *reading) joinCentimetres(i int) {
	a, b := rd.at(i).fig, rd.at(i+1).fig
	if a == nil || b == nil || a.dim != dimLength || a.unit.factor != 1 || a.low != a.high || a.end != b.start || b.unit != nil || b.end-b.start != 2 || b.low < 0 {
		return
	}
	whole := *a
	whole.low, whole.end = a.low+b.low/100, b.end
	whole.high = whole.low
	rd.elems[i] = element{start: whole.start, end: whole.end, fig: &whole}
	rd.elems = append(rd.elems[:i+1], rd.elems[i+2:]...)
}

// halfAt finds the half that goes on from a number at j, "y media" or "and a
// half", -1 where there is none: "and half of the brush" is another.
func (rd *reading) halfAt(j int) int {
	e, next := rd.at(j), rd.at(j+1)
	switch {
	case e.marked(markAnd) && next.marked(markHalf):
		return j + 1
	case e.marked(markHalf) && strings.HasSuffix(oneSpaced(rd.text[e.start:e.end]), " a half") && !next.marked(markIs|markArticle) && !next.piece():
		return j
	}
	return -1
}

func oneSpaced(words string) string { return strings.Join(strings.Fields(fold(words)), " ") }

// lengthElsewhere says whether another number than those at i and i+1 is told
// to be the length, so that "1 ft 2 in thick, 22 ft long" is one thickness.
func (rd *reading) lengthElsewhere(i int) bool {
	for j, e := range rd.elems {
		if j != i && j != i+1 && e.fig.far() && (rd.at(j+1).plays(Length) || j > i && rd.at(j-1).plays(Length)) {
			return true
		}
	}
	return false
}

// joinInches takes out what stands between the feet and the inches of one
// length: "6 pies y 4 pulgadas".
func (rd *reading) joinInches(i int) {
	a, b := rd.elems[i].fig, rd.at(i+2).fig
	if a != nil && b != nil && rd.elems[i+1].marked(markInches) && feetInches(a, b) {
		rd.elems = slices.Delete(rd.elems, i+1, i+2)
	}
}

// halves adds the half behind a number and its thing: "14 pulgadas y media",
// "2 vueltas y media". Any other half is asked about.
func (rd *reading) halves() {
	for i := 0; i+1 < len(rd.elems); i++ {
		rd.oneAndHalf(i)
		fig, j := rd.elems[i].fig, i+1
		if fig == nil || fig.low != fig.high {
			continue
		}
		step := half
		if fig.unit != nil {
			step *= fig.unit.factor
		} else if rd.at(j).plays(Wraps) {
			j++
		} else {
			continue
		}
		k := rd.halfAt(j)
		if k < 0 {
			continue
		}
		more := *fig
		more.low, more.high, more.end = fig.low+step, fig.high+step, rd.elems[k].end
		rd.elems[i] = element{start: more.start, end: more.end, fig: &more}
		rd.elems = slices.Delete(rd.elems, j, k+1)
	}
}

// oneAndHalf reads the name of a unit at i with a half behind it as one and a
// half: "metre and a half", "metro y medio".
func (rd *reading) oneAndHalf(i int) {
	e := rd.elems[i]
	u := rd.in.units[fold(rd.text[e.start:e.end])]
	k := rd.halfAt(i + 1)
	if last := rd.at(i - 1).fig; u == nil || !e.marked(markUnit) || k < 0 || last != nil && last.unit == nil {
		return
	}
	f := &figure{unit: u, dim: u.dim, low: 1.5 * u.factor, high: 1.5 * u.factor, start: e.start, end: rd.elems[k].end}
	if u.unsure {
		rd.asks = append(rd.asks, whichTon(f, rd.text, 1.5))
	}
	rd.elems = slices.Replace(rd.elems, i, k+1, element{start: f.start, end: f.end, fig: f})
}

// thicknessWord says whether the element has the words of a thickness, so
// that the inches before it are its: "22 ft 6 in tip".
func (rd *reading) thicknessWord(i int) bool {
	for rd.at(i).marked(markIs | markWhere) {
		i++
	}
	if e := rd.at(i); e.term != nil {
		for _, r := range e.term.roles {
			if thickness(r.field) {
				return true
			}
		}
	}
	return false
}

// thicknessBeside says whether the message has a number in inches or the like
// besides f.
func (rd *reading) thicknessBeside(f *figure) bool {
	for _, e := range rd.elems {
		if e.fig != nil && e.fig != f && e.fig.told == "" && e.fig.unit != nil && e.fig.unit.fine && !e.fig.rope && e.fig.high > thickestRope {
			return true
		}
	}
	return false
}

// drooping turns the angle of a limb that hangs below level into one above it:
// "20° below level", "drooping 20°".
func (rd *reading) drooping() {
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimAngle {
			continue
		}
		if rd.at(i+1).marked(markDroops) || rd.at(rd.past(i-1, -1, markIs|markAdverb)).marked(markDroops) {
			e.fig.low, e.fig.high = -e.fig.high, -e.fig.low
		}
	}
}

// betweens reads "between 14 and 16 in" as one range. How far apart nobody is who has
// not weighed it: "pesa entre 100 y 400 kg" is one weight, and the heavier end counts.
func (rd *reading) betweens() {
	const sizes, weights = 2, 6
	weighs := func(i int) bool { return rd.at(i).plays(Weight) }
	for i := 0; i+3 < len(rd.elems); i++ {
		e := rd.elems[i : i+4]
		if !e[0].marked(markBetween) || e[1].fig == nil || !e[2].marked(markAnd) || e[3].fig == nil {
			continue
		}
		a, b := *e[1].fig, *e[3].fig
		if a.unit == nil && b.unit != nil {
			a.unit, a.dim = b.unit, b.dim
			a.low, a.high = a.low*b.unit.factor, a.high*b.unit.factor
		}
		most := float64(sizes)
		switch {
		case weighs(i-1) && b.dim == dimMass && a.low > 0:
			most = b.low / a.low
		case weighs(i-1) && b.unit == nil && b.dim == dimCount && a.low >= leastLimit:
			most = weights
		}
		if a.unit != b.unit || a.low > b.low || b.low > most*a.low {
			continue // two ends so far apart are rather two things
		}
		a.high, a.end = b.high, b.end
		e[0] = element{start: a.start, end: a.end, fig: &a}
		rd.elems = append(rd.elems[:i+1], rd.elems[i+4:]...)
	}
}

// tapers reads two ends in one breath, "14 in to 10 in" or "10-14 in", as
// butt and tip. The butt borrows the unit of the tip: "14 down to 10 inches".
func (rd *reading) tapers() {
	for i, e := range rd.elems {
		if tip := rd.at(i + 2).fig; rd.at(i+1).marked(markTaper) && e.fig.bareTo(tip) {
			e.fig.unit, e.fig.dim = tip.unit, tip.dim
			e.fig.low, e.fig.high = e.fig.low*tip.unit.factor, e.fig.high*tip.unit.factor
		} else if rd.at(i+1).marked(markTaper) && tip.bareFrom(e.fig) && !rd.at(i+3).looks(before) && !rd.at(i+3).piece() {
			tip.lent(e.fig.unit) // "30 cm down to 9"
		}
		if e.fig != nil && e.fig.dim == dimLength && e.fig.unit.fine && e.fig.low < e.fig.high && !rd.thicknessWord(i+1) {
			e.fig.pair, e.fig.falling = true, false
		}
	}
}

// fallings reads "8 in to 2 in" as butt and tip where the message has a length
// besides: no range is told from its high end so far down.
func (rd *reading) fallings() {
	const least = 1.25 // times the tip
	for i, e := range rd.elems {
		if next := rd.at(i + 1); next.plays(Wraps) || next.plays(People) || next.plays(Parts) {
			continue
		}
		if fig := e.fig; fig != nil && fig.falling && fig.short() && fig.high >= least*fig.low && rd.lengthTold(i) {
			fig.pair, fig.falling = true, false
		}
	}
}

// bareFrom says whether a number without a unit can be the tip of a piece whose butt
// is another number.
func (f *figure) bareFrom(butt *figure) bool {
	return f != nil && f.unit == nil && f.dim == dimCount && !f.falling && butt.short() && f.low > 0 && f.low*butt.unit.factor < butt.low
}

// bareTo says whether a number without a unit can be the butt of a piece whose
// tip is another number.
func (f *figure) bareTo(tip *figure) bool {
	if f == nil || f.unit != nil || f.dim != dimCount || tip == nil || tip.dim != dimLength || !tip.unit.fine {
		return false
	}
	n := f.low * tip.unit.factor
	return tip.high < n && n <= roundest
}
