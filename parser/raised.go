package parser

// A limb that is stood up is told by its lie and its tie in words that mean
// other things elsewhere: "level", "tied 12 ft out".

// raised claims both where a limb is stood up. Where only a block above the
// hinge tells of that, "level" may still be how a piece is to hang.
func (rd *reading) raised() {
	asked := rd.asksFor(AskRaise)
	if !asked && !rd.anyAt(func(i int) bool { return rd.beside(i, BlockHeight) }) {
		return
	}
	angled := rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil && rd.elems[i].fig.dim == dimAngle })
	for i, e := range rd.elems {
		switch {
		case rd.tiedOut(i):
			rd.claim(i, Tie)
		case asked && e.term != nil && e.term.level && !angled && rd.ofLimb(i):
			f := &figure{unit: degree, dim: dimAngle, start: e.start, end: e.end}
			rd.elems[i] = element{start: e.start, end: e.end, fig: f}
			rd.claim(i, LimbAngle)
			angled = true
		}
	}
}

// ofLimb says whether the word at i tells how the limb lies, and not the ground
// or a roof: nothing that it could belong to stands right behind it, and no
// article before. "Flat" and "level" are said of much else, "horizontal" hardly.
func (rd *reading) ofLimb(i int) bool {
	next, only := rd.at(i+1), rd.elems[i].polite()
	alone := i+1 >= len(rd.elems) || next.pause > 0 || next.marked(markAnd) || next.fig != nil || only && next.polite()
	return alone && !rd.at(i-1).marked(markArticle)
}

// tiedOut reads "rope tied 12 ft out": out along the limb, from its cut.
func (rd *reading) tiedOut(i int) bool {
	words := rd.at(rd.past(i-1, -1, markIs))
	return rd.elems[i].fig.far() && words.term != nil && words.term.tied && rd.at(i+1).marked(markOutward) && rd.at(i+1).marked(markAdverb)
}
