package parser

import "slices"

// The notes of how a sling is rigged.
const (
	noteChoker = "choker"
	noteBasket = "basket"
)

// The notes of what an anchor is, where the piece on it is named too.
const (
	NoteAnchorLimb = "anchor-limb"
	NoteAnchorSpar = "anchor-spar"
)

// slingAngles gives the angles beside the words of how a sling is rigged to
// them: "choked at 100 degrees", "basket at 45°", "two legs at 60° from
// level".
func (rd *reading) slingAngles() {
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimAngle || rd.at(i+1).plays(BlockAngle) || rd.at(i+1).plays(StartAngle) {
			continue
		}
		if f := rd.riggedAt(i); f != "" {
			e.fig.sure = f
		}
	}
}

// riggedAt is the field of an angle by the nearest words, before it or else
// behind, of how a sling is rigged.
func (rd *reading) riggedAt(i int) Field {
	for j := i - 1; j >= 0 && rd.elems[j].pause < 4; j-- {
		if f := rd.elems[j].rigged(); f != "" {
			return f
		}
	}
	for j := i + 1; j < len(rd.elems) && rd.elems[j].pause < 4; j++ {
		if f := rd.elems[j].rigged(); f != "" {
			return f
		}
	}
	return ""
}

// rigged is the angle that the words of how a sling is rigged can have.
func (e element) rigged() Field {
	switch {
	case e.term == nil:
		return ""
	case e.term.note == noteChoker:
		return ChokeAngle
	case e.term.note == noteBasket, e.plays(Legs), e.plays(LegAngle):
		return LegAngle
	}
	return ""
}

// slingNamed says whether the message speaks of a sling, or of two lines to one
// point.
func (rd *reading) slingNamed() bool {
	return rd.anyAt(func(i int) bool {
		e := rd.elems[i]
		return e.part() == partSling || e.term != nil && (e.term.note == noteBasket || e.term.note == noteChoker) || e.marked(markBridle) && !e.plays(Legs)
	})
}

// ropeLegs reads the legs that are told with a redirect as those of the rope
// there, where no sling is named: the two at the block, or as many as the load
// is roved on, "150 kg en tres ramales".
func (rd *reading) ropeLegs() {
	if !rd.redirected() || rd.slingNamed() {
		return
	}
	rd.betweenTwo()
	for i := 0; i < len(rd.elems); i++ {
		e := rd.elems[i]
		if !e.plays(Legs) {
			continue
		}
		roved := e.term.roved
		rd.alter(i, func(t *term) { *t = term{marks: t.marks &^ (markBridle | markTwins), part: t.part} })
		switch fig := rd.at(i - 1).fig; {
		case fig.bare(2):
			rd.elems = slices.Delete(rd.elems, i-1, i)
			i--
		case fig == nil || fig.dim != dimCount || fig.unit != nil:
		case roved && fig.low > 2:
			fig.dim, fig.told = dimRatio, Parts
		default:
			fig.elsewhere = true // "on 3 legs" could be a sling all the same
		}
	}
}

// onAnchor reads what is told of an anchor: "will the 8 in stub hold 600 lb
// 2 ft out", where a mass is what hangs on it and "out" is how far.
func (rd *reading) onAnchor() {
	rd.blockWood()
	rd.bareAnchor()
	rd.standsIn()
	rd.strongAboveUnion()
	if !rd.asksFor(AskAnchor) {
		return
	}
	masses := 0
	for _, e := range rd.elems {
		if e.fig != nil && (e.fig.dim == dimMass || e.fig.dim == dimForce) && e.fig.sure == "" {
			masses++
		}
	}
	for i, e := range rd.elems {
		switch {
		case e.fig == nil || e.fig.sure != "":
		case masses == 1 && (e.fig.dim == dimMass || e.fig.dim == dimForce) && !rd.at(i-1).plays(Limit) && !rd.at(i+1).plays(Limit):
			e.fig.sure = Weight
		case rd.slungAt(i), rd.slungUp(i):
			e.fig.sure = HitchHeight
		case e.fig.dim == dimAngle && rd.at(i+1).plays(Sideways):
			e.fig.sure = StartAngle // "30 degrees off plumb"
		case e.fig.far() && rd.fromTrunk(i):
			e.fig.sure = Tie
			rd.elems[i+2].term = &term{}
		case e.fig.far() && rd.outAt(i+1):
			e.fig.sure = Tie
		case e.fig.far() && rd.aboveUnion(i):
			rd.leverAt(i)
		}
	}
}

// bareAnchor takes "anchor 9 in red oak limb" for a question about the anchor:
// no hitch is as low as that.
func (rd *reading) bareAnchor() {
	for i, e := range rd.elems {
		next := rd.at(rd.past(i+1, +1, markIs|markArticle)).fig
		if rd.colon(i + 1) {
			next = rd.at(i + 2).fig
		}
		bare := e.term != nil && rd.cued(e, cueAnchor) && next.short()
		if e.term == nil || !bare && !rd.anchorIn(i) {
			continue
		}
		t := *e.term
		t.intent, t.besides, t.roles = AskAnchor, false, nil
		rd.elems[i].term = &t
	}
}

// fromTrunk reads "a 2 pies del tronco" of a limb: the trunk is no log there.
func (rd *reading) fromTrunk(i int) bool {
	limb := slices.ContainsFunc(rd.elems, func(e element) bool {
		return e.term != nil && (e.term.shape == Limb || e.term.note == NoteAnchorLimb)
	})
	from := rd.at(rd.past(i+2, +1, markArticle))
	return limb && rd.at(i-1).fig == nil && rd.at(i+1).marked(markRelation) && (rd.at(i+2).marked(markStanding) || rd.cued(from, cueHinge))
}

// outAt says whether the words at i are "out" along the limb, and no more:
// "2 ft out of plumb" is something else.
func (rd *reading) outAt(i int) bool {
	e := rd.at(i)
	return rd.cued(e, cueAlong)
}

// asksFor says whether any words ask for it, unless they give way.
func (rd *reading) asksFor(in Intent) bool {
	return slices.ContainsFunc(rd.elems, func(e element) bool {
		return e.term != nil && e.term.intent == in && !e.term.besides
	})
}

// slung says whether the strength of a sling is told: then its legs and their
// angle say how it is rigged, not how a piece hangs on two lines.
func (rd *reading) slung() bool {
	sling, told := false, false
	for _, e := range rd.elems {
		sling = sling || e.part() == partSling
		told = told || e.term != nil && e.term.strength != ""
	}
	return sling && told
}
