package asking

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
	"heft/parser/turning"
)

// An unknown word may change everything, or nothing: that hangs on its place. It
// changes what is told where it says what a number is, which tree, or how the wood or
// the gear is. What else it says, of people, places and the day, the answer can do
// without, and says so.

// Spare says whether an unknown word stands where it can change nothing that is told.
func Spare(rd *reading.Reading, a *parser.Ask) bool {
	if a.Kind != parser.Unknown || strings.ContainsAny(a.Words, "0123456789") || turning.LikeStop(rd, a) != "" || ofNobody(rd) {
		return false
	}
	prev, next, talk := stops.Around(rd, a)
	switch {
	case talk == nil, talk.Own, talk.OneEnd:
		return changesNothing(rd, prev, next) && !afterPiece(rd, a, prev)
	case talk.AtOnce:
		return factless(rd, prev, next)
	case talk.Perhaps: // in doubt beside a number or gear, of which it hardly tells
		return !bareFigure(rd.At(prev)) && !bareFigure(rd.At(next)) && !tellsOfWood(rd, prev, next) && !tellsHow(rd, prev)
	}
	return false // known, and in doubt here
}

// factless says whether no number and no piece stands between the same pauses as a word
// between the elements at prev and next.
func factless(rd *reading.Reading, prev, next int) bool {
	for ; prev >= 0 && rd.Elems[prev].Pause == 0; prev-- {
		if rd.Elems[prev].Fig != nil || rd.Elems[prev].Piece() {
			return false
		}
	}
	for ; next < len(rd.Elems) && rd.Elems[next].Pause == 0; next++ {
		if rd.Elems[next].Fig != nil || rd.Elems[next].Piece() {
			return false
		}
	}
	return true
}

// changesNothing says whether a word between the elements at prev and next says
// nothing of a number, a tree, wood or gear. Behind a word that lifts it may be
// anybody.
func changesNothing(rd *reading.Reading, prev, next int) bool {
	return !tellsOfNumber(rd, prev, next) && !tellsOfWood(rd, prev, next) && !tellsOfGear(rd, prev, next) && !tellsHow(rd, prev) && !ofSomebody(rd, prev, next)
}

// OfSomebody says whether an unknown word may tell how somebody fares: no figure stands
// beside it, not even in a choice.
func OfSomebody(rd *reading.Reading, a *parser.Ask) bool {
	prev, next, _ := stops.Around(rd, a)
	return a.Kind == parser.Unknown && (ofSomebody(rd, prev, next) || ofBodyBefore(rd, prev))
}

// ofSomebody says whether a word between two elements may tell what was done to somebody,
// or how they are.
func ofSomebody(rd *reading.Reading, prev, next int) bool {
	return ofOthers(rd, prev) || stops.IsLifted(rd, prev) || rd.TermAt(next).Borne || harmsBody(rd, next)
}

// ofBodyBefore says whether a part of somebody is said to be how a word behind the element
// at i tells: "his arm is …".
func ofBodyBefore(rd *reading.Reading, i int) bool {
	for i >= 0 && rd.At(i).Pause == 0 && (rd.At(i).Marked(lexicon.MarkIs) || rd.TermAt(i).State || rd.Cued(rd.At(i), lexicon.CueTurns)) {
		i--
	}
	return i >= 0 && stops.OfBody(rd, i)
}

// afterPiece says whether a word begins what is said right behind a piece, "…, anchored
// to the gate": it may say what holds the piece, or how it is.
func afterPiece(rd *reading.Reading, a *parser.Ask, prev int) bool {
	if prev < 0 || rd.At(prev).Pause == 0 || strings.TrimSpace(rd.Text[rd.At(prev).End:a.Start]) != "" {
		return false
	}
	for k := prev - 1; k >= 0 && rd.At(k).Pause == 0; k-- {
		if stops.Wooden(rd, k) || rd.Elems[k].Fig != nil {
			return true
		}
	}
	return false
}

// harmsBody says whether a word before the element at i may say what was done to
// somebody: "… up his elbow".
func harmsBody(rd *reading.Reading, i int) bool {
	const few = 3
	for k := i; k < i+few && rd.At(k).Pause == 0; k++ {
		if stops.OfBody(rd, k) {
			return true
		}
		if !stops.LeadsTo(rd, k) && !rd.At(k).Marked(lexicon.MarkErect) {
			return false
		}
	}
	return false
}

// Idle says whether a word that mostly is talk can be left out at i.
func Idle(rd *reading.Reading, i int) bool {
	prev, next := i-1, i+1
	if rd.At(prev).Fig != nil || rd.At(next).Fig != nil || tellsOfWood(rd, prev, next) || tellsOfGear(rd, prev, next) {
		return false
	}
	return rd.At(overTalk(rd, prev)).Marked(lexicon.MarkAnd) || !tellsHow(rd, prev) && !stops.IsLifted(rd, prev)
}

// ofNobody says whether a force is told and no word for a piece: then it may be
// that of what is not known, "karabiner, its 24 kN".
func ofNobody(rd *reading.Reading) bool {
	force := func(i int) bool { return gear.Heavy(rd, i) && rd.Elems[i].Fig.Dim == parser.DimForce }
	return rd.AnyAt(force) && !rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Piece() || rd.TermAt(i).Unnamed || rd.Cued(rd.Elems[i], lexicon.CuePiece)
	})
}

// bareFigure says whether the element is a number without a unit.
func bareFigure(e reading.Element) bool { return e.Fig != nil && e.Fig.Dim == parser.DimCount }

// tellsOfNumber says whether a word between two elements says what a number is: right
// beside one, as what is so and so much ("the shed is 22 ft"), or as what a number
// is seen from ("30 ft from the shed").
func tellsOfNumber(rd *reading.Reading, prev, next int) bool {
	if rd.At(prev).Fig != nil || rd.At(next).Fig != nil && !wraps(rd, next+1) {
		return true
	}
	if k := pastLinks(rd, next); k > next && rd.At(k).Fig != nil && !whoever(rd, prev) {
		return true
	}
	p := backToRelation(rd, prev)
	if p < 0 || rd.At(rd.Past(next, +1, lexicon.MarkAdjective)).Marked(lexicon.MarkPlace|lexicon.MarkObstacle|lexicon.MarkGear|lexicon.MarkLoaded) {
		return false
	}
	if p == prev && rd.At(next).Marked(lexicon.MarkArticle|lexicon.MarkPronoun) {
		return false // "3 m to miss the roof"
	}
	on := rd.At(p).Marked(lexicon.MarkAt | lexicon.MarkIn)
	if gear.Heavy(rd, p-1) {
		return on // "600 lb by his reckoning"
	}
	return rd.At(p-1).Fig != nil || on && rd.At(p-1).Looks(lexicon.Before) && rd.At(p-2).Fig != nil && !wraps(rd, p-1)
}

// OfNumber says whether an unknown word may name what a number beside it is of: "the tag
// on the … says 4800 lb". Without the word that would be the number of something else.
func OfNumber(rd *reading.Reading, a *parser.Ask) bool {
	if a.Kind != parser.Unknown {
		return false
	}
	prev, next, _ := stops.Around(rd, a)
	k := pastLinks(rd, next)
	for rd.Cued(rd.At(k), lexicon.CueStamped) || rd.TermAt(k).Rated || rd.TermAt(k).Label {
		k++
	}
	return rd.At(prev).Fig != nil && rd.At(prev).Pause == 0 || rd.At(k).Fig != nil && !wraps(rd, k+1)
}

// wraps says whether the element at i makes the number before it one of wraps. That is
// all that it can be of: "3 wraps on the …" is whatever the line runs round.
func wraps(rd *reading.Reading, i int) bool {
	return rd.At(i).Plays(parser.Wraps) && rd.At(i).Looks(lexicon.Before) && rd.At(i-1).Fig != nil
}

// pastLinks goes on from i over what leads to a number.
func pastLinks(rd *reading.Reading, i int) int {
	for rd.At(i).Marked(lexicon.MarkIs) || rd.At(i).Looks(lexicon.After) || rd.TermAt(i).Note == "about" {
		i++
	}
	return i
}

// backToRelation finds the word that leads to what stands behind i, as "from the
// old" does; -1 where nothing does.
func backToRelation(rd *reading.Reading, i int) int {
	for rd.At(i).Marked(lexicon.MarkArticle|lexicon.MarkAdjective) && !rd.At(i).Marked(lexicon.MarkIs|lexicon.MarkRelation|lexicon.MarkWhere) {
		i--
	}
	if rd.At(i).Marked(lexicon.MarkRelation|lexicon.MarkWhere|lexicon.MarkMade) && !rd.Cued(rd.At(i), lexicon.CueClause) {
		return i
	}
	return -1
}

// tellsOfWood says whether a word between two elements is said of wood: beside a tree,
// a piece or a part of it, or as what is on it.
func tellsOfWood(rd *reading.Reading, prev, next int) bool {
	if stops.Wooden(rd, prev) || stops.Wooden(rd, next) || stops.Wooden(rd, rd.Past(next, +1, lexicon.MarkAdjective)) {
		return true
	}
	on := rd.Past(next+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
	if rd.At(next).Looks(lexicon.Before) && rd.At(next).Plays(parser.ButtDiameter) {
		return !whoever(rd, prev) // "fungus at the base"
	}
	return rd.At(next).Marked(lexicon.MarkIn|lexicon.MarkAt) && (stops.Wooden(rd, on) || rd.Cued(rd.At(on), lexicon.CueLoad) || rd.TermAt(on).Unnamed) && !whoever(rd, prev)
}

// tellsOfGear says whether a word between two elements is said of gear: of its
// strength, right before or behind it, or as what is asked about or anchored to.
func tellsOfGear(rd *reading.Reading, prev, next int) bool {
	if gear.Strength(rd.At(prev)) != "" || gear.Strength(rd.At(next)) != "" {
		return true
	}
	if tackle := rd.Past(next, +1, lexicon.MarkAdjective); stops.Rigs(rd, tackle) && gear.Part(rd.At(tackle)) != lexicon.PartDrum && !rd.At(tackle).Plays(parser.People) {
		return !placed(rd, prev)
	}
	if stops.Rigs(rd, prev) {
		return backToRelation(rd, prev-1) < 0
	}
	sound := func(i int) bool {
		in := rd.TermAt(i).Intent
		return (in == parser.AskGear || in == parser.AskAnchor) && gear.Part(rd.At(i)) == ""
	}
	k := prev
	for rd.At(k).Marked(lexicon.MarkArticle | lexicon.MarkAdjective | lexicon.MarkRelation | lexicon.MarkWhere) {
		k--
	}
	return rd.TermAt(k).Intent == parser.AskAnchor || rd.TermAt(k).Anchors || sound(next) && rd.At(prev).Marked(lexicon.MarkArticle)
}

// placed says whether what stands behind i only tells a place: "by the block". What
// is used is told of, "on the rope", "with the rope".
func placed(rd *reading.Reading, i int) bool {
	p := backToRelation(rd, i)
	return p >= 0 && !rd.At(p).Marked(lexicon.MarkIn) && !rd.Cued(rd.At(p), lexicon.CueHaving)
}
