package parser

import "heft/calc/unit"

// Field names one quantity of a question, with its SI unit as suffix: the
// machine-readable name.
type Field string

// The quantities a crew can say.
const (
	Diameter     Field = "diameter_m"
	ButtDiameter Field = "butt_diameter_m"
	MidDiameter  Field = "mid_diameter_m"
	TipDiameter  Field = "tip_diameter_m"
	Length       Field = "length_m"
	HitchHeight  Field = "hitch_height_m"
	Weight       Field = "weight_kg"
	Parts        Field = "parts"
	People       Field = "people"
	WinchPull    Field = "winch_n"
	BlockAngle   Field = "angle_deg"
	Wraps        Field = "wraps"
	RopeBreak    Field = "rope_mbs_n"
	RopeLength   Field = "rope_m"
	SecondRope   Field = "second_rope_m" // where either could be taken
	DropHeight   Field = "drop_m"
	RunLength    Field = "run_m"
	BlockBelow   Field = "block_below_m"    // the block, below the cut
	HitchAbove   Field = "hitch_above_m"    // the hitch, above the cut
	HitchToBlock Field = "hitch_to_block_m" // down from the hitch to a block that it falls past
	MiddleAbove  Field = "middle_above_m"   // the middle of a piece, above such a block
	Limit        Field = "limit_kg"
	LongestPiece Field = "longest_piece_m" // of a cut, whatever it weighs
	BlockHeight  Field = "block_height_m"
	Tie          Field = "tie_m"
	LimbAngle    Field = "limb_angle_deg"
	Efficiency   Field = "efficiency"
	RopeDiameter Field = "rope_diameter_m"
	LineOut      Field = "line_m"         // from the block to the tie
	Sideways     Field = "offset_m"       // of the piece, from under the block
	PieceHeight  Field = "piece_height_m" // of the piece that is still to come off, above the ground
	TieAlong     Field = "tie_along"      // the tie as a part of a length that is not told yet
	StartAngle   Field = "start_deg"      // of the line, from plumb
	Turn         Field = "turn_deg"       // of the rope at a block; the only field that is said several times
	Redirects    Field = "redirects"
	BlockBehind  Field = "block_behind_m"   // the top block, behind the hinge
	BlockOut     Field = "block_out_m"      // the top block, out toward the limb
	Closed       Field = "closed_m"         // the tackle, its blocks together
	Apart        Field = "apart_m"          // the two blocks of a lift, from one another
	Rise         Field = "rise_m"           // of a load that is lifted
	LoadHeight   Field = "load_height_m"    // of the tie on it, above the ground
	CutHeight    Field = "cut_height_m"     // of its cut, from there too
	Tail         Field = "tail_m"           // of rope, wanted behind the drum
	DrumAway     Field = "drum_away_m"      // from the foot of the tree
	LandsOut     Field = "lands_out_m"      // of a piece that is lowered, from there too
	DrumAcross   Field = "drum_diameter_m"  // of the lowering drum
	TrunkAcross  Field = "trunk_diameter_m" // where the dead end goes round it
	PersonPull   Field = "person_pull_n"    // what each of the people pulls

	// The strengths of gear: what it breaks at, and what it may be loaded with.
	RopeWorking      Field = "rope_wll_n"
	BlockBreak       Field = "block_mbs_n"
	BlockWorking     Field = "block_wll_n"
	SlingBreak       Field = "sling_mbs_n"
	SlingWorking     Field = "sling_wll_n"
	ConnectorBreak   Field = "connector_mbs_n"
	ConnectorWorking Field = "connector_wll_n"
	DrumBreak        Field = "drum_mbs_n"
	DrumWorking      Field = "drum_wll_n"
	DesignFactor     Field = "design_factor"
	Legs             Field = "legs"            // of a sling, that share the load
	LegAngle         Field = "leg_angle_deg"   // of a leg, above level
	ChokeAngle       Field = "choke_angle_deg" // of a choker, at its own eye
	Payload          Field = "payload_kg"      // of the truck

	SecondTie     Field = "second_tie_m" // of the second line, from the cut
	SecondLeg     Field = "second_leg_deg"
	Lines         Field = "lines"   // that share a piece
	Alike         Field = "pieces"  // that are told of at once, each of the size told
	Strands       Field = "strands" // of a laid rope
	SideBranch    Field = "side_branch_kg"
	SideBranchOut Field = "side_branch_out_m" // from the axis of the piece

	ObstacleOut    Field = "obstacle_out_m"    // from under the block, on the far side of a swing
	ObstacleHeight Field = "obstacle_height_m" // above the ground

	// The three that are no quantities, named where one is missing.
	SpeciesField   Field = "species"
	ShapeField     Field = "shape"
	ConditionField Field = "condition"
)

// Intent is what a message asks for.
type Intent string

// The intents.
const (
	AskWeight    Intent = "weight"
	AskLower     Intent = "lower"
	AskLift      Intent = "lift"
	AskRaise     Intent = "raise"
	AskBlockLoad Intent = "block-load"
	AskSwing     Intent = "swing"
	AskDrop      Intent = "drop"
	AskRope      Intent = "rope"
	AskCutPlan   Intent = "cut-plan"
	AskNotch     Intent = "notch"
	AskGear      Intent = "gear"
	AskAnchor    Intent = "anchor"
	AskBalance   Intent = "balance"
	AskTree      Intent = "tree"
	AskJob       Intent = "job"
	AskLog       Intent = "log"
	AskHelp      Intent = "help"
	AskEmergency Intent = "emergency"
)

// Shape is the kind of piece.
type Shape string

// The two shapes: stem without brush, or with it.
const (
	Log  Shape = "log"
	Limb Shape = "limb"
)

// Condition is whether the wood is alive.
type Condition string

// The two conditions.
const (
	Green Condition = "green"
	Dead  Condition = "dead"
)

// Obstacle is the kind of thing that a swing may strike.
type Obstacle string

// The obstacles.
const (
	Thing    Obstacle = "thing"    // has a height of its own: a roof, a fence
	Standing Obstacle = "standing" // as tall as the block: a trunk
	Person   Obstacle = "person"
)

// System is a system of units.
type System string

// The two systems; the zero value is "not said".
const (
	Imperial System = "imperial"
	Metric   System = "metric"
)

// Said is a value together with the words that said it.
type Said[T any] struct {
	Value      T
	Words      string
	Start, End int // byte offsets in the text
}

// Species is a tree as it was named.
type Species struct {
	Scientific string // a genus alone is "Quercus spp."
	Name       string // what to call it: as it was named, or in the language of the message
}

// Quantity is one number that was said, in the unit of its field. A range
// that was said keeps both ends; otherwise they are equal.
type Quantity struct {
	Field      Field
	Low, High  float64
	System     System
	Words      string
	Start, End int
	At         string `json:",omitempty"` // the block that a turn is at, "" where it was not named
	Girth      bool   `json:",omitempty"` // its words told how far round the piece is
	InLine     bool   `json:",omitempty"` // a load that is the pull in a rope, and no piece's weight
	Along      *Along `json:",omitempty"` // of a tie: the part of the length that it was told as
}

// Fix is a misspelt word and what it was taken for.
type Fix struct{ Words, As string }

// CutUp is into how many parts of one length a piece is cut.
type CutUp struct {
	Parts int
	Words string
	Rest  string // what the message says besides
}

// Question is all that a message said.
type Question struct {
	Intent     Intent
	Species    *Said[Species]
	Against    *Said[Species] `json:",omitempty"` // the other tree, where two woods are compared
	Shape      *Said[Shape]
	Condition  *Said[Condition]
	Obstacle   *Said[Obstacle] // what a swing may strike
	Quantities []Quantity
	Language   string // tag of the language of most of its words, "" where no word tells
	Units      System // the system asked for, or else that of most numbers
	Fixes      []Fix
	OfGear     Field          // what is not told of the gear that is asked about: its strength
	Unrated    []Field        `json:",omitempty"` // the strengths of gear that is named, and not told
	Held       bool           `json:",omitempty"` // it is asked whether gear holds, and of what load is not told
	Notes      []string       // what was said besides: "wet", "about"
	Passed     []Said[string] `json:",omitempty"` // numbers of no piece and no gear: "4 pm", "19 years old"
	NotSo      []Said[string] `json:",omitempty"` // numbers that were put aside: "not 22"
	Guessed    []Said[string] `json:",omitempty"` // numbers of before that were a guess, and are told no more
	Left       []Said[string] `json:",omitempty"` // of a job's message: what is only talk
	SaysUnits  bool           // the system was asked for
	Arborist   *Said[string]  // of a job: who confirms
	Site       *Said[string]  // of a job: where it is
	Pieces     []Said[string] `json:",omitempty"` // of a list: each is a message by itself
	Compares   bool           `json:",omitempty"` // which of two pieces weighs more
	TakesMost  bool           `json:"-"`          // which of the pieces takes the most wraps
	InRow      bool           `json:",omitempty"` // the pieces are one question each, and nothing is added up
	Topic      Intent         `json:",omitempty"` // of a call for help: the kind of question that it is about
	Hello      bool           // small talk, and no more
	Clear      bool           // "clear the job"
	Drops      []Field        `json:",omitempty"` // of a job: what is no longer to be kept
	Facts      bool           `json:",omitempty"` // it tells only what can hold for a job, and asks nothing
	Explain    string         // what the crew wants explained of the last answer: "numbers", "assumed", "brush"
	Asks       bool           // words ask for the intent, rather than facts
	FollowUp   bool           // it leans on what was said before: "what about", "same but"
	Bare       bool           `json:"-"` // one number, and nothing beside it that tells what it is of
	BareAt     bool           `json:"-"` // such a one behind "at"
	Next       bool           `json:"-"` // of the piece after this one
	Stated     bool           `json:"-"` // a number of it is said to be so, or to be made so: "its only 20"
	CutUp      *CutUp         `json:"-"` // the piece of before is cut across
	WrapsBy    float64        `json:"-"` // how many wraps more than before are asked about: "with one more wrap"
	Points     Field          `json:"-"` // of what words beside its one bare number say that it is: "fatter, 16"
	PutsRight  bool           `json:"-"` // its one number takes the place of another, and no word says of which
	Amends     bool           `json:"-"` // it puts right what was told before of the same piece
	Which      *Ask           `json:"-"` // which of some trees it is, to be asked after the ask that came first
	InDoubt    []Field        // said, but in words that must be asked about too, after the ask that came first
}

// Get returns the quantity of a field.
func (q Question) Get(f Field) (Quantity, bool) {
	for _, x := range q.Quantities {
		if x.Field == f {
			return x, true
		}
	}
	return Quantity{}, false
}

// Has says whether any of the fields was said.
func (q Question) Has(fields ...Field) bool {
	for _, f := range fields {
		if _, ok := q.Get(f); ok {
			return true
		}
	}
	return false
}

// Length returns a field in metres.
func (q Question) Length(f Field) unit.Range[unit.Length] { return ranged[unit.Length](q, f) }

// Mass returns a field in kilograms.
func (q Question) Mass(f Field) unit.Range[unit.Mass] { return ranged[unit.Mass](q, f) }

// Count returns the lower end of a field that has no unit: the wraps, hands
// and parts of line that can be counted on.
func (q Question) Count(f Field) float64 {
	x, _ := q.Get(f)
	return x.Low
}

// ranged is the zero range where the field was not said.
func ranged[T ~float64](q Question, f Field) unit.Range[T] {
	x, _ := q.Get(f)
	return unit.Range[T]{Low: T(x.Low), High: T(x.High)}
}

// Empty says whether the message held no fact about a piece or a set-up.
func (q Question) Empty() bool {
	return q.Species == nil && q.Shape == nil && q.Condition == nil && len(q.Quantities) == 0
}
