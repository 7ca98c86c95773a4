package pulls

import (
	"heft/calc/unit"
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// EachPulls reads what each of the people pulls: "3 guys, 40 lb each". "Each"
// behind any other number is asked about: "3 logs, 400 lb each".
func EachPulls(rd *reading.Reading) {
	for i := range rd.Elems {
		at := i
		if rd.Cued(rd.At(i-1), lexicon.CuePull) {
			at-- // "100 lb pull apiece"
		}
		if !rd.Cued(rd.Elems[i], lexicon.CueEach) || !pullBefore(rd, at) {
			continue
		}
		rd.Elems[i].Term = &scan.Term{} // it is placed, and no more to be asked about
		rd.Elems[at-1].Fig.Told = parser.PersonPull
	}
}

// ownClause says whether people are counted in the message and another mass
// names the one piece: "3 of us lift a 300 lb log, 50 lb each".
func ownClause(rd *reading.Reading, own int) bool {
	counted, named, others := false, false, 0
	for i, e := range rd.Elems {
		switch {
		case i == own || e.Fig == nil:
		case e.Fig.Dim == parser.DimMass || e.Fig.Dim == parser.DimForce:
			others++
			named = rd.At(i + 1).Piece()
		case e.Fig.Dim == parser.DimCount && rd.At(i+1).Plays(parser.People):
			counted = true
		case e.Fig.Dim == parser.DimCount && rd.At(i+1).Piece():
			return false // "2 logs"
		}
	}
	return counted && named && others == 1
}

// pullBefore says whether a pull stands before "each", and before that, with
// no other number or piece between, the people.
func pullBefore(rd *reading.Reading, i int) bool {
	fig := rd.At(i - 1).Fig
	if fig == nil || fig.Dim != parser.DimMass && fig.Dim != parser.DimForce {
		return false
	}
	if rd.At(i-2).Pause > 0 && ownClause(rd, i-1) {
		return true
	}
	for j := i - 2; j >= 0; j-- {
		e := rd.Elems[j]
		switch {
		case e.Fig != nil || e.Piece():
			return false
		case e.Plays(parser.People) && rd.Cued(e, lexicon.CuePulling) && rd.At(j-1).Fig == nil:
		case e.Plays(parser.People):
			return rd.At(j-1).Fig != nil
		}
	}
	return false
}

// handWords finds the words beside the number at i that make it what the hand
// holds, -1 where there are none.
func handWords(rd *reading.Reading, i int) int {
	if rd.TermAt(i + 1).InHand {
		return i + 1
	}
	if at := rd.Back(i - 1); rd.TermAt(at).Feels {
		return at
	}
	return -1
}

// mostByHand is more than any hand holds, in newtons.
const mostByHand = 450

// HeldByHand reads "con 2 vueltas en el tambor aguanto 180 kg": who holds more than a
// hand can tells of the piece.
func HeldByHand(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return fig.Dim == parser.DimMass && float64(unit.Mass(fig.Low).Weight()) > mostByHand && rd.TermAt(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAt)).SelfHolds
}

// HandPulls reads what the hand shall hold behind the drum: "20 lb in the hand",
// "so i only feel 30 lb". What no hand holds is the piece, or what it weighs at
// the hand is asked: "500 lb in the hand".
func HandPulls(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !gear.Heavy(rd, i) || e.Fig.Told != "" || rd.At(i+1).Piece() {
			continue
		}
		at := handWords(rd, i)
		if newtons(e.Fig) > mostByHand || at < 0 {
			continue
		}
		if rd.ShapedOrNamed() || rd.AnyAt(func(k int) bool { return k != i && (gear.Heavy(rd, k) || rd.Elems[k].Plays(parser.Wraps)) }) {
			e.Fig.Told = parser.PersonPull
			rd.Alter(at, func(t *scan.Term) { t.Intent = parser.AskLower }) // no tackle has a tail in the hand
			if rd.Cued(rd.At(i+2), lexicon.CueEach) {
				rd.Elems[i+2].Term = &scan.Term{} // "25 lb in the hand each"
			}
		}
	}
}
