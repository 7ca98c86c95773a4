package parser

// A limb that is stood up is told by its lie and its tie in words that mean
// other things elsewhere: "level", "tied 12 ft out".

// raised claims both where a limb is stood up.
func (rd *reading) raised() {
	if !rd.asksFor(AskRaise) {
		return
	}
	angled := rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil && rd.elems[i].fig.dim == dimAngle })
	for i, e := range rd.elems {
		switch {
		case rd.tiedOut(i):
			rd.claim(i, Tie)
		case e.term != nil && e.term.level && !angled:
			f := &figure{unit: degree, dim: dimAngle, start: e.start, end: e.end}
			rd.elems[i] = element{start: e.start, end: e.end, fig: f}
			rd.claim(i, LimbAngle)
			angled = true
		}
	}
}

// tiedOut reads "rope tied 12 ft out": out along the limb, from its cut.
func (rd *reading) tiedOut(i int) bool {
	words := rd.at(rd.past(i-1, -1, markIs))
	return rd.elems[i].fig.far() && words.term != nil && words.term.tied && rd.at(i+1).marked(markOutward) && rd.at(i+1).marked(markAdverb)
}
