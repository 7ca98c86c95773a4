package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// How far a load hangs below its block is also told from the block, or from who
// cuts. Where a word could as well mean the height of the block above the
// ground, it is asked about by its name.

// hangsElse reads "im 10 ft off center" and "the block's 8 m above it", and asks
// about "40 ft to the block".
func hangsElse(rd *reading.Reading, i int) {
	switch {
	case ifAside(rd, i):
		rd.Elems[i].Fig.Told = parser.Sideways
		rd.Elems[i-1].Term, rd.Elems[i+1].Term = &scan.Term{}, &scan.Term{} // who cuts there is not what is struck
	case rd.At(i + 1).LooksBack(parser.StartAngle):
		rd.Elems[i].Fig.Told = parser.Sideways // "3 m de la vertical"
		rd.Elems[i+1].Term = &scan.Term{}
	case overLoad(rd, i) && TagsAlone(rd):
		rd.Elems[i].Fig.Told = parser.LineOut // a load that is pulled aside hung plumb before
		rd.Elems[i+1].Term = &scan.Term{}
	case aboveAlone(rd, i) && !TagsAlone(rd) && rd.Elems[i].Fig.High <= lowBlock:
		rd.Elems[i].Fig.Told = parser.BlockHeight // "el block está 8 ft arriba"
		rd.Elems[i+1].Term = &scan.Term{}
	case overLoad(rd, i), aboveAlone(rd, i), toBlock(rd, i):
		maybeLine(rd, i)
	case rd.TermAt(i+1).BelowBlock && rd.TermAt(rd.Back(i-1)).Tied:
		maybeLine(rd, i)
		rd.Elems[i+1].Term = &scan.Term{}
	}
}

// lowBlock is the most that "8 ft arriba" of a block is taken for above the piece, in
// metres: nothing swings from a block so low above the ground.
const lowBlock = 4.5

// ifAside says whether the number at i is how far to the side the piece starts,
// told of who cuts it: "if im 10 ft off center". Who only stands there says no if.
func ifAside(rd *reading.Reading, i int) bool {
	next := rd.At(i + 2)
	return rd.At(i+1).Plays(parser.Sideways) && rd.Cued(rd.At(i-1), lexicon.CueMe) && rd.Cued(rd.At(i-2), lexicon.CueIf) && !next.Marked(lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkPlace)
}

// overLoad says whether the number at i is how far the block is above the load,
// and not above the ground or a roof.
func overLoad(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.At(i+1), lexicon.CueAbove) || !gear.BlockBefore(rd, i) && !sizes.BlockAt(rd, i-1) || gear.AsksFor(rd, parser.AskRaise) {
		return false
	}
	k := rd.Past(i+2, +1, lexicon.MarkMade|lexicon.MarkArticle)
	load := rd.TermAt(k).Shape != "" || rd.TermAt(k).Unnamed || rd.Cued(rd.At(i+2), lexicon.CueLoad) && !rd.AnyAt(func(n int) bool { return n < i && gear.Obstacle(rd.Elems[n]) != "" })
	return load && !goesOn(rd, k+1)
}

// aboveAlone says whether it is told how far the block is above, and not above
// what.
func aboveAlone(rd *reading.Reading, i int) bool {
	next := rd.At(i + 2)
	return rd.Cued(rd.At(i+1), lexicon.CueAbove) && (gear.BlockBefore(rd, i) || sizes.BlockAt(rd, i-1)) && !gear.AsksFor(rd, parser.AskRaise) && (rd.EndsBreath(i+2) || next.Marked(lexicon.MarkPronoun))
}

// LiftBlock reads "block 7 m above, 3:1" where a piece is lifted and does not swing: how
// far its block is above it, which no pull depends on, is passed over.
func LiftBlock(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskLift) || Swung(rd) {
		return
	}
	for i := range rd.Elems {
		if gear.Far(rd, i) && rd.Elems[i].Fig.Told == "" && (aboveAlone(rd, i) || overLoad(rd, i)) {
			turning.Blank(rd, i, i+2)
		}
	}
}

// toBlock says whether the number at i is told as far as the block.
func toBlock(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkErect|lexicon.MarkAdverb)
	return rd.Cued(rd.At(j), lexicon.CueTowards) && gear.Part(rd.At(rd.Past(j+1, +1, lexicon.MarkArticle))) == lexicon.PartBlock && !goesOn(rd, i-1)
}

// maybeLine asks whether the number at i is the line that the load hangs on.
func maybeLine(rd *reading.Reading, i int) {
	fig := rd.Elems[i].Fig
	a := fig.Ask(parser.Loose, rd.Text)
	a.Fields, a.Choices = []parser.Field{parser.LineOut}, []parser.Choice{{Field: parser.LineOut}}
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere = true
}

// Untold are those of some fields that no number is told of.
func Untold(rd *reading.Reading, fields ...parser.Field) (out []parser.Field) {
	for _, f := range fields {
		told := func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Told == f || gear.Beside(rd, i, f) }
		if !rd.AnyAt(told) {
			out = append(out, f)
		}
	}
	return out
}

// TagsAlone says whether the message asks for a tag line and not for a swing.
func TagsAlone(rd *reading.Reading) bool {
	asks := func(in parser.Intent) bool { return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Intent == in }) }
	return asks(parser.AskBalance) && !asks(parser.AskSwing)
}

// Offsets reads "3 m offset" and "offset is 3 m" of a swing: how far to the side
// the piece starts. A limb that is stood up has a block that is offset.
func Offsets(rd *reading.Reading) {
	if !gear.Swings(rd) && !gear.AsksFor(rd, parser.AskSwing) || gear.AsksFor(rd, parser.AskRaise) {
		return
	}
	for i := range rd.Elems {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" {
			continue
		}
		behind, ahead := rd.Cued(rd.At(i+1), lexicon.CueOffset) && !gear.Far(rd, i+2), rd.Cued(rd.At(rd.Back(i-1)), lexicon.CueOffset) && !asideAt(rd, rd.Back(i-1)-1)
		if behind || ahead {
			rd.Elems[i].Fig.Told = parser.Sideways
		}
	}
}

// asideAt says whether the number at i is how far to the side the piece starts.
func asideAt(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && fig.Told == parser.Sideways
}

// BlockOffsets finds how far the top block is off the plumb of the hinge where
// it was not said which way: "block 20 ft above the cut and 3 ft out". It must
// be asked about, never taken for a length.
func BlockOffsets(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !e.Fig.Far() || e.Fig.Told != "" {
			continue
		}
		j := i - 1
		for rd.At(j).Marked(lexicon.MarkAnd|lexicon.MarkWhere|lexicon.MarkIs) || rd.At(j).Pause > 0 {
			j--
		}
		before, after := rd.At(j), rd.At(i+1)
		if end := inward(rd, i); end > 0 && before.Plays(parser.BlockHeight) {
			blockInward(rd, i, end)
			continue
		}
		led := rd.Cued(before, lexicon.CueOffset) && !asideAt(rd, j-1) || before.Plays(parser.BlockHeight) && rd.Cued(after, lexicon.CueAside)
		e.Fig.Sideless = led && !after.Plays(parser.BlockBehind) && !after.Plays(parser.BlockOut)
	}
}

// blockInward reads "block 2 m above the cut, 3 m in toward the trunk" of the number at i,
// whose words end at end: of a swing it is how far to the side the piece starts. In from
// where is asked where that is not told: "8 ft in".
func blockInward(rd *reading.Reading, i, end int) {
	swings := gear.Swings(rd) || gear.AsksFor(rd, parser.AskSwing)
	switch fig := rd.Elems[i].Fig; {
	case swings:
		fig.Told = parser.Sideways
	case end == i+2 && !rd.At(i+1).Plays(parser.BlockBehind):
		fig.Sideless = true
		return
	default:
		fig.Told = parser.BlockBehind
	}
	hush(rd, i+1, end)
}
