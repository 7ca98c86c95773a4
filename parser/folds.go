package parser

// "Double" adds nothing up before one wrap, "doble vuelta", nor behind "or", "doble
// vuelta o triple", where how many it takes is what is asked.

// folds reads both, at the word at i.
func (rd *reading) folds(i int) {
	n := 2.0
	if rd.cued(rd.elems[i], cueThreeTurns) {
		n = 3
	}
	e := rd.elems[i]
	switch {
	case rd.at(i+1).plays(Wraps) && rd.at(i-1).fig == nil:
		rd.elems[i] = element{start: e.start, end: e.end, fig: &figure{low: n, high: n, start: e.start, end: e.end}}
	case rd.countedBy(i - 2):
		rd.leaveOut(i, i+1)
	}
}
