package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// Of a lift it is told how high its load is tied, "limb tied at 34 ft, block at 40", and
// where it is cut. The one is what room the tackle has below its top block, the other
// neither a size nor a hitch.

// LoadHeights takes both, and how far a load is tied below its block.
func LoadHeights(rd *reading.Reading) {
	if !lifts(rd) || otherMotion(rd) {
		return
	}
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		bare := fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low == fig.High
		if fig == nil || !fig.Far() && !bare || fig.Pair || fig.Told != "" || fig.Sure != "" {
			continue
		}
		switch {
		case tiedBelowBlock(rd, i), blockUpFrom(rd, i):
			tells(rd, i, parser.Apart)
			hush(rd, i+1, min(i+2, len(rd.Elems)))
		case cutHeight(rd, i):
			tells(rd, i, parser.CutHeight)
		case loadAt(rd, i):
			tells(rd, i, parser.LoadHeight)
		}
	}
}

// otherMotion says whether it is asked for what is no lift: the load swings, drops or goes
// down. "Before it clears the gutter" asks for none.
func otherMotion(rd *reading.Reading) bool {
	for _, in := range []parser.Intent{parser.AskSwing, parser.AskLower, parser.AskDrop} {
		if gear.AsksFor(rd, in) {
			return true
		}
	}
	return rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		tagged := t.Intent == parser.AskBalance && !t.Besides && t.Note != parser.TieWanted
		return tagged || rd.Elems[i].Plays(parser.Sideways)
	})
}

// lifts says whether a message, or its talk, is about a straight lift on a tackle.
func lifts(rd *reading.Reading) bool {
	stands := rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent == parser.AskRaise && t.Note != parser.BlocksMeet && !rd.Elems[i].Marked(lexicon.MarkHoists)
	})
	if stands {
		return false
	}
	told := rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Told == parser.Rise })
	return turning.Lifting(rd) || rd.LiftsOn() || told
}

// tells gives the number at i its field, and the unit of the other heights where it has none.
func tells(rd *reading.Reading, i int, f parser.Field) {
	sizes.LendLength(rd, i)
	fig := rd.Elems[i].Fig
	if fig.Far() {
		fig.Told = f
		return
	}
	fig.Sure = f // its unit is asked for
}

// loadAt reads "limb tied at 34 ft", "the limb is at 9" and "moving block at 30 ft", where
// the top block is told beside it, or was before.
func loadAt(rd *reading.Reading, i int) bool {
	j, tied := i-1, false
	for rd.At(j).Marked(lexicon.MarkAt|lexicon.MarkIs) || rd.TermAt(j).Note == "about" || rd.TermAt(j).Hung || tiedHere(rd, j) {
		tied = tied || tiedHere(rd, j)
		j--
	}
	at := rd.At(i-1).Marked(lexicon.MarkAt) || tied
	load := rd.TermAt(j).Shape != "" || rd.TermAt(j).Unnamed || rd.Cued(rd.At(j), lexicon.CueLoad) || rd.TermAt(j).Note == parser.MovingBlock
	return at && load && j < i-1 && endsHeight(rd, i+1) && topBlockTold(rd, i)
}

// tiedHere says whether the word at i says that something is tied at the height behind it.
func tiedHere(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Tied || rd.Cued(rd.At(i), lexicon.CueFastened)
}

// endsHeight says whether nothing behind a number makes anything but a height of it.
func endsHeight(rd *reading.Reading, i int) bool {
	return rd.EndsBreath(i) || rd.At(i).Marked(lexicon.MarkUpward|lexicon.MarkWhere) || rd.At(i).Polite()
}

// topBlockTold says whether the height of the top block is told besides the number at i.
func topBlockTold(rd *reading.Reading, i int) bool {
	return rd.Before.Has(parser.HitchHeight) || rd.AnyAt(func(k int) bool {
		words := rd.Back(k - 1)
		block := rd.At(words).Plays(parser.HitchHeight) && gear.Part(rd.At(words)) != lexicon.PartRope
		return k != i && rd.Elems[k].Fig != nil && block && (!tiedHere(rd, words) || gear.BlockBefore(rd, k))
	})
}

// cutHeight reads "cut is at 46 ft" of a lift: where the piece comes off, high above the
// ground. How thick it is there is told in inches.
func cutHeight(rd *reading.Reading, i int) bool {
	const lowest = 2 // in metres: a cut that low may be how long the piece is
	fig := rd.Elems[i].Fig
	j := rd.Past(i-1, -1, lexicon.MarkAt|lexicon.MarkIs)
	cut := rd.At(j)
	thick := rd.Before.Has(parser.Across...) || rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig.Short() })
	if !rd.At(i-1).Marked(lexicon.MarkAt) || !rd.Cued(cut, lexicon.CueTheCut) || !endsHeight(rd, i+1) {
		return false
	}
	return fig.Far() && fig.Low >= lowest || fig.Dim == parser.DimCount && thick
}

// tiedBelowBlock reads "limb tied 8 ft under the block": how far apart the blocks are.
func tiedBelowBlock(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkIs)
	if !rd.Elems[i].Fig.Far() || !tiedHere(rd, j) {
		return false
	}
	below, it := rd.At(i+1), rd.At(i+2)
	return rd.TermAt(i+1).BelowBlock || rd.Cued(below, lexicon.CueBelow) && (rd.Cued(it, lexicon.CueLoad) && topBlockTold(rd, i) || gear.Part(it) == lexicon.PartBlock || it.Term != nil && it.Term.Block != "") && rd.EndsBreath(i+3)
}

// blockUpFrom reads "block 14 ft above the tie" and "el de arriba está 14 pies más alto":
// likewise, told from the load.
func blockUpFrom(rd *reading.Reading, i int) bool {
	if !rd.Elems[i].Fig.Far() {
		return false
	}
	above := rd.Cued(rd.At(i+1), lexicon.CueAbove) || rd.TermAt(i+1).AboveLoad
	if tie := rd.Past(i+2, +1, lexicon.MarkArticle); above && gear.BlockBefore(rd, i) && tiedHere(rd, tie) && rd.EndsBreath(tie+1) {
		hush(rd, tie, tie+1)
		return true
	}
	return above && (overLoad(rd, i) || rd.TermAt(i+1).AboveLoad && rd.EndsBreath(i+2) && topEnd(rd, rd.Back(i-1)))
}

// topEnd says whether the words at i name the upper block of a tackle: "el de arriba".
func topEnd(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return t.TopEnd || t.HighEnd || t.Block == parser.TopBlock
}
