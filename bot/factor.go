package bot

import (
	"math"
	"slices"
	"strings"

	"heft/calc/gear"
	"heft/parser"
)

// tellFactor says first how many times the load the gear breaks at as it is rigged, where
// that is asked for: breaking strength, less what the knot and the hitch take, over the
// load, rounded down. What is only marked with its working load has its factor in it.
func (a *answer) tellFactor(all []rated) {
	q, v := a.question, a.voice
	if !slices.Contains(q.Notes, parser.FactorWanted) {
		return
	}
	var told []string
	under := false
	for _, r := range all {
		for _, k := range kit {
			if k.part == r.part && q.Has(k.breaks) && !q.Has(k.marked) && r.load > 0 {
				left := math.Floor(10*factorOf(q)/r.used()) / 10
				under = under || left < gear.Rigging
				told = append(told, v.say("%s %s:1", a.partName(r.part), trimmed(left, 1)))
			}
		}
	}
	if len(told) == 0 {
		return
	}
	line := v.say("Factor: %s. Plan on %s:1, at least %s:1.", strings.Join(told, ", "), trimmed(gear.Planning, 1), trimmed(gear.Rigging, 1))
	if under {
		line = v.say("Factor: %s. UNDER %s:1, the least for rigging; plan on %s:1.", strings.Join(told, ", "), trimmed(gear.Rigging, 1), trimmed(gear.Planning, 1))
	}
	a.lines = slices.Insert(a.lines, 0, line)
}

// holdsBlock says whether the sling or the shackle told of is the one that the block hangs
// in, so that it sees both legs of the rope.
func (a *answer) holdsBlock() bool {
	return slices.Contains(a.question.Notes, parser.NoteHoldsBlock)
}

// linePeak says whether the load told is the pull in the line, and no piece's.
func (a *answer) linePeak() bool {
	return a.question.Intent == parser.AskGear && slices.Contains(a.question.Notes, parser.NoteLinePeak)
}
