package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How far apart the blocks of a tackle are is told of them, "blocks are 16 ft apart".
// What else is apart, two trees or two legs, is no room of a lift.

// apartWords is how far before the number the blocks may stand.
const apartWords = 6

// BlocksApart takes how far apart the blocks are.
func BlocksApart(rd *reading.Reading) {
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		j := rd.Past(i+1, +1, lexicon.MarkAdverb|lexicon.MarkArticle) // "a 6 m una de otra"
		if before := rd.Back(i - 1); !rd.Cued(rd.At(j), lexicon.CueApart) && rd.Cued(rd.At(before), lexicon.CueApart) {
			j = before // "poleas separadas 4 m"
		}
		starts := blocksStart(rd, i)
		if fig == nil || fig.Told != "" || !starts && (!rd.Cued(rd.At(j), lexicon.CueApart) || !blocksLead(rd, i)) {
			continue
		}
		LendLength(rd, i)
		if fig.Far() {
			fig.Told = parser.Apart
		} else if fig.Dim == parser.DimCount {
			fig.Sure = parser.Apart
		} else {
			continue
		}
		if !starts {
			rd.Elems[j].Term = &scan.Term{}
		}
	}
}

// blocksStart reads "los dos bloques empiezan a 4 m": several of a tackle, and how far
// apart they are to begin with.
func blocksStart(rd *reading.Reading, i int) bool {
	k := rd.Past(rd.Back(i-1), -1, lexicon.MarkAt)
	return rd.Cued(rd.At(k), lexicon.CueStarts) && rd.At(k).Pause == 0 && (rd.TermAt(k-1).Blocks || rd.Cued(rd.At(k-1), lexicon.CueBlocks)) && tackleTold(rd)
}

// blocksLead says whether the blocks are what stands before the number at i, in the same
// sentence; a word for them, "they are", serves where blocks are told of at all.
func blocksLead(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && i-k <= apartWords && rd.Elems[k].Pause < 4; k-- {
		e := rd.Elems[k]
		switch {
		case rd.TermAt(k).Blocks, rd.Cued(e, lexicon.CueBlocks), blockWord(rd, k):
			return true
		case e.Fig != nil && (rd.Cued(rd.At(k+1), lexicon.CueRise) || rd.Cued(rd.At(k+1), lexicon.CueLiftNoun)): // "a 3 m lift"
		case e.Fig.Far() && (rd.Cued(rd.At(k-1), lexicon.CueRaises) || rd.Cued(rd.At(k-1), lexicon.CueRises)): // "lifting 6 ft"
		case e.Fig != nil && e.Fig.Dim == parser.DimLength, e.Piece(), rd.Cued(e, lexicon.CueLines), e.Marked(lexicon.MarkPlace | lexicon.MarkObstacle | lexicon.MarkTwins):
			return false
		}
	}
	return tackleTold(rd) && !rd.AnyAt(func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueLines) })
}

// blockWord says whether the element at i names a block, or blocks.
func blockWord(rd *reading.Reading, i int) bool {
	return gear.Part(rd.Elems[i]) == lexicon.PartBlock || rd.TermAt(i).Block == parser.AnyBlock || BlockAt(rd, i)
}

// cuedPair says whether the element at i and the one behind it are the words of a cue:
// "comes out".
func cuedPair(rd *reading.Reading, i int, c scan.Cue) bool {
	return rd.In.Cued(rd.Word(rd.At(i))+" "+rd.Word(rd.At(i+1)), c) && rd.At(i).Pause == 0
}

// tackleTold says whether a message tells of a tackle: of its parts or of its blocks.
func tackleTold(rd *reading.Reading) bool {
	return rd.AnyAt(func(k int) bool {
		e := rd.Elems[k]
		return e.Fig != nil && e.Fig.Dim == parser.DimRatio || e.Plays(parser.Parts) || rd.TermAt(k).Blocks || rd.TermAt(k).Paired || rd.Cued(e, lexicon.CueBlocks)
	})
}

// LendLength gives a bare number the unit of the other heights of a message, where all
// of them have the same.
func LendLength(rd *reading.Reading, i int) {
	fig := rd.Elems[i].Fig
	if fig.Dim != parser.DimCount || fig.Unit != nil {
		return
	}
	var unit *scan.UnitWord
	for k := range rd.Elems {
		if k == i || !gear.Far(rd, k) {
			continue
		}
		if u := rd.Elems[k].Fig.Unit; unit != nil && u.Factor != unit.Factor {
			return
		} else {
			unit = u
		}
	}
	fig.Lent(unit)
}

// RopeHauled reads "how much rope do we end up pulling" as what a lift takes in, and not
// as how long a rope it takes.
func RopeHauled(rd *reading.Reading) {
	const words = 6 // between the two
	for i := range rd.Elems {
		if !rd.Cued(rd.Elems[i], lexicon.CueRopeOf) {
			continue
		}
		for j := i + 1; j <= i+words && j < len(rd.Elems) && rd.Elems[j].Pause == 0 && rd.Elems[j].Fig == nil && !rd.Elems[j].Piece(); j++ {
			if !rd.Cued(rd.Elems[j], lexicon.CueTakenIn) && !cuedPair(rd, j, lexicon.CueTakenIn) {
				continue
			}
			for k := i + 1; k <= j; k++ {
				rd.Elems[k].Term = &scan.Term{}
			}
			rd.Elems[i].Term = &scan.Term{Intent: parser.AskLift, Note: parser.TravelWanted}
			break
		}
	}
}

// TreesTall asks what the length of a whole tree is where a rope is asked for: "how much
// rope for a 22 m ash" tells no piece and no hitch.
func TreesTall(rd *reading.Reading) {
	roped := func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueRopeOf) }
	piece := func(i int) bool { return rd.TermAt(i).Shape != "" || rd.TermAt(i).Tree == nil && rd.Elems[i].Piece() }
	lowered := func(i int) bool {
		return rd.TermAt(i).Intent == parser.AskLower || rd.Elems[i].Plays(parser.HitchHeight)
	}
	if !rd.AnyAt(roped) || rd.AnyAt(piece) || rd.AnyAt(lowered) {
		return // "how much rope to lower a 20 ft oak from 40 ft" is of a piece
	}
	for i, e := range rd.Elems {
		of := rd.TermAt(rd.Past(i-1, -1, lexicon.MarkRelation|lexicon.MarkIs))
		tree := rd.TermAt(i+1).Tree != nil && rd.At(i+1).Pause == 0 || of.Tree != nil && e.Pause == 0
		if e.Fig == nil || e.Fig.Dim != parser.DimLength || e.Fig.Elsewhere || e.Fig.Unit == nil || e.Fig.Unit.Fine || !tree {
			continue
		}
		rd.Asks = append(rd.Asks, e.Fig.Ask(parser.Loose, rd.Text))
		e.Fig.Elsewhere = true
	}
}
