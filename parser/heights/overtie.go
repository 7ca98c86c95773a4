package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// StraightOver reads "what if I move the block straight over the tie" of a piece that
// swings: it is nothing to the side of it then.
func StraightOver(rd *reading.Reading) {
	swings := rd.Before.Intent == parser.AskSwing || rd.Before.Has(parser.Sideways) || gear.AsksFor(rd, parser.AskSwing)
	if !swings || rd.Worded(parser.Sideways) {
		return
	}
	for i := range rd.Elems {
		end := overTheTie(rd, i)
		if end == 0 || !blockSubject(rd, i) {
			continue
		}
		start, stop := rd.Elems[i].Start, rd.Elems[end-1].End
		f := &reading.Figure{Unit: scan.Metre, Dim: parser.DimLength, Told: parser.Sideways, Start: start, End: stop}
		rd.Elems = append(rd.Elems[:i+1], rd.Elems[end:]...)
		rd.Elems[i] = reading.Element{Start: start, End: stop, Fig: f}
		return
	}
}

// overTheTie is the end of "straight over the tie" from the element at i on, 0 where that
// does not stand there. "Block 6 m right above the tie" tells how high it is.
func overTheTie(rd *reading.Reading, i int) int {
	k := i
	if !rd.Cued(rd.At(i), lexicon.CueRightOver) {
		if !rd.Cued(rd.At(i), lexicon.CueStraightUp) {
			return 0
		}
		k++
	}
	over := rd.At(k)
	if rd.At(i-1).Fig != nil || !overWord(rd, k) && !over.Marked(lexicon.MarkRelation) {
		return 0
	}
	for k++; rd.At(k).Marked(lexicon.MarkMade|lexicon.MarkArticle) || rd.Cued(rd.At(k), lexicon.CueWhere); k++ {
	}
	for rd.Cued(rd.At(k), lexicon.CueItIs) || rd.At(k).Marked(lexicon.MarkPronoun|lexicon.MarkIs) {
		k++
	}
	if tiePoint(rd, k) && rd.EndsBreath(rd.Past(k+1, +1, lexicon.MarkFollow)) {
		return k + 1
	}
	return 0
}

// OverTieAlone passes over how far the block is above the tie, "block 4 ft up from the tie",
// where a piece is only weighed or lowered steady: nothing hangs on it, and it is no height
// above the ground. Where a rope is asked for, it is asked about.
func OverTieAlone(rd *reading.Reading) {
	if rd.Before.Intent == parser.AskSwing || rd.Before.Intent == parser.AskRaise || rd.Worded(parser.Sideways) {
		return
	}
	for i := range rd.Elems {
		end := 0
		if gear.Far(rd, i) && rd.Elems[i].Fig.Told == "" {
			end = overTie(rd, i)
		}
		if end == 0 || !blockSubject(rd, i) {
			continue
		}
		if rd.AnyAt(func(k int) bool { return rd.TermAt(k).Intent == parser.AskRope }) {
			rd.Elems[i].Fig.Elsewhere = true
			hush(rd, i+1, end)
			return
		}
		if rd.AnyAt(func(k int) bool { return besidesLowering(rd, k) }) {
			return
		}
		rd.Pass(i, end, reading.Element{Start: rd.Elems[i].Start, End: rd.Elems[end-1].End, Term: &scan.Term{}})
	}
}

// besidesLowering says whether the element at k asks for more than a weight or wraps, or tells
// of a fall.
func besidesLowering(rd *reading.Reading, k int) bool {
	in := rd.TermAt(k).Intent
	return rd.Elems[k].Plays(parser.DropHeight) || rd.TermAt(k).Falls || in != "" && in != parser.AskWeight && in != parser.AskLower && !rd.TermAt(k).Besides
}
