package parser

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// The numbers of how a rope is laid out: a drum that stands off the tree, how
// thick the drum is, and the trunk that a dead end goes round. None of them is
// a size of the piece.

// DeadEndOnTrunk is the note that the dead end goes round the trunk.
const DeadEndOnTrunk = "dead-end-trunk"

// layout are the patterns of the word files for what stands right behind a
// number, or right before it, each of all languages.
type layout struct {
	offTheTree, offAtAll, offElsewhere, toTheDrum, ofDrum, isAcross         *regexp.Regexp
	drumIs, drumWide, drumOf, ofTrunk, trunkIs                              *regexp.Regexp
	ownRope, orRope, eitherRope, drumStands, cutBefore, cutBehind, cutWhole *regexp.Regexp
	doesRope                                                                *regexp.Regexp
}

// newLayout compiles the patterns. One that is malformed, or missing in every
// language, is an error.
func newLayout(patterns map[string][]string) (layout, error) {
	var l layout
	things := strings.NewReplacer(
		"{drum}", `(?:`+strings.Join(patterns["drum"], "|")+`)\b`, "{trunk}", `(?:`+strings.Join(patterns["trunk"], "|")+`)\b`,
		"{number}", numberHere)
	spaces := strings.NewReplacer(" *", `\s*`, " +", `\s+`, " ", `\s+`)
	for name, to := range map[string]**regexp.Regexp{
		"off-the-tree": &l.offTheTree, "off-at-all": &l.offAtAll, "off-elsewhere": &l.offElsewhere, "to-the-drum": &l.toTheDrum,
		"of-drum": &l.ofDrum, "is-across": &l.isAcross, "drum-is": &l.drumIs, "drum-wide": &l.drumWide, "drum-of": &l.drumOf,
		"of-trunk": &l.ofTrunk, "trunk-is": &l.trunkIs, "own-rope": &l.ownRope, "or-rope": &l.orRope, "either-rope": &l.eitherRope,
		"cut-before": &l.cutBefore, "cut-behind": &l.cutBehind, "cut-whole": &l.cutWhole, "drum-stands": &l.drumStands, "does-rope": &l.doesRope,
	} {
		if len(patterns[name]) == 0 {
			return l, fmt.Errorf("no language has the pattern %s", name)
		}
		re, err := regexp.Compile("(?i)(?:" + spaces.Replace(things.Replace(strings.Join(patterns[name], "|"))) + ")")
		if err != nil {
			return l, fmt.Errorf("pattern %s: %w", name, err)
		}
		*to = re
	}
	return l, nil
}

// awayFromTree returns the words behind a number that set it off the tree:
// "from the tree", "away"; not "away from the house".
func (l *layout) awayFromTree(after string) string {
	if words := l.offTheTree.FindString(after); words != "" {
		return words
	}
	words := l.offAtAll.FindString(after)
	if l.offElsewhere.MatchString(after[len(words):]) {
		return ""
	}
	return words
}

// thickestDrum is more than any drum is across, in metres.
const thickestDrum = 0.6

// nearestDrum is the least that a drum “a 6 m” stands off the tree, in metres: what
// is less may be how high on the stem it is.
const nearestDrum = 2.4

// laid finds the numbers of the layout.
func (rd *reading) laid(l *layout) {
	trunk, drummed := false, false
	for _, e := range rd.elems {
		trunk = trunk || e.term != nil && e.term.note == DeadEndOnTrunk
		drummed = drummed || e.marked(markStation) || e.part() == partDrum
	}
	if !trunk && !drummed {
		return // it speaks of neither: most messages
	}
	rd.drumAside(l)
	for i, e := range rd.elems {
		fig := e.fig
		if fig == nil || fig.dim != dimLength || fig.told != "" || fig.pair || fig.falling {
			continue
		}
		before, after := rd.text[:fig.start], rd.text[fig.end:]
		drum := l.drumIs.MatchString(before)
		switch {
		case fig.far() && drum && l.awayFromTree(after) != "":
			rd.tell(i, DrumAway, l.awayFromTree(after))
		case fig.far() && fig.low >= nearestDrum && l.drumStands.MatchString(before) && rd.endsBreath(i+1):
			fig.told = DrumAway // "el tambor está a 6 m": a drum stands on the ground
		case fig.far() && l.toTheDrum.MatchString(after) && rd.ropeBefore(i):
			rd.tell(i, RopeLength, l.toTheDrum.FindString(after)) // "rope total 35 m to the drum"
		case fig.far() && l.toTheDrum.MatchString(after):
			rd.tell(i, DrumAway, l.toTheDrum.FindString(after))
		case !fig.unit.fine:
		case l.ofDrum.MatchString(after) && fig.high <= thickestDrum:
			rd.tell(i, DrumAcross, l.ofDrum.FindString(after))
		case l.drumOf.MatchString(before) && rd.pieceNamed() && !rd.thicknessBeside(fig):
			fig.elsewhere = true // "rama de roble, 3 vueltas en el tambor, de 14 pulgadas" without its comma
		case l.drumOf.MatchString(before) && fig.high <= thickestDrum && !rd.at(i+1).piece():
			rd.tell(i, DrumAcross, l.isAcross.FindString(after)) // "3 vueltas en el tambor de 8 pulgadas"
		case fig.high <= thickestDrum && rd.plainDrum(l.drumWide.FindStringIndex(before)) && !rd.at(i+1).piece():
			rd.silence(fig.start-len(l.drumWide.FindString(before)), fig.start)
			rd.tell(i, DrumAcross, l.isAcross.FindString(after))
		case fig.high <= thickestDrum && rd.at(rd.pastIs(i-1)).marked(markStation) && l.isAcross.MatchString(after):
			rd.tell(i, DrumAcross, l.isAcross.FindString(after))
		case trunk && l.ofTrunk.MatchString(after):
			rd.tell(i, TrunkAcross, l.ofTrunk.FindString(after))
		case trunk && l.trunkIs.MatchString(before):
			rd.tell(i, TrunkAcross, l.isAcross.FindString(after))
			rd.silence(fig.start-len(l.trunkIs.FindString(before)), fig.start)
		}
	}
}

// ropeBefore says whether a rope is named right before a number, but for a word
// that leads to it.
func (rd *reading) ropeBefore(i int) bool {
	j := rd.back(i - 1)
	if j == i-1 && rd.at(j).part() != partRope && rd.at(j).term != nil {
		j--
	}
	return rd.at(j).part() == partRope
}

// DrumAside is the note that the drum stands at another thing than the foot of
// the tree.
const DrumAside = "drum-aside"

// drumAside reads "drum at the next tree", with how far that is where it is
// told right behind: "drum on the truck, 20 ft away".
func (rd *reading) drumAside(l *layout) {
	for i, e := range rd.elems {
		if !e.marked(markStation) {
			continue
		}
		j := i + 1
		for rd.leadsOn(j) {
			j++
		}
		if j > i+1 && rd.termAt(j).tree != nil && rd.onTree(l, j) {
			rd.elems[j].term = &term{marks: markOffTree} // no piece of that tree
		}
		within := strings.HasPrefix(rd.word(rd.at(j)), "en ") // "en otro árbol" leads by itself
		if j == i+1 && !within || !rd.at(j).marked(markOffTree) {
			continue
		}
		for k := i + 1; k < j; k++ {
			rd.alter(k, func(t *term) { t.roles = nil }) // "tied to" it
		}
		rd.elems[j].term = &term{note: DrumAside}
		k := j + 1
		if rd.at(k).pause == 2 || rd.at(k).marked(markAt) {
			k++
		}
		if !rd.far(k) || rd.elems[k].fig.told != "" {
			continue
		}
		if words := l.awayFromTree(rd.text[rd.elems[k].fig.end:]); words != "" {
			rd.tell(k, DrumAway, words)
		} else if rd.elems[k].fig.low >= nearestDrum && rd.endsBreath(k+1) {
			rd.elems[k].fig.told = DrumAway // "tambor en otro árbol a 8 m"
		}
	}
}

// onTree says whether the tree at i is what a drum stands at, and not the one that
// is cut: how far it is follows, "drum on the maple 30 ft back", or that it is
// next door.
func (rd *reading) onTree(l *layout, i int) bool {
	for k := i + 1; k <= i+2; k++ {
		if rd.far(k) {
			return l.awayFromTree(rd.text[rd.elems[k].fig.end:]) != ""
		}
	}
	return false
}

// pieceNamed says whether the message tells of a piece and not of its weight,
// so that a thickness could be its.
func (rd *reading) pieceNamed() bool {
	named := false
	for i, e := range rd.elems {
		if rd.heavy(i) {
			return false
		}
		named = named || e.piece()
	}
	return named
}

// leadsOn says whether a term only leads from a drum to what it stands at. What
// is asked about, or ends all, leads nowhere.
func (rd *reading) leadsOn(i int) bool {
	e := rd.at(i)
	return e.term != nil && e.term.ask == "" && e.term.stop == "" && e.term.note == "" &&
		!e.marked(markOffTree|markBound) && (!e.piece() || e.marked(markStanding))
}

// plainDrum says whether the words of a match start with the drum itself: "3
// wraps on the drum, diameter 14 in" speaks of the wraps.
func (rd *reading) plainDrum(match []int) bool {
	return match != nil && slices.ContainsFunc(rd.elems, func(e element) bool {
		return e.marked(markStation) && e.start <= match[0] && match[0] < e.end
	})
}

// MovingBlock is the note that a block moves with the load.
const MovingBlock = "moving-block"

// movingBlock counts two parts of line where a moving block is all that is said
// of them.
func (rd *reading) movingBlock() {
	at := -1
	for i, e := range rd.elems {
		switch {
		case e.fig != nil && e.fig.dim == dimRatio, e.plays(Parts):
			return
		case e.term != nil && e.term.note == MovingBlock:
			at = i
		}
	}
	if at < 0 {
		return
	}
	e := rd.elems[at]
	two := &figure{low: 2, high: 2, dim: dimRatio, told: Parts, start: e.start, end: e.end}
	rd.elems = slices.Insert(rd.elems, at, element{start: e.start, end: e.end, fig: two})
}

// tell gives a number its place, and the words behind it no other.
func (rd *reading) tell(i int, f Field, words string) {
	fig := rd.elems[i].fig
	fig.told = f
	rd.silence(fig.end, fig.end+len(words))
}

// silence takes what the terms of a stretch would say besides: a "trunk" that
// a dead end goes round is no log.
func (rd *reading) silence(start, end int) {
	for i, e := range rd.elems {
		if e.term != nil && e.term.note == "" && start <= e.start && e.end <= end {
			rd.elems[i].term = &term{marks: e.term.marks & markStation}
		}
	}
}
