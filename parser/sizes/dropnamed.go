package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
)

// DropNamed takes inches right behind the tree, or behind "its", for how thick the piece is
// that is dropped, and no fall: "drop this white pine 16 in", "log to drop, its 16 in". Feet
// may be either.
func DropNamed(rd *reading.Reading) {
	if rd.AnyAt(func(i int) bool { return acrossTold(rd.Elems[i]) }) {
		return
	}
	for i, e := range rd.Elems {
		if e.LeadsTo(parser.DropHeight) && !e.LeadsTo(parser.RunLength) {
			thickBehind(rd, i)
		}
	}
}

// acrossTold says whether an element tells how thick a piece is.
func acrossTold(e reading.Element) bool {
	for _, f := range parser.Across {
		if e.Plays(f) || e.Fig != nil && (e.Fig.Told == f || e.Fig.Sure == f) {
			return true
		}
	}
	return false
}

// thickBehind makes the first number behind the word at i the thickness of what is named or
// stood for right before it.
func thickBehind(rd *reading.Reading, i int) {
	k := i + 1
	for k < len(rd.Elems) && rd.At(k).Fig == nil && rd.At(k).Pause < 4 {
		k++
	}
	fig := rd.At(k).Fig
	if !fig.Short() || k == i+1 || fig.Pair || fig.Falling || fig.Elsewhere || fig.Told != "" || fig.Sure != "" || fig.Low < places.ThinnestPiece || fallBack(rd, k+1) || rd.TermAt(k+1).BelowCut {
		return
	}
	before := rd.Past(k-1, -1, lexicon.MarkArticle)
	if rd.TermAt(before).Note == "about" {
		before--
	}
	next := rd.At(k + 1)
	goesOn := !rd.EndsBreath(k+1) && next.Fig == nil && !next.Cross && !next.Piece()
	sized := rd.TermAt(before).Shape != "" && next.Fig.Far() // "drop a red oak log 14 in 10 ft"
	if named := rd.TermAt(before).Tree != nil || itsOwn(rd, k) || sized; named && !goesOn {
		fig.Sure = parser.Diameter
	}
}

// itsOwn says whether "its" stands right before the number at i, and no gear before that.
func itsOwn(rd *reading.Reading, i int) bool {
	kit := func(k int) bool {
		return k < i && (gear.Part(rd.Elems[k]) != "" || rd.Elems[k].Marked(lexicon.MarkCord))
	}
	return rd.TypedBefore(i, lexicon.CueWas) && !rd.AnyAt(kit)
}
