package bot

import (
	"slices"
	"strings"

	"heft/parser"
)

// What was told of a rope holds for that rope alone: where a job gets another, its
// old strength is not kept.

// ofRope are the facts of one rope.
var ofRope = []parser.Field{parser.RopeBreak, parser.RopeWorking}

// otherRope says whether a message tells of another rope than the job's, and not
// what it bears.
func (j Job) otherRope(said parser.Question) bool {
	was, had := j.facts.Get(parser.RopeDiameter)
	is, has := said.Get(parser.RopeDiameter)
	return had && has && was.Low != is.Low && !said.Has(ofRope...) && j.facts.Has(ofRope...)
}

// withoutRope is the job without what its rope bore, and what kind it was.
func (j Job) withoutRope() Job {
	f := j.facts
	f.Quantities = slices.DeleteFunc(slices.Clone(f.Quantities), func(x parser.Quantity) bool { return slices.Contains(ofRope, x.Field) })
	f.Notes = slices.DeleteFunc(slices.Clone(f.Notes), func(n string) bool { return strings.HasPrefix(n, "rope-") })
	return Job{f}
}
