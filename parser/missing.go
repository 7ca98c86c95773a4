package parser

import "slices"

// alsoNeeded are the facts that an answer needs besides the piece.
var alsoNeeded = map[Intent][]Field{
	AskLift:  {Parts},
	AskRaise: {Length, Tie, BlockHeight, LimbAngle, Parts},
	AskDrop:  {DropHeight, RopeBreak},
	AskSwing: {LineOut},
}

// needed are the facts that an answer needs instead of a piece.
var needed = map[Intent][]Field{
	AskRope:  {HitchHeight},
	AskNotch: {LimbAngle},
	AskHelp:  nil, AskEmergency: nil, AskJob: nil, AskLog: nil,
}

// Missing lists the facts that an answer to the question needs and the
// message did not give.
func (q Question) Missing() []Field {
	if fields, ok := needed[q.Intent]; ok {
		if q.HighestWanted() {
			fields = []Field{RopeLength}
		}
		if q.Intent == AskRope {
			fields = append(slices.Clone(fields), q.neededOfLayout()...)
		}
		return q.without(fields)
	}
	if q.Intent == AskCutPlan {
		return append(q.missingOf(SpeciesField, acrossField(q.limb())), q.without([]Field{Limit})...)
	}
	if q.MostWanted() {
		return q.neededForMost()
	}
	switch q.Intent {
	case AskAnchor:
		return append(q.missingOf(SpeciesField, acrossField(q.limb())), q.without(q.neededOfAnchor())...)
	case AskGear:
		return q.missingOfGear()
	case AskTree:
		if q.Pieceless() {
			return nil // of the pieces asked about before
		}
		return q.MissingPiece()
	}
	if q.Intent == AskBalance {
		return q.missingBalance()
	}
	if q.ByHeight() {
		return nil
	}
	if q.OfPlaces() {
		return q.missingPlaces()
	}
	return q.missingOfLoad()
}

// missingOfLoad is what the answers want that hang on the weight of a piece.
func (q Question) missingOfLoad() []Field {
	out := q.MissingPiece()
	if q.WeightWanted() {
		out = []Field{Weight}
	}
	if q.Intent == AskSwing {
		out = append(q.missingSwing(), out...) // where it goes comes before how hard it pulls
	}
	if q.Intent == AskLower && q.Has(HitchHeight) && q.noted(DrumAside) {
		out = append(out, q.without([]Field{DrumAway})...)
	}
	if q.Intent == AskBlockLoad && q.unturned() {
		out = append(out, Turn)
	}
	out = append(out, q.missingObstacle()...)
	if q.Intent == AskDrop && q.noted(letRun) && !q.noted(snubbed) {
		out = append(out, q.without([]Field{RunLength})...)
	}
	if q.PartsWanted() {
		if !q.Has(WinchPull) {
			out = append(out, q.without([]Field{People})...)
		}
		return out
	}
	for _, f := range q.without(alsoNeeded[q.Intent]) {
		if !slices.Contains(out, f) && !(f == DropHeight && q.FallFromBlock()) && !(f == LineOut && q.LineBySides()) {
			out = append(out, f)
		}
	}
	return out
}

// missingSwing is what a swing hangs on besides its piece.
func (q Question) missingSwing() (out []Field) {
	if !q.Has(Sideways, StartAngle) {
		out = append(out, Sideways)
	}
	if q.LineBySides() {
		return out
	}
	return append(out, q.without([]Field{LineOut})...)
}

// LineBySides says whether the line of a swing is told by how far its block is above
// the piece and how far to the side.
func (q Question) LineBySides() bool {
	return !q.Has(LineOut) && q.Has(Sideways) && q.Has(BlockHeight)
}

// neededOfLayout is what the length of a rope hangs on besides the hitch.
func (q Question) neededOfLayout() (out []Field) {
	if q.noted(DeadEndOnTrunk) {
		out = append(out, TrunkAcross)
	}
	if q.noted(DrumAside) {
		out = append(out, DrumAway)
	}
	return out
}

// neededOfAnchor is what hangs on an anchor, and how far from its base: up a
// spar, or out a limb.
func (q Question) neededOfAnchor() []Field {
	redirect := q.Shape == nil && !q.Has(HitchHeight) && slices.ContainsFunc(q.Notes, Redirecting)
	if !q.Has(Tie) && (q.OnSpar() || redirect && !q.noted(NoteAnchorLimb)) {
		return []Field{Weight, HitchHeight} // a sling goes round a stem
	}
	return []Field{Weight, Tie}
}

// OnSpar says whether the anchor is upright wood rather than a limb. Where its
// shape is not told, a sling near the ground is round a stem.
func (q Question) OnSpar() bool {
	if x, ok := q.Get(HitchHeight); ok && q.Shape == nil && x.High <= highestSling && !slices.Contains(q.Notes, NoteAnchorLimb) {
		return true
	}
	log := q.Shape != nil && q.Shape.Value == Log
	return (log || slices.Contains(q.Notes, NoteAnchorSpar)) && !slices.Contains(q.Notes, NoteAnchorLimb)
}

// missingOfGear is the strength of what the words told of: of the sling where
// they said how it is rigged, of the rope where they said no more.
func (q Question) missingOfGear() []Field {
	slung := q.Has(Legs, LegAngle, ChokeAngle) || slices.Contains(q.Notes, noteChoker) || slices.Contains(q.Notes, noteBasket)
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
	return q.noted(mostWanted) && (q.Intent == AskLower || q.Intent == AskLift) && q.Pieceless()
}

// HighestWanted says whether it is asked how high the block may be for the rope
// at hand, where no piece is told and no other rope.
func (q Question) HighestWanted() bool {
	return q.Intent == AskRope && q.noted(highestWanted) && !q.Has(HitchHeight, SecondRope) && q.Pieceless()
}

// PartsWanted says whether it is asked how many parts of line a lift takes.
func (q Question) PartsWanted() bool {
	return q.Intent == AskLift && q.noted(partsWanted) && !q.Has(Parts)
}

// TooMany says whether it is asked if the wraps told are too many.
func (q Question) TooMany() bool { return q.noted(tooMany) }

// Slipped says whether the wraps told did not hold.
func (q Question) Slipped() bool { return q.noted(slipped) && q.Has(Wraps) }

// neededForMost is what holds the load, or lifts it.
func (q Question) neededForMost() []Field {
	switch {
	case q.Intent == AskLower:
		return q.without([]Field{Wraps})
	case q.Has(WinchPull):
		return q.without([]Field{Parts})
	}
	return q.without([]Field{Parts, People})
}

// GearWanted says whether it is asked how strong gear must be, of which nothing
// else is told.
func (q Question) GearWanted() bool { return q.noted(gearWanted) && !q.Has(Ratings...) }

// Pieceless says whether nothing was told of a piece.
func (q Question) Pieceless() bool {
	return q.Species == nil && !q.Has(across...) && !q.Has(Length, Weight)
}

// missingBalance lists what is missing of what a balance question tells: the
// point itself needs no more than a length.
func (q Question) missingBalance() []Field {
	weighed := func(more ...Field) []Field {
		return append(q.MissingPiece(), q.without(more)...)
	}
	switch {
	case q.Has(SideBranch, SideBranchOut):
		return q.without([]Field{SideBranch, SideBranchOut})
	case q.Has(SecondTie):
		out := weighed(Tie, SecondTie)
		if !q.Has(Length) && !slices.Contains(out, Length) {
			out = append(out, Length)
		}
		return out
	case q.Has(SecondLeg, LegAngle):
		return weighed(LegAngle)
	case q.noted(bridled):
		if q.Has(BlockAngle) {
			return weighed()
		}
		return weighed(LegAngle)
	case q.WeightWanted():
		return append([]Field{Weight}, q.without([]Field{Sideways, LineOut})...)
	case q.Has(Sideways), q.noted(tagPull):
		return weighed(Sideways, LineOut)
	}
	return q.without([]Field{Length})
}

// onlyBalance says whether no more is asked than where a piece balances, of
// which a length is told and nothing that a weight could be worked out from.
func (q Question) onlyBalance() bool {
	more := q.Has(across...) || q.Has(Sideways, SecondTie, SecondLeg, LegAngle, BlockAngle, SideBranch, SideBranchOut)
	return q.Intent == AskBalance && q.Has(Length) && !more && !q.noted(bridled) && !q.noted(tagPull)
}

// MissingPiece lists what a weight still needs: nothing where the crew gave
// one.
func (q Question) MissingPiece() []Field {
	if q.Has(Weight) {
		return nil
	}
	return q.MissingSizes()
}

// MissingSizes lists what a weight still needs to be worked out, whatever
// weight the crew gave.
func (q Question) MissingSizes() []Field {
	return q.missingOf(SpeciesField, acrossField(q.limb()), Length)
}

// unturned says whether a redirect was named of which it was not said how far
// the rope turns there.
func (q Question) unturned() bool {
	want := int(q.Count(Redirects))
	named := 0
	for _, n := range q.Notes {
		if Redirecting(n) {
			named++
		}
	}
	said := 0
	if q.Has(BlockAngle) && !q.Has(Turn) {
		said = 1 // the angle between the legs tells the turn
	}
	for _, x := range q.Quantities {
		if x.Field == Turn && x.At != TopBlock {
			said++
		}
	}
	return said < max(want, named)
}

func (q Question) limb() bool { return q.Shape != nil && q.Shape.Value == Limb }

// missingOf lists those of tree, thickness and length that were not said.
func (q Question) missingOf(fields ...Field) []Field {
	var out []Field
	for _, f := range fields {
		switch {
		case f == SpeciesField && q.Species != nil:
		case f == acrossField(q.limb()) && q.Has(Diameter, ButtDiameter, MidDiameter):
		case f == Length && q.Has(Length):
		default:
			out = append(out, f)
		}
	}
	return out
}

func (q Question) without(fields []Field) []Field {
	var out []Field
	for _, f := range fields {
		if !q.Has(f) {
			out = append(out, f)
		}
	}
	return out
}

// Notes of the word file that decide what is missing or in doubt.
const (
	bare    = "bare"    // without its brush
	bridled = "bridle"  // two lines run to one point
	snubbed = "snubbed" // the line is held fast
	letRun  = "let-run"
	newTree = "new-tree"

	gearWanted    = "gear-wanted"    // how strong it must be
	mostWanted    = "most-wanted"    // how heavy a piece may be
	partsWanted   = "parts-wanted"   // on how many parts of line
	highestWanted = "highest-wanted" // how high the block may be
	slipped       = "slipped"        // the rope slipped on the drum
	tooMany       = "too-many"       // whether the wraps told are more than it takes
)

func (q Question) noted(n string) bool { return slices.Contains(q.Notes, n) }
