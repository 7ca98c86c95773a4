package parser

// "Todo en libras y pies, nada de metros" and "kilos from now on, not pounds" ask
// for one system and put the other aside: what is put aside is never the one that
// is kept.

// unitsAside leaves out the units that a message without a number denies, where it
// tells other ones. Denied alone they stay in doubt.
func (rd *reading) unitsAside() {
	if rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil }) {
		return
	}
	for i := range rd.elems {
		end := rd.deniedUnits(i)
		if end == 0 || !rd.anyAt(func(k int) bool { return (k < i || k >= end) && rd.otherSystem(k, i+1, end) }) {
			continue
		}
		rd.blank(i, end)
	}
}

// deniedUnits finds where the units end that the word at i denies, 0 for none.
func (rd *reading) deniedUnits(i int) (end int) {
	if !rd.denial(i) {
		return 0
	}
	for k := rd.past(i+1, +1, markArticle|markAnd|markIs|markIn); rd.systemAt(k) != ""; k = rd.past(k+1, +1, markAnd) {
		end = k + 1
	}
	return end
}

// otherSystem says whether the units at k are of another system than all those from
// one element to another.
func (rd *reading) otherSystem(k, from, to int) bool {
	told := rd.systemAt(k)
	return told != "" && !rd.anyAt(func(j int) bool { return from <= j && j < to && rd.systemAt(j) == told })
}

// systemAt is the system that is asked for at i, or that of a unit without a number.
func (rd *reading) systemAt(i int) System {
	e, t := rd.at(i), rd.termAt(i)
	if t.units != "" || !e.marked(markUnit) {
		return t.units
	}
	if u := rd.in.units[rd.word(e)]; u != nil {
		return u.system
	}
	return ""
}
