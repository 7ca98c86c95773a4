package parser

import "strings"

// A number can belong to the surroundings: "30 ft from the house", "a 12 ft
// fence", "climber at 40 ft", "1/2 in rope". Such a number must never become
// a size of the piece or the height of the hitch, so it is found first, and
// asked about.

// surroundings marks the numbers that belong to the surroundings.
func (rd *reading) surroundings() {
	for i, e := range rd.elems {
		switch {
		case e.fig == nil || e.fig.dim == dimRatio || e.fig.told != "" || e.fig.sure != "":
		case e.fig.sideless:
			e.fig.elsewhere = true
		case rd.ofRope(i):
			e.fig.rope = true
		case rd.sizedLong(i):
			e.fig.elsewhere = e.fig.elsewhere || rd.doubtful(i)
		case e.fig.dim == dimAngle:
			e.fig.elsewhere = rd.at(rd.past(i-1, -1, markIs)).marked(markDeflects)
		default:
			e.fig.elsewhere = e.fig.elsewhere || rd.doubtful(i) || rd.towardsPlace(i) || rd.ofPlace(i) || rd.behindPlace(i) || rd.behindPart(i) || rd.ofSomeone(i)
		}
	}
}

// sizedLong reads "a 20 in x 8 ft log" and "20 in x 8 ft from the yard": what a
// thickness is crossed with is how long the piece is, wherever that lies.
func (rd *reading) sizedLong(i int) bool {
	fig := rd.elems[i].fig
	return (fig.far() || fig.short() && fig.high > thickestRope) && rd.crossed(i-2, i) && rd.at(i-2).fig.short() && !rd.crossed(i, i+2)
}

// past returns the first element from i on, in steps, that carries none of
// the marks; at most four are passed over.
func (rd *reading) past(i, step int, m mark) int {
	for n := 0; n < 4 && rd.at(i).marked(m); n++ {
		i += step
	}
	return i
}

// piece says whether the element tells of the piece itself.
func (e element) piece() bool {
	return e.term != nil && (e.term.shape != "" || e.term.tree != nil || e.term.condition != "")
}

// towardsPlace reads "30 ft from the house", "6 ft above him".
func (rd *reading) towardsPlace(i int) bool {
	j := rd.past(i+1, +1, markAdverb)
	if d := rd.elems[i].fig.dim; d == dimMass || d == dimForce {
		if !rd.at(j).marked(markWhere) {
			return rd.at(j).marked(markRelation) && !rd.at(j).marked(markBound) && rd.at(rd.past(j+1, +1, markArticle|markAdjective)).marked(markLoaded|markStation)
		}
		return !rd.led(j) && rd.at(rd.past(j+1, +1, markArticle|markAdjective)).marked(markLoaded) // "5 kN on the block"
	}
	if !rd.at(j).marked(markRelation) || rd.plumb(i, j) {
		return false
	}
	k := rd.past(j+1, +1, markRelation|markArticle|markAdjective)
	end := rd.at(k)
	if last := rd.at(k - 1); last.marked(markPronoun) && last.marked(markArticle) && (end.term == nil || end.marked(markAnd) || end.plays(HitchHeight)) {
		return true // "5 pies lejos de él"
	}
	if rd.at(j).marked(markBound) && end.fig == nil && (rd.elems[i].fig.far() || end.piece() || end.pause > 0 || k >= len(rd.elems)) {
		return true // "block 4 ft above the limb"
	}
	return end.marked(markPlace|markStation|markPronoun|markPart) || rd.termAt(k).someone
}

// plumb says whether the words behind the hitch height at i, the last of them
// at j, only say what the piece hangs above: "hitched at 35 ft right over the
// fence". A height above the ground is measured straight over nothing.
func (rd *reading) plumb(i, j int) bool {
	return j > i+1 && rd.at(j).marked(markBound) && rd.endsInAt(i-1) && rd.at(i-1).plays(HitchHeight)
}

// led says whether the words only lead over to the gear: "600 lb with a redirect".
func (rd *reading) led(j int) bool {
	switch e := rd.at(j); fold(rd.text[e.start:e.end]) {
	case "with", "w/", "using", "through", "con", "usando", "por":
		return rd.termAt(rd.past(j+1, +1, markArticle|markAdjective)).block != ""
	}
	return false
}

// thickestRope is the thickest that a number right beside a rope is taken for, in
// metres: what is thinner is of no piece.
const thickestRope = 0.05

// ofRope reads "5/8 double braid", "16 mm rope", "rope is 1/2 in 10,400 lb" and
// "cuerda de 5/8": a fraction of an inch, or a thickness that is no piece's, right
// beside a rope.
func (rd *reading) ofRope(i int) bool {
	fig := rd.elems[i].fig
	switch {
	case rd.thinInFall(i), rd.thinAlone(i), rd.thinLength(i):
		return true
	case fig.low <= 0 || !rd.at(i+1).marked(markCord) && !rd.behindRope(i):
		return false
	case fig.dim == dimLength:
		return fig.unit.fine && fig.high <= thickestRope
	}
	return fig.dim == dimCount && fig.high < 1 && strings.ContainsAny(fig.words(rd.text), "/½¼¾⅛⅜⅝⅞")
}

// thinLength reads "120 ft of 1/2 inch": so many feet of nothing else are so thin.
func (rd *reading) thinLength(i int) bool {
	const thickest = 0.0255
	fig := rd.elems[i].fig
	return fig.dim == dimLength && fig.unit.fine && fig.high <= thickest && rd.at(i-1).marked(markMade|markRelation) && rd.far(i-2) && !rd.at(i+1).piece()
}

// thinAlone reads "swap the rope to the 12 mm": where a rope is named and no piece
// is, a size as thin as that is the rope's.
func (rd *reading) thinAlone(i int) bool {
	fig := rd.elems[i].fig
	if fig.dim != dimLength || !fig.unit.fine || fig.high > thickestRope || rd.at(i+1).cross || rd.at(i-1).cross || rd.at(i+1).fig == nil && !rd.endsBreath(i+1) {
		return false
	}
	return rd.has(markCord) && !rd.anyAt(func(k int) bool { return rd.elems[k].piece() || rd.termAt(k).unnamed })
}

// thinInFall reads "can i snub 300 lb on 1/2 inch": where something falls onto its
// rope, nothing else is told that is so thin.
func (rd *reading) thinInFall(i int) bool {
	const thinnest, thickest = 0.006, 0.0255
	fig := rd.elems[i].fig
	of := func(e element, s side) bool {
		return e.piece() || e.looks(s) || e.marked(markGear|markPart|markPlace) && e.part() != partRope
	}
	return rd.asksFor(AskDrop) && fig.short() && fig.low >= thinnest && fig.high <= thickest && !of(rd.at(i+1), before) && !of(rd.at(rd.pastIs(i-1)), after)
}

// behindRope says whether what stands before the number at i, or a strength
// behind it, makes it a rope's.
func (rd *reading) behindRope(i int) bool {
	fig, link, next := rd.elems[i].fig, rd.at(i-1), rd.at(i+1)
	rates := next.fig != nil && next.fig.rates() // "rope is 1/2 in 10,400 lb"
	ends := next.pause > 0 || next.polite() || i+1 >= len(rd.elems)
	switch {
	case rd.ropeIs(i):
		return true
	case rd.at(i-2).marked(markCord) && fig.dim == dimCount && link.marked(markIs) && !link.marked(markAt): // "rope is 5/8 brand new"
		return true
	case rd.fraction(fig) && link.marked(markMade|markRelation) && rd.far(i-2) && !next.piece() && !next.looks(before): // "200 ft of 5/8"
		return true
	case rd.fraction(fig) && link.marked(markCord) && (next.fig != nil || rd.endsBreath(i+1)): // "rope 5/8 15k"
		return true
	case rd.at(i-2).marked(markCord) && (link.marked(markMade) || rates && link.marked(markIs) && !link.marked(markAt)):
		return true
	case fig.dim == dimLength && next.strength() != "": // "14 mm breaks at 4.4 t"
		return true
	case link.marked(markCord) && fig.dim == dimCount && next.strength() != "": // "rope 5/8 breaks at 16k lb"
		return true
	case link.marked(markCord) && next.marked(markRating) && rd.at(i+2).fig != nil: // "rope 3/4 rated 24,000"
		return true
	}
	k := rd.pastIs(i - 1)
	k = rd.past(k, -1, markIs|markAdjective)
	return fig.dim == dimLength && (rates || ends) && rd.at(k).marked(markCord) // "the rope is new 12 mm 3 tonne"
}

// ropeIs reads "the rope is 1/2 inch" and "la soga es de media pulgada" where
// nothing more is said of the number, and some strength is told besides.
func (rd *reading) ropeIs(i int) bool {
	j := i - 1
	for rd.at(j).marked(markIs|markMade) && !rd.at(j).marked(markAt|markWhere) && !rd.at(j).plays(RopeLength) {
		j--
	}
	rope := rd.at(j).marked(markCord) || rd.at(j).leadsTo(RopeLength)
	rated := func(k int) bool { return rd.elems[k].strength() != "" }
	return rd.elems[i].fig.short() && rope && rd.endsBreath(i+1) && rd.anyAt(rated)
}

// ofPlace reads "a 12 ft high fence", "a 60 ft red oak tree", "1/2 in rope".
func (rd *reading) ofPlace(i int) bool {
	fig := rd.elems[i].fig
	if rd.at(i+1).marked(markTall) && !rd.shapedFrom(0, Log) || rd.height(i) {
		return true
	}
	if rd.at(i+1).marked(markFine) && fig.far() {
		return true // "a 5 pies de la punta"
	}
	j := i + 1
	for rd.at(j).marked(markAdjective) || rd.at(j).piece() && rd.at(j).term.shape == "" {
		j++
	}
	e := rd.at(j)
	switch {
	case e.marked(markPlace) && j == i+1 && !rd.at(i-1).marked(markArticle|markRelation) && rd.at(rd.past(j+1, +1, markIs)).fig.far():
		return false // "22 ft, roof 12 ft" without the comma
	case e.marked(markPlace|markPart) || rd.ofTree(i, j):
		return true
	case rd.heavy(i) && e.part() == partBlock && rd.at(rd.past(j+1, +1, markIs)).fig.below():
		return false // "200 lb block 2 ft under the cut" without the comma
	case e.marked(markGear):
		small := fig.dim == dimCount && fig.low < 1 // "5/8 rope"
		return small || fig.gearly() || e.marked(markLoaded) && !e.plays(HitchHeight)
	}
	return false
}

// height reads "un roble de 80 pies de alto" and "una rama de un roble de 80
// pies": how high a tree is, told behind its name.
func (rd *reading) height(i int) bool {
	j := i - 1
	for rd.at(j).marked(markIs|markTrailing) && !rd.at(j).marked(markAt) {
		j--
	}
	e := rd.at(j)
	switch {
	case !rd.elems[i].fig.far():
		return false
	case rd.at(i + 1).marked(markHigh):
		return e.piece() || e.marked(markPlace)
	case !rd.at(i - 1).marked(markMade):
		return false
	}
	named := e.term != nil && e.term.tree != nil && rd.at(j-1).marked(markArticle)
	return named && rd.at(j-2).marked(markRelation|markIn) && rd.shaped()
}

// shaped says whether the message names a shape.
func (rd *reading) shaped() bool { return rd.shapedFrom(0, Limb) || rd.shapedFrom(0, Log) }

// ofTree reads "a limb off an 80 ft red oak" and "80 ft red oak, limb 14 in": a
// long length that names a tree, where the limb is named apart. The words of
// the piece behind the number end at j.
func (rd *reading) ofTree(i, j int) bool {
	fig := rd.elems[i].fig
	if !fig.far() || rd.at(j-1).term == nil || rd.at(j-1).term.tree == nil || rd.termAt(j).shape != "" {
		return false
	}
	switch before := rd.at(rd.past(i-1, -1, markArticle|markAdjective)); {
	case before.marked(markIs): // "a limb of an 80 ft red oak"
		return rd.shapedFrom(0, Limb)
	case before.marked(markRelation | markIn):
		return true
	}
	return rd.at(j).pause > 0 && rd.shapedFrom(j, Limb)
}

// far says whether the number is a length in feet, metres or the like.
func (f *figure) far() bool { return f != nil && f.dim == dimLength && !f.unit.fine }

// gearly says whether the number can be a size or a rating of gear; a long
// length is rather the rope's.
func (f *figure) gearly() bool {
	return f.dim == dimMass || f.dim == dimForce || f.unit != nil && f.unit.fine
}

// behindPlace reads "the climber is at 40 ft", "drop zone: 30 ft". Where the
// place itself only says where the piece is ("over the roof 22 ft"), a long
// length without words of its own is doubtful all the same. A number that
// names the piece is its own, unless "is" or "at" leads to it.
func (rd *reading) behindPlace(i int) bool {
	fig, next := rd.elems[i].fig, rd.at(i+1)
	k := rd.pastIs(i - 1)
	place := rd.at(k)
	led := k < i-1 || place.marked(markRating) || place.term != nil && rd.endsInAt(k)
	named := next.piece() || next.fig != nil
	fine := fig.unit != nil && fig.unit.fine
	switch {
	case place.marked(markGear|markRating) && (fig.gearly() || fig.dim == dimCount):
		return fig.gearly() && (led || !named) || fig.dim == dimCount && fig.low < 1
	case fig.dim == dimCount:
		return false
	case place.marked(markMoving):
		return fig.far() && !rd.at(i+1).plays(Sideways) // "pull it 4 ft aside"
	case !place.marked(markPlace | markStation):
		return false
	case !rd.at(rd.past(k-1, -1, markAdjective|markArticle)).marked(markRelation | markWhere):
		return true
	}
	return !fine && (led || !named && len(rd.termAt(i+1).roles) == 0)
}

// behindPart reads "bark 1 in thick": how thick a part of the piece is, which is
// not across it.
func (rd *reading) behindPart(i int) bool {
	return rd.elems[i].fig.short() && rd.at(rd.pastIs(i-1)).marked(markPart) && rd.at(i+1).plays(Diameter)
}

// pastIs goes back over what links a thing to its number: "is at", a colon.
func (rd *reading) pastIs(i int) int {
	for {
		e := rd.at(i)
		colon := e.pause > 0 && rd.text[e.start:e.end] == ":"
		if !colon && !e.marked(markIs|markTrailing) && (e.term == nil || e.term.note == "") {
			return i
		}
		i--
	}
}

// termAt returns the term of an element, and an empty one where it has none.
func (rd *reading) termAt(i int) *term {
	if t := rd.at(i).term; t != nil {
		return t
	}
	return &term{}
}

// shapedFrom says whether the message names the shape at i or behind it.
func (rd *reading) shapedFrom(i int, s Shape) bool {
	for _, e := range rd.elems[i:] {
		if e.term != nil && e.term.shape == s {
			return true
		}
	}
	return false
}
