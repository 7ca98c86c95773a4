package parser

import (
	"slices"

	"heft/calc/unit"
)

// Where the blocks of a raise meet, and where a swing goes, hang on no weight.
// Where nothing is told that a weight could be worked out from, they are
// answered from the places alone, and what pulls is left unsaid.

// Notes of the word file that such a question hangs on.
const (
	BlocksMeet = "blocks-meet" // whether the blocks of a raise meet
	TieWanted  = "tie-wanted"  // where the moving block may be tied
	// how high the block must be for a raise
	LowestWanted = "lowest-wanted"
	TagPull      = "tag-pull" // how hard a tag line pulls, whatever else is told
	// what a pull puts on its anchor
	AnchorLoad = "anchor-load"
	// how far a lift goes, and how much rope it takes in
	TravelWanted = "travel-wanted"
)

// PlacesOnly leaves out the notes that have done their part, and those that
// only a raise makes use of.
func (q *Question) PlacesOnly() {
	if q.Intent == AskLift && (q.Noted(BlocksMeet) || q.Noted(TieWanted)) && !q.Noted(TravelWanted) {
		q.Notes = append(slices.Clone(q.Notes), TravelWanted) // blocks that meet end a lift as well, and where it is tied sets when
	}
	pulled := q.Intent == AskBalance && !q.Has(Sideways) // how far aside is still to be asked
	q.Notes = slices.DeleteFunc(q.Notes, func(n string) bool {
		return n == TagPull && !pulled || n == HangWanted && q.Intent != AskSwing || n == TravelWanted && q.Intent != AskLift || (n == BlocksMeet || n == TieWanted || n == LowestWanted) && q.Intent != AskRaise || n == LowestWanted && q.Has(BlockHeight)
	})
}

// OfPlaces says whether a raise or a swing is answered without its forces: no
// weight is told, and nothing that one hangs on. Where a part of that is told,
// the rest is asked for, unless the words ask for nothing but the places.
func (q Question) OfPlaces() bool {
	untold := q.Species == nil && !q.Has(Across...)
	switch {
	case q.LowestWanted(), q.Intent == AskRaise && !q.Has(Tie) && (q.Noted(TieWanted) || q.Has(Length) && q.Has(BlockHeight)):
		return true // no pull can be told before the tie is
	case q.Has(Weight) || len(q.MissingSizes()) == 0:
		return false
	case q.Intent == AskRaise:
		return untold || q.Noted(BlocksMeet) || q.Noted(TieWanted)
	case q.Intent == AskSwing:
		return untold
	}
	return false
}

// missingPlaces lists what the places of a raise or a swing still need.
func (q Question) missingPlaces() []Field {
	if q.Intent == AskSwing {
		out := q.missingSwing()
		if q.OnlyReach() {
			out = nil
		}
		if q.Obstacle != nil || q.Has(ObstacleHeight) {
			out = append(out, q.Without([]Field{ObstacleOut})...)
		}
		return out
	}
	if q.LowestWanted() {
		if q.Has(Tie) {
			return nil
		}
		return q.Without([]Field{Length})
	}
	out := q.Without([]Field{BlockHeight})
	if q.Has(TieAlong) && !q.Has(Length) {
		out = append(out, Length)
	} else if !q.Has(Tie, Length) && !q.Noted(TieWanted) {
		out = append(out, Tie)
	}
	return out
}

// OnlyReach says whether it is told how far to the side a piece starts that swings, and
// nothing of its line: how far it comes hangs on no more. Whether it passes over a thing
// of a known height does.
func (q Question) OnlyReach() bool {
	return q.Intent == AskSwing && q.OfPlaces() && q.Has(Sideways) && !q.Has(LineOut) && !q.LineBySides() && !(q.Has(HitchHeight) && q.Has(ObstacleHeight))
}

// ByHeight says whether a piece clears what stands there, or does not, by the heights
// alone: "block at 38 ft, 6 ft of line, 14 ft long, roof 12 ft high". Whatever it swings,
// it comes no lower than it hangs.
func (q Question) ByHeight() bool {
	told := q.Has(HitchHeight) && q.Has(LineOut) && q.Has(Length) && q.Has(ObstacleHeight)
	return told && q.Intent == AskSwing && q.Obstacle != nil && q.Obstacle.Value == Thing && !q.Has(Sideways, StartAngle, ObstacleOut)
}

// HangsAsked says whether it is asked how high a piece hangs, and not how far it swings.
func (q Question) HangsAsked() bool {
	return q.Intent == AskSwing && q.Noted(HangWanted) && !q.Has(Sideways, StartAngle)
}

// missingHang is what that hangs on. Over a thing of a known height no line need be told:
// the most of it follows. From the heights of block and piece the line follows once it is
// told how far the piece is to the side.
func (q Question) missingHang() []Field {
	out := q.Without([]Field{HitchHeight, Length})
	switch {
	case q.Has(LineOut):
	case q.Has(PieceHeight):
		out = append(out, Sideways)
	case !q.Has(ObstacleHeight):
		out = append(out, LineOut)
	}
	return out
}

// LowestWanted says whether it is asked how high the block must be above the hinge.
func (q Question) LowestWanted() bool { return q.Intent == AskRaise && q.Noted(LowestWanted) }

// WeightWanted says whether a weight is asked for rather than what it is
// worked out from: a tag line pulls, and a block that turns the rope is loaded,
// by the weight alone, and nothing of the piece is told.
func (q Question) WeightWanted() bool {
	turned := q.Has(Turn) || slices.ContainsFunc(q.Notes, Redirecting)
	byWeight := q.Intent == AskBalance && (q.Has(Sideways) || q.Noted(TagPull)) || q.Intent == AskBlockLoad && turned
	return byWeight && q.Species == nil && !q.Has(Across...) && !q.Has(Weight)
}

// OnlyLine says whether a block is asked about by the pull in its rope, and nothing is told
// of a piece.
func (q Question) OnlyLine() bool {
	w, ok := q.Get(Weight)
	return ok && w.InLine && q.Intent == AskBlockLoad && q.Shape == nil && !q.Has(Across...) && !q.Has(Length)
}

// OnlyPlaces says whether a raise asks for no more than where its blocks meet or
// where to tie, and all that this hangs on is told.
func (q Question) OnlyPlaces() bool {
	return q.Intent == AskRaise && (q.Noted(BlocksMeet) || q.Noted(TieWanted)) && q.OfPlaces() && len(q.missingPlaces()) == 0
}

// How far a piece falls before its rope holds it follows from how long it is and
// how far its block hangs below the cut. Where one of the two is not told, a block
// below the cut, a catch or a line that runs asks for the fall.

// FallFromBlock says whether the fall, which is not told, can be worked out.
func (q Question) FallFromBlock() bool {
	return !q.Has(DropHeight) && (q.Has(MiddleAbove) || q.Has(BlockBelow, HitchToBlock) && q.Has(Length))
}

// FallTold says whether it is told how far the piece falls, or how it hangs above a block
// that it falls past.
func (q Question) FallTold() bool {
	return q.Has(DropHeight, BlockBelow, HitchToBlock, MiddleAbove)
}

// UnderSettled forgets that the block is somewhere below the cut where the fall is told, or
// how far below it is: nothing is left to ask of it.
func (q *Question) UnderSettled() {
	if q.FallTold() {
		q.Notes = slices.DeleteFunc(slices.Clone(q.Notes), func(n string) bool { return n == BlockUnder })
	}
}

// FallByBlock says whether the fall could be worked out if it were told how far the block
// is below the cut.
func (q Question) FallByBlock() bool {
	return q.Intent == AskDrop && q.Has(Length) && !q.Has(BlockBelow, MiddleAbove)
}

// BelowHitch is how far the block is below the hitch, 0 where that is not told: by one
// number, or by how far each of them is from the cut.
func (q Question) BelowHitch() unit.Length {
	if q.Has(HitchAbove) && q.Has(BlockBelow) {
		return q.Length(HitchAbove).High + q.Length(BlockBelow).High
	}
	return q.Length(HitchToBlock).High
}

// FallWanted says whether only the fall is asked for: without the strength of a rope
// nothing can be said of how hard the piece pulls.
func (q Question) FallWanted() bool {
	return q.Intent == AskDrop && q.Noted(fallWanted) && !q.Has(DropHeight, RopeBreak, RopeWorking)
}

// Across are the fields that say how thick a piece is.
var Across = []Field{Diameter, ButtDiameter, MidDiameter, TipDiameter}

// KeepUnder takes a mass for the limit where it is asked how long a piece may
// be, or how thick: of a piece that is still to be cut nobody knows the weight.
func (q *Question) KeepUnder() {
	if q.Intent != AskCutPlan || q.Has(Limit) || !q.Has(Across...) && !q.Noted(ThickWanted) {
		return
	}
	for i, x := range q.Quantities {
		if x.Field == Weight {
			q.Quantities[i].Field = Limit
			return
		}
	}
}

// RedirectsOn are the blocks whose mention is a fact by itself, and its note.
var RedirectsOn = map[string]string{RedirectBlock: RedirectBlock, BaseBlock: BaseBlock}

// Redirecting says whether a block that was named leads the rope on, rather
// than carrying the load first.
func Redirecting(block string) bool { return RedirectsOn[block] != "" }

// OverPiece is how far the block is above the piece, as it was told or by the heights of
// both; it is no range where neither was.
func (q Question) OverPiece() unit.Range[unit.Length] {
	hitch, piece := q.Length(HitchHeight), q.Length(PieceHeight)
	if q.Has(BlockHeight) || !q.Has(HitchHeight) || !q.Has(PieceHeight) {
		return q.Length(BlockHeight)
	}
	return unit.Range[unit.Length]{Low: hitch.Low - piece.High, High: hitch.High - piece.Low}
}

// HangsLow is the line that a load hangs plumb on: as told, or by the heights of its block
// and of itself.
func (q Question) HangsLow() unit.Range[unit.Length] {
	if q.Has(LineOut) {
		return q.Length(LineOut)
	}
	return q.OverPiece()
}

// ByHeights says whether the line that a load hangs on follows from two heights.
func (q Question) ByHeights() bool {
	return !q.Has(LineOut) && q.Has(HitchHeight) && q.Has(PieceHeight)
}

// BlockUp is how high the block is, as told or as far above the piece as that was told.
func (q Question) BlockUp() unit.Range[unit.Length] {
	if q.Has(HitchHeight) || !q.Has(BlockHeight) || !q.Has(PieceHeight) {
		return q.Length(HitchHeight)
	}
	over, piece := q.Length(BlockHeight), q.Length(PieceHeight)
	return unit.Range[unit.Length]{Low: over.Low + piece.Low, High: over.High + piece.High}
}
