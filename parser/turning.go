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
	TurnsBound    Turning = "bound"    // "over 14 in": no number by itself
)

// turnings are the ways that a word file can name.
var turnings = []Turning{"", TurnsDenied, TurnsPart, TurnsSum, TurnsCompared, TurnsSeveral, TurnsRadius, TurnsMeasure}

// twistOf is a word that could turn the meaning round, and how.
func twistOf(err *error, how string) func(*term) {
	v := oneOf(err, how, turnings...)
	return func(t *term) { t.ask, t.turning = Twist, v }
}

// turnedBy names how the word at i could turn the meaning.
func (rd *reading) turnedBy(i int) Turning {
	switch t := rd.termAt(i); {
	case t.ask != Twist:
		return ""
	case t.fresh:
		return TurnsPiece
	case t.denies:
		return TurnsDenied
	case t.corrects && t.lacks && rd.at(i+1).pause == 0 && rd.at(i+1).fig == nil:
		return TurnsDenied // "no drum"
	case t.corrects:
		return TurnsBack
	case rd.perLength(i):
		return TurnsLength
	case rd.ofPeople(i):
		return TurnsPeople
	case t.each:
		return TurnsSeveral
	case t.quarter, t.marks&markHalf != 0:
		return TurnsPart
	default:
		return t.turning
	}
}
