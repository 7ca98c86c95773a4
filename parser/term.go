package parser

// side says where a number stands as seen from the words of its role.
type side int

const (
	after side = 1 << iota
	before
)

// role binds a number to a field.
type role struct {
	field Field
	side  side
	soft  bool // gives way to another role that wants the same number
}

// term is all that a spelling can mean.
type term struct {
	roles     []role
	shape     Shape
	condition Condition
	intent    Intent
	besides   bool    // the intent gives way: "with a tag line"
	leads     bool    // leads straight to its number: "hitched at"
	stop      Kind    // power line, emergency, unsound wood
	danger    string  // which of its kind: "knot"
	ask       Kind    // girth, breast height, a word that twists
	turning   Turning // how a word that twists does
	own       bool    // asked about, because another language has it: "once"
	units     System
	note      string
	block     string   // which block of a rope's path: "base-block"
	part      part     // gear that has a strength
	strength  strength // which of the two on its label
	explain   string
	near      bool // the note is one only right before a number
	marks     mark
	whole     Intent  // what it asks for where it is the whole message
	count     float64 // people, where the words say how many: "by myself"
	tons      float64 // where the words say how many, and a ton is several masses: "half a ton"
	tension   bool    // beside the pull in a rope: "5 kN tension"
	belowCut  bool    // behind how far a block hangs below it: "40 cm below the cut"
	standsIn  bool    // behind a tree, what it shall serve as: "as a redirect"

	blocks     bool    // counted in a tackle
	ropeEnd    bool    // who has the rope in hand
	hung       bool    // before how far below its block a load hangs: "hanging"
	belowBlock bool    // behind it; elsewhere it is asked about
	offPlumb   bool    // behind how far a cut is to the side; elsewhere it is asked about
	roved      bool    // of legs, that a tackle can have as well: "ramales"
	course     bool    // behind a rope, before how far it turns: "the line goes 90 there"
	square     bool    // a right angle where a redirect is named; elsewhere it is asked about
	turned     float64 // how far a rope turns, told without a number: "comes straight back out on itself"
	another    bool    // before a piece no more than "a"; elsewhere it is asked about
	each       bool    // of several pieces: "each", "apiece"
	ofThese    bool    // behind pieces, before what each may weigh: "which one is"
	fresh      bool    // parts from the piece of before: "forget the last one"
	compares   bool    // before two pieces: "which is heavier"
	foreign    bool    // behind a number, of no piece and no gear: minutes, money
	oneEnd     bool    // behind the thickness of one of two ends: "one end", "the other"
	woodRing   bool    // gear, and behind a tree a round: "ring"
	leafed     bool    // the piece has its leaves or branches on: "con hojas"
	overlook   bool    // says nothing here by itself, and is said back: "plenty"
	perhaps    bool    // likewise, but asked about where it may tell how something is: "ugly"
	rate       bool    // behind a length, a speed: "a second"
	others     bool    // people besides who speaks
	andSelf    bool    // who speaks, before how many others: "me and 2 other guys"
	selfToo    bool    // who speaks, behind who else is counted: "memo y yo"
	someone    bool    // a person who is spoken of: "dave", "the apprentice"
	falls      bool    // behind a person, an emergency: "dave fell"
	state      bool    // before how something is: "looks", "really"
	level      bool    // how a limb lies that is stood up: "horizontal"
	tied       bool    // before how far out a limb its tie is
	topEnd     bool    // the thin end behind a thickness, where the thick one is told: "30 in butt, 24 in top"
	lowEnd     bool    // behind a thickness, the thick end where the thin one is told: "28 abajo 18 arriba"
	highEnd    bool    // behind the thin one
	hangs      bool    // before how far below its block a load hangs that a tag line pulls: "cuelga 20 pies"
	aboveLoad  bool    // behind how far the block is above such a load; elsewhere it is asked about
	beneath    bool    // behind a person, where nobody may stand
	order      Intent  // what it tells the crew to do where it begins what is said: "baja la rama"
	denies     bool    // "not": what follows is put aside
	purpose    bool    // before what is to be kept from happening: "so it doesn't"
	corrects   bool    // "no", "make that": what stands before may be taken back
	idle       bool    // a word of talk that can stand anywhere
	chatter    bool    // says nothing here, and is no slip's mending
	tree       *tree
	lacks      bool // right before what is wrong with wood, says that nothing is: "no rot"
	lifts      bool // before who must never hang on rigging gear: "winch him up"
	human      bool // a person, where behind a word that lifts
	stays      bool // before a place under the piece or beside it: "stand underneath"
	strays     bool // behind or before somebody, and before a place under the piece: "walks underneath"
	machine    bool // beside a word that bears, what no chart here holds for: "can the loader take it"
	bears      bool // takes, lifts, carries
	topples    bool // behind a pull on a tree, fells it: "pull the oak over"
	damaged    bool // beside gear, that it must not be used: "a melted rope"
	jams       bool // beside gear, that the rope does not run: "the rope is stuck"
	frail      bool // what nothing is ever anchored to: a fence post, a railing
	anchors    bool // before what is frail, that something is tied to it
	fallsWhere bool // before a tree and comesDown, where it comes to lie: "which way will"
	comesDown  bool
	erases     bool // before the log, that something is to be taken out of it
	ofKit      bool // a part of gear, that damage can be told of: "cheek plate"
	weather    bool // of wind; how fast it blows may stand behind
	letFall    bool // beside gear, that it fell: "dropped the block"
	afterFall  bool // what it hit, or whether it is still good
	guides     bool // before byHand, what nobody may do under a piece: "guiding the log with his hands"
	byHand     bool // with no line between a person and the piece
	harms      bool // beside a part of the body, that somebody is hurt: "caught", "broke"
	mayHarm    bool // right beside one: "cut his leg"
	maims      bool // beside somebody too: "whacked", "landed on"
	body       bool // a part of the body: "ribs"
	bodyOf     bool // likewise, behind whose it is: "his leg", a rope has legs too
	whose      bool // his, her, my
	day        bool // the day at hand: who is here, "crew of four today"
	keeps      bool // says that what is told is to be kept: "note that down"
	borne      bool // behind who must never hang on rigging gear: "be lowered"
	selfHolds  bool // before what somebody holds in hand: "aguanto"
	hangsBlock bool // before the wood that a block hangs on: "hang the block on"
	pullsAside bool // beside what pulls on a stem itself: "side pull"
	atAnchor   bool // beside a thickness, where the block hangs: "at the block"
	howMuch    bool // before gear, asks for the load on it: "how many lbs"
	receives   bool // beside gear, that a load comes on it: "sees"
	rated      bool // between gear and what it may carry: "rated for", "max"
	label      bool // what gear has its rating on: "tag", "stamp"
	unread     bool // beside gear or its label, that nobody can read it
	gone       bool // beside a label, that it is missing: "faded"
	personal   bool // beside gear, that it is kept for people: "climbing"
	employs    bool // before such gear, that something is rigged with it: "using"
	serves     bool // behind it: "as", "ok for"
	letsGo     bool // where no number is told, that the rope is going through the hands right now
	carriesOn  bool // beside a wind, asks whether to go on in it
	storm      bool // beside nears, that everybody leaves the tree: "thunder"
	nears      bool // "coming in", "close"
	footing    bool // what a tree stands in: "roots", "soil at the base"
	stirs      bool // that a tree or its footing gave way: "moved"
	upheaves   bool // that the footing did: "fresh", "lifting"

	feels  bool // before what a hand shall hold of a lower: "only feel 30 lb"
	inHand bool // behind it: "30 lb in the hand"
	slips  bool // of a rope on a drum, that its wraps did not hold: "slipping", "ran away"

	girthBehind bool // a girth, behind its number alone: "in circumference"
	girthAround bool // likewise, where it may be what a rope goes round: "around it"
	giveTake    bool // between a number and how far off it may be: "give or take"
	percent     bool // behind a number, a share of what it must be said of
	quarter     bool // before a unit: "quarter of a tonne"
	reaches     bool // asks whether a rope does, where one is spoken of; elsewhere it is asked about
	ofIt        bool // behind how much of the piece is told: "20 ft of it"
	unnamed     bool // a piece of wood, and nothing said of what: "piece"
	wagers      bool // before what somebody says that a piece weighs: "the boss says 500"
	supposes    bool // before a weight that is only held against: "if it weighs"
	hauls       bool // before what it pulls, a winch rather than a drum: "capstan"
	doubles     bool // in a lift, two parts of line: "doubled back through a block"
	straight    bool // the rope only goes over a block: "straight over the top block"
	paired      bool // blocks of two sheaves each: "double blocks"
	single      bool // likewise, before a rope: "on a single line"
	atOnce      bool // of several pieces, that they are one load: "together"
	iSay        bool // before what somebody else says a number is: "i say 2"
	apology     bool // at the beginning, takes nothing back: "sorry"
}
