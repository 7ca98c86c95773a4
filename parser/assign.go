package parser

// Costs of binding the words of a role to a number. The cheapest assignment
// of all words to all numbers is what was meant; where two cost the same and
// mean different things, the message has two readings.
const (
	costSoft    = 1  // the words say much else besides
	costSkipped = 2  // another number stands between
	costRole    = 1  // the words of another role stand between
	costIdle    = 5  // the words of a role bind nothing
	costSoftOff = 1  // likewise, where they say much else besides
	costClash   = 20 // two numbers for one field
	costLoose   = 12 // a number without a place
	farthest    = 3  // numbers that a role looks past
	manyRoles   = 12 // more than this in one message is no question
)

// option is one way to bind the words of a role.
type option struct {
	fig   int // index of the element; -1 for none
	field Field
	cost  int
}

// bound maps the index of a figure's element to its field.
type bound map[int]Field

// solver searches the assignments.
type solver struct {
	rd      *reading
	options [][]option
	current bound
	best    int
	winners []bound
}

// assign binds the words of all roles. It returns every reading of least
// cost; none where there are too many words to try.
func assign(rd *reading) []bound {
	s := &solver{rd: rd, current: bound{}, best: 1 << 30}
	for i, e := range rd.elems {
		if e.term != nil && len(e.term.roles) > 0 {
			s.options = append(s.options, rd.optionsOf(i))
		}
	}
	if len(s.options) > manyRoles {
		return nil
	}
	s.search(0, 0)
	return s.winners
}

func (rd *reading) optionsOf(at int) []option {
	idle := costIdle
	var out []option
	for _, r := range rd.elems[at].term.roles {
		base := 0
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

// look collects the numbers on one side of the words that the field can take.
func (rd *reading) look(out []option, at, step int, f Field, cost int) []option {
	seen := 0
	for i := at + step; i >= 0 && i < len(rd.elems) && seen < farthest; i += step {
		e := rd.elems[i]
		switch {
		case e.fig != nil:
			if takes(f, e.fig.dim) && !e.fig.pair {
				out = append(out, option{i, f, cost})
			}
			cost += costSkipped
			seen++
		case e.pause > 0:
			cost += e.pause
		case e.term != nil && len(e.term.roles) > 0:
			cost += costRole
		}
	}
	return out
}

// search tries the options of the roles from the n-th on.
func (s *solver) search(n, cost int) {
	if cost > s.best {
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
