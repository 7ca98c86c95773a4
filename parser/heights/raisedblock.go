package heights

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// RaisedBlock reads "rope goes to a block 35 ft up right over the butt" in a talk of a
// piece that is stood up, whose block is still to be told: so high above its hinge. Where
// nothing says what it is over, it is asked about, and never made a piece that is lowered.
func RaisedBlock(rd *reading.Reading, before parser.Question) {
	if before.Intent != parser.AskRaise || before.Has(parser.BlockHeight) || asksElse(rd) {
		return
	}
	i := blockUpAt(rd)
	if i < 0 {
		return
	}
	if to := overButt(rd, i); to > 0 {
		rd.Elems[i].Fig.Told = parser.BlockHeight
		hush(rd, i+1, to)
		return
	}
	fig := rd.Elems[i].Fig
	if fig.Told == parser.BlockHeight {
		return
	}
	a := fig.Ask(parser.TwoReadings, rd.Text)
	a.Fields = []parser.Field{parser.BlockHeight, parser.HitchHeight}
	a.Choices = []parser.Choice{{Field: parser.BlockHeight}, {Field: parser.HitchHeight}}
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere, fig.Told = true, ""
}

// asksElse says whether a message asks for something by itself, or tells of a lowering.
func asksElse(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent != "" && t.Intent != parser.AskRaise && !t.Besides || rd.Elems[i].Plays(parser.Wraps) || rd.Elems[i].Plays(parser.BlockHeight)
	})
}

// overButt is the end of "up right over the butt" behind the number at i, 0 where that does
// not stand there.
func overButt(rd *reading.Reading, i int) int {
	k := i + 1
	for rd.At(k).Marked(lexicon.MarkUpward|lexicon.MarkErect|lexicon.MarkAdverb) && !overWord(rd, k) {
		k++
	}
	if !overWord(rd, k) {
		return 0
	}
	k = rd.Past(k+1, +1, lexicon.MarkArticle)
	if e := rd.At(k); rd.Cued(e, lexicon.CueHinge) || e.Plays(parser.ButtDiameter) {
		return k + 1
	}
	return 0
}

// overWord says whether the word at i puts one thing over another.
func overWord(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return rd.Cued(e, lexicon.CueOverHinge) || rd.Cued(e, lexicon.CueAbove) || rd.Cued(e, lexicon.CueOver) || rd.Cued(e, lexicon.CueHigher) || rd.Cued(e, lexicon.CueRightOver)
}
