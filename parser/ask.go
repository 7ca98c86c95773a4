package parser

import (
	"fmt"
	"slices"
)

// Kind is the reason for asking back, or for not reading on.
type Kind string

// The reasons.
const (
	NoUnit        Kind = "no-unit"        // a number whose unit was not said
	OddNumber     Kind = "odd-number"     // digits and marks that make no one number
	TwoReadings   Kind = "two-readings"   // a number that could be two things
	Conflict      Kind = "conflict"       // one thing said twice, differently
	WhichTree     Kind = "which-tree"     // a name that several trees share
	WhichTon      Kind = "which-ton"      // 2,000 lb, 2,240 lb or 1,000 kg
	WhichAngle    Kind = "which-angle"    // an angle with no word for where it is
	WhichHitch    Kind = "which-hitch"    // how a sling is rigged, told two ways
	WhichSide     Kind = "which-side"     // how far the top block is off, which way not said
	WhichParts    Kind = "which-parts"    // blocks of a tackle, and not how many parts of line they make
	WhichGear     Kind = "which-gear"     // a working load, and no word for what has it
	WhichLimit    Kind = "which-limit"    // limits told for a side each, of which one holds at a time
	WhichStrength Kind = "which-strength" // a figure of gear: what it breaks at, or its working load
	Girth         Kind = "girth"          // a tape round the stem, not through it
	BreastHigh    Kind = "breast-high"    // a diameter that is not the piece's
	Unknown       Kind = "unknown"        // a word that is not in the vocabulary
	Twist         Kind = "twist"          // a word that could turn the meaning round
	Loose         Kind = "loose"          // a number with a unit but no place
	FromWhere     Kind = "from-where"     // a distance of an obstacle, told from elsewhere than the block
	TooMuch       Kind = "too-much"       // more than one question's worth of words
	Missing       Kind = "missing"        // a fact that the answer needs

	PowerLine Kind = "power-line" // stop: no figures
	Emergency Kind = "emergency"  // stop: no figures
	Unsound   Kind = "unsound"    // stop: decay, cracks
	Rider     Kind = "rider"      // stop: a person lifted or lowered on rigging gear
	Below     Kind = "below"      // stop: somebody means to stand under the piece, or beside it
	Damaged   Kind = "damaged"    // stop: gear that must be taken out of use
	Personal  Kind = "personal"   // stop: climbing gear that is put into the rigging
	Runaway   Kind = "runaway"    // stop: the rope runs through somebody's hands right now
	Storm     Kind = "storm"      // stop: lightning near
	Never     Kind = "never"      // stop: what nobody does, whatever the figures say; Danger says which
	Stuck     Kind = "stuck"      // stop: a rope or a block that is jammed, with what hangs on it
	Felling   Kind = "felling"    // of a whole tree: its hinge, its pull, its lay
	Machine   Kind = "machine"    // what a crane or a loader takes
	SpanLine  Kind = "span-line"  // speed lines
	NoMethod  Kind = "no-method"  // what else no method here holds for
	Beyond    Kind = "beyond"     // no question of rigging, though asked beside one: what a job costs
	LogKept   Kind = "log-kept"   // something is to be taken out of the log
	Nonsense  Kind = "nonsense"   // nothing in it that a crew would ask
)

// Halting are the kinds of words that end all arithmetic, the gravest first.
var Halting = []Kind{Emergency, PowerLine, Rider, Below, Runaway, Storm, Unsound, Damaged, Personal, Stuck, Felling, Never, Machine, SpanLine, NoMethod, Beyond, LogKept}

// Ask says what must be asked back before a message can be answered. The desk
// words it; this carries the place and what the choices are.
type Ask struct {
	Kind       Kind
	Fields     []Field  // missing or ambiguous
	Words      string   // the words in question
	Start, End int      // their place in the text
	Number     float64  // what a number in question comes to that has no unit, 0 for a range
	Metres     float64  // how long a length in question is at the most
	Mass       bool     // the number in question is a mass or a force
	Away       bool     // the number in question is told from somewhere in the tree: "600 from the block"
	Choices    []Choice // what to type instead, where that can be listed
	Glued      bool     // an unknown word typed in one with more: without it, that is something else
	Measured   bool     // an unknown word with the length right before it, which may be that of what it names
	Spare      bool     // an unknown word that stands beside nothing it could change
	OfSomebody bool     // an unknown word that may tell how somebody fares
	OfNumber   bool     // an unknown word right beside a number, which may be of what it names
	LikeStop   string   // a word that ends all arithmetic, which an unknown one may be a slip of
	Danger     string   // which of a kind that has several: "knot"
	NearPower  bool     // somebody is hurt, and a power line is told of
	Turning    Turning  // how a word could turn the meaning round
	Either     bool     // both trees are named in the words: "elm or hackberry"
	Heavier    bool     // of the trees, the one that weighs more is wanted
	OfTalk     bool     // the gear that a figure is of was named earlier in the talk
	AsTree     bool     // an unknown word that stands where the tree does
	Clause     [2]int   // the place of the clause that a word turns, where it may be talk
	Denied     [2]int   // the place of the clause that a denial turns, where it holds no number
}

// Choice is one way out of an ask.
type Choice struct {
	Words      string  // what to type
	Scientific string  // where the choice is a tree
	Field      Field   // where the choice is a reading of a number
	System     System  // of the number
	Value      float64 // of the number, SI
}

// Error names the ask and its place, for logs: a crew is never shown it.
func (a *Ask) Error() string {
	return fmt.Sprintf("%s at %q (%d–%d)", a.Kind, a.Words, a.Start, a.End)
}

// Final says that the message is refused rather than asked about.
func (a *Ask) Final() bool {
	return a.Kind == Nonsense || slices.Contains(Halting, a.Kind)
}
