package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BlockOverLoad takes how far a block is above the piece that is lifted so far for how far
// the two blocks are apart: "block is only 4 ft over the limb, do they two block when we pick
// it up 5 ft".
func BlockOverLoad(rd *reading.Reading) {
	meets := rd.AnyAt(func(i int) bool {
		n := rd.TermAt(i).Note
		return n == parser.BlocksMeet || n == parser.TravelWanted
	})
	told := func(f parser.Field) bool {
		return rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Told == f })
	}
	if !meets || !told(parser.Rise) || told(parser.Apart) {
		return
	}
	for i := range rd.Elems {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" {
			continue
		}
		if block, ok := overLoad(rd, i); ok {
			rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Elsewhere = parser.Apart, false
			rd.Alter(block, func(t *scan.Term) { t.Roles = nil })
			return
		}
		if end := underTop(rd, i); end > 0 {
			rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Elsewhere = parser.Apart, false
			for k := i + 1; k < end; k++ {
				rd.Elems[k].Term = &scan.Term{}
			}
			return
		}
	}
}

// overLoad says whether the number at i is how far the block before it is above the load, or
// above the block on that: "block up top is 8 ft over the one on the limb".
func overLoad(rd *reading.Reading, i int) (block int, ok bool) {
	if !rd.Cued(rd.At(i+1), lexicon.CueOverHinge) && !rd.Cued(rd.At(i+1), lexicon.CueAbove) {
		return 0, false
	}
	of, block := rd.Past(i+2, +1, lexicon.MarkArticle), rd.Past(rd.Back(i-1), -1, lexicon.MarkAdverb)
	if rd.At(of).Marked(lexicon.MarkRelation) && rd.TermAt(of).Shape == "" {
		of = rd.Past(of+1, +1, lexicon.MarkArticle) // "arriba de la"
	}
	load := rd.TermAt(of).Shape != "" || rd.TermAt(of).Unnamed || rd.Cued(rd.At(of), lexicon.CuePiece) || rd.Cued(rd.At(of), lexicon.CueLoad) || rd.At(of).Plays(parser.Tie)
	lower := rd.Cued(rd.At(of), lexicon.CueOneLike) || gear.Part(rd.At(of)) == lexicon.PartBlock || rd.Cued(rd.At(of), lexicon.CueBlockOnLoad)
	top := gear.Part(rd.At(block)) == lexicon.PartBlock || BlockAt(rd, block) || rd.Cued(rd.At(block), lexicon.CueTopBlock)
	return block, (load || lower) && top
}

// underTop is the end of "below the top one" and "below the block" behind the number at i,
// which the load is told by, 0 where that does not stand there.
func underTop(rd *reading.Reading, i int) int {
	subject := rd.Back(i - 1)
	load := rd.TermAt(subject).Shape != "" || rd.TermAt(subject).Unnamed || rd.Cued(rd.At(subject), lexicon.CueLoad)
	switch {
	case !load:
		return 0
	case rd.TermAt(i+1).BelowBlock && rd.Cued(rd.At(i+2), lexicon.CueTopBlock):
		return i + 3
	case rd.TermAt(i + 1).BelowBlock:
		return i + 2
	case !rd.Cued(rd.At(i+1), lexicon.CueBelow):
		return 0
	}
	of := rd.Past(i+2, +1, lexicon.MarkArticle)
	if end := rd.SaidTo(lexicon.CueTopBlock, rd.At(of).Start); end >= 0 {
		for of < len(rd.Elems) && rd.Elems[of].Start < end {
			of++
		}
		return of
	}
	named := rd.AnyAt(func(k int) bool { return k < i && (gear.Part(rd.Elems[k]) == lexicon.PartBlock || BlockAt(rd, k)) })
	if gear.Part(rd.At(of)) == lexicon.PartBlock || named && rd.Cued(rd.At(of), lexicon.CueLoad) {
		return of + 1
	}
	return 0
}
