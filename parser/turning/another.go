package turning

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Another reads "another 14 in red oak limb" as a piece like any: it is worked out
// by itself. "Another 15 ft" and "another 600 lb limb" could be added to what was
// said before. So is "y otra de 35 cm" where no number stands before it, and another
// rope is the only one that is told of.
func Another(rd *reading.Reading, i int) {
	if ropeAlone(rd, i+1) || firstSizes(rd, i) || likeBefore(rd, i) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkArticle} })
		return
	}
	if rd.At(i+1).Plays(parser.Wraps) && rd.At(i+1).Fig == nil && rd.Cued(rd.At(i-1), lexicon.CueNeeds) {
		LeaveOut(rd, i, i+1) // "do i need another wrap": how many it takes answers that
		return
	}
	j := i + 1
	for rd.At(j).Marked(lexicon.MarkAdjective) || places.FineAt(rd, j) {
		j++
	}
	if rd.AnyAt(rd.Is(places.FineAt)) && (rd.At(j).Piece() || rd.TermAt(j).Unnamed) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkArticle} })
		return
	}
	theOther(rd, i)
}

// ropeAlone says whether a rope stands at i, with the one length that is told of any.
func ropeAlone(rd *reading.Reading, i int) bool {
	if gear.Part(rd.At(i)) != lexicon.PartRope || !rd.At(i).Marked(lexicon.MarkCord) || !gear.Far(rd, rd.Past(i+1, +1, lexicon.MarkMade|lexicon.MarkIs)) || rd.At(i-2).Plays(parser.HitchHeight) {
		return false
	}
	return !rd.AnyAt(func(k int) bool { return k != i && gear.Part(rd.Elems[k]) == lexicon.PartRope })
}

// firstSizes says whether "otra de" at i begins all that is told of a piece: a tree
// or a thickness stands right behind it, and no piece and no number before.
func firstSizes(rd *reading.Reading, i int) bool {
	for k := range i {
		if e := rd.Elems[k]; e.Fig != nil || e.Piece() || rd.TermAt(k).Unnamed || rd.Elems[k].Plays(parser.TipDiameter) || rd.Elems[k].Plays(parser.ButtDiameter) {
			return false
		}
	}
	j := rd.Past(i+1, +1, lexicon.MarkMade)
	return j > i+1 && (rd.TermAt(j).Tree != nil || places.FineAt(rd, j)) && rd.AnyAt(rd.Is(places.FineAt))
}

// likeBefore says whether "otra igual pero de 7 m" is all that is told: a piece by itself,
// as the one that was spoken of, but for a size.
func likeBefore(rd *reading.Reading, i int) bool {
	if rd.First || !begins(rd, i) && !(i == 1 && rd.At(0).Marked(lexicon.MarkAnd)) {
		return false
	}
	k := i + 1
	for rd.At(k).Piece() || rd.TermAt(k).Unnamed || rd.Cued(rd.At(k), lexicon.CueMore) || rd.Cued(rd.At(k), lexicon.CueItself) {
		k++
	}
	if !rd.At(k).Marked(lexicon.MarkFollow) {
		return false
	}
	for k++; k < len(rd.Elems); k++ {
		e := rd.Elems[k]
		size := e.Fig != nil && e.Fig.Dim == parser.DimLength || e.Plays(parser.Length) || e.Plays(parser.Diameter) || rd.TermAt(k).Intent == parser.AskWeight
		if !size && e.Pause == 0 && !e.Polite() && !e.Marked(lexicon.MarkMade|lexicon.MarkFollow|lexicon.MarkIs) {
			return false
		}
	}
	return true
}

// secondAtBase reads "a second one at the base" behind the word at i, where a block is
// named before it: a block that turns the rope there.
func secondAtBase(rd *reading.Reading, i int) bool {
	for k := i + 1; k-i <= stops.Few && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k++ {
		words := strings.Join(scan.SplitWords(rd.Text[rd.Elems[i].End:startOf(rd, k)]), " ")
		if atBase(rd, k) && rd.In.Cued(words, lexicon.CueSecondOne) {
			rd.Elems[k].Term = &scan.Term{Block: parser.BaseBlock}
			return true
		}
	}
	return false
}
