package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Where a load swings or is pulled aside, each of its numbers is told by one small
// word: how far "out" the piece is, how far the block is "above" it, how far "past"
// a wall stands. A number without a unit is told by it as well as one with.

// SwingPlace is what such words make of the number at i, "" for nothing.
func SwingPlace(rd *reading.Reading, i int) parser.Field {
	if !Swung(rd) || rd.Has(lexicon.MarkTwins|lexicon.MarkBridle|lexicon.MarkSide) || gear.AsksFor(rd, parser.AskRaise) {
		return ""
	}
	switch fig := rd.Elems[i].Fig; {
	case fig.Dim != parser.DimCount && !fig.Far() || fig.Pair || fig.Falling || fig.Told != "":
		return ""
	case rd.At(i + 1).Plays(parser.Sideways), fromPlumb(rd, i):
		return parser.Sideways
	case blockHigher(rd, i), underBlock(rd, i):
		return blockOverLoad(rd)
	case tiedUnder(rd, i) && startsFurther(rd, i):
		return parser.BlockHeight
	case ropeHigher(rd, i), hungFrom(rd, i), tiedUnder(rd, i):
		return parser.LineOut
	case startsOut(rd, i), pulledOver(rd, i), startsPast(rd, i), outLevel(rd, i), towardsTeller(rd, i), toOneSide(rd, i):
		return parser.Sideways
	case sideBefore(rd, i), besideBlock(rd, i):
		return parser.Sideways
	case overButt(rd, i) > 0 && blockSubject(rd, i):
		return parser.BlockHeight
	}
	return ""
}

// besideBlock reads "the limb lets go 15 ft right of the block", and nothing that a swing
// may strike stands there.
func besideBlock(rd *reading.Reading, i int) bool {
	block := rd.Past(i+2, +1, lexicon.MarkArticle|lexicon.MarkMade|lexicon.MarkRelation)
	aside := rd.At(i+1).Marked(lexicon.MarkAside) && block > i+2 && gear.Part(rd.At(block)) == lexicon.PartBlock
	return aside && breathEnds(rd, block+1) && !struckBefore(rd, i)
}

// WallPlace is what a bare number is that is told of what a swing may strike: "shed
// 12 past", "cerca a 11". How far and how high it is are measured alike.
func WallPlace(rd *reading.Reading, i int) parser.Field {
	next := rd.At(rd.Past(i+1, +1, lexicon.MarkArticle))
	if !Swung(rd) || gear.Obstacle(rd.At(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAt))) == "" || !next.Marked(lexicon.MarkOutward|lexicon.MarkUpward) && !rd.EndsBreath(i+1) {
		return ""
	}
	if next.Marked(lexicon.MarkUpward) {
		return parser.ObstacleHeight
	}
	return parser.ObstacleOut
}

// fromPlumb reads "está a 2,5 de la vertical": so few degrees are told as an angle.
func fromPlumb(rd *reading.Reading, i int) bool {
	const most = 4
	fig := rd.Elems[i].Fig
	return fig.Unit == nil && fig.High <= most && (rd.At(i+1).LooksBack(parser.StartAngle) || rd.TermAt(i+1).OffPlumb)
}

// underBlock reads "11 ft out from the block and 25 ft under it".
func underBlock(rd *reading.Reading, i int) bool {
	end := i + 2
	if rd.Cued(rd.At(end), lexicon.CueLoad) {
		end++
	}
	below := rd.Cued(rd.At(i+1), lexicon.CueBelow) && rd.EndsBreath(end) || rd.TermAt(i+1).BelowBlock && rd.EndsBreath(i+2)
	if !below || !rd.At(i-1).Marked(lexicon.MarkAnd) {
		return false
	}
	for j := i - 2; j >= 0 && rd.Elems[j].Pause == 0 && gear.Obstacle(rd.Elems[j]) == ""; j-- {
		if rd.At(j).Fig != nil && rd.At(j+1).Plays(parser.Sideways) || rd.At(j).Plays(parser.Sideways) {
			return true
		}
	}
	return false
}

// hungFrom reads "hangs 10 m from the block".
func hungFrom(rd *reading.Reading, i int) bool {
	j := rd.Past(i+2, +1, lexicon.MarkArticle)
	return rd.TermAt(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAt)).Hung && rd.At(i+1).Marked(lexicon.MarkRelation|lexicon.MarkMade) && gear.Part(rd.At(j)) == lexicon.PartBlock && breathEnds(rd, j+1)
}

// tiedUnder reads "tied 30 ft under the block": so much line is out.
func tiedUnder(rd *reading.Reading, i int) bool {
	return rd.TermAt(i+1).BelowBlock && rd.TermAt(rd.Back(i-1)).Tied && breathEnds(rd, i+2)
}

// startsFurther says whether the piece is told to be as far to the side as the number at
// i, or further: "12 ft out from under it, tied 5 ft below the hitch". No line is so short.
func startsFurther(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool {
		if k == i || !gear.Far(rd, k) || rd.Elems[k].Fig.High < rd.Elems[i].Fig.Low {
			return false
		}
		return rd.Elems[k].Fig.Told == parser.Sideways || rd.At(k+1).Plays(parser.Sideways) || outSideways(rd, k) > 0
	})
}

// blockOverLoad is what it makes of a swing how far the block is above the load: a
// load that a tag line pulls aside hung plumb before, one that swings did not.
func blockOverLoad(rd *reading.Reading) parser.Field {
	if TagsAlone(rd) {
		return parser.LineOut
	}
	return parser.BlockHeight
}

// sideBefore reads "off plumb 2 m", where the words have no number before them.
func sideBefore(rd *reading.Reading, i int) bool {
	j := rd.Back(i - 1)
	return rd.At(j).Plays(parser.Sideways) && rd.At(j-1).Fig == nil && breathEnds(rd, i+1)
}

// blockHigher reads "block 18 above" and "the block is 9 m above it": above the
// load, where nothing else is named that it could be above.
func blockHigher(rd *reading.Reading, i int) bool {
	over := rd.Past(i+1, +1, lexicon.MarkAdverb)
	if besideOffset(rd, i) {
		return true
	}
	if upAbove(rd, i) {
		over++
	}
	k := rd.Past(over+1, +1, lexicon.MarkMade|lexicon.MarkArticle)
	piece := rd.TermAt(k).Shape != "" || rd.TermAt(k).Unnamed
	higher := rd.Cued(rd.At(over), lexicon.CueHigher) || rd.Cued(rd.At(over), lexicon.CueOverHinge) && (piece || rd.Cued(rd.At(over+1), lexicon.CueLoad))
	if !higher || !gear.BlockBefore(rd, i) && !sizes.BlockAt(rd, rd.Back(i-1)) && !overToo(rd, i) {
		return false
	}
	if rd.Cued(rd.At(over+1), lexicon.CueLoad) {
		return !rd.AnyAt(func(n int) bool { return overThing(rd, n, i) }) && !goesOn(rd, over+2)
	}
	if piece {
		return !goesOn(rd, k+1)
	}
	return breathEnds(rd, over+1)
}

// upAbove reads "20 ft up above it": how high that is hangs on what "it" is, and it is no
// height above the ground.
func upAbove(rd *reading.Reading, i int) bool {
	return rd.At(i+1).Marked(lexicon.MarkUpward) && overWord(rd, i+2) && rd.Cued(rd.At(i+3), lexicon.CueLoad)
}

// overThing says whether the number at i may be told from the thing at n: nothing of the
// piece, nor where it is tied, is told between them.
func overThing(rd *reading.Reading, n, i int) bool {
	if n >= i || gear.Obstacle(rd.Elems[n]) == "" {
		return false
	}
	for k := n + 1; k < i; k++ {
		if rd.TermAt(k).Shape == parser.Limb || rd.TermAt(k).Unnamed || tiePoint(rd, k) || asideAt(rd, k) {
			return false
		}
	}
	return true
}

// overToo says whether the number at i goes on about a rigging point that is told to be so
// far to the side of the piece: "10 ft over from the limb and 15 above it".
func overToo(rd *reading.Reading, i int) bool {
	if !rd.At(i - 1).Marked(lexicon.MarkAnd) {
		return false
	}
	for j := i - 2; j >= 0 && rd.At(j).Pause == 0; j-- {
		if asideAt(rd, j) {
			return blockSubject(rd, j)
		}
	}
	return false
}

// besideOffset reads "la polea está 3 m corrida y 6 arriba": both are told from the
// piece.
func besideOffset(rd *reading.Reading, i int) bool {
	j := i - 2
	for rd.At(j).Plays(parser.Sideways) || rd.Cued(rd.At(j), lexicon.CueOut) {
		j--
	}
	fig := rd.At(j).Fig
	aside := fig != nil && (fig.Told == parser.Sideways || rd.At(j+1).Plays(parser.Sideways))
	return rd.Cued(rd.At(i+1), lexicon.CueAbove) && rd.At(i-1).Marked(lexicon.MarkAnd) && aside && gear.BlockBefore(rd, j) && rd.EndsBreath(i+2)
}

// ropeHigher reads "rope 9 m above".
func ropeHigher(rd *reading.Reading, i int) bool {
	rope := rd.At(rd.Back(i - 1))
	return gear.Part(rope) == lexicon.PartRope && rd.Cued(rd.At(i+1), lexicon.CueHigher) && breathEnds(rd, i+2)
}

// startsOut reads "7 out" and "the limb is 9 ft out": the piece is so far to the
// side, unless something else is named that is, or that it is tied so far along.
func startsOut(rd *reading.Reading, i int) bool {
	end := i + 2
	if k := rd.Past(end, +1, lexicon.MarkArticle); gear.Part(rd.At(k)) == lexicon.PartBlock {
		end = k + 1 // "8 off the block"
	}
	if !rd.Cued(rd.At(i+1), lexicon.CueOut) || !breathEnds(rd, end) && !onTagLine(rd, end) || end == i+2 && inOtherTree(rd) {
		return false
	}
	if rd.In.Leads[rd.Word(rd.At(i-1))] && !rd.At(i-1).Marked(lexicon.MarkAt) {
		return true // "from 2 m out"
	}
	for j := rd.Back(i - 1); ; j-- {
		switch e := rd.At(j); {
		case j < 0 || e.Pause > 0 || e.Marked(lexicon.MarkAnd):
			return !sizes.Surely(rd, i, parser.Tie)
		case e.Piece() || rd.TermAt(j).Unnamed || gear.Part(e) == lexicon.PartBlock || rd.Cued(e, lexicon.CueLoad):
			return true
		case gear.Heavy(rd, j): // "hold 500 lb 5 ft out"
		case e.Marked(lexicon.MarkTug) && tugged(rd): // "what if i tag it, how hard to hold it 6 ft out"
			return true
		case e.Fig != nil || rd.TermAt(j).Tied || gear.Obstacle(e) != "" || gear.Part(e) != "" || e.Marked(lexicon.MarkPlace|lexicon.MarkStation|lexicon.MarkPart|lexicon.MarkGear) || e.Plays(parser.People) || rd.TermAt(j).Someone:
			return false
		}
	}
}

// onTagLine reads "6 ft out on the tag line".
func onTagLine(rd *reading.Reading, i int) bool {
	k := rd.Past(i, +1, lexicon.MarkIn|lexicon.MarkWhere|lexicon.MarkArticle)
	return k > i && rd.At(k).Marked(lexicon.MarkTug) && rd.TermAt(k).Intent == parser.AskBalance
}

// pulledOver reads "need it out 3 m" and "to move 400 lb over 6 ft", where a tag
// line is spoken of, which pulls nothing but sideways.
func pulledOver(rd *reading.Reading, i int) bool {
	at := rd.Back(i - 1)
	if !tugged(rd) || !rd.Cued(rd.At(at), lexicon.CueOut) || !breathEnds(rd, i+1) && !aimedAt(rd, i+1) {
		return false
	}
	j := at - 1
	for rd.At(j).Marked(lexicon.MarkPronoun|lexicon.MarkArticle) || rd.At(j).Piece() || rd.TermAt(j).Unnamed || gear.Heavy(rd, j) {
		j--
	}
	return rd.At(j).Marked(lexicon.MarkTug|lexicon.MarkMoving) || rd.Cued(rd.At(j), lexicon.CueShifts)
}

// aimedAt reads "to clear the fence" behind how far a load is to go: what it is to clear,
// and no question.
func aimedAt(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.At(i), lexicon.CueTowards) || rd.TermAt(i+1).Intent != parser.AskSwing {
		return false
	}
	return gear.Obstacle(rd.At(rd.Past(i+2, +1, lexicon.MarkArticle|lexicon.MarkAdjective))) != ""
}

// tugged says whether a tag line is spoken of, or something pulled aside.
func tugged(rd *reading.Reading) bool {
	return rd.Has(lexicon.MarkTug) || rd.AnyAt(func(i int) bool { return rd.TermAt(i).Intent == parser.AskBalance })
}

// breathEnds says whether what stands at i tells no more of the number before it:
// "9 ft out with 22 ft of rope".
func breathEnds(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	with := e.Marked(lexicon.MarkWhere) && (rd.At(i+1).Fig != nil || gear.Part(rd.At(i+1)) == lexicon.PartRope)
	return rd.EndsBreath(i) || with || rd.Cued(e, lexicon.CueSoThat) || rd.TermAt(i).Purpose || rd.TermAt(i).Intent == parser.AskSwing || rd.TermAt(i).Intent == parser.AskBalance
}

// Swinging settles such numbers, and passes over the words that told them.
func Swinging(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig == nil || Swung(rd) && blockFrom(rd, i) {
			continue
		}
		f := SwingPlace(rd, i)
		if f == "" && Swung(rd) && upAbove(rd, i) && e.Fig.Far() && e.Fig.Told == "" {
			e.Fig.Elsewhere = true // asked about
		}
		if (f == parser.LineOut || f == parser.BlockHeight) && tiedUnder(rd, i) {
			rd.Elems[i+1].Term = &scan.Term{} // it told what the number is
		}
		switch {
		case e.Fig.Dim == parser.DimAngle && Slants(rd, i):
			continue
		case f == "":
			continue
		case e.Fig.Dim == parser.DimCount && f == parser.Sideways && maybeSlants(rd, i):
			continue
		case e.Fig.Dim == parser.DimCount:
			e.Fig.Sure = f // its unit is asked for
			continue
		case f == parser.Sideways && rd.At(i+1).Plays(parser.Sideways):
			continue // the words of a role tell it themselves
		}
		e.Fig.Told = f
		if aimedAt(rd, i+1) && tugged(rd) {
			rd.Elems[i+2].Term = &scan.Term{}
		}
		for _, k := range []int{rd.Back(i - 1), i + 1} {
			if e := rd.At(k); rd.Cued(e, lexicon.CueOut) || rd.Cued(e, lexicon.CueHigher) {
				rd.Elems[k].Term = &scan.Term{}
			}
		}
	}
}
