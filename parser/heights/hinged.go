package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What is told of a limb that is stood up is seen from its hinge, but crews also
// tell it from the ground, as a part of the limb, or of the tackle itself.

// hinged claims the heights of the hinge and of the block, and how long the
// tackle is with its blocks together.
func hinged(rd *reading.Reading) {
	for i := range rd.Elems {
		if gear.Far(rd, i) || rd.Elems[i].Fig.Short() {
			closedLength(rd, i)
		}
	}
	loaded := rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Told == parser.LoadHeight })
	if loaded || rd.AnyAt(func(i int) bool { return gear.Beside(rd, i, parser.BlockHeight) }) {
		return
	}
	hinge, block := -1, -1
	for i, e := range rd.Elems {
		switch {
		case !gear.Far(rd, i) || e.Fig.Pair || e.Fig.Elsewhere && e.Fig.Claimed == "":
		case hingeAt(rd, i):
			hinge = i
		case hoistedAt(rd, i):
			block = i
		}
	}
	if hinge >= 0 && block >= 0 {
		aboveHinge(rd, hinge, block)
		return
	}
	blockUnseen(rd)
}

// ClosedTackle claims how long the tackle of a lift is with its blocks together: "blocks
// take up 3 ft". Of a limb that is stood up, see Raised.
func ClosedTackle(rd *reading.Reading) {
	if gear.AsksFor(rd, parser.AskRaise) || gear.AsksFor(rd, parser.AskLower) || gear.AsksFor(rd, parser.AskDrop) || gear.AsksFor(rd, parser.AskSwing) {
		return
	}
	for i := range rd.Elems {
		if fig := rd.Elems[i].Fig; (gear.Far(rd, i) || fig.Short()) && fig.Told == "" && fig.Claimed == "" {
			closedLength(rd, i)
			eachBlock(rd, i)
		}
	}
}

// blockUnseen asks what a block's height is seen from where the limb's tie is told
// beside it: "block up at 2 m, tied at 2.5 m" may tell of the hinge or of the ground.
func blockUnseen(rd *reading.Reading) {
	block, tied := -1, false
	for i := range rd.Elems {
		e := rd.At(rd.Back(i - 1))
		switch {
		case !gear.Far(rd, i) || !e.Plays(parser.HitchHeight) || gear.Part(e) == lexicon.PartRope || rd.Elems[i].Fig.Claimed != "":
		case e.Term.Block != "" || gear.BlockBefore(rd, i):
			block = i
		default:
			tied = true
		}
	}
	if block < 0 || !tied || !gear.AsksFor(rd, parser.AskRaise) {
		return
	}
	fig := rd.Elems[block].Fig
	a := fig.Ask(parser.TwoReadings, rd.Text)
	a.Fields = []parser.Field{parser.BlockHeight, parser.HitchHeight}
	a.Choices = []parser.Choice{{Field: parser.BlockHeight}, {Field: parser.HitchHeight}}
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere = true
}

// hingeAt says whether the number at i is how high the hinge is: "hinge at 12 m",
// "hinge is 30 ft up".
func hingeAt(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(gear.PastIs(rd, i-1)), lexicon.CueHinge) && !rd.At(i+1).Marked(lexicon.MarkPlace|lexicon.MarkRelation|lexicon.MarkMade)
}

// hoistedAt says whether the number at i is how high the top block is.
func hoistedAt(rd *reading.Reading, i int) bool {
	e := rd.At(rd.Back(i - 1))
	return e.Plays(parser.HitchHeight) && gear.Part(e) != lexicon.PartRope && !rd.At(i+1).Marked(lexicon.MarkPlace|lexicon.MarkRelation|lexicon.MarkMade)
}

// aboveHinge makes of both heights how far the block is above the hinge.
func aboveHinge(rd *reading.Reading, hinge, block int) {
	h, b := rd.Elems[hinge].Fig, rd.Elems[block].Fig
	if b.Low <= h.High {
		return
	}
	h.Low, h.High = b.Low-h.High, b.High-h.Low
	places.Claim(rd, hinge, parser.BlockHeight)
	places.Claim(rd, block, parser.HitchHeight)
}

// closedLength claims "the blocks take up 3 ft", "4 ft long with the blocks together"
// and "blocks closed are 3 ft": the room that the tackle itself needs.
func closedLength(rd *reading.Reading, i int) {
	j := i + 1
	for !rd.Cued(rd.At(j), lexicon.CueClosed) && besideClosed(rd, j) {
		j++
	}
	before := rd.Back(i - 1)
	takes, closed := takesUp(rd, before, i), rd.Cued(rd.At(j), lexicon.CueClosed)
	if rd.TermAt(before).Intent == parser.AskBlockLoad && gear.AsksFor(rd, parser.AskRaise) {
		takes = true // "the blocks take 3 ft": no load is a length
		rd.Elems[before].Term = &scan.Term{Part: lexicon.PartBlock}
	}
	first := closedBefore(rd, i-1)
	if !takes && !closed && first < 0 || !ofTackle(rd, i-1) {
		return
	}
	places.Claim(rd, i, parser.Closed)
	if !closed {
		j = rd.Past(i+1, +1, lexicon.MarkMade)
	}
	if places.OnlyPlays(rd.At(j), parser.Length) || closed {
		saysNothingFrom(rd, i+1, j+1)
	}
	if first >= 0 {
		saysNothingFrom(rd, first, i)
	}
}

// takesUp says whether a verb of the tackle leads to the number at i.
func takesUp(rd *reading.Reading, from, i int) bool {
	for k := max(from, 0); k < i; k++ {
		if rd.Cued(rd.Elems[k], lexicon.CueTakesUp) {
			return true
		}
	}
	return false
}

// saysNothingFrom takes what the words between two places say.
func saysNothingFrom(rd *reading.Reading, from, to int) {
	for k := from; k < to; k++ {
		rd.Elems[k].Term = &scan.Term{}
	}
}

// closedBefore is where the tackle is said to have its blocks together before the
// number that i leads to, "los bloques juntos miden", or -1.
func closedBefore(rd *reading.Reading, i int) int {
	for i >= 0 && !rd.Cued(rd.At(i), lexicon.CueClosed) && (rd.Cued(rd.At(i), lexicon.CueMeasures) || rd.Cued(rd.At(i), lexicon.CueTakesUp) || besideClosed(rd, i)) {
		i--
	}
	if i >= 0 && rd.Cued(rd.At(i), lexicon.CueClosed) {
		return i
	}
	return -1
}

// besideClosed says whether the element at i may stand between a number and such
// words.
func besideClosed(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Polite() && e.Pause == 0 || e.Marked(lexicon.MarkPronoun|lexicon.MarkAdverb|lexicon.MarkIs|lexicon.MarkWhere) || places.OnlyPlays(e, parser.Length)
}

// ofTackle says whether what stands before a number, in the same breath, is the
// tackle or its blocks.
func ofTackle(rd *reading.Reading, i int) bool {
	for ; i >= 0 && rd.Elems[i].Pause == 0 && !rd.Elems[i].Piece(); i-- {
		e := rd.Elems[i]
		if rd.TermAt(i).Blocks || gear.Part(e) == lexicon.PartBlock || BlocksAt(rd, i) || e.Term != nil && e.Term.Intent == parser.AskLift || e.Fig != nil && e.Fig.Dim == parser.DimRatio {
			return true
		}
	}
	return false
}

// overHinge says whether the words behind the number at i put the block above
// the place that the limb turns about: "14 ft above the union".
func overHinge(rd *reading.Reading, i int) bool {
	j := i + 1
	for rd.At(j).Marked(lexicon.MarkErect | lexicon.MarkAdverb | lexicon.MarkUpward) {
		j++
	}
	k := rd.Past(j+1, +1, lexicon.MarkArticle)
	if !rd.Cued(rd.At(j), lexicon.CueOverHinge) || !rd.Cued(rd.At(k), lexicon.CueHinge) || !gear.BlockBefore(rd, i) {
		return false
	}
	rd.Alter(k, func(t *scan.Term) { t.Roles = nil })
	return true
}

// BlocksAt says whether the element at i is the blocks of a tackle.
func BlocksAt(rd *reading.Reading, i int) bool { return rd.Cued(rd.At(i), lexicon.CueBlocks) }
