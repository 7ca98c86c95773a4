package parser

// Crews part from the last piece in passing: "forget the last one", "longer one
// now". Where a whole piece is told behind such words, nothing hangs on them;
// elsewhere they could take back what this very message tells, or mean another
// piece than the one of before, and are asked about.

// freshPieces passes over such words before a tree and the sizes of a piece.
func (rd *reading) freshPieces() {
	for i, e := range rd.elems {
		if e.fig != nil || rd.termAt(i).tree != nil || e.piece() && !rd.termAt(i).fresh {
			return
		}
		if rd.termAt(i).fresh && rd.tellsPiece() {
			rd.pass(i, i+1)
			return
		}
	}
}

// tellsPiece says whether the message names one tree and tells two lengths.
func (rd *reading) tellsPiece() bool {
	lengths := 0
	for _, e := range rd.elems {
		if e.fig != nil && (e.fig.dim == dimLength || e.fig.pair) {
			lengths++
		}
	}
	return lengths > 1 && len(rd.treesIn(0, len(rd.elems))) == 1
}

// needMore passes over the bound in "do we need more than 3 wraps?" and "can we
// get away with less than 3 wraps": how many it takes answers both.
func (rd *reading) needMore() {
	for i := 1; i < len(rd.elems); i++ {
		fig := rd.at(i + 1).fig
		if !rd.elems[i].marked(markBound) || fig == nil || fig.dim != dimCount || fig.unit != nil || fig.pair {
			continue
		}
		if rd.at(i+2).plays(Wraps) && rd.asksNeed(i-1) {
			rd.pass(i, i+2)
		}
	}
}

// asksNeed says whether the word at i asks what it takes, in a message that begins
// with a question: "will 600 lb need".
func (rd *reading) asksNeed(i int) bool {
	word, _ := nextWord(rd.text)
	return rd.in.cues[cueAsking][word] && rd.cued(rd.at(i), cueNeeds)
}
