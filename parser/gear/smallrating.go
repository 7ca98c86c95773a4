package gear

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What gear is stamped with in kilonewtons, or is said to bear in tonnes, is a small
// number: "sling's a 22", "biner says 30", "the choker says 8 on the tag". It is no
// size, and no load, and which unit it has is asked.

// mostStamped is more than any such number: more are pounds or kilograms.
const mostStamped = 100

// leastLarge is less than what any gear is marked with in pounds or kilograms.
const leastLarge = 300

// smallRating is the gear that the bare number at i is a strength of, "" for none.
func smallRating(rd *reading.Reading, i int) scan.Part {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Pair || fig.Falling || fig.Low < 1 {
		return ""
	}
	large := fig.High >= mostStamped // told in pounds or kilograms, which of them is asked too
	if large && fig.Low < leastLarge {
		return ""
	}
	onTag := rd.TypedAfter(i, lexicon.CueOnTag)
	if next := rd.At(i + 1); !rd.EndsBreath(i+1) && !onTag && Strength(next) == "" {
		return ""
	}
	k, stamped, one := i-1, onTag, false
	for rd.At(k).Pause == 0 && Part(rd.At(k)) == "" && !rd.At(k).Marked(lexicon.MarkCord) && linksRating(rd, k) {
		stamped = stamped || rd.Cued(rd.At(k), lexicon.CueStamped) || rd.TermAt(k).Label || rd.TermAt(k).Rated
		one = one || rd.At(k).Marked(lexicon.MarkArticle)
		k--
	}
	switch p := Part(rd.At(k)); {
	case large && thickest(rd) > 0:
		return "" // how thick the rope is tells which figure it is
	case k == i-1 && !onTag:
		if !large && (p == lexicon.PartSling || p == lexicon.PartConnector) && inKilonewtons(rd) {
			return p // "rope 50 kN, sling 90"
		}
		return ""
	case p == lexicon.PartRope || rd.At(k).Marked(lexicon.MarkCord):
		if stamped || one && fig.Low != float64(int(fig.Low)) {
			return lexicon.PartRope // "rope's a 12" may be millimetres
		}
		return ""
	case p != "" && (stamped || one && !large):
		return p
	case stamped && p == "":
		return stampedGear(rd)
	}
	return ""
}

// inKilonewtons says whether the message tells any figure of its gear in kilonewtons: the
// bare number right behind a sling is then another one.
func inKilonewtons(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && fig.Dim == parser.DimForce && fig.Unit != nil && fig.Unit.System == parser.Metric
	})
}

// linksRating says whether the element at i may stand between gear and what is stamped
// on it.
func linksRating(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Fig == nil && (e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkRating) && !e.Marked(lexicon.MarkAt) || rd.Cued(e, lexicon.CueStamped) || rd.TermAt(i).Label || rd.TermAt(i).Rated || rd.TermAt(i).Note == "about")
}

// stampedGear is the one kind of gear that a message names, a choker being a sling.
func stampedGear(rd *reading.Reading) scan.Part {
	if p := PartMeant(rd); p != "" {
		return p
	}
	if rd.AnyAt(func(k int) bool {
		return rd.TermAt(k).Note == parser.NoteChoker || rd.TermAt(k).Note == parser.NoteBasket
	}) {
		return lexicon.PartSling
	}
	return ""
}

// AsksSmall asks for the unit of such numbers, and which figure they are where that is
// not told.
func AsksSmall(rd *reading.Reading) {
	for i := range rd.Elems {
		p := smallRating(rd, i)
		if p == "" {
			continue
		}
		a := AsksStrength(rd, rd.Elems[i].Fig, p)
		a.Kind = parser.NoUnit
		if s := Strength(rd.At(i + 1)); s != "" {
			a.Fields = []parser.Field{Field(p, s)}
		}
		if rd.Cued(rd.At(i-1), lexicon.CueStamped) {
			rd.Alter(i-1, func(t *scan.Term) { t.Roles = nil })
		}
	}
}

// OnLabel says whether the bare number at i is told as what stands on a label, of gear that
// is not named: "it says 9000 on the tag", "the tag says 9000".
func OnLabel(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low < leastLarge || rd.At(i+1).Piece() {
		return false
	}
	k := i - 1
	for linksRating(rd, k) && rd.At(k).Pause == 0 && k >= 0 {
		e := rd.At(k)
		tagged := rd.Cued(e, lexicon.CueStamped) && strings.Contains(rd.Text[e.Start:e.End], " ") // "tag says"
		if rd.TermAt(k).Label || tagged {
			return true
		}
		k--
	}
	return rd.TypedAfter(i, lexicon.CueOnTag)
}
