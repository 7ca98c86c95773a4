package parser

import (
	"fmt"
	"slices"
	"strings"
)

// mark says what a word does to its neighbours.
type mark uint64

// The marks, as the word file names them.
const (
	markHello       mark = 1 << iota
	markFollow           // leans on what was said before
	markUnsure           // "some kind of", before a tree
	markBetween          // "between", before two ends
	markAnd              // joins two things
	markBy               // between two sizes
	markTaper            // the piece has two ends
	markAround           // girth, or "about"
	markPlace            // a thing of the surroundings: roof, fence, climber
	markStation          // gear with a height of its own: the drum
	markPart             // a part of the piece that is not its length: brush
	markMoving           // before how far: "lower it 30 ft"
	markLoaded           // gear that feels a load: "5 kN on the block"
	markDeflects         // before the turn of a rope, which is not the angle between its legs
	markRating           // before what gear is good for: rated, can hold
	markGear             // a thing of the set-up: rope, drum, saw
	markRelation         // says where, seen from a thing: from, above, over
	markWhere            // says where, or what with: in, on, with
	markIn               // where the piece grows: in, on
	markPronoun          // him, her, it
	markIs               // between a thing and its number: is, at, of
	markAt               // "at", before a height
	markAdverb           // between a number and where it is: hanging, out
	markArticle          // the, my
	markAdjective        // between a number and its thing: a 6 ft high fence
	markTall             // of a tree, a fence or a spar, hardly of a limb
	markBound            // makes a number a bound: over, at least, up to
	markRound            // a round: wider than long
	markThick            // across a log, along a round
	markDroops           // below level
	markClear            // "clear the job"
	markUnit             // a unit without a number
	markObstacle         // what a swing may strike: a roof, a fence
	markStanding         // likewise, as tall as the block: a trunk
	markPerson           // likewise: the climber
	markOutward          // behind how far past the block: away, beyond
	markUpward           // behind how high: high, up
	markNearside         // on the side where the piece starts
	markOverhead         // a power line, where a swing may meet it
	markSide             // a branch that rolls the piece
	markAside            // behind how far it sticks out
	markBridle           // two lines to one point
	markTwins            // before the places of two lines
	markTug              // moves a hanging load
	markCord             // a rope by its make, told with its thickness
	markMade             // between a thing and its size behind it: "cuerda de 5/8"
	markInches           // between the feet and the inches of a length: "6 pies y 4 pulgadas"
	markHalf             // a half: "2 vueltas y media"
	markTrailing         // between a thing and its number: "barda vieja de 6 pies"
	markFine             // names a thickness, and an end to measure from: "de la punta"
	markPasses           // asks about a swing right before what it may strike: "¿pasa el techo?"
	markHigh             // how high a thing is, or how high it is hitched: "de alto"
	markAttribute        // tells one limb from another behind an article: "the lower limb"
	markUpends           // what is done to a limb, before it: "stand the limb up"
	markErect            // how it ends up: up, upright
	markContrast         // before what is not wanted: instead of
	markSelf             // who speaks, and others: "me and one other guy"
	markTreetop          // the top of a tree before its name: "punta de abeto"
	markOffTree          // what a drum may stand at, away from the foot of the tree
	markClock            // behind an hour: "4 pm"
	markClockBefore      // before an hour: "till 4"
	markAge              // behind years: "10 years old"
	markHoists           // lifts, where nothing is told of a limb that could stand up: raise
	markList             // before pieces that are told one behind the other
)

var markNamed = map[string]mark{
	"hello": markHello, "follow": markFollow, "unsure": markUnsure, "between": markBetween, "and": markAnd,
	"by": markBy, "taper": markTaper, "around": markAround, "place": markPlace, "gear": markGear,
	"station": markStation, "part": markPart, "moving": markMoving,
	"loaded": markLoaded, "deflects": markDeflects, "rating": markRating, "adverb": markAdverb, "article": markArticle,
	"relation": markRelation, "where": markWhere, "in": markIn | markWhere, "pronoun": markPronoun, "is": markIs, "at": markAt | markIs | markWhere,
	"adjective": markAdjective, "tall": markTall | markAdjective, "bound": markBound, "round": markRound, "thick": markThick, "clear": markClear, "droops": markDroops, "unit": markUnit,
	"cord": markCord, "made": markMade, "inches": markInches, "trailing": markTrailing, "high": markHigh, "fine": markFine, "passes": markPasses,
	"obstacle": markObstacle, "standing": markStanding, "person": markPerson, "outward": markOutward, "upward": markUpward, "nearside": markNearside,
	"attribute": markAttribute, "upends": markUpends, "erect": markErect, "treetop": markTreetop, "hoists": markHoists, "clock": markClock, "clock-before": markClockBefore, "age": markAge, "off-tree": markOffTree, "list": markList,
	"overhead": markOverhead, "side": markSide, "aside": markAside, "bridle": markBridle, "twins": markTwins, "tug": markTug,
}

// inDoubt are the words that are asked about, unless what stands around them
// says what they are.
var inDoubt = map[string]struct {
	ask  Kind
	mark mark
}{
	"half": {Twist, markHalf}, "contrast": {Twist, markContrast}, "self": {Twist, markSelf}, "stand": {Unknown, markUpends},
}

// meaning is what a line of a word file says. Most spellings mean nothing
// else, and share its term.
type meaning struct {
	set            func(*term)
	plain, leading *term // without and with a last word that leads to a number
}

// term returns what a spelling means that means nothing else.
func (m *meaning) term(leads bool) *term {
	shared := &m.plain
	if leads {
		shared = &m.leading
	}
	if *shared == nil {
		*shared = &term{leads: leads}
		m.set(*shared)
	}
	return *shared
}

// give adds a meaning to a spelling of the language at hand.
func (lx *lexicon) give(spelling string, m *meaning) {
	var few [8]string
	slot, leads, words := trees, false, appendFolded(few[:0], spelling)
	if lx.now != nil {
		slot, leads = lx.now.slot, lx.now.leads[words[len(words)-1]]
	}
	to := lx.spelling(words, setOf(slot)).sense(slot)
	if to.term == nil {
		to.term = m.term(leads)
		return
	}
	both := *to.term // it means something besides
	both.leads = leads
	both.roles = slices.Clip(both.roles)
	m.set(&both)
	to.term = &both
}

// meaningOf returns what a meaning of the word file does to a term.
func meaningOf(words []string) (func(*term), error) {
	words = append(words, "", "")
	what, arg := words[0], words[1]
	if m := markNamed[what]; m != 0 {
		return func(t *term) { t.marks |= m }, nil
	}
	if set, ok := flags[what]; ok {
		return set, nil
	}
	if doubt, ok := inDoubt[what]; ok {
		return func(t *term) { t.ask, t.marks = doubt.ask, t.marks|doubt.mark }, nil
	}
	var err error
	set := func(*term) {}
	switch what {
	case "role":
		return roleOf(Field(arg), words[2])
	case "shape":
		v := oneOf(&err, arg, Log, Limb)
		set = func(t *term) { t.shape = v }
	case "condition":
		v := oneOf(&err, arg, Green, Dead)
		set = func(t *term) { t.condition = v }
	case "ask":
		intent := strings.TrimRight(arg, "?!")
		v := oneOf(&err, intent, append(special, AskWeight, AskLower, AskBlockLoad, AskRope, AskHelp)...)
		set = func(t *term) { t.intent, t.besides = v, strings.HasSuffix(arg, "?") }
		if strings.HasSuffix(arg, "!") {
			set = func(t *term) { t.whole = v }
		}
	case "stop":
		v := oneOf(&err, arg, halting...)
		set = func(t *term) { t.stop = v }
	case "units":
		v := oneOf(&err, arg, Imperial, Metric)
		set = func(t *term) { t.units = v }
	case "note":
		note, near := strings.CutSuffix(arg, "?")
		set = func(t *term) { t.note, t.near = note, near }
	case "at-block":
		set = func(t *term) { t.block = arg }
	case "gear-part", "strength":
		set = ratingOf(&err, what, arg)
	case "alone", "two-of-us", "turned", "tons":
		set = countOf(what, arg)
	case "order":
		v := oneOf(&err, arg, AskLower)
		set = func(t *term) { t.ask, t.order = Unknown, v }
	case "filler":
	default:
		set = askedOf(&err, what, arg)
	}
	return set, err
}

// countOf is a meaning that tells a number by itself.
func countOf(what, arg string) func(*term) {
	switch what {
	case "alone":
		return func(t *term) { t.count = 1 }
	case "two-of-us":
		return func(t *term) { t.count, t.roles = 2, append(t.roles, role{People, before, false}) }
	case "turned":
		v := map[string]float64{"90": 90, "180": 180}[arg]
		return func(t *term) { t.turned = v }
	}
	v := map[string]float64{"1": 1, "1/2": half, "3/2": 1 + half}[arg]
	return func(t *term) { t.tons = v }
}

// askedOf is a meaning that must be asked about, or asks for an explanation.
func askedOf(err *error, what, arg string) func(*term) {
	switch what {
	case "own":
		return func(t *term) { t.ask, t.own = Unknown, true }
	case "explain":
		v := oneOf(err, arg, ExplainNumbers, ExplainAssumed)
		return func(t *term) { t.explain = v }
	}
	if Kind(what) == Twist {
		return twistOf(err, arg)
	}
	v := oneOf(err, what, Girth, BreastHigh)
	return func(t *term) { t.ask = v }
}

// ratingOf is a meaning of gear's: a part of it, or a figure of its label.
func ratingOf(err *error, what, arg string) func(*term) {
	if what == "strength" {
		v := oneOf(err, arg, breaking, working)
		return func(t *term) { t.strength = v }
	}
	v := oneOf(err, arg, partRope, partBlock, partSling, partConnector, partDrum)
	return func(t *term) { t.part = v }
}

// oneOf returns the word as one of the values, or sets the error.
func oneOf[T ~string](err *error, word string, values ...T) T {
	if !slices.Contains(values, T(word)) {
		*err = fmt.Errorf("no such meaning: %q", word)
	}
	return T(word)
}

func roleOf(f Field, where string) (func(*term), error) {
	sides := map[string]side{"after": after, "before": before, "either": after | before}
	name, soft := strings.CutSuffix(where, "?")
	if sides[name] == 0 || dimensionOf[f] == 0 && !counted[f] {
		return nil, fmt.Errorf("no such role: %q %q", f, where)
	}
	return func(t *term) { t.roles = append(t.roles, role{f, sides[name], soft}) }, nil
}
