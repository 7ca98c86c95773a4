package parser

// What shall hold a redirect or the drum is told in words that mostly tell of
// other things: "use the 6 in dogwood as a redirect", "anclaje en un plátano de
// 35 cm".

// HighestSling is the highest that a height told with an anchor is a sling round
// its stem rather than the top block, in metres.
const HighestSling = 3

// What a sling, a drum or a block bears is asked for in as many words as there are
// for bearing, and told in the same ones: "how many lbs on the drum sling", "block
// load worked out at 24 kN".

// The notes of what bears it.
const (
	NoteOnBlock   = "on-block"   // the load told is that of the block, and of what holds it
	NoteOverBlock = "over-block" // the rope runs over a block instead of wood
	NoteDrumLoad  = "drum-load"  // it is asked what the drum, and its sling, bears
)

// Wood that a block hangs on is an anchor and no piece: "hang the block on an 8 in red
// maple limb", "12 in at the block". What it is loaded with is lowered through that
// block.

// NoteBlockHung is the note of an anchor that a block hangs on.
const NoteBlockHung = "block-hung"

// The numbers of how a rope is laid out: a drum that stands off the tree, how
// thick the drum is, and the trunk that a dead end goes round. None of them is
// a size of the piece.

// DeadEndOnTrunk is the note that the dead end goes round the trunk.
const DeadEndOnTrunk = "dead-end-trunk"

// DrumAside is the note that the drum stands at another thing than the foot of
// the tree.
const DrumAside = "drum-aside"

// MovingBlock is the note that a block moves with the load.
const MovingBlock = "moving-block"

// HaulUp and HaulDown are the notes that the rope to pull leaves the block on the load, and
// that it leaves the one that hangs still.
const (
	HaulUp   = "haul-up"
	HaulDown = "haul-down"
)

// fallWanted is the note that it is asked how far a piece falls.
const fallWanted = "fall-wanted"

// NoteHoldsBlock is the note of a sling or a shackle that the block hangs in.
const NoteHoldsBlock = "holds-block"

// The notes of a load that is the pull in the line, and that the factor is asked for.
const (
	NoteLinePeak = "line-peak"
	FactorWanted = "factor-wanted"
)

// The notes of how a sling is rigged.
const (
	NoteChoker = "choker"
	NoteBasket = "basket"
	// NoteRatedBasket is the note of a sling whose figure is told for a basket.
	NoteRatedBasket = "rated-basket"
)

// The notes of what an anchor is, where the piece on it is named too.
const (
	NoteAnchorLimb = "anchor-limb"
	NoteAnchorSpar = "anchor-spar"
)

// The notes of a notch that is to hold until the piece lies level, and of a top, which
// stands upright before it does.
const (
	NoteTillLevel = "till-level"
	NoteTop       = "top-upright"
)

// WinchWanted is the note that it is asked how strong a winch must be.
const WinchWanted = "winch-wanted"

// HangWanted is the note that it is asked how high a piece ends up hanging.
const HangWanted = "hang-wanted"

// NoteEitherEnd is the note that it is asked at which end to tie.
const NoteEitherEnd = "either-end"

// OverTrunk is the note that the block of a swing is taken to hang on the trunk, which the
// piece is told from.
const OverTrunk = "over-trunk"

// NoteStartSide is the note of what stands on the side that a swing starts from.
const NoteStartSide = "start-side"

// TipHeavy is the note of a limb whose brush is told to be in its outer part.
const TipHeavy = "tip-heavy"

// LimitAhead is the note of a limit that holds from a day to come.
const LimitAhead = "limit-ahead"

// LeavesOn is the note of a piece that has its branches or leaves on.
const LeavesOn = "leafed"

// NoBark is the note of a piece that has lost its bark.
const NoBark = "no-bark"

// MachineLimit is the note of a limit that is what a crane or a loader takes.
const MachineLimit = "machine-limit"

// MachineAsked is the note that it is asked whether a crane or a loader takes the piece.
const MachineAsked = "machine-asked"

// BlockUnder is the note of a block that is below the cut, how far not told.
const BlockUnder = "block-under"

// CutFalls is the note that what is cut falls past its block, or onto its rope.
const CutFalls = "cut-falls"

// EyeSplice is the note of a rope that ends in a splice.
const EyeSplice = "eye-splice"

// HalfLog is the note of a log that was split lengthwise.
const HalfLog = "half-log"

// People are spoken of by name, as kin or by what they do. Their numbers are
// none of the piece, and where they stand can be a danger.

// PeopleBelow is the note of somebody who stands below the piece.
const PeopleBelow = "people-below"
