package gear

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// SizedLong reads "a 20 in x 8 ft log" and "20 in x 8 ft from the yard": what a
// thickness is crossed with is how long the piece is, wherever that lies.
func SizedLong(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return (fig.Far() || fig.Short() && fig.High > reading.ThickestRope) && rd.Crossed(i-2, i) && rd.At(i-2).Fig.Short() && !rd.Crossed(i, i+2)
}

// TowardsPlace reads "30 ft from the house", "6 ft above him".
func TowardsPlace(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkAdverb)
	if d := rd.Elems[i].Fig.Dim; d == parser.DimMass || d == parser.DimForce {
		if !rd.At(j).Marked(lexicon.MarkWhere) {
			return rd.At(j).Marked(lexicon.MarkRelation) && !rd.At(j).Marked(lexicon.MarkBound) && rd.At(rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)).Marked(lexicon.MarkLoaded|lexicon.MarkStation)
		}
		return !led(rd, j) && rd.At(rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)).Marked(lexicon.MarkLoaded) // "5 kN on the block"
	}
	if !rd.At(j).Marked(lexicon.MarkRelation) || plumb(rd, i, j) {
		return false
	}
	k := rd.Past(j+1, +1, lexicon.MarkRelation|lexicon.MarkArticle|lexicon.MarkAdjective)
	end := rd.At(k)
	if last := rd.At(k - 1); last.Marked(lexicon.MarkPronoun) && last.Marked(lexicon.MarkArticle) && (end.Term == nil || end.Marked(lexicon.MarkAnd) || end.Plays(parser.HitchHeight)) {
		return true // "5 pies lejos de él"
	}
	if rd.At(j).Marked(lexicon.MarkBound) && end.Fig == nil && (rd.Elems[i].Fig.Far() || end.Piece() || end.Pause > 0 || k >= len(rd.Elems)) {
		return true // "block 4 ft above the limb"
	}
	return end.Marked(lexicon.MarkPlace|lexicon.MarkStation|lexicon.MarkPronoun|lexicon.MarkPart) || rd.TermAt(k).Someone || fromBlock(rd, i, j, k)
}

// fromBlock reads "tied 6 ft from the block": how far something is from a block is no
// size of what hangs there.
func fromBlock(rd *reading.Reading, i, j, k int) bool {
	return rd.Elems[i].Fig.Far() && rd.Cued(rd.At(j), lexicon.CueFrom) && Part(rd.At(k)) == lexicon.PartBlock
}

// plumb says whether the words behind the hitch height at i, the last of them
// at j, only say what the piece hangs above: "hitched at 35 ft right over the
// fence". A height above the ground is measured straight over nothing.
func plumb(rd *reading.Reading, i, j int) bool {
	return j > i+1 && rd.At(j).Marked(lexicon.MarkBound) && EndsInAt(rd, i-1) && rd.At(i-1).Plays(parser.HitchHeight)
}

// led says whether the words only lead over to the gear: "600 lb with a redirect".
func led(rd *reading.Reading, j int) bool {
	switch e := rd.At(j); scan.Fold(rd.Text[e.Start:e.End]) {
	case "with", "w/", "using", "through", "con", "usando", "por":
		return rd.TermAt(rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)).Block != ""
	}
	return false
}

// OfRope reads "5/8 double braid", "16 mm rope", "rope is 1/2 in 10,400 lb" and
// "cuerda de 5/8": a fraction of an inch, or a thickness that is no piece's, right
// beside a rope.
func OfRope(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	switch {
	case thinInFall(rd, i), thinAlone(rd, i), thinLength(rd, i), thinMillimetres(rd, i), ThinAmongWraps(rd, i) && (moistAt(rd, i-1) || rd.Cued(rd.At(i-1), lexicon.CueHaving)), fractionRated(rd, i), thinBeforeBreak(rd, i), thinHolds(rd, i):
		return true
	case fig.Low <= 0 || !rd.At(i+1).Marked(lexicon.MarkCord) && !behindRope(rd, i):
		return ThinPart(rd, i) == lexicon.PartRope
	case fig.Dim == parser.DimLength:
		return fig.Unit.Fine && fig.High <= reading.ThickestRope
	}
	return fig.Dim == parser.DimCount && fig.High < 1 && (strings.ContainsAny(fig.Words(rd.Text), "/½¼¾⅛⅜⅝⅞") || rd.SpokenParts(fig))
}

// thinHolds reads "will half inch hold it" beside how thick the piece is: what is asked
// whether it holds, and is as thin as that, is a rope.
func thinHolds(rd *reading.Reading, i int) bool {
	const thickest = 0.0255
	fig := rd.Elems[i].Fig
	next := rd.TermAt(i + 1)
	return fig.Short() && fig.High <= thickest && rd.Cued(rd.At(i-1), lexicon.CueAsking) && (next.Bears || rd.Cued(rd.At(i+1), lexicon.CueHolds)) && rd.ThicknessBeside(fig)
}

// thinLength reads "120 ft of 1/2 inch": so many feet of nothing else are so thin.
func thinLength(rd *reading.Reading, i int) bool {
	const thickest = 0.0255
	fig := rd.Elems[i].Fig
	return fig.Dim == parser.DimLength && fig.Unit.Fine && fig.High <= thickest && rd.At(i-1).Marked(lexicon.MarkMade|lexicon.MarkRelation) && Far(rd, i-2) && !rd.At(i+1).Piece()
}

// thinAlone reads "swap the rope to the 12 mm": where a rope is named and no piece
// is, a size as thin as that is the rope's.
func thinAlone(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig.Dim != parser.DimLength || !fig.Unit.Fine || fig.High > reading.ThickestRope || rd.At(i+1).Cross || rd.At(i-1).Cross || rd.At(i+1).Fig == nil && !rd.EndsBreath(i+1) {
		return false
	}
	return rd.Has(lexicon.MarkCord) && !rd.AnyAt(func(k int) bool { return rd.Elems[k].Piece() || rd.TermAt(k).Unnamed })
}

// moistAt says whether the word at i tells of what is dry or wet.
func moistAt(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i), lexicon.CueDryToo) || rd.TermAt(i).Note == "wet"
}

// ThinAmongWraps says whether the number at i can be how thick a rope is where its wraps
// are asked for: a load is told, and no wood: "dry 16 mm, 500 kg, how many wraps".
func ThinAmongWraps(rd *reading.Reading, i int) bool {
	const thinnest, thickest = 0.006, 0.0255
	fig := rd.Elems[i].Fig
	wood := func(k int) bool {
		return rd.TermAt(k).Shape != "" || rd.TermAt(k).Tree != nil || k != i && rd.Elems[k].Fig.Short()
	}
	return fig.Short() && fig.Low >= thinnest && fig.High <= thickest && (AsksFor(rd, parser.AskLower) || rd.Worded(parser.Wraps)) && rd.AnyAt(rd.Is(Heavy)) && !rd.AnyAt(wood)
}

// thinInFall reads "can i snub 300 lb on 1/2 inch": where something falls onto its
// rope, nothing else is told that is so thin.
func thinInFall(rd *reading.Reading, i int) bool {
	const thinnest, thickest = 0.006, 0.0255
	fig := rd.Elems[i].Fig
	of := func(e reading.Element, s scan.Side) bool {
		return e.Piece() || e.Looks(s) || e.Marked(lexicon.MarkGear|lexicon.MarkPart|lexicon.MarkPlace) && Part(e) != lexicon.PartRope
	}
	return AsksFor(rd, parser.AskDrop) && fig.Short() && fig.Low >= thinnest && fig.High <= thickest && !of(rd.At(i+1), lexicon.Before) && !of(rd.At(PastIs(rd, i-1)), lexicon.After)
}

// behindRope says whether what stands before the number at i, or a strength
// behind it, makes it a rope's.
func behindRope(rd *reading.Reading, i int) bool {
	fig, link, next := rd.Elems[i].Fig, rd.At(i-1), rd.At(i+1)
	rates := next.Fig != nil && Rates(next.Fig) // "rope is 1/2 in 10,400 lb"
	ends := next.Pause > 0 || next.Polite() || i+1 >= len(rd.Elems)
	switch {
	case ropeIs(rd, i), link.Marked(lexicon.MarkMade) && rd.Fraction(fig) && ropeNamed(rd, i-2):
		return true
	case rd.At(i-2).Marked(lexicon.MarkCord) && fig.Dim == parser.DimCount && link.Marked(lexicon.MarkIs) && !link.Marked(lexicon.MarkAt): // "rope is 5/8 brand new"
		return true
	case rd.Fraction(fig) && link.Marked(lexicon.MarkMade|lexicon.MarkRelation) && Far(rd, i-2) && !next.Piece() && !next.Looks(lexicon.Before): // "200 ft of 5/8"
		return true
	case rd.Fraction(fig) && link.Marked(lexicon.MarkCord) && (next.Fig != nil || rd.EndsBreath(i+1)): // "rope 5/8 15k"
		return true
	case link.Marked(lexicon.MarkMade) && moistAt(rd, i-2) && rd.At(i-3).Marked(lexicon.MarkCord): // "cuerda seca de 16 mm"
		return true
	case link.Marked(lexicon.MarkMade) && rd.Fraction(fig) && Far(rd, i-3) && rd.At(i-2).Plays(parser.RopeLength): // "60 pies de cuerda de 1/2"
		return true
	case rd.At(i-2).Marked(lexicon.MarkCord) && (link.Marked(lexicon.MarkMade) || rates && link.Marked(lexicon.MarkIs) && !link.Marked(lexicon.MarkAt)):
		return true
	case fig.Dim == parser.DimLength && Strength(next) != "": // "14 mm breaks at 4.4 t"
		return true
	case link.Marked(lexicon.MarkCord) && fig.Dim == parser.DimCount && Strength(next) != "": // "rope 5/8 breaks at 16k lb"
		return true
	case link.Marked(lexicon.MarkCord) && next.Marked(lexicon.MarkRating) && rd.At(i+2).Fig != nil: // "rope 3/4 rated 24,000"
		return true
	}
	k := PastIs(rd, i-1)
	k = rd.Past(k, -1, lexicon.MarkIs|lexicon.MarkAdjective)
	return fig.Dim == parser.DimLength && (rates || ends) && rd.At(k).Marked(lexicon.MarkCord) // "the rope is new 12 mm 3 tonne"
}

// ropeNamed says whether the words at i, or before what tells how new it is there, end in
// a rope's name: "aguanta la soga de 1/2", "soga nueva de 9/16".
func ropeNamed(rd *reading.Reading, i int) bool {
	for rd.At(i).Marked(lexicon.MarkAdjective|lexicon.MarkTrailing) || rd.TermAt(i).Day || rd.TermAt(i).State {
		i--
	}
	names := func(w string) bool { return rd.In.Cued(w, lexicon.CueRopeName) }
	return rd.At(i).Fig == nil && slices.ContainsFunc(scan.SplitWords(rd.Word(rd.At(i))), names)
}

// ropeIs reads "the rope is 1/2 inch" and "la soga es de media pulgada" where
// nothing more is said of the number: a rope is nothing else that is so thin.
func ropeIs(rd *reading.Reading, i int) bool {
	j := i - 1
	for rd.At(j).Marked(lexicon.MarkIs|lexicon.MarkMade) && !rd.At(j).Marked(lexicon.MarkAt|lexicon.MarkWhere) && !rd.At(j).Plays(parser.RopeLength) {
		j--
	}
	rope := rd.At(j).Marked(lexicon.MarkCord) || rd.At(j).LeadsTo(parser.RopeLength)
	told := rd.EndsBreath(i+1) || rd.At(i+1).Marked(lexicon.MarkAnd) && rd.At(i+2).Fig == nil
	return rd.Elems[i].Fig.Short() && rope && told
}

// Height reads "un roble de 80 pies de alto" and "una rama de un roble de 80
// pies": how high a tree is, told behind its name.
func Height(rd *reading.Reading, i int) bool {
	j := i - 1
	for rd.At(j).Marked(lexicon.MarkIs|lexicon.MarkTrailing) && !rd.At(j).Marked(lexicon.MarkAt) {
		j--
	}
	e := rd.At(j)
	switch {
	case !rd.Elems[i].Fig.Far(), rd.At(i+1).Plays(parser.Length) && rd.At(i+2).Fig == nil:
		return false // "una rama de un roble de 7 m de largo"
	case rd.At(i + 1).Marked(lexicon.MarkHigh):
		return e.Piece() || e.Marked(lexicon.MarkPlace)
	case !rd.At(i - 1).Marked(lexicon.MarkMade):
		return false
	}
	named := e.Term != nil && e.Term.Tree != nil && rd.At(j-1).Marked(lexicon.MarkArticle)
	return named && rd.At(j-2).Marked(lexicon.MarkRelation|lexicon.MarkIn) && Shaped(rd)
}

// Shaped says whether the message names a shape.
func Shaped(rd *reading.Reading) bool {
	return ShapedFrom(rd, 0, parser.Limb) || ShapedFrom(rd, 0, parser.Log)
}

// OfTree reads "a limb off an 80 ft red oak" and "80 ft red oak, limb 14 in": a
// long length that names a tree, where the limb is named apart. The words of
// the piece behind the number end at j.
func OfTree(rd *reading.Reading, i, j int) bool {
	fig := rd.Elems[i].Fig
	if !fig.Far() || rd.At(j-1).Term == nil || rd.At(j-1).Term.Tree == nil || rd.TermAt(j).Shape != "" {
		return false
	}
	switch before := rd.At(rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)); {
	case before.Marked(lexicon.MarkIs): // "a limb of an 80 ft red oak"
		return ShapedFrom(rd, 0, parser.Limb)
	case before.Marked(lexicon.MarkRelation | lexicon.MarkIn):
		return true
	}
	return rd.At(j).Pause > 0 && ShapedFrom(rd, j, parser.Limb)
}

// Gearly says whether the number can be a size or a rating of gear; a long
// length is rather the rope's.
func Gearly(f *reading.Figure) bool {
	return f.Dim == parser.DimMass || f.Dim == parser.DimForce || f.Unit != nil && f.Unit.Fine
}

// BehindPlace reads "the climber is at 40 ft", "drop zone: 30 ft". Where the
// place itself only says where the piece is ("over the roof 22 ft"), a long
// length without words of its own is doubtful all the same. A number that
// names the piece is its own, unless "is" or "at" leads to it.
func BehindPlace(rd *reading.Reading, i int) bool {
	fig, next := rd.Elems[i].Fig, rd.At(i+1)
	k := pastMetal(rd, i-1)
	place := rd.At(k)
	led := k < i-1 || place.Marked(lexicon.MarkRating) || place.Term != nil && EndsInAt(rd, k)
	named := next.Piece() || next.Fig != nil
	fine := fig.Unit != nil && fig.Unit.Fine
	switch {
	case place.Marked(lexicon.MarkGear|lexicon.MarkRating) && (Gearly(fig) || fig.Dim == parser.DimCount):
		return Gearly(fig) && (led || !named) || fig.Dim == parser.DimCount && fig.Low < 1
	case fig.Dim == parser.DimCount:
		return false
	case place.Marked(lexicon.MarkMoving):
		return fig.Far() && !rd.At(i+1).Plays(parser.Sideways) // "pull it 4 ft aside"
	case !place.Marked(lexicon.MarkPlace | lexicon.MarkStation):
		return false
	case rd.Cued(place, lexicon.CueOut) && next.LooksBack(parser.Sideways):
		return false // "hold it out 12 ft to the side"
	case !rd.At(rd.Past(k-1, -1, lexicon.MarkAdjective|lexicon.MarkArticle)).Marked(lexicon.MarkRelation | lexicon.MarkWhere):
		return true
	}
	high := Obstacle(place) != "" && next.LooksBack(parser.HitchHeight) // "over a fence 4.5 ft high"
	return !fine && (led || !named && (len(rd.TermAt(i+1).Roles) == 0 || high))
}

// BehindPart reads "bark 1 in thick": how thick a part of the piece is, which is
// not across it.
func BehindPart(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Fig.Short() && rd.At(PastIs(rd, i-1)).Marked(lexicon.MarkPart) && rd.At(i+1).Plays(parser.Diameter)
}

// PastIs goes back over what links a thing to its number: "is at", a colon.
func PastIs(rd *reading.Reading, i int) int {
	for {
		e := rd.At(i)
		colon := e.Pause > 0 && rd.Text[e.Start:e.End] == ":"
		if !colon && !e.Marked(lexicon.MarkIs|lexicon.MarkTrailing) && (e.Term == nil || e.Term.Note == "") {
			return i
		}
		i--
	}
}

// ShapedFrom says whether the message names the shape at i or behind it.
func ShapedFrom(rd *reading.Reading, i int, s parser.Shape) bool {
	for _, e := range rd.Elems[i:] {
		if e.Term != nil && e.Term.Shape == s {
			return true
		}
	}
	return false
}

// EndsInAt says whether the words of a role lead straight to their number:
// "hitched at", "lower from".
func EndsInAt(rd *reading.Reading, at int) bool { return rd.TermAt(at).Leads }
