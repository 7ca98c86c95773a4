package parser

import "slices"

// What a new groundworker asks of the trade, of the answers and of the log, by the lines
// `topic` of the word files. Each is named there as here, without "about-".
const (
	TopicShock     Intent = "about-shock-load"    // what a shock load is
	TopicLetRun    Intent = "about-let-run"       // what the climber means by it
	TopicScale     Intent = "about-scale"         // whether twice as thick is twice as heavy
	TopicFarther   Intent = "about-farther"       // whether a longer fall matters
	TopicSlack     Intent = "about-slack"         // how much slack may be in the rope
	TopicCreeps    Intent = "about-creeps"        // what to do where the rope creeps on the drum
	TopicRunsAway  Intent = "about-runs-away"     // what to do where the piece runs away
	TopicEdge      Intent = "about-edge"          // whether a rope may run over an edge
	TopicFork      Intent = "about-fork"          // whether it may run over a fork of the tree
	TopicWetWood   Intent = "about-wet-wood"      // whether wet wood is heavier
	TopicIced      Intent = "about-iced"          // whether snow and ice weigh
	TopicHotRope   Intent = "about-hot-rope"      // whether a rope may get hot
	TopicShakes    Intent = "about-shakes"        // whether a stem may shake
	TopicTieEnd    Intent = "about-tie-end"       // whether to tie at the butt or at the tip
	TopicShortRope Intent = "about-short-rope"    // what to do where the rope is too short
	TopicSpins     Intent = "about-spins"         // what to do where the piece turns
	TopicStand     Intent = "about-stand"         // where to stand
	TopicLanded    Intent = "about-landed"        // how long to hold what has landed
	TopicTwoRopes  Intent = "about-two-ropes"     // whether two ropes share a piece
	TopicWrapsOff  Intent = "about-wraps-off"     // what too many or too few wraps do
	TopicWhoToAsk  Intent = "about-who-to-ask"    // whom to ask in doubt
	TopicCalls     Intent = "about-calls"         // what a shout means, and who gives it
	TopicWhenLower Intent = "about-when-lower"    // who says when to lower
	TopicHowFast   Intent = "about-how-fast"      // how fast a piece comes down
	TopicStretches Intent = "about-stretches"     // whether a rope may stretch
	TopicGloves    Intent = "about-gloves"        // whether hands need gloves
	TopicHand      Intent = "about-hand-on-rope"  // how the hand holds the tail
	TopicWrapsWhen Intent = "about-wraps-when"    // when the wraps go on
	TopicFromWraps Intent = "about-from-wraps"    // whether the wraps tell what a piece weighs
	TopicHigher    Intent = "about-higher-block"  // whether a higher block carries more
	TopicBigger    Intent = "about-bigger"        // a piece that is bigger than was told
	TopicOverLimit Intent = "about-over-limit"    // what is over the limit
	TopicGrowsOn   Intent = "about-grows-on"      // whether ivy and nests weigh
	TopicLoose     Intent = "about-loose"         // gear that has come loose
	TopicMeasure   Intent = "about-measure"       // where a piece is measured
	TopicLogOrLimb Intent = "about-log-or-limb"   // which of the two a piece is
	TopicKnots     Intent = "about-knots"         // which knot, and how it is tied
	TopicDropped   Intent = "about-drop-or-lower" // how a drop differs from lowering
	TopicShocked   Intent = "about-shocked"       // whether a hard stop hurt the rope
	TopicPlace     Intent = "about-block-place"   // how far below the cut the block hangs
	TopicSameThere Intent = "about-same-there"    // whether what holds the block sees the same
	TopicMoreRope  Intent = "about-more-rope"     // whether more rope softens a stop
	TopicButtShort Intent = "about-butt-short"    // why the pieces at the butt are the shortest
	TopicWindy     Intent = "about-windy"         // how much wind is too much
	TopicChoked    Intent = "about-choked"        // why a choked sling holds less
)

// What is asked of the answers, and of us.
const (
	TopicHeavier   Intent = "about-heavier"     // a piece was heavier than was said
	TopicTrust     Intent = "about-trust"       // how anybody knows that a figure is right
	TopicItsUnits  Intent = "about-its-units"   // whether a figure was kilos or pounds
	TopicKept      Intent = "about-kept"        // who sees what is asked
	TopicSigns     Intent = "about-signs"       // whether we put our name to a tree or a figure
	TopicWhoAreYou Intent = "about-who-are-you" // whether we are somebody
	TopicMistyped  Intent = "about-mistyped"    // what to do about a slip
	TopicNoSize    Intent = "about-no-size"     // what to do where nobody can measure
	TopicAside     Intent = "about-aside"       // saws, chippers, what the weather will be
	TopicOffline   Intent = "about-offline"     // what to do without a signal
	TopicRange     Intent = "about-range"       // why a weight is a range
	TopicWhyAsk    Intent = "about-why-confirm" // why every answer ends with the arborist
	TopicTrees     Intent = "about-trees"       // which trees we know
	TopicPhoto     Intent = "about-photo"       // whether we read pictures
	TopicKN        Intent = "about-kn"          // what a kilonewton is
	TopicKilo      Intent = "about-kilo"        // what a kilogram is in pounds
	TopicStartOver Intent = "about-start-over"  // how to begin anew
	TopicSetJob    Intent = "about-set-job"     // how a limit or gear is told for the job
	TopicDoubt     Intent = "about-doubt"       // a figure that somebody does not believe
	TopicStandBy   Intent = "about-how-confirm" // how somebody stands by an answer
	TopicWhy       Intent = "about-why"         // why the last answer is so
	TopicAssumed   Intent = "about-assumed"     // what the last answer takes for granted
	TopicLog       Intent = "about-log"         // what was asked and answered
	TopicLogOpen   Intent = "about-log-open"    // what of it nobody stood by yet
	TopicNote      Intent = "about-note"        // what is to be written down, or called to mind
)

// What a word of the trade means.
const (
	WordBlock    Intent = "about-word-block"
	WordDrum     Intent = "about-word-drum"
	WordTagLine  Intent = "about-word-tag-line"
	WordBight    Intent = "about-word-bight"
	WordNegative Intent = "about-word-negative"
	WordRedirect Intent = "about-word-redirect"
	WordHitched  Intent = "about-word-hitched"
	WordButt     Intent = "about-word-butt"
	WordSpar     Intent = "about-word-spar"
	WordTackle   Intent = "about-word-tackle"
)

// TopicsTold are all that the lines `topic` may name: those above, and some that words
// by themselves tell too.
var TopicsTold = []Intent{
	TopicShock, TopicLetRun, TopicScale, TopicFarther, TopicSlack, TopicCreeps, TopicRunsAway, TopicEdge, TopicFork,
	TopicWetWood, TopicIced, TopicHotRope, TopicShakes, TopicTieEnd, TopicShortRope, TopicSpins, TopicStand, TopicLanded, TopicTwoRopes,
	TopicWrapsOff, TopicWhoToAsk, TopicDropped, TopicShocked,
	TopicHeavier, TopicTrust, TopicItsUnits, TopicKept, TopicSigns, TopicWhoAreYou, TopicMistyped, TopicNoSize, TopicAside,
	TopicWhy, TopicAssumed, TopicLog,
	WordBlock, WordDrum, WordTagLine, WordBight, WordNegative, WordRedirect, WordHitched, WordButt, WordSpar, WordTackle,
	TopicCalls, TopicWhenLower, TopicHowFast, TopicStretches, TopicGloves, TopicHand, TopicWrapsWhen, TopicFromWraps, TopicHigher, TopicBigger,
	TopicOverLimit, TopicGrowsOn, TopicLoose, TopicMeasure, TopicLogOrLimb, TopicKnots, TopicOffline, TopicRange, TopicWhyAsk, TopicTrees, TopicPhoto, TopicKN,
	TopicKilo, TopicStartOver, TopicSetJob, TopicDoubt, TopicStandBy, TopicPlace,
	TopicSameThere, TopicMoreRope, TopicButtShort, TopicWindy, TopicChoked, TopicLogOpen, TopicNote,
	TopicBlock, TopicKnot, TopicWet, TopicOldRope, TopicWay, TopicMoist, TopicLeaves,
}

// Told says whether a line `topic` may have a name.
func Told(name string) bool { return slices.Contains(TopicsTold, "about-"+Intent(name)) }
