package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Fallen says whether the word at i says that somebody fell.
func Fallen(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Falls {
		return false
	}
	j := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAdverb)
	return rd.TermAt(j).Someone || rd.At(j).Marked(lexicon.MarkPronoun|lexicon.MarkPerson)
}

// Underneath notes that somebody stands below the piece: "dave is underneath".
// Who is down on the ground with the rope in hand stands nowhere near.
func Underneath(rd *reading.Reading, i int) {
	if of := rd.At(rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkArticle)); of.Marked(lexicon.MarkPlace|lexicon.MarkRelation) && !of.Marked(lexicon.MarkAdjective) {
		return // "la cerca del cliente está abajo"
	}
	j := i + 1
	for j < i+4 && !rd.TermAt(j).Beneath && (rd.At(j).Marked(lexicon.MarkIs|lexicon.MarkAdverb) || rd.At(j).Pause == 0 && rd.At(j).Polite()) {
		j++
	}
	counted, under := rd.At(i-1).Fig != nil, rd.At(j+1).Fig
	switch {
	case !rd.TermAt(j).Beneath || hasRope(rd, j+1) || sharedOut(rd):
	case counted, under != nil && under.Dim == parser.DimMass && rd.At(j+1).Start-rd.At(j).End < 2:
		// "3 groundies below" are a crew, and "my guy is under 200 lb" is light
	case !rd.TermAt(i).Someone && (j == i+1 || rd.At(i).Marked(lexicon.MarkPronoun|lexicon.MarkPerson)):
	default:
		rd.Alter(j, func(t *scan.Term) {
			t.Note = parser.PeopleBelow
			if under == nil {
				t.Roles = nil // "under the load, 200 lb" sets no limit
			}
		})
	}
}

// sharedOut says whether it is told who is up the tree as well, and of no piece:
// "Luis y Beto abajo, yo trepo" says who is on the ground.
func sharedOut(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TypedBefore(i, lexicon.CueAloft) || rd.TypedAfter(i, lexicon.CueAloft) }) &&
		!rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() || rd.TermAt(i).Unnamed })
}

// CrewBelow takes those who are counted on the ground for the crew: "3 peones
// abajo".
func CrewBelow(rd *reading.Reading, i int) {
	if rd.At(i).Plays(parser.People) && rd.At(i-1).Fig != nil {
		rd.Alter(i, func(t *scan.Term) { t.Note = "" })
	}
}

// hasRope says whether what stands at i is gear or the hold of a rope: "beto está
// abajo en el tambor".
func hasRope(rd *reading.Reading, i int) bool {
	for n := 0; n < 4 && rd.At(i).Marked(lexicon.MarkIn|lexicon.MarkAt|lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAnd|lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkWhere|lexicon.MarkHello) && !rd.TermAt(i).RopeEnd && !stops.Kit(rd, i); n++ {
		i++
	}
	return stops.Kit(rd, i) || rd.TermAt(i).RopeEnd
}

// OfSomeone reads "dave is at 40 ft", "dave weighs 200 lb" and "dave 30 ft up".
// A number that names the piece is its own: "dave has a 14 in red oak limb".
func OfSomeone(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	k := i - 1
	for rd.At(k).Marked(lexicon.MarkIs | lexicon.MarkTrailing | lexicon.MarkAdverb | lexicon.MarkErect) {
		k--
	}
	if !rd.TermAt(k).Someone || fig.Dim == parser.DimCount || rd.At(i+1).Piece() || rd.At(i+1).Fig != nil || cutBy(rd, k) {
		return false
	}
	return k < i-1 || fig.Far()
}

// cutBy reads "el tramo que va a cortar Iván mide 2,20 m": whoever stands at i only cuts
// what is told of.
func cutBy(rd *reading.Reading, i int) bool {
	cuts := false
	for n := i - 1; n > 0 && rd.Elems[n].Pause == 0; n-- {
		cuts = cuts || rd.Cued(rd.Elems[n], lexicon.CueCutting)
		if cuts && rd.TermAt(n).HowMuch {
			return true
		}
	}
	return false
}
