package parser

// Some numbers are told as they are spoken: "un metro veinte", "30 cm x 3 m
// kilos?".

// spacedCentimetres reads "35 cm por 1 metro 20" and "un metro veinte" as metres
// and centimetres, where how thick the piece is has been told and nothing more
// is said of the number.
func (rd *reading) spacedCentimetres() {
	for i := 0; i+1 < len(rd.elems); i++ {
		a, b := rd.elems[i].fig, rd.at(i+1).fig
		if !a.wholeMetres() || !b.ofMetre() || !rd.saidOut(i+2) && (rd.termAt(i+2).intent != AskWeight || !rd.saidOut(i+3)) {
			continue
		}
		if spoken := rd.crossed(i-2, i) || letterAt(rd.text, b.start); (!spoken || !rd.thicknessBeside(b)) && !rd.acrossTold(i) {
			continue
		}
		whole := *a
		whole.low, whole.end = a.low+b.low/100, b.end
		whole.high = whole.low
		rd.join(i, i+2, &whole)
	}
}

// gluedKilos takes the unit off the centimetres of "1m80 kilos?": a number that is
// typed on to its metres weighs nothing, and the unit behind it is what is asked for.
func (rd *reading) gluedKilos() {
	for i := 0; i+1 < len(rd.elems); i++ {
		a, b := rd.elems[i].fig, rd.at(i+1).fig
		if !a.wholeMetres() || b == nil || b.unit != unitNamed["kilogram"] || b.start != a.end || !letterBefore(rd.text, b.start) || b.low != b.high || b.low < 10 || b.low >= 100 || !rd.saidOut(i+2) {
			continue
		}
		whole := *a
		whole.low, whole.end = a.low+b.low/100, b.end
		whole.high = whole.low
		rd.join(i, i+2, &whole)
	}
}

// acrossTold says whether a number before the one at i is told to be how thick the
// piece is, so that none that follows is an end of it: "48 de diámetro, 1 metro 80".
func (rd *reading) acrossTold(i int) bool {
	return rd.anyAt(func(k int) bool {
		return k < i && rd.elems[k].fig != nil && (rd.at(k+1).plays(Diameter) || rd.at(rd.past(k-1, -1, markIs)).plays(Diameter))
	})
}

// wholeMetres says whether the number is so many metres.
func (f *figure) wholeMetres() bool {
	return f != nil && f.dim == dimLength && f.unit.factor == 1 && f.low == f.high && f.low >= 1 && f.low == float64(int(f.low))
}

// ofMetre says whether a bare number can be the centimetres behind metres: two
// figures of them.
func (f *figure) ofMetre() bool {
	return f != nil && f.dim == dimCount && f.unit == nil && f.low == f.high && f.low >= 10 && f.low < 100 && f.low == float64(int(f.low))
}

// answerUnits reads "30 cm x 3 m kilos?" as what the answer is wanted in. Of a
// length that nothing is crossed with, "600 ft lbs" is another unit.
func (rd *reading) answerUnits() {
	for i, e := range rd.elems {
		u := rd.in.units[fold(rd.text[e.start:e.end])]
		if u == nil || u.dim != dimMass || u.unsure || e.fig != nil || !e.marked(markUnit) || i == 0 {
			continue
		}
		fig := rd.elems[i-1].fig
		if fig != nil && fig.dim == dimLength && rd.crossed(i-3, i-1) && fig.unit.system == u.system && rd.saidOut(i+1) {
			rd.alter(i, func(t *term) { *t = term{units: u.system} })
		}
	}
}
