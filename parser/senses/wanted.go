package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
	"heft/parser/turning"
)

// Wanted reads all of them.
func Wanted(rd *reading.Reading) {
	for i := range rd.Elems {
		switch {
		case rd.TermAt(i).Note == parser.BlocksMeet:
			besidesMeeting(rd, i, i)
		case heights.BlocksAt(rd, i), rd.Cued(rd.Elems[i], lexicon.CueSoThey) && blocksBeside(rd, i):
			blocksMeet(rd, i)
		case rd.Cued(rd.Elems[i], lexicon.CueAsking) && rd.Cued(rd.At(i+1), lexicon.CuePeople) && rd.Cued(rd.At(i+2), lexicon.CueMeets) && blocksBeside(rd, i):
			blocksMeet(rd, i+1) // "will they smack together"
		case blockPair(rd, i) > 0:
			blocksMeet(rd, blockPair(rd, i))
		case rd.Cued(rd.Elems[i], lexicon.CueMeets):
			meetBlocks(rd, i)
		case rd.Cued(rd.Elems[i], lexicon.CueWhere):
			whereTied(rd, i)
		case rd.Cued(rd.Elems[i], lexicon.CueLevel):
			hangsLevel(rd, i)
		case rd.Elems[i].Marked(lexicon.MarkErect) && !rd.Elems[i].Marked(lexicon.MarkUpward):
			wantedErect(rd, i)
		case rd.TermAt(i).Ask == parser.Twist && rd.Cued(rd.Elems[i], lexicon.CueNot) && within(rd, i, lexicon.CueSoThat):
			turning.Purpose(rd, i) // "so the tips don't drop into the roses"
		}
	}
}

// within says whether a cue stands before the element at i, in the same breath
// and with no number between.
func within(rd *reading.Reading, i int, c scan.Cue) bool {
	for k := i - 1; k >= 0 && i-k <= stops.Few && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if rd.Cued(rd.Elems[k], c) {
			return true
		}
	}
	return false
}

// StandingUp reads what is told and asked of a limb that is stood up, once its verbs
// are known.
func StandingUp(rd *reading.Reading) {
	for i := range rd.Elems {
		if t := rd.TermAt(i); t.Intent == parser.AskNotch && t.Besides {
			onHinge(rd, i)
		}
	}
	for i := 0; i < len(rd.Elems) && gear.AsksFor(rd, parser.AskRaise); i++ {
		heights.TiedAtThirds(rd, i)
	}
	heightWanted(rd)
}

// onHinge reads "lift the limb on its hinge" and "rama con bisagra, ¿dónde ato?" as a
// limb that is stood up. A hinge alone may be how wide its notch is to open.
func onHinge(rd *reading.Reading, i int) {
	limb := func(k int) bool { return rd.TermAt(k).Shape == parser.Limb }
	moved := func(k int) bool {
		t := rd.TermAt(k)
		return t.Intent == parser.AskLift || t.Intent == parser.AskBalance && t.Note == parser.TieWanted || rd.Elems[k].Marked(lexicon.MarkHoists)
	}
	on := rd.At(rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkPronoun))
	if on.Marked(lexicon.MarkWhere) && rd.AnyAt(limb) && rd.AnyAt(moved) {
		rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskRaise, false })
	}
}

// whereTied reads "how far out do i put the sling" and "where's my tie".
func whereTied(rd *reading.Reading, i int) {
	j := i + 1
	for j-i <= stops.Few && (rd.At(j).Polite() && rd.At(j).Pause == 0 || rd.At(j).Marked(lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkIs)) && !rd.Cued(rd.At(j), lexicon.CueSling) {
		j++
	}
	if !rd.Cued(rd.At(j), lexicon.CueSling) {
		j = slungBefore(rd, i)
	}
	switch {
	case rd.Cued(rd.At(j), lexicon.CueSling):
		rd.Elems[j].Term = &scan.Term{Intent: parser.AskBalance, Note: parser.TieWanted}
	case loadBlock(rd, i):
		rd.Elems[i].Term = &scan.Term{Intent: parser.AskBalance, Note: parser.TieWanted} // the block stays: it tells of two parts
	}
}

// loadBlock says whether "where do i put" at i asks for the block that goes up with the load.
func loadBlock(rd *reading.Reading, i int) bool {
	j := i + 1
	for j-i <= stops.Few && rd.At(j).Pause == 0 && (rd.At(j).Polite() || rd.At(j).Marked(lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkIs)) && rd.TermAt(j).Note != parser.MovingBlock {
		j++
	}
	return rd.TermAt(j).Note == parser.MovingBlock
}

// slungBefore is where "tie it off" stands before "how far out" at i, or what is no
// such word.
func slungBefore(rd *reading.Reading, i int) int {
	j := i - 1
	for i-j <= stops.Few && rd.At(j).Pause == 0 && !rd.Cued(rd.At(j), lexicon.CueSling) && (rd.At(j).Polite() || rd.At(j).Marked(lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkRelation)) {
		j--
	}
	return j
}

// heightWanted reads "how high do i put the block" and "a qué altura va la polea" of
// a limb that is stood up: the height of its block above the hinge is asked for.
func heightWanted(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskRaise) && !heights.TellsOfHinge(rd) {
		return
	}
	for i, e := range rd.Elems {
		above := rd.Cued(e, lexicon.CueWhere) && rd.At(i+1).Plays(parser.BlockHeight) // "how far above the hinge"
		if (above || rd.Cued(e, lexicon.CueHowHigh)) && rd.TermAt(i).Note != parser.TravelWanted && blockFollows(rd, i) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskRaise, Note: parser.LowestWanted} })
			return
		}
	}
}

// blockFollows says whether a block is named behind the words at i, in the same
// breath and with no number between.
func blockFollows(rd *reading.Reading, i int) bool {
	const within = 8
	for j := i + 1; j-i <= within && rd.At(j).Pause == 0 && rd.At(j).Fig == nil; j++ {
		if gear.Part(rd.At(j)) == lexicon.PartBlock || heights.BlocksAt(rd, j) {
			return true
		}
	}
	return false
}

// hangLevel is the note of a piece that is to hang level.
const hangLevel = "hang-level"

// hangsLevel reads "so it stays flat" and "to keep this log horizontal" as how
// the piece is to hang. How it lies is told in the same words, so that they must
// say what is wanted, or the question where it is tied.
func hangsLevel(rd *reading.Reading, i int) {
	j := i - 1
	for i-j <= stops.Few && (rd.At(j).Marked(lexicon.MarkPronoun|lexicon.MarkArticle|lexicon.MarkErect|lexicon.MarkAdverb) || rd.At(j).Piece() || rd.At(j).Polite() && rd.At(j).Pause == 0) && !rd.Cued(rd.At(j), lexicon.CueHangs) {
		j--
	}
	next := rd.At(i + 1)
	if !rd.Cued(rd.At(j), lexicon.CueHangs) || next.Marked(lexicon.MarkIn|lexicon.MarkWhere) || gear.AsksFor(rd, parser.AskRaise) {
		return
	}
	ties := rd.AnyAt(func(k int) bool {
		return rd.TermAt(k).Note == parser.TieWanted || rd.TermAt(k).Intent == parser.AskBalance
	})
	if !ties && !within(rd, j, lexicon.CueAims) {
		return
	}
	rd.Elems[j].Term = &scan.Term{}
	rd.Elems[i].Term = &scan.Term{Intent: parser.AskBalance, Note: hangLevel}
}

// wantedErect reads "i want it vertical before we cut" as a limb that is stood up. A
// log, or what is lowered, rather hangs so.
func wantedErect(rd *reading.Reading, i int) {
	j := i - 1
	for i-j <= stops.Few && (rd.At(j).Marked(lexicon.MarkPronoun|lexicon.MarkArticle|lexicon.MarkAdverb|lexicon.MarkIs) || rd.TermAt(j).Shape == parser.Limb || rd.At(j).Polite() && rd.At(j).Pause == 0) && !rd.Cued(rd.At(j), lexicon.CueAims) {
		j--
	}
	if j == i-1 || !rd.Cued(rd.At(j), lexicon.CueAims) || rd.At(i+1).Piece() || rd.At(i-1).Marked(lexicon.MarkArticle) {
		return
	}
	hangs := func(k int) bool {
		t := rd.TermAt(k)
		return t.Shape == parser.Log || t.Hung || t.Intent == parser.AskLower || t.Intent == parser.AskBlockLoad
	}
	for k := i + 1; k-i <= stops.Few && rd.At(k).Pause == 0; k++ {
		if rd.Cued(rd.At(k), lexicon.CueHangs) {
			return // "vertical when it comes down"
		}
	}
	if !rd.AnyAt(hangs) {
		rd.Elems[i].Term = &scan.Term{Intent: parser.AskRaise}
	}
}
