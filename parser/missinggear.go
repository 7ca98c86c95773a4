package parser

import "slices"

// What is asked of gear needs no piece where it is asked how much that may carry.

// missingOfGear is the strength of what the words told of: of the sling where
// they said how it is rigged, of the rope where they said no more; and the load, where
// it was asked whether the gear holds one.
func (q Question) missingOfGear() []Field {
	if q.Held && q.Pieceless() {
		q.Held = false
		return append([]Field{Weight}, q.missingOfGear()...)
	}
	slung := q.Has(Legs, LegAngle, ChokeAngle) || slices.Contains(q.Notes, NoteChoker) || slices.Contains(q.Notes, NoteBasket)
	switch {
	case q.GearWanted():
		return q.MissingPiece()
	case slung && !q.Has(SlingBreak, SlingWorking):
		return []Field{SlingBreak}
	case !q.Has(Ratings...) && q.OfGear != "":
		return []Field{q.OfGear}
	case !q.Has(Ratings...):
		return []Field{RopeBreak}
	}
	return nil
}

// MostWanted says whether it is asked how much can be lowered or lifted, where
// no piece is told.
func (q Question) MostWanted() bool {
	return q.Noted(MostWanted) && (q.Intent == AskLower || q.Intent == AskLift) && q.Pieceless()
}

// HighestWanted says whether it is asked how high the block may be for the rope
// at hand, where no piece is told and no other rope.
func (q Question) HighestWanted() bool {
	return q.Intent == AskRope && q.Noted(HighestWanted) && !q.Has(HitchHeight, SecondRope) && q.Pieceless()
}

// PartsWanted says whether it is asked how many parts of line a lift takes.
func (q Question) PartsWanted() bool {
	return q.Intent == AskLift && q.Noted(PartsWanted) && !q.Has(Parts)
}

// TooMany says whether it is asked if the wraps told are too many.
func (q Question) TooMany() bool { return q.Noted(TooMany) }

// Slipped says whether the wraps told did not hold.
func (q Question) Slipped() bool { return q.Noted(Slipped) && q.Has(Wraps) }

// LimitedByGear says whether how heavy a piece may be follows from what the block may
// carry, and the gear told beside it, and from no limit: the gear is in order, nothing
// falls, and nothing is snubbed. A rope alone says nothing of its block.
func (q Question) LimitedByGear() bool {
	return q.Intent == AskCutPlan && q.Has(BlockWorking, BlockBreak) && !q.Has(Limit, DropHeight, RunLength) && !q.Noted(Snubbed) && !q.Noted(CutFalls) && !q.Noted(Worn)
}

// CutForFall says whether how long a piece may be is asked by what the block may see of
// its fall.
func (q Question) CutForFall() bool {
	return q.Intent == AskCutPlan && q.Noted(CutFalls) && q.Has(BlockWorking, BlockBreak) && !q.Has(Limit)
}

// neededForMost is what holds the load, or lifts it.
func (q Question) neededForMost() []Field {
	switch {
	case q.Intent == AskLower:
		return q.Without([]Field{Wraps})
	case q.Has(WinchPull):
		return q.Without([]Field{Parts})
	}
	return q.Without([]Field{Parts, People})
}

// GearWanted says whether it is asked how strong gear must be, of which nothing
// else is told.
func (q Question) GearWanted() bool { return q.Noted(gearWanted) && !q.Has(Ratings...) }
