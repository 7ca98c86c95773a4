package bot

import (
	"math"
	"slices"

	"heft/calc/block"
	"heft/calc/gear"
	"heft/calc/unit"
	"heft/parser"
)

// Notes of the word file: how a sling is rigged.
const (
	noteChoker = "choker"
	noteBasket = "basket"
)

// rated is one piece of gear of a question, and what it may carry as it is
// rigged.
type rated struct {
	part    gear.Part
	limit   unit.Force
	words   []string // what the limit rests on
	assumed []string // what was taken at its worst, because nobody said
	carries float64  // of the tension of the line
	load    unit.Force
}

// used is the share of the limit that the load takes up.
func (r rated) used() float64 { return float64(r.load / r.limit) }

// kitPart is gear that a question can tell the strength of.
type kitPart struct {
	part           gear.Part
	breaks, marked parser.Field
}

// kit are the parts in the order of the rope's way.
var kit = []kitPart{
	{gear.Rope, parser.RopeBreak, parser.RopeWorking},
	{gear.Block, parser.BlockBreak, parser.BlockWorking},
	{gear.Sling, parser.SlingBreak, parser.SlingWorking},
	{gear.Connector, parser.ConnectorBreak, parser.ConnectorWorking},
	{gear.Drum, parser.DrumBreak, parser.DrumWorking},
}

// partNames are what a crew calls the parts.
var partNames = map[gear.Part]string{
	gear.Rope: "rope", gear.Block: "block", gear.Sling: "sling", gear.Connector: "shackle", gear.Drum: "drum",
}

// carabinerNote is the note that a carabiner connects: no crew calls it a shackle.
const carabinerNote = "carabiner"

// connects are the notes of what else connects, and what it is called.
var connects = map[string]string{
	carabinerNote: "carabiner", "connector": "connector", "swivel": "swivel", "screw-link": "screw link", "load-hook": "load hook",
}

// partName is what the crew calls a part.
func (a *answer) partName(p gear.Part) string {
	if p == gear.Connector {
		for _, n := range a.question.Notes {
			if connects[n] != "" {
				return a.voice.word(connects[n])
			}
		}
	}
	return a.voice.word(partNames[p])
}

// factorOf is the design factor that was said, or else that for loads that
// are not accurately known.
func factorOf(q parser.Question) float64 {
	if x, ok := q.Get(parser.DesignFactor); ok {
		return x.High // of two, the safer
	}
	return gear.Planning
}

// rated lists the gear whose strength was told. A marked working load is
// taken as it is; a break strength is divided by the design factor.
func (a *answer) rated(factor float64) ([]rated, error) {
	q := a.question
	var out []rated
	for _, k := range kit {
		if !q.Has(k.breaks, k.marked) {
			continue
		}
		l := gear.Link{Part: k.part, Break: unit.Force(low(q, k.breaks)), Working: unit.Force(low(q, k.marked)), Factor: factor}
		r := rated{part: k.part, carries: 1, words: []string{a.strengthWords(l)}}
		if k.part == gear.Rope && (namesKnot(q) || l.Break > 0 && q.Intent != parser.AskDrop) || k.part == gear.Sling && knotInSling(q) {
			l.Knot = knotOf(q)
			r.words = append(r.words, withKnot(a.voice, l.Knot))
		} else if k.part == gear.Rope && l.Break > 0 {
			r.words = append(r.words, a.voice.word("before any knot"))
		}
		var err error
		if r.limit, err = l.Limit(); err != nil {
			return nil, err
		}
		if k.part == gear.Sling && q.Noted(parser.NoteRatedBasket) {
			if r.limit, err = gear.VerticalOf(r.limit); err != nil {
				return nil, err
			}
			r.assumed = append(r.assumed, a.voice.word("taken as its figure for a basket, legs plumb: half of it a leg"))
		}
		if k.part == gear.Sling {
			if err := r.rig(a); err != nil {
				return nil, err
			}
		}
		out = append(out, r)
	}
	return out, a.shares(out)
}

// strengthWords says where a working load comes from.
func (a *answer) strengthWords(l gear.Link) string {
	byBreak := a.voice.say("breaks at %s, %s:1", a.voice.pullHad(l.Break), trimmed(l.Factor, 1))
	switch {
	case l.Working == 0:
		return byBreak
	case l.Break == 0:
		return a.voice.say("working load %s as marked", a.voice.pullHad(l.Working))
	}
	return a.voice.say("%s, working load %s as marked", byBreak, a.voice.pullHad(l.Working))
}

// rig makes the limit of a single vertical leg that of the sling as it is
// rigged. What was not said of it is taken at its worst.
func (r *rated) rig(a *answer) error {
	if slices.Contains(a.question.Notes, noteChoker) {
		if err := r.choke(a); err != nil {
			return err
		}
	}
	q := a.question
	if slices.Contains(q.Notes, noteBasket) || q.Count(parser.Legs) >= 2 || q.Has(parser.LegAngle) {
		return r.spread(a)
	}
	return nil
}

// Angles that crews rig to: what a sling may carry there is said where they
// told none.
const (
	wideChoke = 121 * unit.Degree
	steepLegs = 60 * unit.Degree
)

// choke passes the sling through its own eye.
func (r *rated) choke(a *answer) (err error) {
	v, vertical := a.voice, r.limit
	angle, said := angleOf(a.question, parser.ChokeAngle, 0)
	if r.limit, err = gear.Choker(vertical, angle); err != nil {
		return err
	}
	if said {
		r.words = append(r.words, v.say("choked at %s", degrees(angle)))
		return nil
	}
	wide, err := gear.Choker(vertical, wideChoke)
	r.words = append(r.words, v.say("choked"))
	r.assumed = append(r.assumed, v.say("the choke's angle not said, its tightest taken; past 120° it may carry %s", v.pullHad(wide)))
	return err
}

// spread sets the sling in a basket, or on legs that share the load.
func (r *rated) spread(a *answer) (err error) {
	v, vertical := a.voice, r.limit
	legs := max(1, int(a.question.Count(parser.Legs)))
	carries := func(at unit.Angle) (unit.Force, error) { return gear.Bridle(vertical, legs, at) }
	basket := slices.Contains(a.question.Notes, noteBasket)
	if basket {
		carries = func(at unit.Angle) (unit.Force, error) { return gear.Basket(vertical, at) }
	}
	angle, said := a.legsFromLevel()
	if r.limit, err = carries(angle); err != nil {
		return err
	}
	if basket {
		r.words = append(r.words, v.say("basket, legs %s from level", degrees(angle)))
	} else {
		r.words = append(r.words, v.say("%s legs, %s from level", count(legs), degrees(angle)))
	}
	if said {
		return nil
	}
	steep, err := carries(steepLegs)
	r.assumed = append(r.assumed, v.say("the legs' angle not said, %s from level taken; at %s it may carry %s", degrees(angle), degrees(steepLegs), v.pullHad(steep)))
	return err
}

// legsFromLevel is the angle of a sling's legs above level: as told, or half of what is left
// of 180° where the angle between them is told.
func (a *answer) legsFromLevel() (unit.Angle, bool) {
	q := a.question
	if x, ok := q.Get(parser.BlockAngle); ok && !q.Has(parser.LegAngle) && betweenLegs(q) {
		return 90*unit.Degree - unit.Angle(x.High)*unit.Degree/2, true
	}
	return angleOf(q, parser.LegAngle, gear.LegAngles.Low)
}

// betweenLegs says whether an angle between legs is that of a sling's, and of no rope at a
// block: of those nothing is told.
func betweenLegs(q parser.Question) bool {
	slung := slices.Contains(q.Notes, noteBasket) || q.Count(parser.Legs) >= 2
	return slung && !q.Has(parser.RopeBreak, parser.RopeWorking, parser.BlockBreak, parser.BlockWorking, parser.Turn) && !slices.ContainsFunc(q.Notes, parser.Redirecting) && !q.Noted(parser.NoteHoldsBlock)
}

// angleOf is the angle of a field, or the one that is taken where none was
// said.
func angleOf(q parser.Question, f parser.Field, unsaid float64) (unit.Angle, bool) {
	if x, ok := q.Get(f); ok {
		return unit.Angle(x.Low) * unit.Degree, true
	}
	return unit.Angle(unsaid) * unit.Degree, false
}

func degrees(a unit.Angle) string { return trimmed(a.Degrees(), 1) + "°" }

// shares sets what each carries of the tension of the line. The block, and
// what it hangs on, carry two legs of the rope; a sling or a shackle without
// rope or block has the piece itself.
func (a *answer) shares(all []rated) error {
	between, _ := angleOf(a.question, parser.BlockAngle, 0)
	two, err := block.Load(1, between)
	if err != nil {
		return err
	}
	atBlock := a.holdsBlock() || slices.ContainsFunc(all, func(r rated) bool { return r.part == gear.Rope || r.part == gear.Block })
	for i := range all {
		switch all[i].part {
		case gear.Block:
			all[i].carries = math.Max(float64(two), gear.Shares.Low)
		case gear.Sling, gear.Connector:
			if atBlock {
				all[i].carries = math.Max(float64(two), gear.Shares.Low)
			}
		}
	}
	return nil
}

// knots are the notes of the word file that name a knot.
var knots = map[string]gear.Knot{
	"bowline": gear.Bowline, "clove-hitch": gear.CloveHitch, "timber-hitch": gear.TimberHitch,
	"two-half-hitches": gear.TwoHalfHitches, "eye-splice": gear.EyeSplice, "square-knot": gear.SquareKnot,
	"overhand-knot": gear.OverhandKnot, "figure-eight": gear.FigureEight, "unlisted-hitch": gear.UnlistedHitch,
}

func namesKnot(q parser.Question) bool {
	return slices.ContainsFunc(q.Notes, func(n string) bool { return knots[n] != gear.None })
}

// knotInSling says whether the knot that is named can only be tied in the sling: no rope is
// told of. A splice is part of what the sling's label says.
func knotInSling(q parser.Question) bool {
	return namesKnot(q) && knotOf(q) != gear.EyeSplice && !q.Has(parser.RopeBreak, parser.RopeWorking)
}

// knotOf is the weakest knot that was named; where none was, any may be tied.
func knotOf(q parser.Question) gear.Knot {
	var named []gear.Knot
	for _, n := range q.Notes {
		if k, ok := knots[n]; ok {
			named = append(named, k)
		}
	}
	if len(named) == 0 {
		return gear.AnyOtherKnot
	}
	return slices.MinFunc(named, func(a, b gear.Knot) int {
		return int(100*gear.Keeps(a).Kept.Low) - int(100*gear.Keeps(b).Kept.Low)
	})
}

func withKnot(s speaker, k gear.Knot) string {
	return s.say("%s%% of it left by %s", trimmed(100*gear.Keeps(k).Kept.Low, 0), s.word(knotNames[k]))
}

// knotNames are what a crew calls the knots.
var knotNames = map[gear.Knot]string{
	gear.Bowline: "the bowline", gear.CloveHitch: "the clove hitch", gear.TimberHitch: "the timber hitch",
	gear.TwoHalfHitches: "the two half hitches", gear.EyeSplice: "the eye splice", gear.SquareKnot: "the square knot",
	gear.OverhandKnot: "the overhand knot", gear.FigureEight: "the figure eight", gear.AnyOtherKnot: "a knot you did not name",
	gear.UnlistedHitch: "a hitch with no printed figure",
}
