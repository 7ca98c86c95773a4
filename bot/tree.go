package bot

import (
	"errors"
	"math"
	"slices"

	"heft/calc/haul"
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// noteNewTree is the note of the word file for counting anew.
const noteNewTree = "new-tree"

// workTree adds up the pieces of a tree: the one in the message, or all that
// the conversation asked about.
func (a *answer) workTree() error {
	q := a.question
	if slices.Contains(q.Notes, noteNewTree) {
		a.status = Answered
		a.lines = []string{a.voice.say("New tree: counting from nought. What piece?")}
		return nil
	}
	pieces := a.tree.pieces
	if !q.Pieceless() {
		res, err := a.weighed()
		if err != nil {
			return err
		}
		a.result = &res
		pieces = slices.Repeat([]picked{{a.piece(), res.Weight}}, a.many())
	}
	if len(pieces) == 0 {
		a.status = Needs
		a.needs = parser.Question{}.MissingPiece()
		a.lines = []string{a.voice.say("Which pieces? Nothing counted in this conversation yet. Type them one a line, like “%s”.", example(a.voice))}
		return nil
	}
	return a.tellTree(pieces)
}

func (a *answer) tellTree(pieces []picked) error {
	v := a.voice
	a.counted = pieces
	sum, heaviest := added(pieces)
	trips, err := tripsOf(pieces, a.question)
	over, tooBig := errors.AsType[*limits.Contradiction](err)
	if err != nil && !tooBig {
		return err
	}
	o := &treeObject{Total: float64(sum.High), Heaviest: float64(heaviest), Pieces: len(pieces), Loads: trips.Loads}
	a.status = Answered
	a.figures = func(all *object) { all.Tree = o }
	a.lines = []string{v.treeHead(len(pieces), sum, heaviest, trips, a.question)}
	if tooBig {
		a.problems = append(a.problems, v.overPayload(over, trips))
	}
	if len(pieces) == 1 && trips.Loads == 1 {
		a.lines = append(a.lines, v.toLoad(pieces[0].weight.High, a.question)...)
	}
	a.lines = append(a.lines, v.say("Light end %s, likely %s.", v.atMost(sum.Low), v.heavy(sum.Likely)))
	for i, p := range pieces {
		if i == mostListed {
			a.lines = append(a.lines, v.say("… and %s more.", count(len(pieces)-i)))
			break
		}
		a.lines = append(a.lines, v.say("%s. %s: %s", count(i+1), p.name, v.heavy(p.weight.High)))
	}
	a.tellTreeAssumed(trips)
	return nil
}

// toLoad says how many pieces of that weight a truck takes.
func (s speaker) toLoad(one unit.Mass, q parser.Question) []string {
	payload := q.Mass(parser.Payload).Low
	n := math.Floor(float64(payload / one))
	return []string{
		s.say("%s to a load of %s, by weight alone: %s.", count(int(n)), s.atMost(payload), s.heavy(unit.Mass(n)*one)),
		s.say("Is %s what it carries? A plate may count its own weight too: take that off first.", s.atMost(payload)),
	}
}

func (a *answer) tellTreeAssumed(trips haul.Trips) {
	v := a.voice
	if a.question.Pieceless() {
		a.lines = append(a.lines, v.say("Counted: each piece asked about here; a follow-up takes the place of the piece that it changed. “New tree” counts anew."))
	}
	if a.tree.full {
		a.problems = append(a.problems, v.say("I count %s pieces at most: later ones are NOT in it.", count(mostPicked)))
	}
	switch {
	case trips.Loads > 0:
		a.lines = append(a.lines, v.say("Whole pieces, by the heavy end; %s by weight alone. Brush fills a truck before it weighs.", count(trips.ByWeight)))
	case !a.question.Has(parser.Payload):
		a.lines = append(a.lines, v.say("Loads? Tell me what the truck takes, like “%s”.", v.typed([]parser.Field{parser.Payload})))
	}
}

// mostListed is how many pieces of a tree fit on a phone.
const mostListed = 12

// treeHead is the first line: the sum, the heaviest pick, the loads.
func (s speaker) treeHead(n int, sum piece.Weight, heaviest unit.Mass, trips haul.Trips, q parser.Question) string {
	total, pick := s.heavy(sum.High), s.heavy(heaviest)
	payload := s.atMost(q.Mass(parser.Payload).Low)
	switch {
	case trips.Loads == 1:
		return s.say("%s: %s in all, heaviest pick %s, 1 load of %s.", s.pieces(n), total, pick, payload)
	case trips.Loads > 1:
		return s.say("%s: %s in all, heaviest pick %s, %s loads of %s.", s.pieces(n), total, pick, count(trips.Loads), payload)
	}
	return s.say("%s: %s in all, heaviest pick %s.", s.pieces(n), total, pick)
}

func (s speaker) pieces(n int) string {
	if n == 1 {
		return s.say("1 piece")
	}
	return s.say("%s pieces", count(n))
}

// overPayload says that a piece is more than the truck takes, and how many loads it all is
// once it is cut.
func (s speaker) overPayload(c *limits.Contradiction, trips haul.Trips) string {
	return s.say("A piece of %s is OVER the payload of %s: no load for it. Cut up, all of it is %s loads at the least, by weight alone.",
		s.heavy(unit.Mass(c.Got)), s.atMost(unit.Mass(c.Limit)), count(trips.ByWeight))
}

// overInShort says so beside a choice, with no full stop.
func (s speaker) overInShort(pieces []picked, q parser.Question) string {
	if len(pieces) == 0 {
		return ""
	}
	trips, err := tripsOf(pieces, q)
	c, over := errors.AsType[*limits.Contradiction](err)
	if !over {
		return ""
	}
	return s.say("%s, OVER the payload of %s: cut up, %s loads at the least", s.heavy(unit.Mass(c.Got)), s.atMost(unit.Mass(c.Limit)), count(trips.ByWeight))
}

// tripsProblem says why there is no number of loads.
func (s speaker) tripsProblem(err error, trips haul.Trips) string {
	if c, ok := errors.AsType[*limits.Contradiction](err); ok {
		return s.overPayload(c, trips)
	}
	return (&answer{voice: s}).problem(err)
}

// added is the sum of pieces, and the heaviest of them.
func added(pieces []picked) (sum piece.Weight, heaviest unit.Mass) {
	for _, p := range pieces {
		sum.Low += p.weight.Low
		sum.Likely += p.weight.Likely
		sum.High += p.weight.High
		heaviest = max(heaviest, p.weight.High)
	}
	return sum, heaviest
}

// tripsOf is how many loads the pieces are, none where no payload was told.
func tripsOf(pieces []picked, q parser.Question) (haul.Trips, error) {
	if !q.Has(parser.Payload) {
		return haul.Trips{}, nil
	}
	masses := make([]unit.Mass, len(pieces))
	for i, p := range pieces {
		masses[i] = p.weight.High
	}
	return haul.Loads(masses, q.Mass(parser.Payload).Low)
}
