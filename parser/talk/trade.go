package talk

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/turning"
)

// ofTrade are the questions of the trade: all of the cues are typed. Some of them
// may name wood, of which they tell nothing.
var ofTrade = []struct {
	topic parser.Intent
	cues  []scan.Cue
	wood  bool
}{
	{parser.TopicConfirm, []scan.Cue{lexicon.CueConfirm, lexicon.CueRequired}, true},
	{parser.TopicKnot, []scan.Cue{lexicon.CueKnot, lexicon.CueDerates}, false},
	{parser.TopicMoreBlock, []scan.Cue{lexicon.CueMoreBlock, lexicon.CueShares}, true},
	{parser.TopicFriction, []scan.Cue{lexicon.CueFriction, lexicon.CueFrictionOf}, false},
	{parser.TopicKnot, []scan.Cue{lexicon.CueKnot, lexicon.CueTellsUs}, false},
	{parser.TopicMoist, []scan.Cue{lexicon.CueBark, lexicon.CueCounts}, false},
	{parser.TopicLeaves, []scan.Cue{lexicon.CueLeafy, lexicon.CueCounts}, false},
	{parser.TopicHeavyEnd, []scan.Cue{lexicon.CueSure, lexicon.CueFigures}, false},
	{parser.TopicOldRope, []scan.Cue{lexicon.CueOldRope, lexicon.CueWeaker}, false},
	{parser.TopicDrumSize, []scan.Cue{lexicon.CueDrumSize, lexicon.CueWeaker}, false},
	{parser.TopicDrumSize, []scan.Cue{lexicon.CueDrumSize, lexicon.CueChanges}, false},
	{parser.TopicAnyTree, []scan.Cue{lexicon.CueNoTree}, true},
	{parser.TopicUnits, []scan.Cue{lexicon.CueWhichUnits}, false},
	{parser.TopicGentle, []scan.Cue{lexicon.CueSameAs, lexicon.CueGently}, false},
	{parser.TopicOnePerson, []scan.Cue{lexicon.CueHowMuch, lexicon.CueOnePerson, lexicon.CueOfHand}, false},
	{parser.TopicTail, []scan.Cue{lexicon.CueHowMuch, lexicon.CueTail, lexicon.CueBehind}, true},
	{parser.TopicWay, []scan.Cue{lexicon.CueClockwise}, false},
	{parser.TopicWear, []scan.Cue{lexicon.CueWear, lexicon.CueWhichOfAll}, false},
	{parser.TopicWet, []scan.Cue{lexicon.CueFigures, lexicon.CueAssumes, lexicon.CueRopeDry}, false},
}

// tradeTopic is what is asked of the trade, "" for nothing: where a piece is told
// of, the question is of that.
func tradeTopic(rd *reading.Reading) parser.Intent {
	asks := questioned(rd) || strings.Contains(rd.Text, "?") || Typed(rd, lexicon.CueBetter) || Typed(rd, lexicon.CueCapable)
	wood := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Shape != "" || rd.TermAt(i).Unnamed })
	if !asks || rd.AnyAt(func(i int) bool { return rd.TermAt(i).Tree != nil }) {
		return ""
	}
	for _, t := range ofTrade {
		switch {
		case wood && !t.wood, !allTyped(rd, t.cues), t.topic == parser.TopicWear && asksFigure(rd):
		default:
			return t.topic
		}
	}
	return ""
}

// allTyped says whether the words of every one of some cues are typed.
func allTyped(rd *reading.Reading, cues []scan.Cue) bool {
	for _, c := range cues {
		if !Typed(rd, c) {
			return false
		}
	}
	return true
}

// asksFigure says whether a message asks for something that we work out, or tells
// of wraps: "how many wraps with gloves on".
func asksFigure(rd *reading.Reading) bool {
	asked, besides, _ := senses.Intents(rd)
	return len(asked)+len(besides) > 0 || rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.Wraps) || rd.Elems[i].Fig != nil })
}

// deadOrGreen finds the question how dead wood weighs beside green: what is planned on
// is no less, whatever tree it is and however large. Its sizes are passed over.
func deadOrGreen(rd *reading.Reading) bool {
	asks := questioned(rd) || strings.Contains(rd.Text, "?")
	if !asks || !Typed(rd, lexicon.CueHeavier) || !Typed(rd, lexicon.CueDeadWood) || !Typed(rd, lexicon.CueGreen) && !Typed(rd, lexicon.CueWood) {
		return false
	}
	other := func(i int) bool {
		e := rd.Elems[i]
		return e.Fig != nil && e.Fig.Dim != parser.DimLength || e.Plays(parser.HitchHeight) || gear.Part(e) != "" || rd.TermAt(i).Stop != ""
	}
	both := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Condition == parser.Dead }) && rd.AnyAt(func(i int) bool { return rd.TermAt(i).Condition == parser.Green })
	if asksBut(rd, parser.AskWeight) || gear.AsksFor(rd, parser.AskWeight) && turning.Measured(rd) && !both || rd.AnyAt(other) {
		return false
	}
	for i, e := range rd.Elems {
		if e.Fig != nil {
			turning.Blank(rd, i, i+1)
		}
	}
	return true
}

// asksBut says whether a message asks for anything but so much.
func asksBut(rd *reading.Reading, in parser.Intent) bool {
	asked, _, _ := senses.Intents(rd)
	return slices.ContainsFunc(asked, func(x parser.Intent) bool { return x != in })
}

// tooFar finds the question whether a higher block or a closer one shortens a
// swing. How much too far it comes has no part in the answer, and is passed over.
func tooFar(rd *reading.Reading) bool {
	if !Typed(rd, lexicon.CueTooFar) || !Typed(rd, lexicon.CueMoveBlock) {
		return false
	}
	at := -1
	for i, e := range rd.Elems {
		switch {
		case e.Fig == nil:
		case at >= 0 || e.Fig.Dim != parser.DimLength || e.Fig.Pair:
			return false
		default:
			at = i
		}
	}
	if at >= 0 {
		turning.Blank(rd, at, at+1)
	}
	return true
}
