package pulls

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// How a rope is led over its blocks is told by what it leaves from and by how it
// lies: "30 degrees off the log side", "down to a redirect at the base and flat to
// the truck". Only what leaves no second reading is taken so.

// LedOver reads it.
func LedOver(rd *reading.Reading) {
	if !ropeOrBlock(rd) {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		switch fig := rd.Elems[i].Fig; {
		case fig == nil, fig.Dim != parser.DimAngle && !(fig.Dim == parser.DimCount && fig.Unit == nil && heights.Degrees(fig)), fig.Told != "":
		case offStraight(rd, i):
			turnsHere(rd, i, parser.Turn)
		case fromLoad(rd, i):
			turnsHere(rd, i, parser.BlockAngle)
		}
	}
	oneAtBase(rd)
	leavesLevel(rd)
	overTop(rd)
}

// oneAtBase takes "a redirect at the base" for the base block where that is named too.
func oneAtBase(rd *reading.Reading) {
	if !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Block == parser.BaseBlock }) {
		return
	}
	for i := range rd.Elems {
		if j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAt); rd.TermAt(i).Block == parser.RedirectBlock && rd.At(j).Plays(parser.ButtDiameter) {
			rd.Alter(i, func(t *scan.Term) { t.Block = parser.BaseBlock })
		}
	}
}

// ropeOrBlock says whether a rope or a block is spoken of, and no sling whose legs
// have their own angle.
func ropeOrBlock(rd *reading.Reading) bool {
	named := rd.AnyAt(func(i int) bool { return gear.Part(rd.Elems[i]) == lexicon.PartRope || rd.TermAt(i).Block != "" })
	return named && !gear.SlingNamed(rd)
}

// turnsHere gives the number at i its field and its degrees.
func turnsHere(rd *reading.Reading, i int, f parser.Field) {
	fig := rd.Elems[i].Fig
	fig.Dim, fig.Unit, fig.Told = parser.DimAngle, scan.Degree, f
	if f == parser.Turn {
		fig.At = heights.LastBlock(rd, i)
	}
}

// offStraight reads "20 degrees off straight" as how far the rope turns.
func offStraight(rd *reading.Reading, i int) bool {
	off, straight := rd.At(i+1), rd.At(rd.Past(i+2, +1, lexicon.MarkMade))
	if !off.Marked(lexicon.MarkRelation) || !rd.Cued(straight, lexicon.CueStraight) || !turning.Redirected(rd) {
		return false
	}
	rd.Elems[i+1].Term = &scan.Term{}
	return true
}

// fromLoad reads "30 degrees from the log side" and "a 30 grados de la pata de la
// carga" as the angle between the legs at the block: the one goes to the load.
func fromLoad(rd *reading.Reading, i int) bool {
	from := rd.At(i + 1)
	if rd.Cued(from, lexicon.CueOffTrunk) {
		return heights.RopeBeside(rd, i) // "comes back down 30 degrees off the trunk": both hang plumb
	}
	j := rd.Past(i+2, +1, lexicon.MarkArticle|lexicon.MarkMade)
	if rd.Cued(rd.At(j), lexicon.CueLeg) {
		j = rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkMade)
	}
	load := rd.At(j)
	if plumbOther(rd, i, load) {
		return true
	}
	leg := rd.Cued(rd.At(j+1), lexicon.CueLeg) || j > i+3 || rd.Cued(load, lexicon.CueLoaded)
	if !from.Marked(lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkWhere) || !rd.Cued(load, lexicon.CueLoad) && !rd.Cued(load, lexicon.CueLoaded) && !rd.Cued(load, lexicon.CuePiece) && shapeOnly(load) == "" || !leg {
		return false
	}
	for k := i + 1; k <= min(j+1, len(rd.Elems)-1); k++ {
		if t := rd.TermAt(k); k != j && (rd.Cued(rd.Elems[k], lexicon.CueLeg) || k == i+1) && t.Stop == "" {
			rd.Elems[k].Term = &scan.Term{}
		}
	}
	return true
}

// plumbOther reads "at 45 to the log on one side and straight down on the other": of
// 45 degrees it does not matter whether they are from plumb or from level.
func plumbOther(rd *reading.Reading, i int, load reading.Element) bool {
	const either = 45
	fig := rd.Elems[i].Fig
	if fig.Low != either || fig.High != either || !rd.Cued(rd.At(i+1), lexicon.CueTowards) || !rd.Cued(load, lexicon.CueLoad) && shapeOnly(load) == "" {
		return false
	}
	plumb := func(k int) bool {
		return rd.Cued(rd.Elems[k], lexicon.CueStraight) && (rd.Cued(rd.At(k+1), lexicon.CueGoesDown) || rd.Cued(rd.At(k+1), lexicon.CueDown))
	}
	if !rd.AnyAt(plumb) {
		return false
	}
	for k := range rd.Elems {
		if rd.Cued(rd.Elems[k], lexicon.CueOtherSide) {
			rd.Elems[k].Term = &scan.Term{}
		}
	}
	return true
}

// shapeOnly is the shape that an element names.
func shapeOnly(e reading.Element) parser.Shape {
	if e.Term == nil {
		return ""
	}
	return e.Term.Shape
}

// leavesLevel reads "down to a redirect at the base, then flat over to the drum" as a
// right angle there: the rope comes down plumb.
func leavesLevel(rd *reading.Reading) {
	angle := func(i int) bool { fig := rd.Elems[i].Fig; return fig != nil && fig.Dim == parser.DimAngle }
	b := slices.IndexFunc(rd.Elems, func(e reading.Element) bool { return e.Term != nil && parser.Redirecting(e.Term.Block) })
	if b < 0 || rd.AnyAt(angle) || !comesDown(rd, b) {
		return
	}
	for i := b + 1; i < len(rd.Elems) && rd.Elems[i].Pause < 4; i++ {
		e := rd.Elems[i]
		if !rd.Cued(e, lexicon.CueLevel) || !thither(rd, i+1) {
			continue
		}
		f := &reading.Figure{Low: 90, High: 90, Unit: scan.Degree, Dim: parser.DimAngle, Told: parser.Turn, At: rd.TermAt(b).Block, Start: e.Start, End: e.End}
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Fig: f}
		return
	}
}

// comesDown says whether the redirect at b stands at the foot of the tree, or the rope
// comes down to it.
func comesDown(rd *reading.Reading, b int) bool {
	if rd.TermAt(b).Block == parser.BaseBlock {
		return true
	}
	for i := max(0, b-4); i <= b+3; i++ {
		if e := rd.At(i); e.Plays(parser.ButtDiameter) && i > b || rd.Cued(e, lexicon.CueDown) || rd.Cued(e, lexicon.CueGoesDown) {
			return true
		}
	}
	return false
}

// thither says whether the words at i lead on to something.
func thither(rd *reading.Reading, i int) bool {
	e := rd.At(rd.Past(i, +1, lexicon.MarkAdverb|lexicon.MarkRelation))
	return rd.At(i).Marked(lexicon.MarkRelation|lexicon.MarkAt) || rd.Cued(rd.At(i), lexicon.CueTowards) || rd.Cued(e, lexicon.CueTowards) || e.Marked(lexicon.MarkAt)
}

// overTop reads a half turn at the top block where the load on each block is asked
// for, and the rope goes up over it and down to the one whose turn is told.
func overTop(rd *reading.Reading) {
	if !rd.AnyAt(func(i int) bool {
		return rd.Cued(rd.Elems[i], lexicon.CueEach) || rd.Cued(rd.Elems[i], lexicon.CueEachOne)
	}) {
		return
	}
	turned := slices.IndexFunc(rd.Elems, func(e reading.Element) bool {
		return e.Fig != nil && e.Fig.Told == parser.Turn && parser.Redirecting(e.Fig.At)
	})
	atTop := func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && (fig.Told == parser.Turn && !parser.Redirecting(fig.At) || fig.Told == parser.BlockAngle)
	}
	top := slices.IndexFunc(rd.Elems, func(e reading.Element) bool {
		return e.Term != nil && (e.Term.Block == parser.TopBlock || e.Term.Block == parser.AnyBlock)
	})
	if turned < 0 || top < 0 || top > turned || rd.AnyAt(atTop) {
		return
	}
	e := rd.Elems[top]
	f := &reading.Figure{Low: 180, High: 180, Unit: scan.Degree, Dim: parser.DimAngle, Told: parser.Turn, At: parser.TopBlock, Start: e.Start, End: e.End}
	rd.Elems = slices.Insert(rd.Elems, top+1, reading.Element{Start: e.End, End: e.End, Fig: f})
}
