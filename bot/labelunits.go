package bot

import (
	"slices"
	"strings"

	"heft/parser"
)

// What gear bears, and how thick a rope is, stands on its label in whatever units its maker
// uses: crews that speak of feet and pounds read kilonewtons off a block, and go on in pounds.

// inItsUnits is a message of a talk that tells no number but such ones, to be answered in the
// units of the talk; any other as it is.
func (t Turn) inItsUnits(q parser.Question, ask *parser.Ask) parser.Question {
	spoken := t.question.Units
	asked := ask != nil && gearOnly(ask)
	if spoken == "" || q.SaysUnits || !asked && len(q.Quantities) == 0 || slices.ContainsFunc(q.Quantities, ofNoLabel) {
		return q
	}
	q.Units = spoken
	return q
}

// ofNoLabel says whether a quantity tells by its unit in which a crew speaks: one with a unit
// that no label of gear told, and that is in no kilonewtons.
func ofNoLabel(x parser.Quantity) bool {
	return x.System != "" && x.Field != parser.RopeDiameter && !slices.Contains(parser.Ratings, x.Field) && !strings.HasSuffix(strings.ToLower(x.Words), "kn")
}
