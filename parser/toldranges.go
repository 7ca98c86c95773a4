package parser

// Crews tell ranges in talk, and parts and lengths by what stands behind them:
// "110 kilos give or take 10", "2 wraps or 3", "boss says 3 wraps i say 2",
// "quarter of a tonne", "20 ft of it".

// toldRanges makes of such words the numbers that they are.
func (rd *reading) toldRanges() {
	for i := 0; i < len(rd.elems); i++ {
		switch t := rd.termAt(i); {
		case t.giveTake:
			rd.giveOrTake(i)
		case t.quarter:
			rd.quarterOf(i)
		case t.ofIt:
			rd.ofIt(i)
		case rd.elems[i].plays(Wraps):
			rd.eitherWraps(i)
		}
	}
}

// giveOrTake reads "110 kilos give or take 10" as 100 to 120 kilos.
func (rd *reading) giveOrTake(i int) {
	const most = 0.5 // of the number itself
	a, b := rd.at(i-1).fig, rd.at(i+1).fig
	if a == nil || b == nil || a.unit == nil || a.low != a.high || b.low != b.high || !rd.saidOut(i+2) {
		return
	}
	if b.unit != a.unit && (b.unit != nil || b.dim != dimCount) {
		return
	}
	step := b.in(a)
	if step <= 0 || step > most*a.low {
		return
	}
	whole := *a
	whole.low, whole.high, whole.end = a.low-step, a.high+step, b.end
	rd.join(i-1, i+2, &whole)
}

// saidOut says whether nothing but courtesy follows from the element at i on
// before a breath.
func (rd *reading) saidOut(i int) bool {
	for rd.at(i).polite() {
		i++
	}
	return rd.endsBreath(i)
}

// join puts one number in the place of the elements from one up to another.
func (rd *reading) join(from, to int, f *figure) {
	rd.elems[from] = element{start: f.start, end: f.end, fig: f}
	rd.elems = append(rd.elems[:from+1], rd.elems[to:]...)
}

// eitherWraps reads the bare number that stands beside another of wraps, "2
// wraps or 3", as the other end of a range: what is planned on is the fewer.
func (rd *reading) eitherWraps(i int) {
	a, j := rd.at(i-1).fig, rd.orElse(i+1)
	if b := rd.at(j).fig; j > 0 && a.wound() && b.wound() && rd.saidOut(j+1) {
		whole := *a
		whole.low, whole.high = min(a.low, b.low), max(a.high, b.high)
		rd.elems[i-1].fig = &whole
		rd.elems = append(rd.elems[:i+1], rd.elems[j+1:]...)
	}
}

// wound says whether a bare number can count wraps.
func (f *figure) wound() bool {
	return f != nil && f.unit == nil && f.dim == dimCount && f.low == f.high && f.low > 0 && f.high <= mostWraps
}

// orElse finds the number behind "or", or behind who says another, from i on;
// -1 where none is said so, or something else is counted before it.
func (rd *reading) orElse(i int) int {
	const farthest = 8 // "2 wraps are enough for the piece i say 3"
	for j := i; j < len(rd.elems) && j <= i+farthest; j++ {
		e := rd.elems[j]
		switch {
		case e.fig != nil && rd.termAt(j-1).iSay:
			return j
		case e.fig != nil || e.pause > 2 || e.term != nil && len(e.term.roles) > 0:
			return -1
		}
	}
	return -1
}

// quarterOf reads the quarter of a unit at i, right behind what can hold no part
// of the number: "one and a quarter tonne" is more.
func (rd *reading) quarterOf(i int) {
	const part = 0.25
	e := rd.at(i + 1)
	u := rd.in.units[fold(rd.text[e.start:e.end])]
	if u == nil || u.unsure || !e.marked(markUnit) || !rd.saidOut(i+2) && !rd.at(i+2).piece() {
		return
	}
	if j := rd.past(i-1, -1, markArticle); j >= 0 && rd.at(j).pause == 0 && !rd.at(j).marked(markIs|markWhere) && rd.termAt(j).intent == "" {
		return
	}
	start := rd.elems[i].start
	rd.join(i, i+2, &figure{unit: u, dim: u.dim, low: part * u.factor, high: part * u.factor, start: start, end: e.end})
}

// ofIt reads how long a piece is where so much of it is told, "a top, 20 ft of
// it", and no rope is told of, of which it could be.
func (rd *reading) ofIt(i int) {
	ropes := func(k int) bool {
		e := rd.elems[k]
		return e.part() != "" || e.marked(markCord|markGear|markMoving) || e.plays(RopeLength) || e.plays(RunLength) || e.plays(DropHeight) || e.plays(Length)
	}
	if rd.far(i-1) && rd.saidOut(i+1) && rd.shapedOrNamed() && !rd.anyAt(ropes) {
		rd.alter(i, func(t *term) { t.roles = []role{{field: Length, side: before}} })
	}
}

// shapedOrNamed says whether the message names a piece.
func (rd *reading) shapedOrNamed() bool {
	return rd.anyAt(func(k int) bool { return rd.elems[k].piece() })
}
