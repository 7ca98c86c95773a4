package parser

// cue names words that mean nothing by themselves, but say what a number beside
// them is: "over" behind a block, "now" behind "level". Every language has its
// own, in the lines `cue` of its file.
type cue string

// The cues.
const (
	cueAbove    cue = "above"     // behind how high a block is, with nothing behind it
	cueOnto     cue = "onto"      // behind what fell, that it fell on somebody
	cueAlong    cue = "along"     // out along a limb that is an anchor
	cueAnchor   cue = "anchor"    // the anchor by itself
	cueAnchorIn cue = "anchor-in" // before the tree that is one
	cueAngle    cue = "angle"     // before bare degrees
	cueAsking   cue = "asking"    // before what is asked about: "will the winch"
	cueAside    cue = "aside"     // behind how far a block is off, which way not said
	cueBelow    cue = "below"     // behind how far a piece hangs from its block
	cueCutting  cue = "cutting"   // who cuts, before how far that is from plumb
	cueDown     cue = "down"      // behind "straight"
	cueEach     cue = "each"      // behind what every one of the people pulls
	cueFor      cue = "for"       // before the limit of a piece, or the tree of a hinge
	cueFrom     cue = "from"      // between how far a block is over and what from
	cueHolds    cue = "holds"     // behind a person
	cueItself   cue = "itself"    // says that what follows is what somebody weighs
	cueMoved    cue = "moved"     // behind how far a load is pulled aside
	cueNow      cue = "now"       // behind how a limb lies
	cueOffset   cue = "offset"    // before how far a block is off
	cueOther    cue = "other"     // between two ropes to choose from
	cueOut      cue = "out"       // behind how far to the side a swing starts
	cueOver     cue = "over"      // behind how far a block is to the side
	cueOwns     cue = "owns"      // before what somebody has to work with
	cueOwned    cue = "owned"     // before a rope that hangs nothing yet
	cuePiece    cue = "piece"     // is what is lowered
	cuePull     cue = "pull"      // behind what a winch pulls
	cueOfPull   cue = "of-pull"   // likewise, and nothing else
	cuePulling  cue = "pulling"   // before what is pulled with
	cueStrength cue = "strength"  // behind a figure of a rope's label
	cueThere    cue = "there"     // behind how far a rope turns
	cueTies     cue = "ties"      // who ties, before how far along the limb
	cueTowards  cue = "towards"   // between how far over and the house
	cueTree     cue = "tree"      // before how tall it is
	cueTries    cue = "tries"     // before the wraps to try where others slipped
	cueUnder    cue = "under"     // before the rope that a piece hangs on
	cueMore     cue = "more"      // behind a wrap that could be put on
	cueThither  cue = "thither"   // behind "more", a way that says it all
	cueFewer    cue = "fewer"     // behind one that could be taken off
	cueTakesOff cue = "takes-off" // before it
	cueUpTo     cue = "up-to"     // before what a piece that is to be cut may weigh
	cueWilling  cue = "willing"   // behind "not", before or behind what is too heavy
	cueThings   cue = "things"    // behind a number, what it counts is not of the question
	cueLines    cue = "lines"     // two of them, that one load hangs on
	cueMeUp     cue = "me-up"     // before how high who speaks is
	cueOnTag    cue = "on-tag"    // behind what gear is stamped with
	cuePlumb    cue = "plumb"     // of how far from plumb a swing starts
	cueToTip    cue = "to-tip"    // behind how long a piece is
	cueWorking  cue = "working"   // behind a figure of gear that is its working load
	cueWeighing cue = "weighing"  // between somebody and what he weighs
)

// The cues of what a word that is not known may belong to.
const (
	cueColour cue = "colour" // of gear, says nothing of it
	cueHaving cue = "having" // before what something has, or is done with
	cueItIs   cue = "it-is"  // before how the piece is
	cueMerely cue = "merely" // says nothing of what stands behind it
	cueThat   cue = "that"   // what was spoken of
	cueThe    cue = "the"    // before what is there already
	cueTurns  cue = "turns"  // before how something has become
	cueWood   cue = "wood"   // wood by other words than a piece
	cuePeople cue = "people" // who is no wood and no gear
)

// The cues of a limb that is stood up, and of a piece that hangs level.
const (
	cueAims       cue = "aims"        // before how a piece is to hang
	cueBlocks     cue = "blocks"      // the blocks of a tackle
	cueClause     cue = "clause"      // begins what is no part of what stands before it
	cueDenying    cue = "denying"     // turns round what follows, up to the end of its clause
	cueLeaves     cue = "leaves"      // behind who is denied to, that nobody may stay
	cueOurs       cue = "ours"        // behind that, what is no place
	cueExceeds    cue = "exceeds"     // before the most that a piece may weigh
	cueGrips      cue = "grips"       // before what a hand holds
	cueTwoTurns   cue = "two-turns"   // before one wrap, two of them
	cueThreeTurns cue = "three-turns" // likewise, three
	cueEvery      cue = "every"       // before gear or a place, no more than "the"
	cueLine       cue = "line"        // a rope, or a power line
	cueRuns       cue = "runs"        // between a rope and what it runs to
	cueReckons    cue = "reckons"     // tells what is to be counted or used
	cueClosed     cue = "closed"      // behind how long a tackle is with its blocks together
	cueNeeds      cue = "needs"       // before how many wraps it takes
	cueEnough     cue = "enough"      // asks whether a rope does
	cueHighest    cue = "highest"     // before how high the block is
	cueHigher     cue = "higher"      // behind how far a block is above a load
	cueStamped    cue = "stamped"     // tells what is marked on gear
	cueShifts     cue = "shifts"      // before what is to come aside, and how far
	cueHalf       cue = "half"        // where a limb is tied in its middle
	cueHangs      cue = "hangs"       // before how a piece is to hang
	cueHowHigh    cue = "how-high"    // before the block whose height is asked for
	cueHinge      cue = "hinge"       // what a limb turns about
	cueIf         cue = "if"          // before who cuts
	cueLevel      cue = "level"       // how a piece hangs
	cueLoad       cue = "load"        // what hangs from a block
	cueMe         cue = "me"          // who cuts, before how far that is from plumb
	cueMeasures   cue = "measures"    // before how long a piece is
	cueMeets      cue = "meets"       // what blocks do that run out of room
	cueNot        cue = "not"         // turns a verb round
	cueOverBlock  cue = "over-block"  // between a rope and the one block that it goes over
	cueOverHinge  cue = "over-hinge"  // between how high a block is and the hinge
	cueSling      cue = "sling"       // what a limb is tied with
	cueSoThat     cue = "so-that"     // before what is to come of it
	cueThird      cue = "third"       // behind two of them, where a limb is tied
	cueStraight   cue = "straight"    // what a rope is off by how far it turns
	cueOffTrunk   cue = "off-trunk"   // behind how far a leg of the rope is off plumb
	cueLeg        cue = "leg"         // beside the load, the leg of the rope that goes to it
	cueLoaded     cue = "loaded"      // before such a leg
	cueGoesDown   cue = "goes-down"   // of a rope, before the block that it comes to
	cueOtherSide  cue = "other-side"  // of a block, where the other leg of the rope is
	cueEachOne    cue = "each-one"    // asks for every block
	cueTakesUp    cue = "takes-up"    // before how long a tackle is with its blocks together
	cueWhere      cue = "where"       // before what is to be tied
)

// The cues of what is only talk.
const (
	cueAsks      cue = "asks"       // begins a question: "how", "what"
	cueDegree    cue = "degree"     // "barely", "hardly"
	cueEither    cue = "either"     // before two trees that it is one of
	cueWhichever cue = "whichever"  // of two trees, the one that weighs more
	cueDoubts    cue = "doubts"     // before what somebody is not sure of
	cueSound     cue = "sound"      // of wood, that it may be rigged on
	cueFew       cue = "few"        // some of several
	cueIndeed    cue = "indeed"     // "actually"
	cueLot       cue = "lot"        // behind "a" and a limit, one of the pieces
	cuePast      cue = "past"       // between what nobody wants and a limit
	cuePlus      cue = "plus"       // adds people
	cueSelf      cue = "self"       // who speaks, one of those who are counted
	cuePer       cue = "per"        // before who said so
	cueBothOf    cue = "both-of"    // between two pieces, where it is asked which is heavier
	cueBunch     cue = "bunch"      // brush that is bundled up
	cueHangsOn   cue = "hangs-on"   // behind somebody, what they do; elsewhere it takes back
	cueSecondOne cue = "second-one" // another block
	cueWarmth    cue = "warmth"     // behind how warm it is outside
	cueMayBe     cue = "may-be"     // before each of two trees that it could be
	cueVersus    cue = "versus"     // between two pieces that are compared
	cueThan      cue = "than"       // between what is compared
	cueTwofold   cue = "twofold"    // "twice", "double"
	cueIdleIt    cue = "idle-it"    // behind a denial, nothing of wood or gear: "it doesnt matter"
	cueIdleLead  cue = "idle-lead"  // between a denial and what it denies: "even", "much"
	cueIdleVerb  cue = "idle-verb"  // behind somebody and a denial: "i dont want"
	cueIdleThing cue = "idle-thing" // likewise, of a thing and of nobody: "cant see the driveway"
	cueLacking   cue = "lacking"    // behind a denial, what no answer rests on: "no room"
	cueIgnores   cue = "ignores"    // before whoever said what is not to be heard
	cueUs        cue = "us"         // who speaks, and who is spoken to
	cueWho       cue = "who"        // somebody who does things: "i", "the boss"
	cueHangFrom  cue = "hang-from"  // before what holds everything: "colgar de", "rig off"
	cueSeen      cue = "seen"       // behind what there is none of: "that i can find"
	cueDryToo    cue = "dry-too"    // of wood that is dead, and of rope as well
	cueSpeed     cue = "speed"      // of a wind, behind how fast it blows
	cueFolk      cue = "folk"       // somebody, where an article or a number stands before: "a dude", "un wey"
)

// The cues of a cut plan.
const (
	cueFromTop cue = "from-top" // where a stick is cut first
	cueLength  cue = "length"   // compares how long pieces are
)

// The cues of shares: of people, of a pull, of a leg, of an answer.
const (
	cueEfficient cue = "efficient"  // behind a percentage, of what passes a block
	cueLoses     cue = "loses"      // beside one, what does not pass
	cueSheave    cue = "sheave"     // behind "each", where it is lost
	cueOffBy     cue = "off-by"     // before how far a size may be off
	cueOpines    cue = "opines"     // what people do who only say something
	cueCouple    cue = "couple"     // two, before wraps or people
	cueHands     cue = "hands"      // behind that, one person: "a pair of hands"
	cueOneLeg    cue = "one-leg"    // behind "per", a leg of a sling
	cueGivesBoth cue = "gives-both" // before "both", that two answers are wanted
	cueWays      cue = "ways"       // behind it, likewise: "both ways"
	cueAtRope    cue = "at-rope"    // among what tells of people, that they hold or pull
	cueCarries   cue = "carries"    // before what share of a load somebody pulls
	cueBorne     cue = "borne"      // behind that share, the load
)

var cueNamed = map[cue]bool{
	cueEfficient: true, cueOffBy: true, cueLoses: true, cueSheave: true, cueOpines: true, cueCouple: true, cueHands: true, cueOneLeg: true, cueGivesBoth: true, cueWays: true, cueAtRope: true, cueCarries: true, cueBorne: true,
	cueEvery: true, cueExceeds: true, cueGrips: true, cueLine: true, cueRuns: true, cueThreeTurns: true, cueTwoTurns: true,
	cueAils: true, cueAloft: true, cueCrew: true, cueGround: true, cueQuery: true, cueQueryFirst: true, cueReason: true,
	cueAskedBy: true, cueBackIn: true, cueBetter: true, cueCapable: true, cueDone: true, cueDouble: true, cueEarlier: true, cueGives: true, cueGreen: true, cueHaveWe: true, cueHeavier: true,
	cueHeavyEnd: true, cueHelps: true, cueForWhom: true, cueMoves: true, cueWhy: true, cueToo: true, cueKept: true, cueLanguage: true, cueSeesLoad: true, cueOfJob: true, cueOfLog: true, cueRating: true, cueWeaker: true, cueMeaning: true,
	cueNoOne: true, cuePost: true, cueRoster: true, cueWhoIs: true, cueAtPost: true, cueInLog: true,
	cueAssumes: true, cueBehind: true, cueClockwise: true, cueFigures: true, cueGently: true, cueHowMuch: true, cueMoisture: true, cueMoveBlock: true, cueOnePerson: true,
	cueOfHand: true, cueRopeDry: true, cueSameAs: true, cueTail: true, cueTooFar: true, cueWear: true, cueWhichOfAll: true,
	cueAhead: true, cueByHand: true, cueConfirm: true, cueConfirmed: true, cueCountOn: true, cueDerates: true, cueFriction: true, cueFrictionOf: true, cueKnot: true, cueMoreBlock: true,
	cueAtBlock: true, cueClimber: true, cueCounted: true, cueFormerly: true, cueGone: true, cueLeading: true, cueNewly: true, cueForms: true, cueBark: true, cueCounts: true, cueDrumSize: true, cueLeafy: true, cueNoTree: true, cueOldRope: true, cueSure: true, cueTellsUs: true, cueWhichUnits: true, cueArborist: true, cueDeadWood: true, cueAgainst: true, cuePounds: true, cueUncounted: true,
	cueOutcome: true, cueRecorded: true, cueRequired: true, cueShares: true, cueUtmost: true, cueWhose: true,
	cueHigher: true, cueShifts: true, cueStamped: true, cueEnough: true, cueHighest: true,
	cueAbove: true, cueOnto: true, cueAlong: true, cueAnchor: true, cueAnchorIn: true, cueAngle: true, cueAside: true, cueBelow: true,
	cueAims: true, cueBlocks: true, cueHangs: true, cueHowHigh: true, cueStraight: true, cueOffTrunk: true, cueLeg: true, cueLoaded: true, cueGoesDown: true, cueEachOne: true, cueOtherSide: true, cueThird: true, cueOverBlock: true, cueLevel: true, cueMeets: true, cueNot: true, cueSling: true, cueSoThat: true, cueWhere: true,
	cueClause: true, cueClosed: true, cueHinge: true, cueHalf: true, cueIf: true, cueLoad: true, cueMeasures: true, cueMe: true, cueOverHinge: true, cueTakesUp: true,
	cueCutting: true, cueDown: true, cueEach: true, cueFor: true, cueFrom: true, cueHolds: true, cueItself: true, cueMoved: true, cueNow: true,
	cueOffset: true, cueOther: true, cueOut: true, cueOver: true, cueOwned: true, cuePiece: true, cuePull: true, cueStrength: true, cueThere: true,
	cueThings: true, cuePlumb: true, cueOnTag: true, cueMeUp: true, cueLines: true, cueToTip: true, cueTies: true, cueTowards: true, cueTree: true, cueTries: true, cueUnder: true, cueMore: true, cueThither: true, cueFewer: true, cueTakesOff: true, cueUpTo: true, cueWilling: true, cueWeighing: true, cueWorking: true,
	cueDenying: true, cueReckons: true, cueOurs: true, cueLeaves: true, cueAsking: true, cueNeeds: true, cueOfPull: true, cuePulling: true, cueOwns: true,
	cueHaving: true, cueItIs: true, cueMerely: true, cuePeople: true, cueThat: true, cueThe: true, cueTurns: true, cueWood: true, cueColour: true,
	cueAsks: true, cueDegree: true, cueFew: true, cueIndeed: true, cueLot: true, cuePast: true, cuePer: true, cuePlus: true, cueSelf: true, cueTwofold: true, cueIdleIt: true, cueIdleLead: true, cueIdleVerb: true, cueIdleThing: true, cueUs: true, cueLacking: true, cueWho: true, cueFolk: true, cueSpeed: true, cueSeen: true, cueDryToo: true, cueHangFrom: true,
	cueIgnores: true, cueEither: true, cueWhichever: true, cueThan: true, cueWarmth: true, cueBunch: true, cueHangsOn: true, cueSecondOne: true, cueVersus: true, cueBothOf: true, cueMayBe: true,
	cueFromTop: true, cueLength: true,
	cueDoubts: true, cueSound: true,
}

// cued says whether an element is one of the words of a cue.
func (rd *reading) cued(e element, c cue) bool { return rd.in.cues[c][rd.word(e)] }
