package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Whether the blocks of a tackle meet is asked in many words, and mostly as what nobody
// wants: "so the blocks don't crash into each other".

// blocksMeet reads "do the blocks come together" and "so the blocks won't smack":
// whether they do is asked about, in whatever words.
func blocksMeet(rd *reading.Reading, i int) {
	j := i + 1
	for j-i <= stops.Few && (rd.At(j).Polite() && rd.At(j).Pause == 0 || rd.Cued(rd.At(j), lexicon.CueNot) || rd.TermAt(j).Note == "about" || j == i+1 && rd.At(j).Marked(lexicon.MarkRelation)) && !rd.Cued(rd.At(j), lexicon.CueMeets) {
		j++
	}
	after := rd.At(rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkRelation|lexicon.MarkIn))
	if !rd.Cued(rd.At(j), lexicon.CueMeets) || after.Marked(lexicon.MarkPlace|lexicon.MarkStanding|lexicon.MarkObstacle) || after.Piece() {
		return
	}
	for k := i + 1; k < j; k++ {
		rd.Elems[k].Term = &scan.Term{}
	}
	rd.Elems[j].Term = &scan.Term{Intent: parser.AskRaise, Note: parser.BlocksMeet}
	if rd.TermAt(i).Ask == parser.Twist {
		rd.Elems[i].Term = &scan.Term{} // "so we don't run out of travel"
	}
	besidesMeeting(rd, i, j)
}

// besidesMeeting reads what stands around the words from i to j which ask whether blocks meet.
func besidesMeeting(rd *reading.Reading, i, j int) {
	unwanted(rd, i)
	if k := rd.Past(j+1, +1, lexicon.MarkArticle); rd.At(k).Pause == 0 && twoBare(rd, k) && rd.EndsBreath(k+1) {
		rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{}} // "que no se topen los dos"
	}
	blockOnLoad(rd)
	if howHighFirst(rd, i) {
		rd.Elems[j].Term = &scan.Term{}
	}
}

// twoBare says whether a bare two stands at i.
func twoBare(rd *reading.Reading, i int) bool {
	two := rd.At(i).Fig
	return two != nil && two.Unit == nil && two.High == 2
}

// unwanted passes over what stands before blocks that are not to meet: how many they are,
// and that nobody wants it, "so that the two blocks do not", "dont want the blocks".
func unwanted(rd *reading.Reading, i int) {
	k := i - 1
	if twoBare(rd, k) && rd.At(i).Pause == 0 {
		rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Pause: rd.Elems[k].Pause, Term: &scan.Term{}}
		k--
	}
	for k = rd.Past(k, -1, lexicon.MarkArticle); i-k <= stops.Few && rd.At(k+1).Pause == 0 && rd.At(k).Polite(); k-- {
	}
	if k >= 0 && rd.At(k+1).Pause == 0 && rd.Cued(rd.At(k), lexicon.CueNot) {
		rd.Elems[k].Term = &scan.Term{}
	}
}

// blockOnLoad takes a block on the limb for the one that goes up with it, where blocks are
// not to meet: else it may as well be one that turns the rope.
func blockOnLoad(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Ask == parser.Twist && rd.Cued(rd.Elems[i], lexicon.CueBlockOnLoad) {
			rd.Elems[i].Term = &scan.Term{}
		}
	}
}

// howHighFirst reads "how high does it get before they bang together": how far a lift goes
// is asked, and no height that is to be measured. "How high must the block be so they dont
// meet" asks where a block is set.
func howHighFirst(rd *reading.Reading, i int) bool {
	aims, block := false, false
	for k := i; k >= 0 && (k == i || rd.Elems[k+1].Pause == 0) && rd.Elems[k].Fig == nil; k-- {
		if rd.Cued(rd.Elems[k], lexicon.CueHowHigh) {
			if aims && block {
				return false
			}
			rd.Elems[k].Term = &scan.Term{Intent: parser.AskLift, Note: parser.TravelWanted}
			return true
		}
		aims = aims || rd.SaidTo(lexicon.CueSoThat, rd.Elems[k].Start) >= 0
		block = block || gear.Part(rd.Elems[k]) == lexicon.PartBlock && !heights.BlocksAt(rd, k)
	}
	return false
}

// blockPair is the second of two blocks that are named together from the element at i on, "my
// block on the limb and the block up top", 0 where they are not.
func blockPair(rd *reading.Reading, i int) int {
	if !rd.Cued(rd.Elems[i], lexicon.CueBlockOnLoad) && !rd.Cued(rd.Elems[i], lexicon.CueTopBlock) || !rd.At(i+1).Marked(lexicon.MarkAnd) {
		return 0
	}
	j := rd.Past(i+2, +1, lexicon.MarkArticle)
	if rd.At(j).Fig == nil && (rd.Cued(rd.At(j), lexicon.CueTopBlock) || rd.Cued(rd.At(j), lexicon.CueBlockOnLoad)) {
		return j
	}
	return 0
}

// blocksBeside says whether blocks are told besides the word at i that stands for them: "where
// do i put the moving block so they dont slam together".
func blocksBeside(rd *reading.Reading, i int) bool {
	if rd.AnyAt(func(k int) bool { return k > i && (heights.BlocksAt(rd, k) || rd.TermAt(k).Blocks) }) {
		return true
	}
	for k := i - 1; k >= 0 && rd.Elems[k].Pause < 4; k-- {
		if heights.BlocksAt(rd, k) || gear.Part(rd.Elems[k]) == lexicon.PartBlock || rd.Cued(rd.Elems[k], lexicon.CueTopBlock) || rd.TermAt(k).Note == parser.MovingBlock {
			return true
		}
	}
	return false
}

// meetBlocks reads "para que no se junten los blocks", where the blocks stand behind the
// verb.
func meetBlocks(rd *reading.Reading, i int) {
	if j := rd.Past(i+1, +1, lexicon.MarkArticle); rd.Cued(rd.At(j), lexicon.CueBlocks) || rd.TermAt(j).Blocks {
		rd.Elems[i].Term, rd.Elems[j].Term = &scan.Term{Intent: parser.AskRaise, Note: parser.BlocksMeet}, &scan.Term{Blocks: true}
	}
}
