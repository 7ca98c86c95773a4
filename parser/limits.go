package parser

import "slices"

// What a piece may weigh is told as what nobody wants more of: "no quiero que nadie
// pase de 250 kilos", "we don't lower anything over 400 lb".

// deniedLimits reads the number behind such words as the limit.
func (rd *reading) deniedLimits() {
	for i := range rd.elems {
		if !rd.heavy(i) && !rd.elems[i].fig.manyBare() || rd.countedBy(i+1) || rd.elems[i].fig.claimed != "" {
			continue
		}
		if from := rd.deniedFrom(i); from >= 0 && rd.exceeds(from, i) {
			rd.limitAt(from, i)
		}
	}
}

// deniedFrom finds the word before the number at i, in its clause, that denies more
// than that; -1 where what is denied is a pull, a weight or what gear takes.
func (rd *reading) deniedFrom(i int) int {
	for k := i - 1; k >= 0 && i-k <= few+1; k-- {
		e, t := rd.elems[k], rd.termAt(k)
		if t.ask == Twist && (rd.cued(e, cueDenying) || t.purpose) {
			if rd.gearBefore(k) || !t.purpose && rd.anyWithin(k, i, func(n int) bool { return rd.termAt(n).intent == AskWeight }) {
				return -1
			}
			return k
		}
		if e.pause > 0 || e.fig != nil || t.tree != nil || e.marked(markAnd|markRating) || rd.kit(k) || rd.cued(e, cueClause) || rd.cued(e, cueGrips) {
			return -1
		}
	}
	return -1
}

// gearBefore says whether gear is named in the clause before the word at i: "el
// tambor no carga más de 500 kg" rates it.
func (rd *reading) gearBefore(i int) bool {
	for k := i - 1; k >= 0 && rd.elems[k].pause == 0 && !rd.cued(rd.elems[k], cueClause); k-- {
		if rd.kit(k) {
			return true
		}
	}
	return false
}

// anyWithin says whether something holds for an element between two others.
func (rd *reading) anyWithin(from, to int, holds func(int) bool) bool {
	return rd.anyAt(func(k int) bool { return k > from && k < to && holds(k) })
}

// exceeds says whether the words from one element to the number at another say
// "more than".
func (rd *reading) exceeds(from, to int) bool {
	words := splitWords(rd.text[rd.elems[from].end:rd.elems[to].start])
	return rd.at(to-1).marked(markBound) || slices.ContainsFunc(words, func(w string) bool { return rd.in.cues[cueExceeds][w] })
}

// limitAt makes the number at i the limit, and takes the doubt from what denies more.
// A verb that is not known changes nothing of that.
func (rd *reading) limitAt(from, i int) {
	start, end := rd.elems[from].start, rd.elems[i].start
	rd.asks = slices.DeleteFunc(rd.asks, func(a *Ask) bool { return a.Kind == Unknown && a.Start >= start && a.End <= end })
	for k := from; k < i; k++ {
		rd.elems[k].term = &term{}
	}
	rd.elems[i-1].term = &term{roles: []role{{Limit, after, false}}}
}

// manyBare says whether a number has no unit, and is more than is counted of anything.
func (f *figure) manyBare() bool {
	const most = 20
	return f != nil && f.dim == dimCount && f.unit == nil && f.low > most
}
