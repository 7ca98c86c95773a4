package scan

import "heft/parser"

// Mark says what a word does to its neighbours.
type Mark uint64

// Part is a piece of gear that has a strength of its own, as the fields name
// it.
type Part string

// Strength is which figure of a label a word speaks of: a working load must
// never be taken for a break strength, nor the other way round.
type Strength string

// Side says where a number stands as seen from the words of its role.
type Side int

// Role binds a number to a field.
type Role struct {
	Field parser.Field
	Side  Side
	Soft  bool // gives way to another role that wants the same number
}

// Term is all that a spelling can mean.
type Term struct {
	Roles     []Role
	Shape     parser.Shape
	Condition parser.Condition
	Intent    parser.Intent
	Besides   bool           // the intent gives way: "with a tag line"
	Leads     bool           // leads straight to its number: "hitched at"
	Stop      parser.Kind    // power line, emergency, unsound wood
	Danger    string         // which of its kind: "knot"
	Ask       parser.Kind    // girth, breast height, a word that twists
	Turning   parser.Turning // how a word that twists does
	Own       bool           // asked about, because another language has it: "once"
	Units     parser.System
	Note      string
	Block     string   // which block of a rope's path: "base-block"
	Part      Part     // gear that has a strength
	Strength  Strength // which of the two on its label
	Explain   string
	Near      bool // the note is one only right before a number
	Marks     Mark
	Whole     parser.Intent // what it asks for where it is the whole message
	Count     float64       // people, where the words say how many: "by myself"
	Tons      float64       // where the words say how many, and a ton is several masses: "half a ton"
	Tension   bool          // beside the pull in a rope: "5 kN tension"
	BelowCut  bool          // behind how far a block hangs below it: "40 cm below the cut"
	StandsIn  bool          // behind a tree, what it shall serve as: "as a redirect"

	Blocks     bool          // counted in a tackle
	RopeEnd    bool          // who has the rope in hand
	Hung       bool          // before how far below its block a load hangs: "hanging"
	Adds       bool          // before how many wraps are to go on beside those told; elsewhere it is asked about
	Negative   bool          // in a breath of its own, negative rigging; elsewhere it is asked about
	BelowBlock bool          // behind it; elsewhere it is asked about
	OffPlumb   bool          // behind how far a cut is to the side; elsewhere it is asked about
	Roved      bool          // of legs, that a tackle can have as well: "ramales"
	Course     bool          // behind a rope, before how far it turns: "the line goes 90 there"
	Square     bool          // a right angle where a redirect is named; elsewhere it is asked about
	Turned     float64       // how far a rope turns, told without a number: "comes straight back out on itself"
	Another    bool          // before a piece no more than "a"; elsewhere it is asked about
	Each       bool          // of several pieces: "each", "apiece"
	OfThese    bool          // behind pieces, before what each may weigh: "which one is"
	Fresh      bool          // parts from the piece of before: "forget the last one"
	Compares   bool          // before two pieces: "which is heavier"
	Foreign    bool          // behind a number, of no piece and no gear: minutes, money
	OneEnd     bool          // behind the thickness of one of two ends: "one end", "the other"
	WoodRing   bool          // gear, and behind a tree a round: "ring"
	Leafed     bool          // the piece has its leaves or branches on: "con hojas"
	Overlook   bool          // says nothing here by itself, and is said back: "plenty"
	Perhaps    bool          // likewise, but asked about where it may tell how something is: "ugly"
	Rate       bool          // behind a length, a speed: "a second"
	Others     bool          // people besides who speaks
	AndSelf    bool          // who speaks, before how many others: "me and 2 other guys"
	SelfToo    bool          // who speaks, behind who else is counted: "memo y yo"
	Someone    bool          // a person who is spoken of: "dave", "the apprentice"
	Falls      bool          // behind a person, an emergency: "dave fell"
	State      bool          // before how something is: "looks", "really"
	Level      bool          // how a limb lies that is stood up: "horizontal"
	Tied       bool          // before how far out a limb its tie is
	TopEnd     bool          // the thin end behind a thickness, where the thick one is told: "30 in butt, 24 in top"
	LowEnd     bool          // behind a thickness, the thick end where the thin one is told: "28 abajo 18 arriba"
	HighEnd    bool          // behind the thin one
	Hangs      bool          // before how far below its block a load hangs that a tag line pulls: "cuelga 20 pies"
	AboveLoad  bool          // behind how far the block is above such a load; elsewhere it is asked about
	Beneath    bool          // behind a person, where nobody may stand
	Order      parser.Intent // what it tells the crew to do where it begins what is said: "baja la rama"
	Denies     bool          // "not": what follows is put aside
	Purpose    bool          // before what is to be kept from happening: "so it doesn't"
	Corrects   bool          // "no", "make that": what stands before may be taken back
	Idle       bool          // a word of talk that can stand anywhere
	Chatter    bool          // says nothing here, and is no slip's mending
	Tree       *parser.Tree
	Lacks      bool // right before what is wrong with wood, says that nothing is: "no rot"
	Lifts      bool // before who must never hang on rigging gear: "winch him up"
	Human      bool // a person, where behind a word that lifts
	Stays      bool // before a place under the piece or beside it: "stand underneath"
	Strays     bool // behind or before somebody, and before a place under the piece: "walks underneath"
	Machine    bool // beside a word that bears, what no chart here holds for: "can the loader take it"
	Bears      bool // takes, lifts, carries
	Topples    bool // behind a pull on a tree, fells it: "pull the oak over"
	Damaged    bool // beside gear, that it must not be used: "a melted rope"
	Jams       bool // beside gear, that the rope does not run: "the rope is stuck"
	Frail      bool // what nothing is ever anchored to: a fence post, a railing
	Anchors    bool // before what is frail, that something is tied to it
	FallsWhere bool // before a tree and comesDown, where it comes to lie: "which way will"
	ComesDown  bool
	Erases     bool // before the log, that something is to be taken out of it
	OfKit      bool // a part of gear, that damage can be told of: "cheek plate"
	Weather    bool // of wind; how fast it blows may stand behind
	LetFall    bool // beside gear, that it fell: "dropped the block"
	AfterFall  bool // what it hit, or whether it is still good
	Guides     bool // before byHand, what nobody may do under a piece: "guiding the log with his hands"
	ByHand     bool // with no line between a person and the piece
	Harms      bool // beside a part of the body, that somebody is hurt: "caught", "broke"
	MayHarm    bool // right beside one: "cut his leg"
	Maims      bool // beside somebody too: "whacked", "landed on"
	Body       bool // a part of the body: "ribs"
	BodyOf     bool // likewise, behind whose it is: "his leg", a rope has legs too
	Whose      bool // his, her, my
	Day        bool // the day at hand: who is here, "crew of four today"
	Keeps      bool // says that what is told is to be kept: "note that down"
	Borne      bool // behind who must never hang on rigging gear: "be lowered"
	SelfHolds  bool // before what somebody holds in hand: "aguanto"
	HangsBlock bool // before the wood that a block hangs on: "hang the block on"
	PullsAside bool // beside what pulls on a stem itself: "side pull"
	AtAnchor   bool // beside a thickness, where the block hangs: "at the block"
	HowMuch    bool // before gear, asks for the load on it: "how many lbs"
	Receives   bool // beside gear, that a load comes on it: "sees"
	Rated      bool // between gear and what it may carry: "rated for", "max"
	Label      bool // what gear has its rating on: "tag", "stamp"
	Unread     bool // beside gear or its label, that nobody can read it
	Gone       bool // beside a label, that it is missing: "faded"
	Personal   bool // beside gear, that it is kept for people: "climbing"
	Employs    bool // before such gear, that something is rigged with it: "using"
	Serves     bool // behind it: "as", "ok for"
	LetsGo     bool // where no number is told, that the rope is going through the hands right now
	CarriesOn  bool // beside a wind, asks whether to go on in it
	Storm      bool // beside nears, that everybody leaves the tree: "thunder"
	Nears      bool // "coming in", "close"
	Footing    bool // what a tree stands in: "roots", "soil at the base"
	Stirs      bool // that a tree or its footing gave way: "moved"
	Upheaves   bool // that the footing did: "fresh", "lifting"

	Feels  bool // before what a hand shall hold of a lower: "only feel 30 lb"
	InHand bool // behind it: "30 lb in the hand"
	Slips  bool // of a rope on a drum, that its wraps did not hold: "slipping", "ran away"

	GirthBehind bool // a girth, behind its number alone: "in circumference"
	GirthMiddle bool // likewise, halfway along the piece: "around the middle"
	GirthAround bool // likewise, where it may be what a rope goes round: "around it"
	GiveTake    bool // between a number and how far off it may be: "give or take"
	Percent     bool // behind a number, a share of what it must be said of
	Quarter     bool // before a unit: "quarter of a tonne"
	Reaches     bool // asks whether a rope does, where one is spoken of; elsewhere it is asked about
	OfIt        bool // behind how much of the piece is told: "20 ft of it"
	Unnamed     bool // a piece of wood, and nothing said of what: "piece"
	Wagers      bool // before what somebody says that a piece weighs: "the boss says 500"
	Supposes    bool // before a weight that is only held against: "if it weighs"
	Hauls       bool // before what it pulls, a winch rather than a drum: "capstan"
	Doubles     bool // in a lift, two parts of line: "doubled back through a block"
	Straight    bool // the rope only goes over a block: "straight over the top block"
	Paired      bool // blocks of two sheaves each: "double blocks"
	Single      bool // likewise, before a rope: "on a single line"
	AtOnce      bool // of several pieces, that they are one load: "together"
	ISay        bool // before what somebody else says a number is: "i say 2"
	Apology     bool // at the beginning, takes nothing back: "sorry"
}
