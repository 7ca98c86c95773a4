package parser

import (
	"strings"
)

// What somebody weighs who holds the rope is told beside the piece: "ground guy
// weighs 140 lb, will he hold a 700 lb limb with 3 wraps". It is passed over and
// said back: what a hand holds does not come from it.

// bodies passes over such a number where it is asked whether that person holds.
func (rd *reading) bodies() {
	rd.bareBodies()
	if !rd.anyAt(func(i int) bool { return rd.elems[i].piece() }) {
		return
	}
	for i := 0; i < len(rd.elems); i++ {
		k := rd.bodyOf(i)
		if k < 0 || !rd.thenHolds(i+1) || !rd.anyAt(func(j int) bool { return j != i && rd.heavy(j) }) {
			continue
		}
		rd.pass(k+1, i+1)
		i = k
	}
}

// bareBodies passes over what somebody weighs by a bare number where a load is told
// with its unit: "groundie is maybe 140 soaking wet, 2 wraps, 500 lb". Of who is told
// to be "at" so much, it is how high he is.
func (rd *reading) bareBodies() {
	for i := 0; i < len(rd.elems); i++ {
		k := rd.bareBody(i)
		if k < 0 || !rd.anyAt(func(j int) bool { return rd.heavy(j) && !rd.at(rd.back(j-1)).marked(markBound|markRating) }) {
			continue
		}
		end := i + 1
		if rd.termAt(end).note == wetRope {
			end++ // "140 soaking wet" says it of him
		}
		rd.pass(k+1, end)
		i = k
	}
}

// bareBody is the person that the bare number at i is the weight of, -1 for none.
func (rd *reading) bareBody(i int) int {
	const least, lightest, most = 40, 90, 350 // in kilograms where it says that he weighs, and in pounds
	fig, next := rd.elems[i].fig, rd.at(i+1)
	if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.low != fig.high || fig.high > most || !rd.endsBreath(i+1) && rd.termAt(i+1).note != wetRope {
		return -1
	}
	k := i - 1
	for k >= 0 && rd.elems[k].pause == 0 && rd.saysWeight(k) && !rd.person(k) {
		k--
	}
	of := rd.at(k)
	if k < 0 || !rd.person(k) && !rd.termAt(k).ropeEnd && !rd.cued(of, cueItself) || k == i-1 && !rd.cued(of, cueItself) || next.piece() {
		return -1
	}
	weighs := of.plays(Weight)
	for j := k + 1; j < i; j++ {
		weighs = weighs || rd.at(j).plays(Weight)
	}
	if fig.low < lightest && !(weighs && fig.low >= least) {
		return -1
	}
	return k
}

// bodyOf is the person that the number at i is the weight of, -1 for none: "guy
// is only 140 lb". A bare number needs a word that weighs.
func (rd *reading) bodyOf(i int) int {
	fig := rd.elems[i].fig
	if fig == nil || fig.low != fig.high || rd.at(i+1).piece() || rd.at(i+1).fig != nil || rd.termAt(i+1).strength != "" || rd.at(i+1).plays(PersonPull) || rd.at(i+1).cross {
		return -1
	}
	k := i - 1
	for k >= 0 && rd.elems[k].pause == 0 && rd.saysWeight(k) && !rd.person(k) {
		k--
	}
	said := k >= 0
	weighs := said && strings.Contains(strings.ToLower(rd.text[rd.elems[k].start:fig.start]), "weigh")
	const least, most = 30, 450 // what a bare number may be, in either unit
	switch {
	case !said || !rd.person(k) || k == i-1 && !rd.cued(rd.elems[k], cueItself):
		return -1
	case fig.dim == dimMass && fig.low >= lightest && fig.high <= heaviest:
		return k
	case fig.dim == dimCount && fig.unit == nil && weighs && fig.low >= least && fig.high <= most:
		return k
	}
	return -1
}

// saysWeight says whether the element at i only links somebody to what he weighs.
func (rd *reading) saysWeight(i int) bool {
	return rd.cued(rd.elems[i], cueWeighing)
}

// thenHolds says whether nothing from the element at i on comes before it is
// asked whether that person holds: not where he is, nor what he hangs on.
func (rd *reading) thenHolds(i int) bool {
	for ; i < len(rd.elems); i++ {
		e, t := rd.elems[i], rd.termAt(i)
		switch {
		case rd.personHolds(i):
			return true
		case e.fig != nil, e.piece(), e.marked(markRelation | markIn | markPlace), t.hung, t.hangs, len(t.roles) > 0:
			if !rd.person(i) {
				return false
			}
		}
	}
	return false
}

// personHolds reads "will he hold", "can the ground guy hold it".
func (rd *reading) personHolds(i int) bool {
	e := rd.at(i)
	return e.term != nil && e.term.intent == AskLower && rd.cued(e, cueHolds) && (rd.person(i-1) || rd.at(i-1).marked(markPronoun))
}
