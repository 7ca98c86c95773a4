package lexicon

import "heft/parser/scan"

// Crews tell what holds for the day in a message of its own, in free words and
// with talk between: "crew is 5 today, me and Tanner climbing, three on the
// ground". Such a message is the job's where it tells nothing else and asks
// nothing. What is only talk is left out clause by clause, and said back.

// The cues of such a message.
const (
	CueBackwards  scan.Cue = "backwards"   // behind how far off that is
	CueDrumFoot   scan.Cue = "drum-foot"   // behind the drum: at the foot of its tree
	CueStandsLead scan.Cue = "stands-lead" // between the drum and where it is, says nothing more
	CueStandsTail scan.Cue = "stands-tail" // behind where it is, likewise
	CuePutIt      scan.Cue = "put-it"      // puts what was spoken of somewhere
	CueAils       scan.Cue = "ails"        // behind somebody, that they stay at home
	CueSubject    scan.Cue = "subject"     // who does something, and to whom nothing is done: "he"
	CueAloft      scan.Cue = "aloft"       // where who climbs is
	CueCrew       scan.Cue = "crew"        // beside how many there are in all
	CueCrewNamed  scan.Cue = "crew-named"  // before the number that a crew is called by
	CueElsewhere  scan.Cue = "elsewhere"   // behind who of a crew holds no rope: "dragging brush"
	CueGround     scan.Cue = "ground"      // behind how many are on the ground
	CueOnRope     scan.Cue = "on-rope"     // behind who holds it
	CueTheRest    scan.Cue = "the-rest"    // those of a crew that nothing else is told of
	CueQuery      scan.Cue = "query"       // in what asks rather than tells
	CueQueryFirst scan.Cue = "query-first" // likewise, where it stands first
	CueWished     scan.Cue = "wished"      // what is wished begins so, with a word that else asks
	CueReason     scan.Cue = "reason"      // begins why, or how long, what stands before it holds
)

// What held before is told beside what holds from now on: "bump the limit to 650,
// we had 500", "one guy went home so we're 3 on the rope". Only the new figure
// counts: the old one is passed over, and said back.

// The cues of what held before, and of what is told of a crew or a limit besides.
const (
	CueAtBlock    scan.Cue = "at-block"    // behind what a block may carry
	CueClimber    scan.Cue = "climber"     // behind how many climb
	CueCounted    scan.Cue = "counted"     // behind how many there are, that the climber is one of them
	CueFormerly   scan.Cue = "formerly"    // before what held until now
	CueOnlyNow    scan.Cue = "only-now"    // before how many are left
	CueMissingMan scan.Cue = "missing-man" // one of the crew who does something else
	CueGone       scan.Cue = "gone"        // behind who is not there any more
	CueLeading    scan.Cue = "leading"     // between what a piece may weigh and what the block may carry
	CueChangesIt  scan.Cue = "changes-it"  // tells that something is changed
	CueFromOld    scan.Cue = "from-old"    // before what it is changed from
	CueToNew      scan.Cue = "to-new"      // before what it is changed to
	CueNewly      scan.Cue = "newly"       // before what holds from now on

	CueUncounted scan.Cue = "uncounted" // behind how many there are, that the climber is none of them

	CueSuch scan.Cue = "such" // in what points to a length that was said before
)

// How much some people pull is asked before anything is rigged: "5 of us pulling by
// hand, whats reasonable to count on". Their number is the only one that is told.

// The cues of such a question.
const (
	CueOneself    scan.Cue = "oneself"     // behind what somebody weighs: "himself"
	CueBarkColour scan.Cue = "bark-colour" // which sound bark has
	CueSeemsRight scan.Cue = "seems-right" // behind what somebody reckons a piece weighs
	CueHandMove   scan.Cue = "hand-move"   // how wood is moved along the ground by people who are counted
	CueHandLift   scan.Cue = "hand-lift"   // how wood is picked up, with a tackle or with bare hands
	CueByHand     scan.Cue = "by-hand"     // how people pull, whatever they pull on
	CueMustPull   scan.Cue = "must-pull"   // before who does, where whom it is done to needs another word
	CueCountOn    scan.Cue = "count-on"    // asks what is planned for
)

// Who looks after a crew asks what it was told: "what was our highest load today",
// "who signed off at 3:15", "which piece was it that hit 1,150 around 10:40". All of
// it stands in the log. What may still be done is none of it.

// The cues of such a question.
const (
	CueAhead    scan.Cue = "ahead"      // of what is still to be done
	CueOutcome  scan.Cue = "outcome"    // of what was
	CueRecorded scan.Cue = "recorded"   // what an entry of the log tells
	CueUtmost   scan.Cue = "utmost"     // the most of a day, or its mean
	CueWhose    scan.Cue = "whose-name" // asks for a person
)

// Crews tell who does what today: "Sam on the drum, me climbing, Josh on the tag
// line". Names are not kept. Such a message is the job's all the same, and what is
// not kept of it is said back, with what can be.

// The cues of such a message.
const (
	CueButFor scan.Cue = "but-for" // behind nobody, before who it is all the same
	CueNoOne  scan.Cue = "no-one"  // in place of a name, that a post is empty
	CuePost   scan.Cue = "post"    // where somebody works, or as what
	CueRoster scan.Cue = "roster"  // what such a message begins with
	CueWhoIs  scan.Cue = "who-is"  // asks for a name
	CueAtPost scan.Cue = "at-post" // between a name and where they work
)

// CueBackIn stands before in how many minutes somebody goes on: "back in 30".
const CueBackIn scan.Cue = "back-in"

// Some questions are of the trade as a whole, and hang on no piece: how much tail
// to leave, which way to wrap, what one person is planned for. Each is known by
// what is typed in it, and by what it does not tell of.

// The cues of such a question.
const (
	CueAssumes    scan.Cue = "assumes"     // what a figure is based on
	CueBehind     scan.Cue = "behind"      // where the tail of a rope is
	CueBark       scan.Cue = "bark"        // the bark of a piece
	CueConfirm    scan.Cue = "confirm"     // standing by an answer
	CueConfirmed  scan.Cue = "confirmed"   // likewise, once it was done
	CueClockwise  scan.Cue = "clockwise"   // which way a rope goes round
	CueMoveBlock  scan.Cue = "move-block"  // a block higher or closer
	CueFigures    scan.Cue = "figures"     // what we answer
	CueCounts     scan.Cue = "counts"      // whether something is part of a figure
	CueDeadWood   scan.Cue = "dead-wood"   // of wood that is not alive any more
	CueDerates    scan.Cue = "derates"     // takes strength off
	CueChanges    scan.Cue = "changes"     // asks whether the wraps are others then
	CueTopOne     scan.Cue = "top-one"     // of the pieces of a plan
	CueBottomOne  scan.Cue = "bottom-one"  // of them too
	CueHitchedAt  scan.Cue = "hitched-at"  // where a piece is tied
	CueLetsGo     scan.Cue = "lets-go"     // to run, or to fall
	CueUpInAir    scan.Cue = "up-in-air"   // behind how high what falls is
	CueDrumSize   scan.Cue = "drum-size"   // a drum that is thicker or thinner
	CueNextPiece  scan.Cue = "next-piece"  // of the piece that is cut after this one
	CueStates     scan.Cue = "states"      // before a number, says that something is so much
	CueFatter     scan.Cue = "fatter"      // holds a piece against another by how thick it is
	CueLengthier  scan.Cue = "lengthier"   // by how long it is
	CueLowEnd     scan.Cue = "low-end"     // the thick end of a stem, beside how thick it is
	CueThickEnd   scan.Cue = "thick-end"   // likewise, in words that no block stands beside
	CueFarEnd     scan.Cue = "far-end"     // the other end in such words
	CueUpEnd      scan.Cue = "up-end"      // the thin one
	CueWrapMore   scan.Cue = "wrap-more"   // one wrap more than before
	CueWrapsMore  scan.Cue = "wraps-more"  // two of them
	CueHalfMore   scan.Cue = "half-more"   // half of one
	CueWrapLess   scan.Cue = "wrap-less"   // one wrap less than before
	CueByLead     scan.Cue = "by-lead"     // before how many more or fewer of what the talk counts
	CueByMore     scan.Cue = "by-more"     // one more of it
	CueByLess     scan.Cue = "by-less"     // one less of it
	CueHalfLess   scan.Cue = "half-less"   // half of one
	CueExcuse     scan.Cue = "excuse"      // behind "sorry", tells no more than an excuse
	CueGloss      scan.Cue = "gloss"       // at the end, says that what stands before it is meant
	CueOneOf      scan.Cue = "one-of"      // before "less", by how many: one
	CueTwoOf      scan.Cue = "two-of"      // two
	CueHalfOf     scan.Cue = "half-of"     // half of one
	CueThanSaid   scan.Cue = "than-said"   // behind "less": than our answer said
	CueMostOf     scan.Cue = "most-of"     // asks which has the most of what stands behind it
	CueManyCuts   scan.Cue = "many-cuts"   // of how many pieces a plan cuts
	CueFriction   scan.Cue = "friction"    // between a rope and what it runs over
	CueFrictionOf scan.Cue = "friction-of" // asks which friction it is
	CueGently     scan.Cue = "gently"      // how a piece is lowered that is never stopped short
	CueHowMuch    scan.Cue = "how-much"    // asks for an amount
	CueLeafy      scan.Cue = "leafy"       // the leaves of a limb
	CueNoTree     scan.Cue = "no-tree"     // that nobody knows the tree
	CueOldRope    scan.Cue = "old-rope"    // a rope that was used
	CueSure       scan.Cue = "sure"        // asks how near a figure is
	CueTellsUs    scan.Cue = "tells-us"    // what we are told
	CueDayAhead   scan.Cue = "day-ahead"   // from which day to come something holds
	CueDayNow     scan.Cue = "day-now"     // that it holds today as well
	CueLaterDay   scan.Cue = "later-day"   // a time of day or a day that is to come
	CueSideOf     scan.Cue = "side-of"     // beside a number, where a job's limit holds
	CueTheTree    scan.Cue = "the-tree"    // names the tree of a job before what it is
	CueLaterOn    scan.Cue = "later-on"    // from when a number holds that does not hold yet
	CueUnitsFine  scan.Cue = "units-fine"  // whether units may be typed
	CueWhichUnits scan.Cue = "which-units" // asks for the units to type
	CueEntered    scan.Cue = "entered"     // asks whether something stands in the log: "did anyone log"
	CueAsksPast   scan.Cue = "asks-past"   // first of a message, asks whether something is or was so
	CueOurLimit   scan.Cue = "our-limit"   // what a piece may weigh here today
	CueKnot       scan.Cue = "knot"        // what ties or ends a rope
	CueMoreBlock  scan.Cue = "more-block"  // one block besides another
	CueMoisture   scan.Cue = "moisture"    // of a weight, whether of green wood
	CueOnePerson  scan.Cue = "one-person"  // one of those on the rope
	CueOfHand     scan.Cue = "of-hand"     // what one of them does on the rope
	CuePounds     scan.Cue = "pounds"      // asks for a mass
	CueRequired   scan.Cue = "required"    // asks what has to be done
	CueRopeDry    scan.Cue = "rope-dry"    // how the rope is
	CueShares     scan.Cue = "shares"      // takes load off something
	CueSameAs     scan.Cue = "same-as"     // between a load and the weight
	CueTail       scan.Cue = "tail"        // the end of a rope
	CueABit       scan.Cue = "a-bit"       // behind what is done, says that it is little
	CueTailFor    scan.Cue = "tail-for"    // behind how much of a rope is left, leads to what for
	CueTailUse    scan.Cue = "tail-use"    // what a tail is for
	CueTailAnd    scan.Cue = "tail-and"    // leads from one of these to the next
	CueTailLeft   scan.Cue = "tail-left"   // before such a number, leaves so much of a rope
	CueTooFar     scan.Cue = "too-far"     // how a piece swings
	CuePick       scan.Cue = "pick"        // behind a mass, the piece that is rigged
	CueWhat       scan.Cue = "what"        // first of a message, asks what something does
	CueMostVerb   scan.Cue = "most-verb"   // at its end, what a tackle or a drum does
	CueWear       scan.Cue = "wear"        // what somebody has on
	CueWhichOfAll scan.Cue = "which-of-it" // asks which to take
)

// What a crew denies of a piece: what it shall not do on its way, how long it shall not be,
// what it cannot weigh.

// The cues of what is denied so.
const (
	CueDisbelief     scan.Cue = "disbelief"      // in what is not believed of a figure, "that cant be right"
	CueDisbeliefVerb scan.Cue = "disbelief-verb" // that begins so
	CueLongerOne     scan.Cue = "longer-one"     // behind that none is, before how long a piece of a cut may be
	CueNoneOf        scan.Cue = "none-of"        // that none of the pieces is so
	CueDrumPost      scan.Cue = "drum-post"      // what the rope goes round like a drum: "the post"
	CueGoesRound     scan.Cue = "goes-round"     // what a rope does at a drum
	CueNay           scan.Cue = "nay"            // a bare "no"
	CueSaysNo        scan.Cue = "says-no"        // before a "no" that is only told of
	CueWhyShort      scan.Cue = "why-short"      // "why" where it begins a message, "because" elsewhere
	CueLikes         scan.Cue = "likes"          // behind a denial, what is thought of an answer
	CueOurAnswer     scan.Cue = "our-answer"     // our answer, where it is liked or not
	CueUtters        scan.Cue = "utters"         // behind a denial, what somebody says
	CueEverybody     scan.Cue = "everybody"      // who is told how far to stay off
	CueKeptOut       scan.Cue = "kept-out"       // before how far nobody shall be near
	CueKeptOff       scan.Cue = "kept-off"       // behind how far off people shall stay
	CueFewerThan     scan.Cue = "fewer-than"     // before how many wraps it may be less than
	CueNoneOver      scan.Cue = "none-over"      // before what no piece shall weigh
	CueStrikes       scan.Cue = "strikes"        // behind a denial, what a piece shall not do on its way
	CueStrikesLead   scan.Cue = "strikes-lead"   // between the two
	CueWholePiece    scan.Cue = "whole-piece"    // before that it comes off at once
)

// The cues of what is told beside the piece: the limb that gear hangs off, another day's
// work, where the brush sits.
const (
	CueLimbAbove scan.Cue = "limb-above" // behind a limb, that it is the one overhead
	CueOtherDay  scan.Cue = "other-day"  // a day of work that is over
	CueDidCut    scan.Cue = "did-cut"    // what a crew did then
	CueOutmost   scan.Cue = "outmost"    // before how much of a limb's end
	CueHoldsUp   scan.Cue = "holds-up"   // beside a limb, that the block hangs on it
)

// What is over is told beside thanks, and asks for nothing: "gracias, ya la bajamos sin
// bronca".

// The cues of such a message.
const (
	CueIsDown    scan.Cue = "is-down"     // that a piece was lowered
	CueMayBeDown scan.Cue = "may-be-down" // likewise, or that it is to be
	CueFinished  scan.Cue = "finished"    // that something is over
	CueNoTrouble scan.Cue = "no-trouble"  // how it went
)

// The cues of a number that is taken back as a guess: "i made up the 400", "the 450 was a
// guess".
const (
	CueGuessedIt scan.Cue = "guessed-it" // before it
	CueWasGuess  scan.Cue = "was-guess"  // behind it
)

// The cues of a kind of piece that is put right: "no its green", "needs leaves? no its dead,
// theres none".
const (
	CueIsNot     scan.Cue = "is-not"     // denies it, where others put it right
	CueNoneThere scan.Cue = "none-there" // there are none of what was asked about
)

// The cues of a piece that is cut across: "so if we cut it in half, each half?".
const (
	CueCutLead  scan.Cue = "cut-lead"  // before that: who does, and if
	CueCutsIt   scan.Cue = "cuts-it"   // that it is cut
	CueCutThing scan.Cue = "cut-thing" // what is cut
	CueHalves   scan.Cue = "halves"    // likewise, and into how many parts
	CueInto     scan.Cue = "into"      // before the parts
	CueCutTo    scan.Cue = "cut-to"    // before the length that something is cut to, or before "pieces"
	CueThirds   scan.Cue = "thirds"    // three of them
	CueQuarters scan.Cue = "quarters"  // four
	CueOfHalf   scan.Cue = "of-half"   // behind "half", that it is half of something else
	CueOnePart  scan.Cue = "one-part"  // one of the parts, or each
)

// CueDownAlong is before a trunk, that a limb is lowered along it: "down the stem".
const CueDownAlong scan.Cue = "down-along"
