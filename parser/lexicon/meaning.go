package lexicon

import (
	"fmt"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/scan"
)

// The marks, as the word file names them.
const (
	MarkHello       scan.Mark = 1 << iota
	MarkFollow                // leans on what was said before
	MarkUnsure                // "some kind of", before a tree
	MarkBetween               // "between", before two ends
	MarkAnd                   // joins two things
	MarkBy                    // between two sizes
	MarkTaper                 // the piece has two ends
	MarkAround                // girth, or "about"
	MarkPlace                 // a thing of the surroundings: roof, fence, climber
	MarkStation               // gear with a height of its own: the drum
	MarkPart                  // a part of the piece that is not its length: brush
	MarkMoving                // before how far: "lower it 30 ft"
	MarkLoaded                // gear that feels a load: "5 kN on the block"
	MarkDeflects              // before the turn of a rope, which is not the angle between its legs
	MarkRating                // before what gear is good for: rated, can hold
	MarkGear                  // a thing of the set-up: rope, drum, saw
	MarkRelation              // says where, seen from a thing: from, above, over
	MarkWhere                 // says where, or what with: in, on, with
	MarkIn                    // where the piece grows: in, on
	MarkPronoun               // him, her, it
	MarkIs                    // between a thing and its number: is, at, of
	MarkAt                    // "at", before a height
	MarkAdverb                // between a number and where it is: hanging, out
	MarkArticle               // the, my
	MarkAdjective             // between a number and its thing: a 6 ft high fence
	MarkTall                  // of a tree, a fence or a spar, hardly of a limb
	MarkBound                 // makes a number a bound: over, at least, up to
	MarkRound                 // a round: wider than long
	MarkThick                 // across a log, along a round
	MarkDroops                // below level
	MarkClear                 // "clear the job"
	MarkUnit                  // a unit without a number
	MarkObstacle              // what a swing may strike: a roof, a fence
	MarkStanding              // likewise, as tall as the block: a trunk
	MarkPerson                // likewise: the climber
	MarkOutward               // behind how far past the block: away, beyond
	MarkUpward                // behind how high: high, up
	MarkNearside              // on the side where the piece starts
	MarkOverhead              // a power line, where a swing may meet it
	MarkSide                  // a branch that rolls the piece
	MarkAside                 // behind how far it sticks out
	MarkBridle                // two lines to one point
	MarkTwins                 // before the places of two lines
	MarkTug                   // moves a hanging load
	MarkCord                  // a rope by its make, told with its thickness
	MarkMade                  // between a thing and its size behind it: "cuerda de 5/8"
	MarkInches                // between the feet and the inches of a length: "6 pies y 4 pulgadas"
	MarkHalf                  // a half: "2 vueltas y media"
	MarkTrailing              // between a thing and its number: "barda vieja de 6 pies"
	MarkFine                  // names a thickness, and an end to measure from: "de la punta"
	MarkPasses                // asks about a swing right before what it may strike: "¿pasa el techo?"
	MarkHigh                  // how high a thing is, or how high it is hitched: "de alto"
	MarkAttribute             // tells one limb from another behind an article: "the lower limb"
	MarkUpends                // what is done to a limb, before it: "stand the limb up"
	MarkErect                 // how it ends up: up, upright
	MarkContrast              // before what is not wanted: instead of
	MarkSelf                  // who speaks, and others: "me and one other guy"
	MarkTreetop               // the top of a tree before its name: "punta de abeto"
	MarkOffTree               // what a drum may stand at, away from the foot of the tree
	MarkClock                 // behind an hour: "4 pm"
	MarkClockBefore           // before an hour: "till 4"
	MarkAge                   // behind years: "10 years old"
	MarkHoists                // lifts, where nothing is told of a limb that could stand up: raise
	MarkList                  // before pieces that are told one behind the other
)

var markNamed = map[string]scan.Mark{
	"hello": MarkHello, "follow": MarkFollow, "unsure": MarkUnsure, "between": MarkBetween, "and": MarkAnd,
	"by": MarkBy, "taper": MarkTaper, "around": MarkAround, "place": MarkPlace, "gear": MarkGear,
	"station": MarkStation, "part": MarkPart, "moving": MarkMoving,
	"loaded": MarkLoaded, "deflects": MarkDeflects, "rating": MarkRating, "adverb": MarkAdverb, "article": MarkArticle,
	"relation": MarkRelation, "where": MarkWhere, "in": MarkIn | MarkWhere, "pronoun": MarkPronoun, "is": MarkIs, "at": MarkAt | MarkIs | MarkWhere,
	"adjective": MarkAdjective, "tall": MarkTall | MarkAdjective, "bound": MarkBound, "round": MarkRound, "thick": MarkThick, "clear": MarkClear, "droops": MarkDroops, "unit": MarkUnit,
	"cord": MarkCord, "made": MarkMade, "inches": MarkInches, "trailing": MarkTrailing, "high": MarkHigh, "fine": MarkFine, "passes": MarkPasses,
	"obstacle": MarkObstacle, "standing": MarkStanding, "person": MarkPerson, "outward": MarkOutward, "upward": MarkUpward, "nearside": MarkNearside,
	"attribute": MarkAttribute, "upends": MarkUpends, "erect": MarkErect, "treetop": MarkTreetop, "hoists": MarkHoists, "clock": MarkClock, "clock-before": MarkClockBefore, "age": MarkAge, "off-tree": MarkOffTree, "list": MarkList,
	"overhead": MarkOverhead, "side": MarkSide, "aside": MarkAside, "bridle": MarkBridle, "twins": MarkTwins, "tug": MarkTug,
}

// inDoubt are the words that are asked about, unless what stands around them
// says what they are.
var inDoubt = map[string]struct {
	ask  parser.Kind
	mark scan.Mark
}{
	"half": {parser.Twist, MarkHalf}, "contrast": {parser.Twist, MarkContrast}, "self": {parser.Twist, MarkSelf}, "stand": {parser.Unknown, MarkUpends},
}

// meaning is what a line of a word file says. Most spellings mean nothing
// else, and share its term.
type meaning struct {
	set            func(*scan.Term)
	plain, leading *scan.Term // without and with a last word that leads to a number
}

// term returns what a spelling means that means nothing else.
func (m *meaning) term(leads bool) *scan.Term {
	shared := &m.plain
	if leads {
		shared = &m.leading
	}
	if *shared == nil {
		*shared = &scan.Term{Leads: leads}
		m.set(*shared)
	}
	return *shared
}

// give adds a meaning to a spelling of the language at hand.
func (lx *Lexicon) give(spelling string, m *meaning) {
	lx.folded = scan.AppendFolded(lx.folded[:0], spelling)
	slot, leads, words := trees, false, lx.folded
	if lx.now != nil {
		slot, leads = lx.now.Slot, lx.now.Leads[words[len(words)-1]]
	}
	to := lx.spelling(words, setOf(slot)).sense(slot)
	if to.term == nil {
		to.term = m.term(leads)
		return
	}
	both := *to.term // it means something besides
	both.Leads = leads
	both.Roles = slices.Clip(both.Roles)
	m.set(&both)
	to.term = &both
}

// meaningOf returns what a meaning of the word file does to a term.
func meaningOf(words []string) (func(*scan.Term), error) {
	words = append(words, "", "")
	what, arg := words[0], words[1]
	if m := markNamed[what]; m != 0 {
		return func(t *scan.Term) { t.Marks |= m }, nil
	}
	if set, ok := flags[what]; ok {
		return set, nil
	}
	if doubt, ok := inDoubt[what]; ok {
		return func(t *scan.Term) { t.Ask, t.Marks = doubt.ask, t.Marks|doubt.mark }, nil
	}
	if what == "role" {
		return roleOf(parser.Field(arg), words[2])
	}
	return valueOf(what, arg)
}

// valueOf returns what a meaning with a value does to a term.
func valueOf(what, arg string) (func(*scan.Term), error) {
	var err error
	set := func(*scan.Term) {}
	switch what {
	case "shape":
		v := oneOf(&err, arg, parser.Log, parser.Limb)
		set = func(t *scan.Term) { t.Shape = v }
	case "condition":
		v := oneOf(&err, arg, parser.Green, parser.Dead)
		set = func(t *scan.Term) { t.Condition = v }
	case "ask":
		intent := strings.TrimRight(arg, "?!")
		v := oneOf(&err, intent, append(Special, parser.AskWeight, parser.AskLower, parser.AskBlockLoad, parser.AskRope, parser.AskHelp)...)
		set = func(t *scan.Term) { t.Intent, t.Besides = v, strings.HasSuffix(arg, "?") }
		if strings.HasSuffix(arg, "!") {
			set = func(t *scan.Term) { t.Whole = v }
		}
	case "stop":
		v := oneOf(&err, arg, parser.Halting...)
		set = func(t *scan.Term) { t.Stop = v }
	case "units":
		v := oneOf(&err, arg, parser.Imperial, parser.Metric)
		set = func(t *scan.Term) { t.Units = v }
	case "note":
		note, near := strings.CutSuffix(arg, "?")
		set = func(t *scan.Term) { t.Note, t.Near = note, near }
	case "at-block":
		set = func(t *scan.Term) { t.Block = arg }
	case "gear-part", "strength":
		set = ratingOf(&err, what, arg)
	case "alone", "two-of-us", "turned", "tons":
		set = countOf(what, arg)
	case "order":
		v := oneOf(&err, arg, parser.AskLower)
		set = func(t *scan.Term) { t.Ask, t.Order = parser.Unknown, v }
	case "filler":
	default:
		set = askedOf(&err, what, arg)
	}
	return set, err
}

// countOf is a meaning that tells a number by itself.
func countOf(what, arg string) func(*scan.Term) {
	switch what {
	case "alone":
		return func(t *scan.Term) { t.Count = 1 }
	case "two-of-us":
		return func(t *scan.Term) {
			t.Count, t.Roles = 2, append(t.Roles, scan.Role{Field: parser.People, Side: Before, Soft: false})
		}
	case "turned":
		v := map[string]float64{"90": 90, "180": 180}[arg]
		return func(t *scan.Term) { t.Turned = v }
	}
	v := map[string]float64{"1": 1, "1/2": scan.Half, "3/2": 1 + scan.Half}[arg]
	return func(t *scan.Term) { t.Tons = v }
}

// askedOf is a meaning that must be asked about, or asks for an explanation.
func askedOf(err *error, what, arg string) func(*scan.Term) {
	switch what {
	case "own":
		return func(t *scan.Term) { t.Ask, t.Own = parser.Unknown, true }
	case "explain":
		v := oneOf(err, arg, parser.ExplainNumbers, parser.ExplainAssumed, parser.ExplainBrush)
		return func(t *scan.Term) { t.Explain = v }
	}
	if parser.Kind(what) == parser.Twist {
		return twistOf(err, arg)
	}
	v := oneOf(err, what, parser.Girth, parser.BreastHigh)
	return func(t *scan.Term) { t.Ask = v }
}

// ratingOf is a meaning of gear's: a part of it, or a figure of its label.
func ratingOf(err *error, what, arg string) func(*scan.Term) {
	if what == "strength" {
		v := oneOf(err, arg, Breaking, Working)
		return func(t *scan.Term) { t.Strength = v }
	}
	v := oneOf(err, arg, PartRope, PartBlock, PartSling, PartConnector, PartDrum)
	return func(t *scan.Term) { t.Part = v }
}

// oneOf returns the word as one of the values, or sets the error.
func oneOf[T ~string](err *error, word string, values ...T) T {
	if !slices.Contains(values, T(word)) {
		*err = fmt.Errorf("no such meaning: %q", word)
	}
	return T(word)
}

func roleOf(f parser.Field, where string) (func(*scan.Term), error) {
	sides := map[string]scan.Side{"after": After, "before": Before, "either": After | Before}
	name, soft := strings.CutSuffix(where, "?")
	if sides[name] == 0 || parser.DimensionOf[f] == 0 && !Counted[f] {
		return nil, fmt.Errorf("no such role: %q %q", f, where)
	}
	return func(t *scan.Term) { t.Roles = append(t.Roles, scan.Role{Field: f, Side: sides[name], Soft: soft}) }, nil
}

// Counted are the fields whose number has no unit.
var Counted = map[parser.Field]bool{
	parser.People: true, parser.Wraps: true, parser.Efficiency: true, parser.Redirects: true, parser.Legs: true, parser.Lines: true, parser.Strands: true, parser.Alike: true,
}

// Special are the intents that no other answer covers, the most particular
// first: where one is asked for, it is the answer.
var Special = []parser.Intent{
	parser.AskLog, parser.AskJob, parser.AskCutPlan, parser.AskDrop, parser.AskNotch, parser.AskGear, parser.AskAnchor, parser.AskSwing, parser.AskRaise, parser.AskBalance, parser.AskLift, parser.AskTree,
}
