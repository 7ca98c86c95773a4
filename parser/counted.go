package parser

import "math"

// A small whole number can count what the question is not about: "hang it from two
// trees", "i need 3 scenarios". It is passed over and said back.

// countedThings passes over such numbers.
func (rd *reading) countedThings() {
	const most = 12
	for i := range rd.elems {
		fig := rd.elems[i].fig
		if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.low != fig.high || fig.low != math.Trunc(fig.low) || fig.low < 1 || fig.low > most {
			continue
		}
		switch {
		case rd.cued(rd.at(i+1), cueThings) && rd.at(i+2).fig == nil:
			rd.blank(i, i+1)
		case rd.peopleOnTackle(i):
			rd.claim(i, People)
		}
	}
}

// peopleOnTackle reads "two on a 5:1": those who pull.
func (rd *reading) peopleOnTackle(i int) bool {
	const most = 8
	j := rd.past(i+2, +1, markArticle)
	ratio := rd.at(j).fig
	if rd.elems[i].fig.low > most || !rd.at(i+1).marked(markIn) || ratio == nil || ratio.dim != dimRatio || rd.anyAt(func(k int) bool { return rd.elems[k].plays(People) && rd.at(k-1).fig != nil }) {
		return false
	}
	return i == 0 || rd.at(i-1).pause > 0 || rd.at(i-1).marked(markAnd|markWhere) || rd.cued(rd.at(i-1), cueOwns)
}
