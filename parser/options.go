package parser

import "slices"

// optionsOf lists the ways to bind the words of the roles at an element.
func (rd *reading) optionsOf(at int) []option {
	idle := costIdle
	var out []option
	for _, r := range rd.elems[at].term.roles {
		if rd.taken(at, r.side) {
			return []option{{fig: -1}}
		}
		base := 0
		if rd.elems[at].marked(markThick) && rd.has(markRound) {
			r.field = Length // a disc is 4 in thick
		}
		if r.field == HitchHeight && r.side == before && rd.roundHigh(at) {
			r.field, r.soft = Length, false
		}
		if r.soft {
			base, idle = costSoft, costSoftOff
		}
		if r.side&after != 0 {
			out = rd.look(out, at, +1, r, base)
		}
		if r.side&before != 0 {
			out = rd.look(out, at, -1, r, base)
		}
	}
	rd.level(out, at)
	if rd.ownWidth(out, at) {
		idle += costLoose
	}
	return append(out, option{fig: -1, cost: idle})
}

// level weighs two numbers before and behind the words. Where both stand right
// beside them, "22 ft rope 120 ft", what follows must not decide; where only
// the one behind does, "22 ft, hitch 35 ft red oak limb", it is theirs. So it
// is where "de" leads to it: "22 pies, cuerda de 120 pies".
func (rd *reading) level(options []option, at int) {
	var left, right *option
	for i := range options {
		switch o := &options[i]; {
		case o.fig == at+1, rd.made(at, o.fig):
			right = o
		case o.fig < at && (left == nil || o.fig > left.fig):
			left = o
		}
	}
	switch {
	case left == nil || right == nil || left.field != right.field:
	case left.fig == at-1 && (rd.at(at-2).cross || rd.sizes(at-2, at-1)) && !rd.dwarfs(*left, *right):
		left.cost = right.cost + costPiece // "12 in x 18 ft hitch height 28 ft": both sizes are the piece's
	case left.fig == at-1:
		left.cost = max(left.cost, right.cost)
		right.cost = left.cost
	default:
		right.cost = min(right.cost, max(0, left.cost-costNamed))
	}
}

// ownWidth says whether a number stands right before the words of a thickness,
// and none right behind: "1.1 m across and 50 cm high". It is theirs, and the
// others are not.
func (rd *reading) ownWidth(options []option, at int) bool {
	own := false
	for _, o := range options {
		if o.fig == at+1 || rd.made(at, o.fig) {
			return false
		}
		own = own || o.fig == at-1 && o.field == Diameter
	}
	for i := range options {
		if own && options[i].fig != at-1 {
			options[i].cost += costLoose
		}
	}
	return own
}

// roundHigh says whether the words at an element tell how high a round stands:
// "1.1 m across and 50 cm high". Nothing is hitched so low.
func (rd *reading) roundHigh(at int) bool {
	fig := rd.at(at - 1).fig
	return fig.short() && rd.anyAt(func(i int) bool {
		return i != at && rd.elems[i].plays(Diameter) && rd.lengthAt(i-1) && i-1 != at-1
	})
}

// dwarfs says whether the number before the words of a rope or a hitch is
// longer than the one behind them, or that one has words of its own. No piece hangs clear on so short a rope, or
// so low: "14 in 120 ft rope 22 ft".
func (rd *reading) dwarfs(left, right option) bool {
	if left.field != RopeLength && left.field != HitchHeight {
		return false
	}
	others := rd.at(right.fig+1).looks(before) && !rd.at(right.fig+1).plays(left.field) // "35 ft hitch 120 ft rope"
	return others || rd.elems[left.fig].fig.low > rd.elems[right.fig].fig.high
}

// sizes says whether two numbers side by side are the two of a piece: "14 in
// 22 ft".
func (rd *reading) sizes(i, j int) bool {
	a, b := rd.at(i).fig, rd.at(j).fig
	return a != nil && a.dim == dimLength && a.unit.fine && !a.elsewhere && !a.rope && b.far()
}

// made says whether "de" leads from the words to the number.
func (rd *reading) made(at, i int) bool { return i == at+2 && rd.at(at+1).marked(markMade) }

// taken says whether the words belong to a number of the surroundings:
// "climber 40 ft up", "rope 5/8 in", or to how thick a rope is.
func (rd *reading) taken(at int, s side) bool {
	left, right := rd.at(at-1).fig, rd.at(rd.past(at+1, +1, markIs)).fig
	return s&before != 0 && left != nil && left.elsewhere || s&after != 0 && right != nil && (right.elsewhere || right.rope)
}

// look collects the numbers on one side of the words that the field can take.
func (rd *reading) look(out []option, at, step int, r role, cost int) []option {
	f, seen := r.field, 0
	for i := at + step; i >= 0 && i < len(rd.elems) && seen < farthest; i += step {
		e := rd.elems[i]
		switch {
		case e.fig != nil && e.fig.elsewhere, r.soft && e.marked(markRelation) && !e.marked(markIs):
			return out // "lower it to 10 ft": too much stands between
		case e.fig != nil:
			if takes(f, e.fig) && !rd.anothers(i, f) {
				out = append(out, option{i, f, cost + rd.naming(at, i, f) + rd.skipped(i, f, seen)})
			}
			seen++
		case e.pause > 0 && mentioned[f] && rd.text[e.start:e.end] != ":":
			cost += costMention
		case e.pause > 0:
			cost += e.pause
		default:
			cost += e.between(f)
		}
	}
	return out
}

// between is the cost of a term that stands between a role and its number.
func (e element) between(f Field) int {
	switch {
	case e.marked(markAnd):
		return costAnd
	case e.piece():
		return costNamed
	case e.term == nil || len(e.term.roles) == 0 || e.plays(f):
		return 0
	case e.term.roles[0].soft:
		return costSoft
	}
	return costRole
}

// skipped is the cost of the numbers that stand between a role and its own.
func (rd *reading) skipped(i int, f Field, seen int) int {
	if f == HitchHeight && rd.at(i-1).marked(markAt) {
		return costAt * seen
	}
	return costSkipped * seen
}

// anothers says whether the number cannot be the field's by what stands
// before it: no length is "at" somewhere, and in "drop a 14 in limb" or
// "hitched the 22 ft limb" the number is the piece's. "Two slings" are no wraps.
func (rd *reading) anothers(i int, f Field) bool {
	switch last := rd.at(i - 1); {
	case f == Wraps && rd.hardware(i+1):
		return !rd.at(i+1).plays(Wraps) && !rd.at(i+2).plays(Wraps)
	case f == RopeLength || f == Length:
		return last.marked(markAt)
	case ofPiece(f) || !rd.at(i+1).piece():
		return false
	default:
		return last.marked(markArticle) || mentioned[f] && rd.elems[i].fig.unit.fine
	}
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
	if (f == BlockHeight || f == Tie) && rd.sizes(rd.past(i-1, -1, markAnd), i) {
		return costPiece // "14 in 22 ft above the hinge" could be two sizes
	}
	if next.piece() && !ofPiece(f) && !(at+1 == i && rd.endsInAt(at)) && !rd.made(at, i) || f == HitchHeight && (next.plays(Tie) || next.plays(BlockHeight)) {
		return costPiece
	}
	return 0
}

// endsInAt says whether the words of a role lead straight to their number:
// "hitched at", "lower from".
func (rd *reading) endsInAt(at int) bool { return rd.termAt(at).leads }

// plays says whether the element has a role for the field.
func (e element) plays(f Field) bool {
	return e.term != nil && slices.ContainsFunc(e.term.roles, func(r role) bool { return r.field == f })
}
