package parser

// A load that hangs on two lines, or from two trees, pulls on each of them as on the
// legs of a bridle, where the angle between the lines is told: "1,000 lb hung from two
// trees, 120 degrees between the lines".

// twoLines reads it so where nothing runs over a block or round a drum.
func (rd *reading) twoLines() {
	angle := func(i int) bool {
		fig := rd.elems[i].fig
		return fig != nil && fig.dim == dimAngle && rd.at(i+1).plays(BlockAngle)
	}
	other := func(i int) bool {
		e := rd.elems[i]
		return rd.termAt(i).block != "" || e.part() == partBlock || e.marked(markStation|markDeflects) || e.plays(Wraps)
	}
	if !rd.anyAt(angle) || rd.anyAt(other) || !rd.anyAt(rd.heavy) {
		return
	}
	for i := range rd.elems {
		next, lead := rd.at(i+1), rd.at(i-1)
		if !rd.elems[i].fig.bare(2) || !rd.cued(next, cueLines) || !lead.marked(markIn|markRelation|markMade|markWhere|markBetween) && !rd.cued(lead, cueHangFrom) {
			continue
		}
		rd.claim(i, Lines)
		rd.elems[i+1].term = &term{note: bridled, marks: markBridle, intent: AskBalance}
		return
	}
}
