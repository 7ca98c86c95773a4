package parser

import "unicode"

// Who speaks is counted in where the sum is plain: "two guys plus me", "me plus one
// on the rope", "me and Tanner".

// adds says whether the word at i may add people: "plus", and "hombres más" before
// who speaks.
func (rd *reading) adds(i int) bool {
	return rd.termAt(i).ask == Twist && rd.cued(rd.elems[i], cuePlus) || rd.termAt(i).others && rd.cued(rd.at(i+1), cueSelf)
}

// peopleSum reads the sum of people at the word that adds, "plus", and says whether
// there is one.
func (rd *reading) peopleSum(i int) bool {
	left, right := rd.headsBefore(i), rd.headsBehind(i+1)
	if left.n == 0 || right.n == 0 || left.me == right.me {
		return false
	}
	n := left.n + right.n
	start, end := rd.elems[left.at].start, rd.elems[right.at].end
	rd.elems[left.at] = element{start: start, end: end, fig: &figure{low: n, high: n, start: start, end: end}}
	for k := left.at + 1; k <= right.at; k++ {
		rd.elems[k].fig, rd.elems[k].term = nil, &term{}
	}
	rd.elems[left.at+1].term = &term{roles: []role{{People, before, false}}}
	return true
}

// heads are people that are counted at an element: how many, and whether it is who
// speaks.
type heads struct {
	at int
	n  float64
	me bool
}

// headsBefore counts the people right before the element at i.
func (rd *reading) headsBefore(i int) heads {
	if rd.cued(rd.at(i-1), cueSelf) {
		return heads{i - 1, 1, true}
	}
	if rd.termAt(i).others {
		i++
	}
	fig := rd.at(i - 2).fig
	if rd.at(i-1).plays(People) && rd.at(i-1).fig == nil && fig != nil && fig.dim == dimCount && fig.unit == nil && fig.low == fig.high {
		return heads{i - 2, fig.low, false}
	}
	return heads{}
}

// headsBehind counts those at i. A number without a word is one of people where who
// speaks stands before it, and those who hold the rope behind it.
func (rd *reading) headsBehind(i int) heads {
	if rd.cued(rd.at(i), cueSelf) {
		return heads{i, 1, true}
	}
	fig, next := rd.at(i).fig, rd.at(i+1)
	if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.low != fig.high {
		return heads{}
	}
	if next.plays(People) || rd.termAt(i+1).others || rd.onTackle(i+1) {
		return heads{i, fig.low, false}
	}
	return heads{}
}

// namedPartner says whether a name that is not known stands right behind the words
// at i, "me and Tanner", and what both of them do behind that.
func (rd *reading) namedPartner(i int) bool {
	next := rd.at(i + 1)
	for k, a := range rd.asks {
		if a.Kind != Unknown || a.Start < rd.elems[i].end || a.End > rd.startOf(i+1) || !unicode.IsUpper(rune(a.Words[0])) {
			continue
		}
		if next.plays(People) && next.fig == nil || rd.onTackle(i+1) {
			rd.asks = append(rd.asks[:k:k], rd.asks[k+1:]...)
			return true
		}
	}
	return false
}
