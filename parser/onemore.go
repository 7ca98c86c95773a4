package parser

// A wrap more or less than what is told is asked about in few words: "3 vueltas, ¿una
// más?", "le quito media vuelta". Of one more, the answer for those that are told
// says whether they hold; of one less, it is asked what is left.

// oneMore reads the wrap at i, which is no count of its own.
func (rd *reading) oneMore(i int) {
	fig := rd.at(i).fig
	if fig == nil || fig.unit != nil || fig.dim != dimCount || fig.pair || fig.low > 1 || fig.low != fig.high || !rd.at(i+1).plays(Wraps) {
		return
	}
	told, end := rd.otherWraps(i), i+2
	tries := i == 0 || rd.at(i-1).pause > 0 || rd.cued(rd.at(i-1), cueTries)
	switch off := rd.cued(rd.at(i-1), cueTakesOff); {
	case off && (told < 0 || rd.elems[told].fig.low-fig.low < 1):
		rd.alter(i-1, func(t *term) { t.ask = Twist })
	case told < 0:
		return
	case rd.cued(rd.at(end), cueMore) && tries:
		rd.blank(i, end+1)
	case (off || rd.cued(rd.at(end), cueFewer)) && rd.elems[told].fig.low-fig.low >= 1:
		count := rd.elems[told].fig
		count.low, count.high = count.low-fig.low, count.high-fig.low
		if rd.cued(rd.at(end), cueFewer) {
			end++
		}
		for k := i; k < end; k++ {
			rd.elems[k] = element{start: rd.elems[k].start, end: rd.elems[k].end, term: &term{chatter: true}}
		}
	}
}

// otherWraps finds the one count of wraps besides that at i, -1 for none and for
// more than one.
func (rd *reading) otherWraps(i int) int {
	found := -1
	for k, e := range rd.elems {
		if k == i || !rd.at(k+1).plays(Wraps) || e.fig == nil || e.fig.dim != dimCount || e.fig.unit != nil {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = k
	}
	return found
}
