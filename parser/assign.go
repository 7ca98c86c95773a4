package parser

import (
	"slices"
	"strings"
)

// Costs of binding the words of a role to a number. The cheapest assignment
// of all words to all numbers is what was meant; where two cost the same and
// mean different things, the message has two readings.
const (
	costSoft    = 1     // the words say much else besides
	costSkipped = 6     // another number stands between
	costAt      = 2     // likewise, before "at": "hitched the 22 ft limb at 35 ft"
	costMention = 6     // a pause stands between, and the words are often just mentioned: "wet rope, 22 ft"
	costRole    = 1     // the words of another role stand between
	costIdle    = 5     // the words of a role bind nothing
	costSoftOff = 1     // likewise, where they say much else besides
	costPiece   = 5     // the number names the piece ("22 ft limb"), the role does not
	costClash   = 10    // two numbers for one field
	costLoose   = 12    // a number without a place
	farthest    = 3     // numbers that a role looks past
	manyRoles   = 12    // more than this in one message is no question
	manyTries   = 20000 // readings that are weighed before giving up
)

// option is one way to bind the words of a role.
type option struct {
	fig   int // index of the element; -1 for none
	field Field
	cost  int
}

// bound maps the index of an element to the field of its figure.
type bound map[int]Field

// solver searches the assignments.
type solver struct {
	rd      *reading
	options [][]option
	current bound
	tries   int
	best    int
	winners []bound
}

// assign binds the words of all roles. It returns every reading of least
// cost; none where there are too many words to try.
func assign(rd *reading) []bound {
	s := &solver{rd: rd, current: make(bound, 8), best: 1 << 30}
	for i, e := range rd.elems {
		if e.term != nil && len(e.term.roles) > 0 {
			s.options = append(s.options, rd.optionsOf(i))
		}
	}
	if len(s.options) > manyRoles {
		return nil
	}
	s.search(0, 0)
	if s.tries > manyTries {
		return nil
	}
	return s.winners
}

func (rd *reading) optionsOf(at int) []option {
	if rd.taken(at) {
		return []option{{fig: -1}}
	}
	idle := costIdle
	var out []option
	for _, r := range rd.elems[at].term.roles {
		base := 0
		if rd.elems[at].marked(markThick) && rd.has(markRound) {
			r.field = Length // a disc is 4 in thick
		}
		if r.soft {
			base, idle = costSoft, costSoftOff
		}
		if r.side&after != 0 {
			out = rd.look(out, at, +1, r.field, base)
		}
		if r.side&before != 0 {
			out = rd.look(out, at, -1, r.field, base)
		}
	}
	return append(out, option{fig: -1, cost: idle})
}

// taken says whether the words belong to a number of the surroundings:
// "climber 40 ft up", "rope 5/8 in".
func (rd *reading) taken(at int) bool {
	before, behind := rd.at(at-1).fig, rd.at(rd.past(at+1, +1, markIs)).fig
	return before != nil && before.elsewhere || behind != nil && behind.elsewhere
}

// look collects the numbers on one side of the words that the field can take.
func (rd *reading) look(out []option, at, step int, f Field, cost int) []option {
	seen := 0
	for i := at + step; i >= 0 && i < len(rd.elems) && seen < farthest; i += step {
		e := rd.elems[i]
		switch {
		case e.fig != nil && e.fig.elsewhere:
			return out
		case e.fig != nil:
			if takes(f, e.fig) && !rd.elsewhere(i, step, f) {
				out = append(out, option{i, f, cost + rd.naming(at, i, f) + rd.skipped(i, f, seen)})
			}
			seen++
		case e.pause > 0 && mentioned[f] && rd.text[e.start:e.end] != ":":
			cost += costMention
		case e.pause > 0:
			cost += e.pause
		case e.term != nil && len(e.term.roles) > 0, e.piece() && !ofPiece(f):
			cost += costRole
		}
	}
	return out
}

// skipped is the cost of the numbers that stand between a role and its own.
func (rd *reading) skipped(i int, f Field, seen int) int {
	if f == HitchHeight && rd.at(i-1).marked(markAt) {
		return costAt * seen
	}
	return costSkipped * seen
}

// elsewhere says whether the number stands "at" a place, which no length
// does.
func (rd *reading) elsewhere(i, step int, f Field) bool {
	return (f == RopeLength || f == Length) && step > 0 && rd.at(i-1).marked(markAt)
}

// ofPiece says whether a field is a size of the piece.
func ofPiece(f Field) bool { return f == Length || f == Weight || thickness(f) }

// naming is the extra cost of a number that names the piece, "22 ft red oak
// limb", for a role that has nothing to do with the piece, and of a place
// along the piece, "5 ft from the cut", for the height of the hitch. It is as
// much as the words cost that bind nothing, so that "hitched 22 ft red oak
// limb" has two readings; "hitched at 22 ft" has one.
func (rd *reading) naming(at, i int, f Field) int {
	next := rd.at(i + 1)
	if next.piece() && !ofPiece(f) && !(at+1 == i && rd.endsInAt(at)) || f == HitchHeight && (next.plays(Tie) || next.plays(BlockHeight)) {
		return costPiece
	}
	return 0
}

// endsInAt says whether the words of a role lead straight to their number:
// "hitched at", "lower from".
func (rd *reading) endsInAt(at int) bool {
	words := fold(rd.text[rd.elems[at].start:rd.elems[at].end])
	return strings.HasSuffix(words, " at") || strings.HasSuffix(words, " from")
}

// plays says whether the element has a role for the field.
func (e element) plays(f Field) bool {
	return e.term != nil && slices.ContainsFunc(e.term.roles, func(r role) bool { return r.field == f })
}

// search tries the options of the roles from the n-th on.
func (s *solver) search(n, cost int) {
	if s.tries++; cost > s.best || s.tries > manyTries {
		return
	}
	if n == len(s.options) {
		s.finish(cost)
		return
	}
	for _, o := range s.options[n] {
		if o.fig < 0 {
			s.search(n+1, cost+o.cost)
			continue
		}
		old, taken := s.current[o.fig]
		if taken && old != o.field {
			continue
		}
		s.current[o.fig] = o.field
		s.search(n+1, cost+o.cost)
		if !taken {
			delete(s.current, o.fig)
		}
	}
}

// finish weighs a whole assignment.
func (s *solver) finish(cost int) {
	cost += s.clashes()
	if cost <= s.best {
		full, loose := s.rd.place(s.current)
		cost += costLoose * len(loose)
		s.keep(full, cost)
	}
}

func (s *solver) keep(full bound, cost int) {
	switch {
	case cost < s.best:
		s.best, s.winners = cost, []bound{full}
	case cost == s.best:
		for _, w := range s.winners {
			if w.same(full) {
				return
			}
		}
		s.winners = append(s.winners, full)
	}
}

// clashes counts the fields that were given two different numbers.
func (s *solver) clashes() int {
	cost := 0
	seen := map[Field]*figure{}
	for i, f := range s.current {
		fig := s.rd.elems[i].fig
		if old := seen[f]; old != nil && (old.low != fig.low || old.high != fig.high) {
			cost += costClash
		}
		seen[f] = fig
	}
	return cost
}

func (b bound) same(c bound) bool {
	if len(b) != len(c) {
		return false
	}
	for i, f := range b {
		if c[i] != f {
			return false
		}
	}
	return true
}
