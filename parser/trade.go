package parser

import (
	"slices"
	"strings"
)

// Some questions are of the trade as a whole, and hang on no piece: how much tail
// to leave, which way to wrap, what one person is planned for. Each is known by
// what is typed in it, and by what it does not tell of.

// The cues of such a question.
const (
	cueAssumes    cue = "assumes"     // what a figure is based on
	cueBehind     cue = "behind"      // where the tail of a rope is
	cueBark       cue = "bark"        // the bark of a piece
	cueConfirm    cue = "confirm"     // standing by an answer
	cueConfirmed  cue = "confirmed"   // likewise, once it was done
	cueClockwise  cue = "clockwise"   // which way a rope goes round
	cueMoveBlock  cue = "move-block"  // a block higher or closer
	cueFigures    cue = "figures"     // what we answer
	cueCounts     cue = "counts"      // whether something is part of a figure
	cueDeadWood   cue = "dead-wood"   // of wood that is not alive any more
	cueDerates    cue = "derates"     // takes strength off
	cueDrumSize   cue = "drum-size"   // a drum that is thicker or thinner
	cueFriction   cue = "friction"    // between a rope and what it runs over
	cueFrictionOf cue = "friction-of" // asks which friction it is
	cueGently     cue = "gently"      // how a piece is lowered that is never stopped short
	cueHowMuch    cue = "how-much"    // asks for an amount
	cueLeafy      cue = "leafy"       // the leaves of a limb
	cueNoTree     cue = "no-tree"     // that nobody knows the tree
	cueOldRope    cue = "old-rope"    // a rope that was used
	cueSure       cue = "sure"        // asks how near a figure is
	cueTellsUs    cue = "tells-us"    // what we are told
	cueWhichUnits cue = "which-units" // asks for the units to type
	cueKnot       cue = "knot"        // what ties or ends a rope
	cueMoreBlock  cue = "more-block"  // one block besides another
	cueMoisture   cue = "moisture"    // of a weight, whether of green wood
	cueOnePerson  cue = "one-person"  // one of those on the rope
	cueOfHand     cue = "of-hand"     // what one of them does on the rope
	cuePounds     cue = "pounds"      // asks for a mass
	cueRequired   cue = "required"    // asks what has to be done
	cueRopeDry    cue = "rope-dry"    // how the rope is
	cueShares     cue = "shares"      // takes load off something
	cueSameAs     cue = "same-as"     // between a load and the weight
	cueTail       cue = "tail"        // the end of a rope
	cueTooFar     cue = "too-far"     // how a piece swings
	cueWear       cue = "wear"        // what somebody has on
	cueWhichOfAll cue = "which-of-it" // asks which to take
)

// More of what is asked of the trade as a whole.
const (
	TopicAnyTree   Intent = "about-any-tree"   // what to type where nobody knows the tree
	TopicConfirm   Intent = "about-confirm"    // which answers somebody has to stand by
	TopicDrumSize  Intent = "about-drum-size"  // whether a thicker drum holds more
	TopicFriction  Intent = "about-friction"   // which friction we plan with
	TopicGentle    Intent = "about-gentle"     // whether a slow lower loads the rope with no more than the weight
	TopicLeaves    Intent = "about-leaves"     // whether a limb is planned with its leaves
	TopicKnot      Intent = "about-knot"       // what a knot or a splice takes off a rope's strength
	TopicMoist     Intent = "about-moist"      // whether weights are of green wood
	TopicMoreBlock Intent = "about-more-block" // whether one block more takes load off another
	TopicOldRope   Intent = "about-old-rope"   // whether a rope that was used holds less
	TopicOnePerson Intent = "about-person"     // what one person is planned for
	TopicWrapRule  Intent = "about-wrap-rule"  // whether wraps go by the pound
	TopicTail      Intent = "about-tail"       // how much rope is left behind the drum
	TopicTooFar    Intent = "about-too-far"    // what shortens a swing
	TopicWay       Intent = "about-way-round"  // which way the wraps go on
	TopicWear      Intent = "about-wear"       // gloves, helmets
)

// ofTrade are the questions of the trade: all of the cues are typed. Some of them
// may name wood, of which they tell nothing.
var ofTrade = []struct {
	topic Intent
	cues  []cue
	wood  bool
}{
	{TopicConfirm, []cue{cueConfirm, cueRequired}, true},
	{TopicKnot, []cue{cueKnot, cueDerates}, false},
	{TopicMoreBlock, []cue{cueMoreBlock, cueShares}, true},
	{TopicFriction, []cue{cueFriction, cueFrictionOf}, false},
	{TopicKnot, []cue{cueKnot, cueTellsUs}, false},
	{TopicMoist, []cue{cueBark, cueCounts}, false},
	{TopicLeaves, []cue{cueLeafy, cueCounts}, false},
	{TopicHeavyEnd, []cue{cueSure, cueFigures}, false},
	{TopicOldRope, []cue{cueOldRope, cueWeaker}, false},
	{TopicDrumSize, []cue{cueDrumSize, cueWeaker}, false},
	{TopicAnyTree, []cue{cueNoTree}, true},
	{TopicUnits, []cue{cueWhichUnits}, false},
	{TopicGentle, []cue{cueSameAs, cueGently}, false},
	{TopicOnePerson, []cue{cueHowMuch, cueOnePerson, cueOfHand}, false},
	{TopicTail, []cue{cueHowMuch, cueTail, cueBehind}, true},
	{TopicWay, []cue{cueClockwise}, false},
	{TopicWear, []cue{cueWear, cueWhichOfAll}, false},
	{TopicWet, []cue{cueFigures, cueAssumes, cueRopeDry}, false},
}

// tradeTopic is what is asked of the trade, "" for nothing: where a piece is told
// of, the question is of that.
func (rd *reading) tradeTopic() Intent {
	asks := rd.questioned() || strings.Contains(rd.text, "?") || rd.typed(cueBetter) || rd.typed(cueCapable)
	wood := rd.anyAt(func(i int) bool { return rd.termAt(i).shape != "" || rd.termAt(i).unnamed })
	if !asks || rd.anyAt(func(i int) bool { return rd.termAt(i).tree != nil }) {
		return ""
	}
	for _, t := range ofTrade {
		switch {
		case wood && !t.wood, !rd.allTyped(t.cues), t.topic == TopicWear && rd.asksFigure():
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

// deadOrGreen finds the question how dead wood weighs beside green: what is planned on
// is no less, whatever tree it is and however large. Its sizes are passed over.
func (rd *reading) deadOrGreen() bool {
	asks := rd.questioned() || strings.Contains(rd.text, "?")
	if !asks || !rd.typed(cueHeavier) || !rd.typed(cueDeadWood) || !rd.typed(cueGreen) && !rd.typed(cueWood) {
		return false
	}
	other := func(i int) bool {
		e := rd.elems[i]
		return e.fig != nil && e.fig.dim != dimLength || e.plays(HitchHeight) || e.part() != "" || rd.termAt(i).stop != ""
	}
	if rd.asksBut(AskWeight) || rd.asksFor(AskWeight) && rd.measured() || rd.anyAt(other) {
		return false
	}
	for i, e := range rd.elems {
		if e.fig != nil {
			rd.blank(i, i+1)
		}
	}
	return true
}

// asksBut says whether a message asks for anything but so much.
func (rd *reading) asksBut(in Intent) bool {
	asked, _, _ := rd.intents()
	return slices.ContainsFunc(asked, func(x Intent) bool { return x != in })
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
