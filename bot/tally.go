package bot

import (
	"slices"

	"heft/calc/piece"
	"heft/parser"
)

// mostPicked is how many pieces a conversation counts: more than a day's work
// on one tree.
const mostPicked = 40

// picked is a piece that was asked about.
type picked struct {
	name   string
	weight piece.Weight
}

// tally are the pieces that a conversation asked about.
type tally struct {
	pieces []picked
	alike  int  // so many at the end are those that were asked about last
	full   bool // there were more than are counted
	last   bool // the question before was about the last of them
	again  bool // what was asked back is about the last of them
}

// countedIntents are the questions about a piece that comes off the tree.
var countedIntents = map[parser.Intent]bool{
	parser.AskWeight: true, parser.AskLower: true, parser.AskBlockLoad: true, parser.AskRope: true, parser.AskLift: true,
	parser.AskRaise: true, parser.AskSwing: true, parser.AskDrop: true, parser.AskBalance: true, parser.AskTree: true,
}

// counting is the tally after an answer. A piece that leans on the one before
// takes its place; any other is one more.
func (t Turn) counting(a answer) tally {
	now := t.tree
	if slices.Contains(a.question.Notes, noteNewTree) {
		now = tally{}
	}
	switch {
	case a.status == Needs:
		now.again = a.leaned && (t.pending == nil && now.last || now.again)
		return now
	case a.status != Answered || a.result == nil:
		return now
	case !countedIntents[a.question.Intent] || a.result.Weight.High <= 0:
		now.last, now.again = false, false
		return now
	}
	replaces := a.leaned && (t.pending == nil && now.last || t.pending != nil && now.again)
	p := picked{a.piece(), a.result.Weight}
	p.weight.Spread = nil // only the weight is kept
	before := slices.Clone(now.pieces)
	if replaces {
		before = before[:max(0, len(before)-now.alike)]
	}
	now.alike = min(a.many(), mostPicked-len(before))
	now.full = now.full || now.alike < a.many()
	now.pieces = append(before, slices.Repeat([]picked{p}, now.alike)...)
	now.last, now.again = true, false
	return now
}
