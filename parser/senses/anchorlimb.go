package senses

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// AnchorLimbs takes a limb that something is rigged off, "a 3:1 off the limb above", for no
// piece: it stays in the tree, and tells no shape. So does one whose strap is asked about,
// "that limb's strap", in a talk about a log.
func AnchorLimbs(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Shape == parser.Limb && rd.TermAt(i).Tree == nil && (riggedOff(rd, i) || strapOf(rd, i) || redirectOn(rd, i) || redirectGets(rd, i)) {
			rd.Alter(i, func(t *scan.Term) { t.Shape, t.Chatter = "", true })
		}
	}
}

// riggedOff says whether the limb at i is the one above, and what stands before it hangs off
// it. "6 ft off the limb above" tells a distance, or what is cut off it.
func riggedOff(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkArticle)
	if k == i-1 || rd.At(k).Fig != nil || rd.At(k-1).Fig.Far() || !rd.TypedAfter(i, lexicon.CueLimbAbove) {
		return false
	}
	for j := i + 1; j < len(rd.Elems) && rd.Elems[j].Pause == 0; j++ {
		if e := rd.Elems[j]; e.Marked(lexicon.MarkPlace|lexicon.MarkObstacle) || e.Piece() {
			return false // "the limb above the roof" is where the piece is
		}
	}
	switch e := rd.At(k); {
	case e.Marked(lexicon.MarkMade): // "the weight of the limb above" is the piece's
		return rd.Cued(rd.At(k-1), lexicon.CueHangFrom)
	case e.Marked(lexicon.MarkAt), rd.Worded(parser.Wraps), gear.AsksFor(rd, parser.AskLower): // "vueltas a la rama de arriba"
		return false
	}
	return rd.At(k).Marked(lexicon.MarkRelation|lexicon.MarkIn) || rd.At(k).LeadsTo(parser.HitchHeight) || rd.Cued(rd.At(k), lexicon.CueHangFrom)
}

// redirectOn says whether a redirect is told to be on the limb at i, "a redirect out on that
// other limb": which of them it is tells no other piece.
func redirectOn(rd *reading.Reading, i int) bool {
	const most = 4
	k, on := i-1, false
	for ; k >= 0 && i-k <= most && rd.At(k).Pause == 0 && rd.At(k).Fig == nil && rd.TermAt(k).Block == ""; k-- {
		on = on || rd.At(k).Marked(lexicon.MarkIn) || rd.TermAt(k).OneEnd
	}
	if !on || !parser.Redirecting(rd.TermAt(k).Block) {
		return false
	}
	for k++; k < i; k++ {
		if t := rd.TermAt(k); t.OneEnd || t.Another {
			rd.Elems[k].Term = &scan.Term{Marks: lexicon.MarkArticle}
		}
	}
	return true
}

// redirectGets says whether it is asked what the limb at i gets that a redirect was told to be
// on: "how much is that limb getting".
func redirectGets(rd *reading.Reading, i int) bool {
	on := func(k int) bool { return k < i && parser.Redirecting(rd.TermAt(k).Block) }
	next := rd.Past(i+1, +1, lexicon.MarkIs)
	return rd.At(i-1).Marked(lexicon.MarkArticle) && rd.TermAt(next).Receives && !rd.TermAt(next).Bears && rd.AnyAt(on)
}

// strapOf says whether the limb at i owns what a block hangs by, where the piece of the talk
// is no limb.
func strapOf(rd *reading.Reading, i int) bool {
	was := rd.Before
	if was.Shape == nil || was.Shape.Value == parser.Limb || rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil }) {
		return false
	}
	if owns := strings.ReplaceAll(rd.Text[rd.Elems[i].Start:], "’", "'"); strings.HasPrefix(owns[rd.Elems[i].End-rd.Elems[i].Start:], "'s") || strings.HasSuffix(rd.Word(rd.Elems[i]), "'s") {
		return strap(rd, i+1)
	}
	k := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkPronoun)
	return rd.Language == "es" && k < i-1 && rd.At(k).Marked(lexicon.MarkMade) && strap(rd, k-1) // "la eslinga de esa rama"
}

func strap(rd *reading.Reading, i int) bool { return gear.Part(rd.At(i)) == lexicon.PartSling }
