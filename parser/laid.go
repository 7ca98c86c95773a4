package parser

import (
	"regexp"
	"slices"
	"strings"
)

// The numbers of how a rope is laid out: a drum that stands off the tree, how
// thick the drum is, and the trunk that a dead end goes round. None of them is
// a size of the piece.

// DeadEndOnTrunk is the note that the dead end goes round the trunk.
const DeadEndOnTrunk = "dead-end-trunk"

const (
	aDrum  = `(?:lowering |friction )?(?:drum|bollard|capstan|device|tambor|bolardo)\b`
	aTrunk = `(?:trunk|stem|spar|tronco|fuste)\b`
)

// What stands right behind a number, or right before it.
var (
	offTheTree = spaced(`^ *(?:set |away |out |back |off )*(?:from|off|of) (?:the )?(?:(?:foot|base|bottom|butt) of the )?(?:tree|trunk|stem|spar|base|foot)\b` +
		`|^ *(?:lejos |afuera |retirado |retirada )*del? (?:(?:pie|base) del )?(?:tronco|árbol|arbol|fuste|pie|base)(?:$|[^\pL])`)
	offAtAll  = spaced(`^ *(?:away|out|back|off|lejos|afuera|retirado|retirada)\b`)
	elsewhere = spaced(`^ *(?:from|of|to|toward|towards|over|above|up|in|on|at|past|near|de|del|a|al|hacia|sobre|en|desde)\b`)
	toTheDrum = spaced(`^ *(?:out |away |over |(?:from|off) (?:the )?(?:tree|trunk|stem|base) )*to (?:the |a |my )?` + aDrum +
		`|^ *(?:del (?:tronco|árbol|arbol|pie) )*(?:al|hasta el) ` + aDrum)
	ofDrum   = spaced(`^ *(?:diameter |dia |wide |thick |across )?` + aDrum)
	isAcross = spaced(`^ *(?:diameter|dia|across|wide|thick|through|(?:de )?(?:diámetro|diametro|grueso|ancho))(?:$|[^\pL])`)
	drumIs   = spaced(aDrum + `(?: +(?:diameter|dia|is|of|at|set|sits|stands|mounted|about|around|=|está|esta|queda|puesto|montado|a|de|diámetro|diametro|es|unos|como))*[\s:=]*$`)
	drumWide = spaced(aDrum + ` *(?:(?:diameter|dia|is|of|about|around|=) *)*(?:diameter|dia|is|=)(?: +(?:of|about|around|is))*[\s:=]*$` +
		`|` + aDrum + ` +(?:(?:es|mide|de|diámetro|diametro) +)*(?:de|mide)[\s:=]*$`)
	drumOf  = spaced(aDrum + ` +de *$`)
	ofTrunk = spaced(`^ *(?:diameter |dia |thick |wide |across |de diámetro |de diametro |de grueso )?` + aTrunk)
	trunkIs = spaced(aTrunk + `(?: +(?:diameter|dia|is|of|de|there|up|about|around|at|the|that|block|hitch|height|mide|es|tiene|ahí|ahi|arriba|unos|como))*[\s:=]*$`)
)

// spaced compiles an expression in which a space is any white space.
func spaced(expr string) *regexp.Regexp {
	expr = strings.NewReplacer(" *", `\s*`, " +", `\s+`, " ", `\s+`).Replace(expr)
	return regexp.MustCompile("(?i)" + expr)
}

// awayFromTree returns the words behind a number that set it off the tree:
// "from the tree", "away"; not "away from the house".
func awayFromTree(after string) string {
	if words := offTheTree.FindString(after); words != "" {
		return words
	}
	words := offAtAll.FindString(after)
	if elsewhere.MatchString(after[len(words):]) {
		return ""
	}
	return words
}

// thickestDrum is more than any drum is across, in metres.
const thickestDrum = 0.6

// laid finds the numbers of the layout.
func (rd *reading) laid() {
	trunk, drummed := false, false
	for _, e := range rd.elems {
		trunk = trunk || e.term != nil && e.term.note == DeadEndOnTrunk
		drummed = drummed || e.marked(markStation) || e.part() == partDrum
	}
	if !trunk && !drummed {
		return // it speaks of neither: most messages
	}
	for i, e := range rd.elems {
		fig := e.fig
		if fig == nil || fig.dim != dimLength || fig.told != "" || fig.pair || fig.falling {
			continue
		}
		before, after := rd.text[:fig.start], rd.text[fig.end:]
		drum := drumIs.MatchString(before)
		switch {
		case fig.far() && drum && awayFromTree(after) != "":
			rd.tell(i, DrumAway, awayFromTree(after))
		case fig.far() && toTheDrum.MatchString(after):
			rd.tell(i, DrumAway, toTheDrum.FindString(after))
		case !fig.unit.fine:
		case ofDrum.MatchString(after) && fig.high <= thickestDrum:
			rd.tell(i, DrumAcross, ofDrum.FindString(after))
		case drumOf.MatchString(before) && fig.high <= thickestDrum && !rd.at(i+1).piece():
			rd.tell(i, DrumAcross, isAcross.FindString(after)) // "3 vueltas en el tambor de 8 pulgadas"
		case fig.high <= thickestDrum && rd.plainDrum(drumWide.FindStringIndex(before)) && !rd.at(i+1).piece():
			rd.silence(fig.start-len(drumWide.FindString(before)), fig.start)
			rd.tell(i, DrumAcross, isAcross.FindString(after))
		case fig.high <= thickestDrum && rd.at(rd.pastIs(i-1)).marked(markStation) && isAcross.MatchString(after):
			rd.tell(i, DrumAcross, isAcross.FindString(after))
		case trunk && ofTrunk.MatchString(after):
			rd.tell(i, TrunkAcross, ofTrunk.FindString(after))
		case trunk && trunkIs.MatchString(before):
			rd.tell(i, TrunkAcross, isAcross.FindString(after))
			rd.silence(fig.start-len(trunkIs.FindString(before)), fig.start)
		}
	}
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
