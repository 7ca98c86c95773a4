package parser

import "slices"

// Where the blocks of a raise meet, and where a swing goes, hang on no weight.
// Where nothing is told that a weight could be worked out from, they are
// answered from the places alone, and what pulls is left unsaid.

// Notes of the word file that such a question hangs on.
const (
	blocksMeet = "blocks-meet" // whether the blocks of a raise meet
	tieWanted  = "tie-wanted"  // where the moving block may be tied
	// how high the block must be for a raise
	lowestWanted = "lowest-wanted"
	tagPull      = "tag-pull" // how hard a tag line pulls, whatever else is told
)

// placesOnly leaves out the notes that have done their part, and those that
// only a raise makes use of.
func (q *Question) placesOnly() {
	pulled := q.Intent == AskBalance && !q.Has(Sideways) // how far aside is still to be asked
	q.Notes = slices.DeleteFunc(q.Notes, func(n string) bool {
		return n == tagPull && !pulled || (n == blocksMeet || n == tieWanted || n == lowestWanted) && q.Intent != AskRaise || n == lowestWanted && q.Has(BlockHeight)
	})
}

// OfPlaces says whether a raise or a swing is answered without its forces: no
// weight is told, and nothing that one hangs on. Where a part of that is told,
// the rest is asked for, unless the words ask for nothing but the places.
func (q Question) OfPlaces() bool {
	untold := q.Species == nil && !q.Has(across...)
	switch {
	case q.LowestWanted(), q.Intent == AskRaise && !q.Has(Tie) && (q.noted(tieWanted) || q.Has(Length) && q.Has(BlockHeight)):
		return true // no pull can be told before the tie is
	case q.Has(Weight) || len(q.MissingSizes()) == 0:
		return false
	case q.Intent == AskRaise:
		return untold || q.noted(blocksMeet) || q.noted(tieWanted)
	case q.Intent == AskSwing:
		return untold
	}
	return false
}

// missingPlaces lists what the places of a raise or a swing still need.
func (q Question) missingPlaces() []Field {
	if q.Intent == AskSwing {
		out := q.missingSwing()
		if q.Obstacle != nil || q.Has(ObstacleHeight) {
			out = append(out, q.without([]Field{ObstacleOut})...)
		}
		return out
	}
	if q.LowestWanted() {
		if q.Has(Tie) {
			return nil
		}
		return q.without([]Field{Length})
	}
	out := q.without([]Field{BlockHeight})
	if !q.Has(Tie, Length) && !q.noted(tieWanted) {
		out = append(out, Tie)
	}
	return out
}

// ByHeight says whether a piece clears what stands there, or does not, by the heights
// alone: "block at 38 ft, 6 ft of line, 14 ft long, roof 12 ft high". Whatever it swings,
// it comes no lower than it hangs.
func (q Question) ByHeight() bool {
	told := q.Has(HitchHeight) && q.Has(LineOut) && q.Has(Length) && q.Has(ObstacleHeight)
	return told && q.Intent == AskSwing && q.Obstacle != nil && q.Obstacle.Value == Thing && !q.Has(Sideways, StartAngle, ObstacleOut)
}

// LowestWanted says whether it is asked how high the block must be above the hinge.
func (q Question) LowestWanted() bool { return q.Intent == AskRaise && q.noted(lowestWanted) }

// WeightWanted says whether a weight is asked for rather than what it is
// worked out from: a tag line pulls, and a block that turns the rope is loaded,
// by the weight alone, and nothing of the piece is told.
func (q Question) WeightWanted() bool {
	turned := q.Has(Turn) || slices.ContainsFunc(q.Notes, Redirecting)
	byWeight := q.Intent == AskBalance && (q.Has(Sideways) || q.noted(tagPull)) || q.Intent == AskBlockLoad && turned
	return byWeight && q.Species == nil && !q.Has(across...) && !q.Has(Weight)
}

// onlyPlaces says whether a raise asks for no more than where its blocks meet or
// where to tie, and all that this hangs on is told.
func (q Question) onlyPlaces() bool {
	return q.Intent == AskRaise && (q.noted(blocksMeet) || q.noted(tieWanted)) && q.OfPlaces() && len(q.missingPlaces()) == 0
}
