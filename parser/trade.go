package parser

import "strings"

// Some questions are of the trade as a whole, and hang on no piece: how much tail
// to leave, which way to wrap, what one person is planned for. Each is known by
// what is typed in it, and by what it does not tell of.

// The cues of such a question.
const (
	cueAssumes    cue = "assumes"     // what a figure is based on
	cueBehind     cue = "behind"      // where the tail of a rope is
	cueClockwise  cue = "clockwise"   // which way a rope goes round
	cueMoveBlock  cue = "move-block"  // a block higher or closer
	cueFigures    cue = "figures"     // what we answer
	cueGently     cue = "gently"      // how a piece is lowered that is never stopped short
	cueHowMuch    cue = "how-much"    // asks for an amount
	cueMoisture   cue = "moisture"    // of a weight, whether of green wood
	cueOnePerson  cue = "one-person"  // one of those on the rope
	cueOfHand     cue = "of-hand"     // what one of them does on the rope
	cueRopeDry    cue = "rope-dry"    // how the rope is
	cueSameAs     cue = "same-as"     // between a load and the weight
	cueTail       cue = "tail"        // the end of a rope
	cueTooFar     cue = "too-far"     // how a piece swings
	cueWear       cue = "wear"        // what somebody has on
	cueWhichOfAll cue = "which-of-it" // asks which to take
)

// More of what is asked of the trade as a whole.
const (
	TopicGentle    Intent = "about-gentle"    // whether a slow lower loads the rope with no more than the weight
	TopicMoist     Intent = "about-moist"     // whether weights are of green wood
	TopicOnePerson Intent = "about-person"    // what one person is planned for
	TopicTail      Intent = "about-tail"      // how much rope is left behind the drum
	TopicTooFar    Intent = "about-too-far"   // what shortens a swing
	TopicWay       Intent = "about-way-round" // which way the wraps go on
	TopicWear      Intent = "about-wear"      // gloves, helmets
)

// ofTrade are the questions of the trade: all of the cues are typed.
var ofTrade = []struct {
	topic Intent
	cues  []cue
}{
	{TopicGentle, []cue{cueSameAs, cueGently}},
	{TopicOnePerson, []cue{cueHowMuch, cueOnePerson, cueOfHand}},
	{TopicTail, []cue{cueHowMuch, cueTail, cueBehind}},
	{TopicWay, []cue{cueClockwise}},
	{TopicWear, []cue{cueWear, cueWhichOfAll}},
	{TopicWet, []cue{cueFigures, cueAssumes, cueRopeDry}},
}

// tradeTopic is what is asked of the trade, "" for nothing: where a piece is told
// of, the question is of that.
func (rd *reading) tradeTopic() Intent {
	asks := rd.questioned() || strings.Contains(rd.text, "?") || rd.typed(cueBetter)
	wood := rd.anyAt(func(i int) bool { return rd.termAt(i).shape != "" || rd.termAt(i).unnamed })
	if !asks || rd.anyAt(func(i int) bool { return rd.termAt(i).tree != nil }) {
		return ""
	}
	for _, t := range ofTrade {
		switch {
		case wood && t.topic != TopicTail, !rd.allTyped(t.cues), t.topic == TopicWear && rd.asksFigure():
		default:
			return t.topic
		}
	}
	return ""
}

// allTyped says whether the words of every one of some cues are typed.
func (rd *reading) allTyped(cues []cue) bool {
	for _, c := range cues {
		if !rd.typed(c) {
			return false
		}
	}
	return true
}

// asksFigure says whether a message asks for something that we work out, or tells
// of wraps: "how many wraps with gloves on".
func (rd *reading) asksFigure() bool {
	asked, besides, _ := rd.intents()
	return len(asked)+len(besides) > 0 || rd.anyAt(func(i int) bool { return rd.elems[i].plays(Wraps) || rd.elems[i].fig != nil })
}

// tooFar finds the question whether a higher block or a closer one shortens a
// swing. How much too far it comes has no part in the answer, and is passed over.
func (rd *reading) tooFar() bool {
	if !rd.typed(cueTooFar) || !rd.typed(cueMoveBlock) {
		return false
	}
	at := -1
	for i, e := range rd.elems {
		switch {
		case e.fig == nil:
		case at >= 0 || e.fig.dim != dimLength || e.fig.pair:
			return false
		default:
			at = i
		}
	}
	if at >= 0 {
		rd.blank(at, at+1)
	}
	return true
}
