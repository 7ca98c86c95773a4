package parser

// "La línea" is the rope where it runs to a block or a drum, carries so much or is so
// thick. Anywhere else, and wherever a wire is told of, it may be a power line.

// ropeLines takes such words for the rope.
func (rd *reading) ropeLines() {
	wire := func(i int) bool { return rd.termAt(i).stop == PowerLine && !rd.cued(rd.elems[i], cueLine) }
	if rd.anyAt(wire) {
		return
	}
	for i := range rd.elems {
		if rd.cued(rd.elems[i], cueLine) && (rd.termAt(i).stop == PowerLine || rd.termAt(i).own) && rd.isRope(i) {
			rd.elems[i].term = &term{part: partRope, marks: markCord | markGear}
		}
	}
}

// isRope says whether the line at i is one that is rigged.
func (rd *reading) isRope(i int) bool {
	led := rd.past(i-1, -1, markArticle)
	if rd.heavy(led) || rd.at(led).marked(markIn) && rd.heavy(led-1) || rd.at(led).plays(Parts) || rd.termAt(led).employs {
		return true // "900 libras en la línea", "pongo la línea"
	}
	if made := rd.past(i+1, +1, markMade); made > i+1 && (rd.at(made).fig.short() || rd.at(made).fig != nil && rd.at(made).fig.rope) {
		return true // "línea de 1/2"
	}
	for k := i + 1; k-i <= few && k < len(rd.elems); k++ {
		switch e := rd.elems[k]; {
		case rd.kit(k):
			return k > i+1
		case !rd.cued(e, cueRuns) && !e.marked(markArticle) && !(e.polite() && e.pause == 0):
			return false
		}
	}
	return false
}
