package senses

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Rope is dry as well as wood, and what is asked to be "wet or dry" is neither: no
// piece is dead by that.

// DryGear takes such a word for nothing of the piece.
func DryGear(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if rd.TermAt(i).Condition != parser.Dead || !rd.Cued(e, lexicon.CueDryToo) {
			continue
		}
		if ropeAfter(rd, i) && itIs(rd, i-1) {
			rd.Pass(i, i+1, reading.Element{Start: e.Start, End: e.End, Term: &scan.Term{Chatter: true}})
			continue
		}
		before := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkArticle)
		if gearAlone(rd) {
			rd.Alter(i, func(t *scan.Term) { t.Condition = "" })
			continue
		}
		if of, plain := saidOfRope(rd, i); of && plain {
			rd.Alter(i, func(t *scan.Term) { t.Condition = "" })
			continue
		} else if of {
			rd.Pass(i, i+1, reading.Element{Start: e.Start, End: e.End, Term: &scan.Term{Chatter: true}})
			continue
		}
		gear := ropeOrDrum(rd, i+1) || thinRope(rd, i+1) || before >= 0 && ropeOrDrum(rd, before)
		if gear || likened(rd, i) || wetAt(rd, i-1) || wetAt(rd, i-2) && !dryPiece(rd, i) || wetAt(rd, i+1) || wetAt(rd, i+2) {
			rd.Alter(i, func(t *scan.Term) { t.Condition = "" })
		}
	}
}

// gearAlone says whether a message tells of gear and of no wood: "steel drum,
// dry".
func gearAlone(rd *reading.Reading) bool {
	wood := func(i int) bool { return rd.TermAt(i).Tree != nil || rd.TermAt(i).Shape != "" || rd.TermAt(i).Unnamed }
	named := func(i int) bool { return stops.Kit(rd, i) }
	return rd.AnyAt(named) && !rd.AnyAt(wood)
}

func ropeOrDrum(rd *reading.Reading, i int) bool {
	return rd.At(i).Pause == 0 && (stops.Rope(rd, i) || gear.Part(rd.At(i)) == lexicon.PartDrum)
}

// thinRope reads "dry half inch double braid" and, where wraps are asked for and no
// wood is told of, "dry 16 mm": the number at i is how thick a rope is.
func thinRope(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	if fig == nil || !rd.Fraction(fig) && !(fig.Short() && fig.High <= reading.ThickestRope) || rd.At(i+1).Cross {
		return false
	}
	return stops.Rope(rd, i+1) || gear.ThinAmongWraps(rd, i)
}

// ropeAfter reads "its dry and the rope's new": what is said of the rope goes on from
// what "it" is, be it the rope, the day or the wood. The word is said back.
func ropeAfter(rd *reading.Reading, i int) bool {
	j := i + 1
	for rd.At(j).Marked(lexicon.MarkAnd|lexicon.MarkArticle) || rd.At(j).Pause == 2 {
		j++
	}
	return j > i+1 && (rd.At(i+1).Marked(lexicon.MarkAnd) || rd.At(i+2).Marked(lexicon.MarkAnd)) && stops.Rope(rd, j)
}

// saidOfRope says whether the word at i ends what is told of a rope that is named right
// before: "new rope, dry", "the rope is new and dry". It is plain where the rope is told of
// in other words as well; behind a rope alone, "600 lb log, half inch rope, dry", it may be
// said of the wood, and the word is said back.
func saidOfRope(rd *reading.Reading, i int) (of, plain bool) {
	how := func(k int) bool {
		return rd.At(k).Fig == nil && rd.At(k).Pause == 0 && (rd.TermAt(k).Day || rd.At(k).Marked(lexicon.MarkAdjective|lexicon.MarkAdverb|lexicon.MarkIs) || rd.Cued(rd.At(k), lexicon.CueAged))
	}
	k := i - 1
	talk := func(k int) bool { return rd.TermAt(k).Someone || rd.TermAt(k).Overlook }
	for k >= 0 && (how(k) || talk(k) || rd.At(k).Pause == 2 || rd.At(k).Marked(lexicon.MarkAnd)) {
		plain = plain || how(k)
		k--
	}
	if k < 0 || !ropeOrDrum(rd, k) || !rd.EndsBreath(i+1) && !ropeOrDrum(rd, i+1) {
		return false, false
	}
	return true, plain || how(k-1)
}

// itIs says whether the word at i speaks of nothing that is named: "its", "all".
func itIs(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i), lexicon.CueItIs) || rd.At(i).Marked(lexicon.MarkIs) && rd.At(i-1).Marked(lexicon.MarkPronoun)
}

// wetAt says whether the element at i tells of what is wet.
func wetAt(rd *reading.Reading, i int) bool { return rd.At(i).Pause == 0 && rd.TermAt(i).Note == "wet" }

// likened reads "rope's soaked, same wraps as dry": a wet rope is held against a dry one,
// and no wood is told. "As dry as a bone" tells how something is.
func likened(rd *reading.Reading, i int) bool {
	j := i - 1
	for rd.At(j).Polite() && !rd.Cued(rd.At(j), lexicon.CueLikened) || rd.At(j).Marked(lexicon.MarkIn|lexicon.MarkArticle) {
		j--
	}
	wet := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Note == "wet" })
	return wet && rd.Cued(rd.At(j), lexicon.CueLikened) && !rd.Cued(rd.At(i+1), lexicon.CueLikened) && !strings.Contains(rd.Word(rd.At(i)), " ")
}

// dryPiece reads "rope's wet, dry log": behind a comma it is the wood that is named next.
func dryPiece(rd *reading.Reading, i int) bool {
	return rd.At(i-1).Pause > 0 && (rd.At(i+1).Piece() || rd.TermAt(i+1).Unnamed)
}
