package places

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Costs of binding the words of a role to a number. The cheapest assignment
// of all words to all numbers is what was meant; where another costs hardly
// more and means something else, the message has two readings.
const (
	costNear    = 1  // as good as the same
	costSoft    = 1  // the words say much else besides
	costSoftOff = 1  // likewise, and bind nothing
	costIdle    = 5  // the words of a role bind nothing
	costRole    = 3  // the words of another role stand between
	costAnd     = 2  // "and" stands between, or a comma
	costNamed   = 2  // the words of the piece stand between
	costSkipped = 7  // another number stands between
	costAt      = 2  // likewise, before "at": "hitched the 22 ft limb at 35 ft"
	costMention = 6  // a pause stands between, and the words are often just mentioned: "wet rope, 22 ft"
	costPiece   = 5  // the number names the piece ("22 ft limb"), the role does not
	costClash   = 10 // two numbers for one field
	costLoose   = 12 // a number without a place
)

// Bounds of the search.
const (
	farthest  = 3    // numbers that a role looks past
	manyRoles = 12   // more than this in one message is no question
	manyTries = 1500 // readings that are weighed before giving up
)

// option is one way to bind the words of a role.
type option struct {
	fig   int // index of the element; -1 for none
	field parser.Field
	cost  int
}

// Bound has the field of every element's figure, "" for none.
type Bound []parser.Field

// solver searches the assignments.
type solver struct {
	rd      *reading.Reading
	options [][]option
	rest    []int // the least that the roles from the n-th on cost
	current Bound
	tries   int
	best    int
	found   []scored
}

type scored struct {
	Bound
	cost int
}

// Assign binds the words of all roles. It returns every reading of least
// cost, or nearly; none where there are too many words to try.
func Assign(rd *reading.Reading) []Bound {
	s := &solver{rd: rd, current: make(Bound, len(rd.Elems)), best: 1 << 30}
	for i, e := range rd.Elems {
		if e.Term != nil && len(e.Term.Roles) > 0 {
			s.options = append(s.options, optionsOf(rd, i))
		}
	}
	if len(s.options) > manyRoles {
		return nil
	}
	s.rest = make([]int, len(s.options)+1)
	for n := len(s.options) - 1; n >= 0; n-- {
		slices.SortStableFunc(s.options[n], func(a, b option) int { return a.cost - b.cost })
		s.rest[n] = s.rest[n+1] + s.options[n][0].cost
	}
	s.search(0, 0)
	if s.tries > manyTries {
		return nil
	}
	var winners []Bound
	for _, x := range s.found {
		same := func(w Bound) bool { return slices.Equal(w, x.Bound) }
		if x.cost <= s.best+costNear && !slices.ContainsFunc(winners, same) {
			winners = append(winners, x.Bound)
		}
	}
	return winners
}

// search tries the options of the roles from the n-th on, the cheapest first.
func (s *solver) search(n, cost int) {
	if s.tries++; cost+s.rest[n] > s.best+costNear || s.tries > manyTries {
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
		old := s.current[o.fig]
		if old != "" && old != o.field {
			continue
		}
		s.current[o.fig] = o.field
		s.search(n+1, cost+o.cost)
		s.current[o.fig] = old
	}
}

// finish weighs a whole assignment.
func (s *solver) finish(cost int) {
	cost += costClash * s.clashes()
	if cost > s.best+costNear {
		return
	}
	full, loose := place(s.rd, s.current)
	if cost += costLoose * (len(loose) + s.unfallen()); cost <= s.best+costNear {
		s.best = min(s.best, cost)
		s.found = append(s.found, scored{full, cost})
	}
}

// unfallen counts the falls and runs that stand right beside their words and
// were made something else: no reading is so much better that a fall may
// vanish from it.
func (s *solver) unfallen() (n int) {
	for i, e := range s.rd.Elems {
		for _, f := range []parser.Field{parser.DropHeight, parser.RunLength} {
			if fig := s.rd.At(i + 1).Fig; e.LeadsTo(f) && fig != nil && fig.Dim == parser.DimLength && !s.rd.At(i+2).Piece() && s.current[i+1] == "" && !s.current.Has(f) {
				n++
			}
		}
	}
	return n
}

// clashes counts the fields that were given two different numbers.
func (s *solver) clashes() int {
	n := 0
	for i, f := range s.current {
		if f == "" {
			continue
		}
		for j, g := range s.current[:i] {
			if a, b := s.rd.Elems[i].Fig, s.rd.Elems[j].Fig; f == g && (a.Low != b.Low || a.High != b.High) {
				n++
			}
		}
	}
	return n
}

// ThickOfCut says whether the bare number at i is how thick the stem of a cut plan is: it
// has a limit of its own beside it, and no other thickness is told, "what length of 380
// can i cut, limit 200".
func ThickOfCut(rd *reading.Reading, i int, full Bound) bool {
	if !gear.AsksFor(rd, parser.AskCutPlan) || full.Has(parser.Across...) || rd.At(i+1).Plays(parser.Limit) || rd.At(rd.WordsBefore(i)).Plays(parser.Limit) || rd.At(i+1).Plays(parser.Weight) || rd.At(rd.WordsBefore(i)).Plays(parser.Weight) {
		return false
	}
	made := rd.At(i-1).Marked(lexicon.MarkMade) || rd.At(rd.WordsBefore(i)).Plays(parser.Length)
	return made && rd.AnyAt(func(k int) bool {
		fig := rd.Elems[k].Fig
		return k != i && fig != nil && (rd.At(k+1).Plays(parser.Limit) || rd.At(rd.WordsBefore(k)).Plays(parser.Limit))
	})
}

// namedMass says whether another mass that is nothing else's names the piece, "8,000 lb
// rope ok for a 1,000 lb log": that is what it weighs.
func namedMass(rd *reading.Reading, full Bound, but int) bool {
	return (gear.AsksFor(rd, parser.AskGear) || gear.PartMeant(rd) == lexicon.PartRope) && rd.AnyAt(func(k int) bool {
		fig := rd.Elems[k].Fig
		return k != but && gear.Heavy(rd, k) && full[k] == "" && fig.Sure == "" && fig.Told == "" && !fig.Elsewhere && rd.At(k+1).Piece()
	})
}
