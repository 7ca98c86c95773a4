package parser

import "fmt"

// mark says what a word does to its neighbours.
type mark uint32

// The marks, as the word file names them.
const (
	markHello     mark = 1 << iota
	markFollow         // leans on what was said before
	markUnsure         // "some kind of", before a tree
	markBetween        // "between", before two ends
	markAnd            // joins two things
	markBy             // between two sizes
	markTaper          // the piece has two ends
	markAround         // girth, or "about"
	markPlace          // a thing of the surroundings: roof, fence, climber
	markPart           // a part of the piece that is not its length: brush
	markMoving         // before how far: "lower it 30 ft"
	markLoaded         // gear that feels a load: "5 kN on the block"
	markDeflects       // before the turn of a rope, which is not the angle between its legs
	markGear           // a thing of the set-up: rope, drum, saw
	markRelation       // says where, seen from a thing: from, above, over
	markWhere          // says where, or what with: in, on, with
	markPronoun        // him, her, it
	markIs             // between a thing and its number: is, at, of
	markAt             // "at", before a height
	markAdverb         // between a number and where it is: hanging, out
	markArticle        // the, my
	markAdjective      // between a number and its thing: a 6 ft high fence
	markTall           // of a tree, a fence or a spar, hardly of a limb
	markBound          // makes a number a bound: over, at least, up to
	markRound          // a round: wider than long
	markThick          // across a log, along a round
	markUnit           // a unit without a number
)

var markNamed = map[string]mark{
	"hello": markHello, "follow": markFollow, "unsure": markUnsure, "between": markBetween, "and": markAnd,
	"by": markBy, "taper": markTaper, "around": markAround, "place": markPlace, "gear": markGear,
	"part": markPart, "moving": markMoving,
	"loaded": markLoaded, "deflects": markDeflects, "adverb": markAdverb, "article": markArticle,
	"relation": markRelation, "where": markWhere, "pronoun": markPronoun, "is": markIs, "at": markAt | markIs | markWhere,
	"adjective": markAdjective, "tall": markTall | markAdjective, "bound": markBound, "round": markRound, "thick": markThick, "unit": markUnit,
}

// meaningOf returns what a meaning of the word file does to a term.
func meaningOf(words []string) (func(*term), error) {
	arg := func(i int) string {
		if i < len(words) {
			return words[i]
		}
		return ""
	}
	if len(words) == 0 {
		return nil, fmt.Errorf("no meaning before the bar")
	}
	if m := markNamed[words[0]]; m != 0 {
		return func(t *term) { t.marks |= m }, nil
	}
	switch words[0] {
	case "role":
		return roleOf(Field(arg(1)), arg(2))
	case "shape":
		return func(t *term) { t.shape = Shape(arg(1)) }, nil
	case "condition":
		return func(t *term) { t.condition = Condition(arg(1)) }, nil
	case "ask":
		return func(t *term) { t.intent = Intent(arg(1)) }, nil
	case "stop":
		return func(t *term) { t.stop = Kind(arg(1)) }, nil
	case "units":
		return func(t *term) { t.units = System(arg(1)) }, nil
	case "note":
		return func(t *term) { t.note = arg(1) }, nil
	case "alone":
		return func(t *term) { t.count = 1 }, nil
	case "twist", "girth", "breast-high":
		return func(t *term) { t.ask = Kind(words[0]) }, nil
	case "own":
		return func(t *term) { t.ask = Unknown }, nil
	case "filler":
		return func(*term) {}, nil
	}
	return nil, fmt.Errorf("no such meaning: %q", words[0])
}

func roleOf(f Field, where string) (func(*term), error) {
	sides := map[string]side{"after": after, "before": before, "either": after | before}
	name, soft := where, false
	if n := len(where); n > 0 && where[n-1] == '?' {
		name, soft = where[:n-1], true
	}
	if sides[name] == 0 || dimensionOf[f] == 0 && !counted[f] {
		return nil, fmt.Errorf("no such role: %q %q", f, where)
	}
	return func(t *term) { t.roles = append(t.roles, role{f, sides[name], soft}) }, nil
}
