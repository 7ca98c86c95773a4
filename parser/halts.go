package parser

import (
	"slices"
	"strings"
)

// Some words end all arithmetic by themselves, and others by what they stand
// beside: "lift" before a person, "cracked" beside a shackle.

// halts keeps the words that end all arithmetic: what is read around them
// takes none of them away.
func (rd *reading) halts() {
	rd.ropeLines()
	rd.soundness()
	rd.dryGear()
	rd.tokens = rd.dangerTokens()
	told, none := rd.dangers()
	for i, e := range rd.elems {
		kind := rd.haltAt(i)
		if kind == "" || rd.harmless(kind, e, none) {
			continue
		}
		if rd.termAt(i).stop != kind {
			e.term = &term{stop: kind}
			if rd.termAt(i).label {
				e.start, e.end = rd.ofLabel(i)
			}
		}
		rd.stops = append(rd.stops, e)
	}
	rd.stops = slices.Concat(rd.stops, told, rd.gales())
}

// haltAt is why arithmetic ends at the word at i, "" where it does not.
func (rd *reading) haltAt(i int) Kind {
	t := rd.termAt(i)
	switch {
	case rd.hurt(i) && !rd.wasHurt(i), rd.onSomebody(i), rd.letFallSomebody(i), t.jams && rd.stuckPerson(i):
		return Emergency
	case t.letsGo && !rd.measured():
		return Runaway
	case rd.storms(i):
		return Storm
	case rd.givesWay(i), rd.deadHold(i):
		return Unsound
	case rd.ofBadGear(i), rd.letFall(i), rd.unlabelled(i):
		return Damaged
	case rd.personal(i):
		return Personal
	case rd.jammed(i):
		return Stuck
	case t.stop == Felling && t.topples && rd.aside(i), t.stop == Emergency && rd.woodFell(i), t.stop == Unsound && rd.ails(i):
		return ""
	case t.stop != "":
		return t.stop
	case rd.doubted(i):
		return Unsound
	case rd.fallen(i):
		return Emergency
	case rd.lifted(i), rd.hangs(i), t.borne && rd.borne(i):
		return Rider
	case rd.stays(i), rd.strays(i), rd.guided(i), rd.wontLeave(i), rd.under(i):
		return Below
	case t.topples && rd.felled(i), t.fallsWhere && rd.lies(i):
		return Felling
	case t.machine && rd.burdened(i):
		return Machine
	case t.frail && rd.anchorOf(i):
		return NoMethod
	case t.erases && rd.erased(i):
		return LogKept
	}
	return ""
}

// ails says whether the word at i tells of somebody who stays at home, and of no
// wood: "Pepe se enfermó".
func (rd *reading) ails(i int) bool {
	if !rd.cued(rd.at(i), cueAils) || rd.anyAt(func(k int) bool { return rd.elems[k].piece() || rd.termAt(k).tree != nil }) {
		return false
	}
	k := i - 1
	for k >= 0 && rd.at(k).pause == 0 && !rd.person(k) && (rd.at(k).polite() || rd.at(k).marked(markIs|markPronoun)) {
		k--
	}
	return rd.person(k)
}

// soundness takes out what only says that wood is sound, "no rot", where
// nothing is said of where or how far it is: "no rot above 20 ft" stays. A
// question denies nothing.
func (rd *reading) soundness() {
	for i := 1; i < len(rd.elems); i++ {
		if rd.termAt(i).stop != Unsound || !rd.termAt(i-1).lacks {
			continue
		}
		if rd.closes(rd.seenUntil(i)) || rd.at(i+1).marked(markAnd) && rd.next(i) || rd.termAt(i+1).lacks && rd.next(i) {
			rd.pass(i-1, i+1)
			i--
		}
	}
}

// seenUntil is where "that i can find" behind the element at i ends.
func (rd *reading) seenUntil(i int) int {
	for rd.next(i) && rd.at(i+1).pause == 0 && rd.cued(rd.at(i+1), cueSeen) {
		i++
	}
	return i
}

// closes says whether what is said, and not asked, ends with the element at i.
func (rd *reading) closes(i int) bool {
	rest := strings.TrimLeft(rd.text[rd.elems[i].end:], " ")
	return rest == "" || rd.at(i+1).pause > 0 && rd.next(i) && rest[0] != '?'
}

// next says whether no word that is not known stands between an element and
// the one behind it.
func (rd *reading) next(i int) bool {
	return i+1 < len(rd.elems) && strings.TrimSpace(rd.text[rd.elems[i].end:rd.elems[i+1].start]) == ""
}

// lifted says whether the word at i lifts or lowers a person: "winch dave up".
// A bare noun is no such person, "the lowering man", nor is whose piece it is.
func (rd *reading) lifted(i int) bool {
	if !rd.termAt(i).lifts {
		return false
	}
	j, article := i+1, false
	for rd.at(j).marked(markArticle|markAdjective|markErect|markAt) || rd.at(j).polite() && rd.at(j).pause == 0 && !rd.person(j) && j < len(rd.elems) {
		if rd.cued(rd.at(j), cueClause) {
			return false // "no room to lower so i'm thinking"
		}
		article = article || rd.at(j).marked(markArticle|markAt)
		j++
	}
	if !rd.person(j) || rd.at(j+1).piece() || rd.at(j+1).marked(markGear|markArticle) || rd.at(j+1).fig != nil && rd.at(j+2).piece() {
		return false
	}
	e := rd.at(j)
	words := strings.ToLower(rd.text[e.start:e.end])
	if strings.HasSuffix(words, "'s") || strings.HasSuffix(words, "’s") {
		return false
	}
	return article || !e.plays(People)
}

// borne reads "can the climber be lowered".
func (rd *reading) borne(i int) bool {
	k := i - 1
	for rd.at(k).polite() && !rd.person(k) {
		k--
	}
	return rd.person(k) || rd.at(k).marked(markPerson)
}

// person says whether the element at i is somebody.
func (rd *reading) person(i int) bool { return rd.termAt(i).human || rd.termAt(i).someone }

// hangs says whether the number at i is what somebody weighs, and nothing else
// is told that could be lifted: "hes 85kg, 4:1".
func (rd *reading) hangs(i int) bool {
	fig := rd.elems[i].fig
	if fig == nil || fig.dim != dimMass || !rd.termAt(rd.pastIs(i-1)).human && !rd.somebody(fig) {
		return false
	}
	hauls := false
	for k, e := range rd.elems {
		switch {
		case e.piece(), k != i && e.fig != nil && (e.fig.dim == dimMass || e.fig.dim == dimForce || e.fig.dim == dimLength && e.fig.unit.fine):
			return false
		}
		hauls = hauls || rd.termAt(k).lifts || rd.termAt(k).intent == AskLift || e.fig != nil && e.fig.dim == dimRatio
	}
	return hauls
}

// What a person weighs, kg, with gear or without.
const (
	lightest = 30
	heaviest = 200
)

// somebody says whether a mass can be that of a person whose name stands right
// behind a word that lifts: "winch tommo up, 85 kg".
func (rd *reading) somebody(fig *figure) bool {
	if fig.low < lightest || fig.high > heaviest {
		return false
	}
	for _, a := range rd.asks {
		if a.Kind == Unknown && rd.behindLift(a) {
			return true
		}
	}
	return false
}

// behindLift says whether what is asked about stands right behind a word that
// lifts: it may be anybody.
func (rd *reading) behindLift(a *Ask) bool {
	prev, _, _ := rd.around(a)
	return rd.isLifted(prev)
}

// isLifted says whether what stands behind the element at i is what is lifted.
func (rd *reading) isLifted(i int) bool {
	for i >= 0 && rd.elems[i].marked(markAt|markErect|markPronoun|markArticle) {
		i--
	}
	return rd.termAt(i).lifts
}

// aside says whether what pulls "it over" the fence moves it past something,
// and fells nothing.
func (rd *reading) aside(i int) bool {
	return rd.at(rd.past(i+1, +1, markArticle|markAdjective)).marked(markPlace | markObstacle | markStation | markStanding)
}

// felled reads "pull a 60 ft poplar over": a tree that no piece is told of.
func (rd *reading) felled(i int) bool {
	if rd.shaped() || rd.aside(i) {
		return false
	}
	from, to := i, i
	for from > 0 && rd.elems[from-1].pause == 0 {
		from--
	}
	for to < len(rd.elems) && rd.elems[to].pause == 0 {
		to++
	}
	tree, pulls := false, false
	for k := from; k < to; k++ {
		tree = tree || rd.termAt(k).tree != nil
		pulls = pulls || rd.termAt(k).lifts
	}
	return tree && pulls
}

// burdened says whether it is asked what the machine at i takes, and not what a
// piece weighs that it will take.
func (rd *reading) burdened(i int) bool {
	weighs := func(i int) bool { return rd.termAt(i).intent == AskWeight && !rd.termAt(i).besides }
	most := func(i int) bool { return rd.termAt(i).note == mostWanted }
	if rd.anyAt(weighs) && !rd.anyAt(most) {
		return false
	}
	j, k := i+1, rd.past(i-1, -1, markArticle|markAdjective)
	for (rd.at(j).polite() || rd.at(j).marked(markArticle|markPronoun)) && !rd.termAt(j).bears {
		j++
	}
	asked := rd.cued(rd.at(k), cueAsking) && !rd.cued(rd.at(i+1), cueThat)
	if next := rd.at(rd.past(j+1, +1, markMade|markBound)); !asked && rd.termAt(j).bears && next.fig != nil && next.fig.dim != dimRatio {
		return false // "the forks take 2,200"
	}
	return rd.termAt(j).bears || rd.termAt(k).bears
}

// stays reads "stand underneath" and "wait by the trunk": where somebody means
// to be. A piece stays "under 500 lb", and clear of a roof.
func (rd *reading) stays(i int) bool {
	if !rd.termAt(i).stays {
		return false
	}
	j := rd.past(i+1, +1, markAdverb|markErect)
	if rd.termAt(j).beneath || rd.at(j).marked(markIn) && rd.termAt(j+1).beneath {
		k := rd.past(j+1, +1, markArticle|markAdjective|markMade)
		next := rd.at(k)
		return next == (element{}) || next.pause > 0 || next.piece() || next.marked(markPronoun|markAnd|markWhere) || next.polite()
	}
	k := rd.past(j+1, +1, markArticle|markAdjective|markRelation)
	return rd.at(j).marked(markRelation) && rd.at(k).piece()
}

// strays reads "a lady is passing under it": whoever moves in below a piece, or
// means to. A rope passes under a limb as well.
func (rd *reading) strays(i int) bool {
	if !rd.termAt(i).strays {
		return false
	}
	j, who := i+1, false
	for k := i - 1; k >= i-6 && rd.at(k).pause == 0; k-- {
		who = who || rd.present(k)
	}
	for rd.present(j) || rd.at(j).marked(markAdverb|markErect|markArticle) {
		who = who || rd.present(j)
		j++
	}
	next := rd.at(rd.past(j+1, +1, markArticle|markAdjective))
	return who && rd.termAt(j).beneath && next.fig == nil && (next.piece() || !next.marked(markPlace|markObstacle))
}

// present says whether the element at i is somebody, or several.
func (rd *reading) present(i int) bool {
	return rd.person(i) || rd.at(i).marked(markPerson) || rd.at(i).term != nil && rd.at(i).plays(People)
}

// guided reads "guiding the log with his hands": who does is beside the piece.
func (rd *reading) guided(i int) bool {
	const words = 4 // between what is done and the hands
	if !rd.termAt(i).guides {
		return false
	}
	for k := i + 1; k < len(rd.elems) && k-i <= words && rd.at(k).fig == nil && rd.at(k).pause == 0; k++ {
		if rd.termAt(k).byHand {
			return true
		}
	}
	return false
}

// ofBadGear says whether the word at i tells that gear is damaged: "a melted
// rope", "the carabiner has a crack", "a cut in the sling".
func (rd *reading) ofBadGear(i int) bool {
	if !rd.termAt(i).damaged {
		return false
	}
	k := i - 1
	for k >= 0 && i-k < 6 && !rd.kit(k) && rd.at(k).strength() == "" && rd.tells(k) {
		k--
	}
	if rd.at(k).strength() != "" {
		return true // "a 9,000 lb MBS with a little fuzz on it"
	}
	n := i + 1
	for n < i+4 && (rd.at(n).fig != nil || rd.at(n).marked(markAdjective|markArticle)) {
		n++ // "a fuzzy 5/8 rope"
	}
	switch in := rd.at(i + 1); {
	case rd.denied(i):
		return true
	case rd.at(k).piece(), rd.at(i + 1).piece():
		return false // "the limb is cracked on the block", "the rope is on a cracked limb"
	case rd.kit(k), rd.kit(n):
		return true
	default:
		return in.marked(markIn|markMade) && rd.kit(rd.past(i+2, +1, markArticle|markAdjective))
	}
}

// tells says whether the element at i stands between a thing and how it is.
func (rd *reading) tells(i int) bool {
	e, t := rd.elems[i], rd.termAt(i)
	return !e.marked(markAt) && (e.marked(markIs|markArticle|markAdjective|markTrailing|markWhere) || t.state || t.damaged || e.polite())
}

// kit says whether the element at i is gear, and no wood.
func (rd *reading) kit(i int) bool {
	e := rd.at(i)
	worn := e.term != nil && e.term.note == noteWorn && !e.term.damaged // "old rope"
	return !e.piece() && (e.part() != "" || e.marked(markCord|markStation) || worn || rd.termAt(i).ofKit)
}

// fellingHinge takes a hinge or a notch that is asked about with a thickness, and
// no angle that a limb is stood up from, for that of a tree that is felled.
func (rd *reading) fellingHinge(q Question) *Ask {
	thick := q.Has(across...) || rd.anyAt(func(i int) bool { return rd.elems[i].fig.short() && !rd.ofRope(i) })
	if q.Intent != AskNotch && q.Intent != AskCutPlan || q.Has(LimbAngle) || !thick && !rd.hingeFor() || q.limb() {
		return nil
	}
	for _, e := range rd.elems {
		if e.term != nil && e.term.intent == AskNotch {
			return askAt(Felling, rd.text, e.start, e.end-e.start)
		}
	}
	return nil
}

// hingeFor says whether a hinge is asked about with no more than what it is for,
// "hinge for that big one", which is no limb.
func (rd *reading) hingeFor() bool {
	return rd.anyAt(func(i int) bool {
		return rd.termAt(i).intent == AskNotch && rd.termAt(i).besides && rd.cued(rd.at(i+1), cueFor) && !rd.anyAt(func(k int) bool { return rd.elems[k].fig != nil })
	})
}
