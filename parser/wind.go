package parser

// winds passes over how fast it blows, "gusting to 30" and "gusts of 45 mph": no
// method here has wind in it, and the words themselves are noted.
func (rd *reading) winds() {
	for i := 0; i < len(rd.elems); i++ {
		if !rd.termAt(i).weather {
			continue
		}
		j := rd.past(i+1, +1, markAt|markBound|markAdverb|markMade|markIs)
		fig := rd.at(j).fig
		if fig == nil || fig.unit != nil || fig.dim != dimCount {
			continue
		}
		k := j + 1
		if rd.termAt(k).weather {
			k++ // "30 mph"
		}
		rd.pass(i+1, k)
	}
}
