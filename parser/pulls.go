package parser

import "heft/calc/unit"

// eachPulls reads what each of the people pulls: "3 guys, 40 lb each". "Each"
// behind any other number is asked about: "3 logs, 400 lb each".
func (rd *reading) eachPulls() {
	for i := range rd.elems {
		at := i
		if rd.cued(rd.at(i-1), cuePull) {
			at-- // "100 lb pull apiece"
		}
		if !rd.cued(rd.elems[i], cueEach) || !rd.pullBefore(at) {
			continue
		}
		rd.elems[i].term = &term{} // it is placed, and no more to be asked about
		rd.elems[at-1].fig.told = PersonPull
	}
}

// ownClause says whether people are counted in the message and another mass
// names the one piece: "3 of us lift a 300 lb log, 50 lb each".
func (rd *reading) ownClause(own int) bool {
	counted, named, others := false, false, 0
	for i, e := range rd.elems {
		switch {
		case i == own || e.fig == nil:
		case e.fig.dim == dimMass || e.fig.dim == dimForce:
			others++
			named = rd.at(i + 1).piece()
		case e.fig.dim == dimCount && rd.at(i+1).plays(People):
			counted = true
		case e.fig.dim == dimCount && rd.at(i+1).piece():
			return false // "2 logs"
		}
	}
	return counted && named && others == 1
}

// pullBefore says whether a pull stands before "each", and before that, with
// no other number or piece between, the people.
func (rd *reading) pullBefore(i int) bool {
	fig := rd.at(i - 1).fig
	if fig == nil || fig.dim != dimMass && fig.dim != dimForce {
		return false
	}
	if rd.at(i-2).pause > 0 && rd.ownClause(i-1) {
		return true
	}
	for j := i - 2; j >= 0; j-- {
		e := rd.elems[j]
		switch {
		case e.fig != nil || e.piece():
			return false
		case e.plays(People):
			return rd.at(j-1).fig != nil
		}
	}
	return false
}

// handWords finds the words beside the number at i that make it what the hand
// holds, -1 where there are none.
func (rd *reading) handWords(i int) int {
	if rd.termAt(i + 1).inHand {
		return i + 1
	}
	if at := rd.back(i - 1); rd.termAt(at).feels {
		return at
	}
	return -1
}

// mostByHand is more than any hand holds, in newtons.
const mostByHand = 450

// heldByHand reads "con 2 vueltas en el tambor aguanto 180 kg": who holds more than a
// hand can tells of the piece.
func (rd *reading) heldByHand(i int) bool {
	fig := rd.elems[i].fig
	return fig.dim == dimMass && float64(unit.Mass(fig.low).Weight()) > mostByHand && rd.termAt(rd.past(i-1, -1, markIs|markArticle|markAt)).selfHolds
}

// handPulls reads what the hand shall hold behind the drum: "20 lb in the hand",
// "so i only feel 30 lb". What no hand holds is the piece, or what it weighs at
// the hand is asked: "500 lb in the hand".
func (rd *reading) handPulls() {
	for i, e := range rd.elems {
		if !rd.heavy(i) || e.fig.told != "" || rd.at(i+1).piece() {
			continue
		}
		n := e.fig.high
		if e.fig.dim == dimMass {
			n = float64(unit.Mass(n).Weight())
		}
		at := rd.handWords(i)
		if n > mostByHand || at < 0 {
			continue
		}
		if rd.shapedOrNamed() || rd.anyAt(func(k int) bool { return k != i && (rd.heavy(k) || rd.elems[k].plays(Wraps)) }) {
			e.fig.told = PersonPull
			rd.alter(at, func(t *term) { t.intent = AskLower }) // no tackle has a tail in the hand
			if rd.cued(rd.at(i+2), cueEach) {
				rd.elems[i+2].term = &term{} // "25 lb in the hand each"
			}
		}
	}
}
