package parser

// Turning is how a word could turn the meaning round, so that the desk can ask
// about that. It is empty where only the word itself tells.
type Turning string

const (
	TurnsDenied   Turning = "denied"   // "without", "isn't": what is not so
	TurnsBack     Turning = "back"     // "no", "wait": takes back what was said
	TurnsPiece    Turning = "piece"    // "forget the last one", "bigger one": to another piece
	TurnsPart     Turning = "part"     // "half", "a third": of what?
	TurnsSum      Turning = "sum"      // "plus", "twice": to be added or multiplied
	TurnsCompared Turning = "compared" // "heavier", "less": than what?
	TurnsSeveral  Turning = "several"  // "both", "per": of which of them?
	TurnsLength   Turning = "length"   // "per metre": one of them is a length
	TurnsPercent  Turning = "percent"  // "ten percent": of what?
	TurnsPeople   Turning = "people"   // "half the guys": how many hold the rope?
	TurnsRadius   Turning = "radius"   // half of what is wanted, or of a swing
	TurnsMeasure  Turning = "measure"  // "how high": what only the tree tells
	TurnsAnchor   Turning = "anchor"   // "limit on the anchor": twice what a piece may weigh, or more
	TurnsLanding  Turning = "landing"  // "15 ft lower than the base": what the way down is longer by
	TurnsSlack    Turning = "slack"    // "4 ft of slack": what the fall is longer by
	TurnsBound    Turning = "bound"    // "over 14 in": no number by itself
	TurnsOpen     Turning = "open"     // "a few feet": how many?
	TurnsPole     Turning = "pole"     // "poste de pino": the stem that is left, or a pole with wires
	TurnsSuch     Turning = "such"     // "call it that length": one that was said before
)
