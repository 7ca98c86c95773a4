package lexicon

import "heft/parser/scan"

// The cues.
const (
	CueFeelsLike scan.Cue = "feels-like" // before what somebody makes of a weight
	CueGripKnot  scan.Cue = "grip-knot"  // a knot that grips another rope
	CueDrumLeg   scan.Cue = "drum-leg"   // from the block down to the drum
	CueMinute    scan.Cue = "minute"     // minutes, which may be the least as well
	CueParts     scan.Cue = "parts"      // what a piece is cut into, or the line's
	CueTops      scan.Cue = "tops"       // the most of it, or treetops
	CuePeak      scan.Cue = "peak"       // before what a line was pulled with
	CueForce     scan.Cue = "force"      // asks what a block or a redirect sees

	CueAbove      scan.Cue = "above"       // behind how high a block is, with nothing behind it
	CueOnto       scan.Cue = "onto"        // behind what fell, that it fell on somebody
	CueAlong      scan.Cue = "along"       // out along a limb that is an anchor
	CueAnchor     scan.Cue = "anchor"      // the anchor by itself
	CueAnchorIn   scan.Cue = "anchor-in"   // before the tree that is one
	CueAngle      scan.Cue = "angle"       // before bare degrees
	CueAsking     scan.Cue = "asking"      // before what is asked about: "will the winch"
	CueAside      scan.Cue = "aside"       // behind how far a block is off, which way not said
	CueBelow      scan.Cue = "below"       // behind how far a piece hangs from its block
	CueCutting    scan.Cue = "cutting"     // who cuts, before how far that is from plumb
	CueDown       scan.Cue = "down"        // behind "straight"
	CueEach       scan.Cue = "each"        // behind what every one of the people pulls
	CueFor        scan.Cue = "for"         // before the limit of a piece, or the tree of a hinge
	CueFrom       scan.Cue = "from"        // between how far a block is over and what from
	CueHolds      scan.Cue = "holds"       // behind a person, or behind gear
	CueApproves   scan.Cue = "approves"    // asks of gear whether it is good: "all good"
	CueItself     scan.Cue = "itself"      // says that what follows is what somebody weighs
	CueHoldsMe    scan.Cue = "holds-me"    // asks whether something bears who speaks
	CueOwnWeight  scan.Cue = "own-weight"  // who speaks, before what that person weighs: "i'm"
	CueBuilt      scan.Cue = "built"       // between the two, how a person is built: "not big"
	CueMoved      scan.Cue = "moved"       // behind how far a load is pulled aside
	CueNow        scan.Cue = "now"         // behind how a limb lies
	CueStandsHigh scan.Cue = "stands-high" // behind how high something stands
	CueOffset     scan.Cue = "offset"      // before how far a block is off
	CueOther      scan.Cue = "other"       // between two ropes to choose from
	CueOut        scan.Cue = "out"         // behind how far to the side a swing starts
	CueOver       scan.Cue = "over"        // behind how far a block is to the side
	CueOwns       scan.Cue = "owns"        // before what somebody has to work with
	CueOwned      scan.Cue = "owned"       // before a rope that hangs nothing yet
	CueAged       scan.Cue = "aged"        // of gear, that no figure holds for it
	CueBiggest    scan.Cue = "biggest"     // asks how heavy a piece may be, not how long
	CueBiggestOne scan.Cue = "biggest-one" // names the heaviest of several pieces
	CueOpens      scan.Cue = "opens"       // behind legs, before the angle between them
	CueSame       scan.Cue = "same"        // between two sizes, that they are of one thing
	CueHowThick   scan.Cue = "how-thick"   // asks how thick something is
	CueThickest   scan.Cue = "thickest"    // asks how thick it may be at the most: "how thick can"
	CueOuter      scan.Cue = "outer"       // beside a part of a limb, that it is the one at the tip
	CueManages    scan.Cue = "manages"     // behind a machine, before what it takes
	CueArm        scan.Cue = "arm"         // behind a machine, its arm
	CueRopeLong   scan.Cue = "rope-long"   // how long the rope is, told or asked
	CueAsksLength scan.Cue = "asks-length" // asks how long something is, and of what it does not say
	CuePiece      scan.Cue = "piece"       // is what is lowered
	CuePull       scan.Cue = "pull"        // behind what a winch pulls
	CueOfPull     scan.Cue = "of-pull"     // likewise, and nothing else
	CuePulling    scan.Cue = "pulling"     // before what is pulled with
	CueStrength   scan.Cue = "strength"    // behind a figure of a rope's label
	CueThere      scan.Cue = "there"       // behind how far a rope turns
	CueTies       scan.Cue = "ties"        // who ties, before how far along the limb
	CueTowards    scan.Cue = "towards"     // between how far over and the house
	CueTree       scan.Cue = "tree"        // before how tall it is
	CueTries      scan.Cue = "tries"       // before the wraps to try where others slipped
	CueUnder      scan.Cue = "under"       // before the rope that a piece hangs on
	CueMore       scan.Cue = "more"        // behind a wrap that could be put on
	CueThither    scan.Cue = "thither"     // behind "more", a way that says it all
	CueFewer      scan.Cue = "fewer"       // behind one that could be taken off
	CueTakesOff   scan.Cue = "takes-off"   // before it
	CueUpTo       scan.Cue = "up-to"       // before what a piece that is to be cut may weigh
	CueWilling    scan.Cue = "willing"     // behind "not", before or behind what is too heavy
	CueThings     scan.Cue = "things"      // behind a number, what it counts is not of the question
	CueLines      scan.Cue = "lines"       // two of them, that one load hangs on
	CueMeUp       scan.Cue = "me-up"       // before how high who speaks is
	CueOnTag      scan.Cue = "on-tag"      // behind what gear is stamped with
	CuePlumb      scan.Cue = "plumb"       // of how far from plumb a swing starts
	CueToTip      scan.Cue = "to-tip"      // behind how long a piece is
	CueWorking    scan.Cue = "working"     // behind a figure of gear that is its working load
	CueWeighing   scan.Cue = "weighing"    // between somebody and what he weighs
)

// The cues of what a word that is not known may belong to.
const (
	CueColour     scan.Cue = "colour"     // of gear, says nothing of it
	CueHaving     scan.Cue = "having"     // before what something has, or is done with
	CueItIs       scan.Cue = "it-is"      // before how the piece is
	CueMerely     scan.Cue = "merely"     // says nothing of what stands behind it
	CueDetermines scan.Cue = "determines" // stands where an article would
	CueThat       scan.Cue = "that"       // what was spoken of
	CueThe        scan.Cue = "the"        // before what is there already
	CueTurns      scan.Cue = "turns"      // before how something has become
	CueWood       scan.Cue = "wood"       // wood by other words than a piece
	CuePeople     scan.Cue = "people"     // who is no wood and no gear
	CueAllOf      scan.Cue = "all-of-us"  // of those, the crew as a whole
)

// The cues of a limb that is stood up, and of a piece that hangs level.
const (
	CueAims         scan.Cue = "aims"          // before how a piece is to hang
	CueBlocks       scan.Cue = "blocks"        // the blocks of a tackle
	CueClause       scan.Cue = "clause"        // begins what is no part of what stands before it
	CueDenying      scan.Cue = "denying"       // turns round what follows, up to the end of its clause
	CueLeaves       scan.Cue = "leaves"        // behind who is denied to, that nobody may stay
	CueOurs         scan.Cue = "ours"          // behind that, what is no place
	CueExceeds      scan.Cue = "exceeds"       // before the most that a piece may weigh
	CueGrips        scan.Cue = "grips"         // before what a hand holds
	CueTwoTurns     scan.Cue = "two-turns"     // before one wrap, two of them
	CueThreeTurns   scan.Cue = "three-turns"   // likewise, three
	CueEvery        scan.Cue = "every"         // before gear or a place, no more than "the"
	CueLine         scan.Cue = "line"          // a rope, or a power line
	CueRuns         scan.Cue = "runs"          // between a rope and what it runs to
	CueReckons      scan.Cue = "reckons"       // tells what is to be counted or used
	CueClosed       scan.Cue = "closed"        // behind how long a tackle is with its blocks together
	CueNeeds        scan.Cue = "needs"         // before how many wraps it takes
	CueEnough       scan.Cue = "enough"        // asks whether a rope does
	CueHighest      scan.Cue = "highest"       // before how high the block is
	CueHigher       scan.Cue = "higher"        // behind how far a block is above a load
	CueStamped      scan.Cue = "stamped"       // tells what is marked on gear
	CueItSays       scan.Cue = "it-says"       // tells what stands on the gear named right before
	CueShifts       scan.Cue = "shifts"        // before what is to come aside, and how far
	CueWhichRope    scan.Cue = "which-rope"    // asks which of the ropes at hand to take
	CueLands        scan.Cue = "lands"         // before how far out a piece comes down
	CueDownLimb     scan.Cue = "down-limb"     // behind how far out along a limb something is
	CueHalf         scan.Cue = "half"          // where a limb is tied in its middle
	CueHangs        scan.Cue = "hangs"         // before how a piece is to hang
	CueHowHigh      scan.Cue = "how-high"      // before the block whose height is asked for
	CueHinge        scan.Cue = "hinge"         // what a limb turns about
	CueThanIf       scan.Cue = "than-if"       // before what is weighed against what was told
	CueWillFall     scan.Cue = "will-fall"     // before how far a piece is about to fall
	CueIf           scan.Cue = "if"            // before who cuts
	CueLevel        scan.Cue = "level"         // how a piece hangs
	CueLoad         scan.Cue = "load"          // what hangs from a block
	CueMe           scan.Cue = "me"            // who cuts, before how far that is from plumb
	CueRaises       scan.Cue = "raises"        // before a load, and how high it is brought
	CueRise         scan.Cue = "rise"          // behind that height: "ten feet of lift"
	CueLone         scan.Cue = "lone"          // before the one block that there is
	CueSelfAnd      scan.Cue = "self-and"      // who speaks, before those beside
	CueSelfAndOne   scan.Cue = "self-and-one"  // likewise, with one who is not named
	CueAndShort     scan.Cue = "and-short"     // "and", chopped
	CueOffFrom      scan.Cue = "off-from"      // between an angle and what it is off
	CueStraightDown scan.Cue = "straight-down" // how a leg hangs
	CueLead         scan.Cue = "lead"          // the leg of a rope that goes to the drum
	CueOneMore      scan.Cue = "one-more"      // before somebody who joins those who pull
	CueJoins        scan.Cue = "joins"         // of somebody who comes to the rope as well
	CueJoinsToo     scan.Cue = "joins-too"     // behind it: as the others do
	CueMakes        scan.Cue = "makes"         // between blocks and the parts of line they make
	CueABlock       scan.Cue = "a-block"       // one block of a tackle
	CueInterjects   scan.Cue = "interjects"    // behind a "no" that denies nothing
	CueSoThey       scan.Cue = "so-they"       // before what several that are told are not to do
	CueFastened     scan.Cue = "fastened"      // before how high a load is tied
	CueTheCut       scan.Cue = "the-cut"       // before how high it is cut
	CueRises        scan.Cue = "rises"         // before that height, of a load that comes up by itself
	CueLiftNoun     scan.Cue = "lift-noun"     // behind that height, where nothing else follows: "18 ft lift"
	CueRopeEnd      scan.Cue = "rope-end"      // what leaves a block of a tackle, to be pulled
	CueComesOut     scan.Cue = "comes-out"     // that it does
	CueTopBlock     scan.Cue = "top-block"     // the one that hangs still
	CueLoadBlock    scan.Cue = "load-block"    // the one that goes up with the load
	CueOneSheave    scan.Cue = "one-sheave"    // of a block, how many sheaves it has
	CueTwoSheaves   scan.Cue = "two-sheaves"   // likewise
	CueThreeSheaves scan.Cue = "three-sheaves" // likewise
	CueDoes         scan.Cue = "does"          // asks, before "each"
	CueGoesUp       scan.Cue = "goes-up"       // before "up", of a load
	CueOnly         scan.Cue = "only"          // before all that there is
	CueHaulsWith    scan.Cue = "hauls-with"    // behind who pulls, before how hard
	CueAnchorPoint  scan.Cue = "anchor-point"  // what a tackle hangs on
	CueTakesLoad    scan.Cue = "takes-load"    // what it does
	CueNotRun       scan.Cue = "not-run"       // says no more, of a piece that is lowered
	CueLiftedOff    scan.Cue = "lifted-off"    // before where a load lies that is lifted
	CueTackleGives  scan.Cue = "tackle-gives"  // behind what is asked, what a tackle makes of a pull
	CueApart        scan.Cue = "apart"         // behind how far two things are from one another
	CueRopeOf       scan.Cue = "rope-of"       // asks how much rope
	CueTakenIn      scan.Cue = "taken-in"      // behind that, what is done to it in a lift
	CueMeter        scan.Cue = "meter"         // what reads the force in a line
	CueBalances     scan.Cue = "balances"      // before where a piece does
	CueMeasures     scan.Cue = "measures"      // before how long a piece is
	CueBlockOnLoad  scan.Cue = "block-on-load" // a block that may go up with the load or turn the rope
	CueMeets        scan.Cue = "meets"         // what blocks do that run out of room
	CueNot          scan.Cue = "not"           // turns a verb round
	CueOverBlock    scan.Cue = "over-block"    // between a rope and the one block that it goes over
	CueOverHinge    scan.Cue = "over-hinge"    // between how high a block is and the hinge
	CueSling        scan.Cue = "sling"         // what a limb is tied with
	CueSoThat       scan.Cue = "so-that"       // before what is to come of it
	CueThird        scan.Cue = "third"         // behind two of them, where a limb is tied
	CueStraight     scan.Cue = "straight"      // what a rope is off by how far it turns
	CueOffTrunk     scan.Cue = "off-trunk"     // behind how far a leg of the rope is off plumb
	CueLeg          scan.Cue = "leg"           // beside the load, the leg of the rope that goes to it
	CueBothLegs     scan.Cue = "both-legs"     // behind "two", the legs of a rope that an angle lies between
	CueLetsFall     scan.Cue = "lets-fall"     // lets a piece fall
	CueLoaded       scan.Cue = "loaded"        // before such a leg
	CueGoesDown     scan.Cue = "goes-down"     // of a rope, before the block that it comes to
	CueOtherSide    scan.Cue = "other-side"    // of a block, where the other leg of the rope is
	CueEachOne      scan.Cue = "each-one"      // asks for every block
	CueTakesUp      scan.Cue = "takes-up"      // before how long a tackle is with its blocks together
	CueWhere        scan.Cue = "where"         // before what is to be tied
)

// The cues of what is only talk.
const (
	CueAsks       scan.Cue = "asks"        // begins a question: "how", "what"
	CueDegree     scan.Cue = "degree"      // "barely", "hardly"
	CueEither     scan.Cue = "either"      // before two trees that it is one of
	CueWhichever  scan.Cue = "whichever"   // of two trees, the one that weighs more
	CueDoubts     scan.Cue = "doubts"      // before what somebody is not sure of
	CueSound      scan.Cue = "sound"       // of wood, that it may be rigged on
	CueFew        scan.Cue = "few"         // some of several
	CueIndeed     scan.Cue = "indeed"      // "actually"
	CueLot        scan.Cue = "lot"         // behind "a" and a limit, one of the pieces
	CuePast       scan.Cue = "past"        // between what nobody wants and a limit
	CuePlus       scan.Cue = "plus"        // adds people
	CueSelf       scan.Cue = "self"        // who speaks, one of those who are counted
	CuePer        scan.Cue = "per"         // before who said so
	CueBothOf     scan.Cue = "both-of"     // between two pieces, where it is asked which is heavier
	CuePicks      scan.Cue = "picks"       // what a piece is taken in, one or several
	CueEveryOne   scan.Cue = "every-one"   // beside a size that is told once, that it is that of all pieces
	CueForked     scan.Cue = "forked"      // of a limb whose legs are told as pieces
	CueGoesOver   scan.Cue = "goes-over"   // asks which of several goes over the weight behind it
	CueRowLink    scan.Cue = "row-link"    // between numbers of which the same is asked
	CueTruck      scan.Cue = "truck"       // what the wood goes away on
	CueCar        scan.Cue = "car"         // what drives, and carries no wood
	CueMinus      scan.Cue = "minus"       // takes a load off another
	CueAtCut      scan.Cue = "at-cut"      // behind how thick a part is where it is cut off
	CueHalved     scan.Cue = "halved"      // one of two equal parts
	CueLengthwise scan.Cue = "lengthwise"  // how a log is split in two
	CueTwosome    scan.Cue = "twosome"     // two of a kind: "both", "the pair"
	CueBunch      scan.Cue = "bunch"       // brush that is bundled up
	CueAwaited    scan.Cue = "awaited"     // behind "wait", before who or what is waited for
	CueHangsOn    scan.Cue = "hangs-on"    // behind somebody, what they do; elsewhere it takes back
	CueSecondOne  scan.Cue = "second-one"  // another block
	CueWarmth     scan.Cue = "warmth"      // behind how warm it is outside
	CueOutdoors   scan.Cue = "outdoors"    // behind how hot it is, where
	CueHeatOf     scan.Cue = "heat-of"     // before it, that it is of the day
	CueWeSaid     scan.Cue = "we-said"     // before a weight, that it is our answer
	CueWeGave     scan.Cue = "we-gave"     // behind it, likewise
	CueRainfall   scan.Cue = "rainfall"    // behind a length, that so much rain fell
	CueRained     scan.Cue = "rained"      // before it, likewise
	CueMayBe      scan.Cue = "may-be"      // before each of two trees that it could be
	CueVersus     scan.Cue = "versus"      // between two pieces that are compared
	CueThan       scan.Cue = "than"        // between what is compared
	CueTwofold    scan.Cue = "twofold"     // "twice", "double"
	CueIdleIt     scan.Cue = "idle-it"     // behind a denial, nothing of wood or gear: "it doesnt matter"
	CueAbsent     scan.Cue = "absent"      // likewise, of a machine: "the crane isnt coming"
	CueIdleLead   scan.Cue = "idle-lead"   // between a denial and what it denies: "even", "much"
	CueIdleVerb   scan.Cue = "idle-verb"   // behind somebody and a denial: "i dont want"
	CueIdleThing  scan.Cue = "idle-thing"  // likewise, of a thing and of nobody: "cant see the driveway"
	CueLacking    scan.Cue = "lacking"     // behind a denial, what no answer rests on: "no room"
	CueOnIt       scan.Cue = "on-it"       // somebody who rides a piece, or holds the rope that was told of
	CueRather     scan.Cue = "rather"      // asks which of two counts of wraps to take
	CueSaves      scan.Cue = "saves"       // asks how much less one piece weighs than another
	CueWrongWay   scan.Cue = "wrong-way"   // behind a lean, that it is not where the piece shall go
	CueFormer     scan.Cue = "former"      // before gear that was used until now
	CueAtOnce     scan.Cue = "at-once"     // of alike pieces, what all of them weigh
	CueFarOff     scan.Cue = "far-off"     // behind a denial, before what a piece is reckoned to weigh
	CueMood       scan.Cue = "mood"        // at the end of a clause with a denial, how somebody likes it
	CueUsual      scan.Cue = "usual"       // before the gear that somebody mostly has
	CueHasty      scan.Cue = "hasty"       // behind a denial, how nothing is lowered
	CueIgnores    scan.Cue = "ignores"     // before whoever said what is not to be heard
	CueUs         scan.Cue = "us"          // who speaks, and who is spoken to
	CueWho        scan.Cue = "who"         // somebody who does things: "i", "the boss"
	CueHangFrom   scan.Cue = "hang-from"   // before what holds everything: "colgar de", "rig off"
	CueSeen       scan.Cue = "seen"        // behind what there is none of: "that i can find"
	CueStraightUp scan.Cue = "straight-up" // before "over the tie", that a block is plumb over it
	CueLetsDown   scan.Cue = "lets-down"   // before a load that goes "down"
	CueLowDown    scan.Cue = "low-down"    // behind a block, that it hangs low
	CueOtherTree  scan.Cue = "other-tree"  // a tree that is not the one that is worked on
	CueClears     scan.Cue = "clears"      // of a swing, that it misses something
	CueClearedBy  scan.Cue = "cleared-by"  // between that and how far it does
	CueMargin     scan.Cue = "margin"      // behind how far it does
	CueKeepsOff   scan.Cue = "keeps-off"   // before how far something is to be kept off another
	CueOffWall    scan.Cue = "off-wall"    // between that and the other
	CueSwept      scan.Cue = "swept"       // what a load that runs does to who holds it
	CueOffFeet    scan.Cue = "off-feet"    // behind that, where it leaves them: no longer on their feet
	CueOffGround  scan.Cue = "off-ground"  // the same, which may be said of any load that is lifted
	CueDryToo     scan.Cue = "dry-too"     // of wood that is dead, and of rope as well
	CueLikened    scan.Cue = "likened"     // before what something is held against: "as dry"
	CueSpeed      scan.Cue = "speed"       // of a wind, behind how fast it blows
	CueFolk       scan.Cue = "folk"        // somebody, where an article or a number stands before: "a dude", "un wey"
)

// The cues of a cut plan.
const (
	CueFromTop    scan.Cue = "from-top"    // where a stick is cut first
	CueLength     scan.Cue = "length"      // compares how long pieces are
	CueAmends     scan.Cue = "amends"      // what follows takes the place of what was told before
	CueNoBranches scan.Cue = "no-branches" // a piece of which nothing but the stem is left
	CueExperience scan.Cue = "experience"  // behind a denial, what somebody has never done
	CueBut        scan.Cue = "but"         // what stands behind it is rather so
	CueThought    scan.Cue = "thought"     // a number behind it is only somebody\'s word
	CueTaped      scan.Cue = "taped"       // a number behind it was measured
	CueMetal      scan.Cue = "metal"       // what a drum is made of
	CueLeft       scan.Cue = "left"        // behind how far to that side something is
	CueRight      scan.Cue = "right"
	CueTiedTip    scan.Cue = "tied-tip" // where a piece is tied, in one breath: "tip tied"
	CueTiedButt   scan.Cue = "tied-butt"
	CueTiedMiddle scan.Cue = "tied-middle"
	CueFromTip    scan.Cue = "from-tip"   // behind how far a tie is from the tip
	CueOfWay      scan.Cue = "of-way"     // behind a part of the length
	CueTiePoint   scan.Cue = "tie-point"  // where a piece is tied, by its name
	CueRightOver  scan.Cue = "right-over" // behind how high a block is, before its hinge
	CueRidge      scan.Cue = "ridge"      // behind how high a roof is, where
	CueHowLow     scan.Cue = "how-low"    // asks how far down a piece comes
	CueEndsUp     scan.Cue = "ends-up"    // behind it, what a piece does
	CueInward     scan.Cue = "inward"     // behind how far a block is toward the trunk
	CueMakesIt    scan.Cue = "makes-it"   // before what somebody says that a piece weighs
	CueGoesFar    scan.Cue = "goes-far"   // before how long a piece is: "goes up"
)

// The cues of shares: of people, of a pull, of a leg, of an answer.
const (
	CueEfficient       scan.Cue = "efficient"        // behind a percentage, of what passes a block
	CueLoses           scan.Cue = "loses"            // beside one, what does not pass
	CueSheave          scan.Cue = "sheave"           // behind "each", where it is lost
	CueOffBy           scan.Cue = "off-by"           // before how far a size may be off
	CueOpines          scan.Cue = "opines"           // what people do who only say something
	CueCouple          scan.Cue = "couple"           // two, before wraps or people
	CueWithCentimetres scan.Cue = "with-centimetres" // between metres and centimetres without their units: "1 con 20"
	CueBreaksAt        scan.Cue = "breaks-at"        // before "at" and a load, what a rope breaks at: "rota a 16 mil"
	CueWas             scan.Cue = "was"              // before what a number was meant to be: "eran 30"
	CueBent            scan.Cue = "bent"             // of hardware, that it is ruined; of a rope, that it is turned or doubled
	CueOneLike         scan.Cue = "one-like"         // beside a number, a thing of the kind named before: "a 100 kN one", "una de 50 kN"
	CueFeels           scan.Cue = "feels"            // behind gear, what it gets: "the anchor feels"
	CueNegative        scan.Cue = "negative"         // among words for a drop, that the block is below the cut
	CueBlockUnder      scan.Cue = "block-under"      // that the block is below the cut
	CueDifference      scan.Cue = "difference"       // asks how much two of something differ
	CueAtHalf          scan.Cue = "at-half"          // before half a piece, that its middle is meant: "va a media rama"
	CueVehicle         scan.Cue = "vehicle"          // what a piece is loaded on
	CueTheTrunk        scan.Cue = "the-trunk"        // behind an article, the stem of a crown that is cut whole
	CueCutOnTrunk      scan.Cue = "cut-on-trunk"     // where the longest piece is cut, that it is a log: "how long on the trunk"
	CueCrown           scan.Cue = "crown"            // such a crown
	CueRopeName        scan.Cue = "rope-name"        // a rope, before "of" and a fraction: "soga de 1/2"
	CueRoundIt         scan.Cue = "round-it"         // behind a length, that it is a girth: "1,5 m de vuelta"
	CueHands           scan.Cue = "hands"            // behind that, one person: "a pair of hands"
	CueOneLeg          scan.Cue = "one-leg"          // behind "per", a leg of a sling
	CueGivesBoth       scan.Cue = "gives-both"       // before "both", that two answers are wanted
	CueWays            scan.Cue = "ways"             // behind it, likewise: "both ways"
	CueAtRope          scan.Cue = "at-rope"          // among what tells of people, that they hold or pull
	CueCarries         scan.Cue = "carries"          // before what share of a load somebody pulls
	CueBorne           scan.Cue = "borne"            // behind that share, the load
	CueDrumHolder      scan.Cue = "drum-holder"      // what the drum is tied to its tree with
	CueToHold          scan.Cue = "to-hold"          // behind gear, the load that comes on it: "has to hold"
	CueBlockOf         scan.Cue = "block-of"         // a block of wood, or gear of so much strength
	CueCarriesLoad     scan.Cue = "carries-load"     // behind a rope, before the load in it
	CueRopeTurns       scan.Cue = "rope-turns"       // the rope, with what it does at a block
	CuePieceMiddle     scan.Cue = "piece-middle"     // before how far that is above a block
	CueWhenNew         scan.Cue = "when-new"         // behind a strength, that it was that of new rope
	CueCan             scan.Cue = "can"              // before what gear holds, that its strength is meant
)

// What two legs of a rope do with the angle between them, and what leads to what else
// they may make one with.
const (
	CueForms   scan.Cue = "forms"
	CueAgainst scan.Cue = "against"
)

// Some messages ask about no piece: what is kept for the job, what others asked,
// what the trade answers in one line. None of them holds a number, so that nothing
// is left out that could be one of a piece.

// The cues of such a message. They are looked for wherever they are typed.
const (
	CueArborist scan.Cue = "arborist"  // who confirms the answers of a job
	CueAskedBy  scan.Cue = "asked-by"  // what others asked, or did
	CueBetter   scan.Cue = "better"    // weighs one way of working against another
	CueCapable  scan.Cue = "capable"   // asks what we can do
	CueDone     scan.Cue = "done"      // what was done
	CueDouble   scan.Cue = "double"    // twice the load
	CueEarlier  scan.Cue = "earlier"   // when that was
	CueToCome   scan.Cue = "to-come"   // that it is yet to come: "is it going to"
	CueGives    scan.Cue = "gives"     // before what is to be handed over
	CueGreen    scan.Cue = "green"     // of wood that is alive
	CueInLog    scan.Cue = "in-log"    // asks what the log says
	CueHaveWe   scan.Cue = "have-we"   // asks what is in use
	CueHeavier  scan.Cue = "heavier"   // of one kind of wood beside another
	CueForWhom  scan.Cue = "for-whom"  // between what is handed over and the word that hands it over
	CueMoves    scan.Cue = "moves"     // behind a log of wood, where it goes
	CueWhy      scan.Cue = "why"       // asks for a reason
	CueHelps    scan.Cue = "helps"     // asks how we are asked
	CueToo      scan.Cue = "too"       // in what asks what we can do
	CueHeavyEnd scan.Cue = "heavy-end" // how we name the heaviest that a piece may be
	CueKept     scan.Cue = "kept"      // what was told to be kept
	CueLanguage scan.Cue = "language"  // English, Spanish
	CueSeesLoad scan.Cue = "sees-load" // what sees a load
	CueOfJob    scan.Cue = "of-job"    // what can hold for a job
	CueOfLog    scan.Cue = "of-log"    // the log, and no piece of wood
	CueWoodLog  scan.Cue = "wood-log"  // the last word of the log, where it may be one of wood
	CueRating   scan.Cue = "rating"    // the words of a gear's label
	CueWeaker   scan.Cue = "weaker"    // of a rope
	CueMeaning  scan.Cue = "meaning"   // asks what a word means
)

// Who pulls and stands where, and what leads from one end of a piece to the other.
const (
	CuePullWith  scan.Cue = "pull-with"  // before what nothing else is done with
	CueHandPulls scan.Cue = "hand-pulls" // between somebody and what they pull with
	CueMeBack    scan.Cue = "me-back"    // who speaks, before how far off he stands
	CueMovesLoad scan.Cue = "moves-load" // of a load on a tackle, before how far
	CueEndsIn    scan.Cue = "ends-in"    // between one end of a piece and the other
)
