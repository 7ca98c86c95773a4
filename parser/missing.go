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
		return q.missingAlways(fields)
	}
	switch {
	case q.Intent == AskCutPlan:
		return q.missingCutPlan()
	case q.OfTravel():
		return q.missingTravel()
	case q.OfPull():
		return nil
	case q.OfVolume():
		return q.missingOf(SpeciesField)
	case q.MostWanted():
		return q.neededForMost()
	case q.FallWanted():
		return q.missingFall()
	}
	switch q.Intent {
	case AskAnchor:
		return append(q.missingOf(SpeciesField, AcrossField(q.Limb())), q.Without(q.neededOfAnchor())...)
	case AskGear:
		return q.missingOfGear()
	case AskTree:
		if q.Pieceless() {
			return nil // of the pieces asked about before
		}
		return q.MissingPiece()
	case AskBalance:
		return q.missingBalance()
	}
	switch {
	case q.HangsAsked():
		return q.missingHang()
	case q.ByHeight():
		return nil
	case q.OfPlaces():
		return q.missingPlaces()
	}
	return q.missingOfLoad()
}

// missingAlways is what a question misses whose facts hang on nothing else but the way it
// is asked.
func (q Question) missingAlways(fields []Field) []Field {
	switch {
	case q.HighestWanted():
		fields = []Field{RopeLength}
	case q.Intent == AskNotch && q.Noted(NoteTop):
		fields = nil
	}
	if q.Intent == AskRope {
		fields = append(slices.Clone(fields), q.neededOfLayout()...)
	}
	return q.Without(fields)
}

// missingCutPlan is what a cutting plan misses: its limit may be the gear's.
func (q Question) missingCutPlan() []Field {
	if q.CutForFall() {
		return nil
	}
	size := AcrossField(q.Limb())
	if q.Noted(ThickWanted) {
		size = Length
	}
	out := q.missingOf(SpeciesField, size)
	if q.LimitedByGear() {
		return out
	}
	return append(out, q.Without([]Field{Limit})...)
}

// missingFall is what the fall of a piece misses, where it is asked how far that is.
func (q Question) missingFall() []Field {
	if q.BelowHitch() > 0 {
		return nil
	}
	return q.Without([]Field{Length, BlockBelow})
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
	if q.Intent == AskLower && q.Has(HitchHeight) && q.Noted(DrumAside) {
		out = append(out, q.Without([]Field{DrumAway})...)
	}
	if q.Intent == AskBlockLoad && q.unturned() {
		out = append(out, Turn)
	}
	out = append(out, q.missingObstacle()...)
	if q.Intent == AskDrop && q.Noted(LetRun) && !q.Noted(Snubbed) {
		out = append(out, q.Without([]Field{RunLength})...)
	}
	if q.PartsWanted() {
		if !q.Has(WinchPull) {
			out = append(out, q.Without([]Field{People})...)
		}
		return out
	}
	for _, f := range q.Without(alsoNeeded[q.Intent]) {
		if f == Tie && q.Has(TieAlong) {
			continue // it follows from the length
		}
		if f == DropHeight && q.Noted(BlockUnder) && q.Has(Length) && !q.FallTold() {
			f = BlockBelow // and the fall follows from it
		}
		if f == DropHeight && q.Has(HitchToBlock, BlockBelow) && !q.Has(Length, DropHeight) {
			f = Length // the fall follows from it
		}
		if !slices.Contains(out, f) && !(f == DropHeight && q.FallFromBlock()) && !(f == LineOut && q.lineFollows()) {
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
	if q.lineFollows() {
		return out
	}
	return append(out, q.Without([]Field{LineOut})...)
}

// lineFollows says whether the line of a swing follows from how far the block is above the
// piece once it is told how far to the side.
func (q Question) lineFollows() bool {
	return !q.Has(LineOut, StartAngle) && (q.Has(BlockHeight) || q.ByHeights())
}

// LineBySides says whether the line of a swing is told by how far its block is above
// the piece and how far to the side.
func (q Question) LineBySides() bool {
	return !q.Has(LineOut) && q.Has(Sideways) && (q.Has(BlockHeight) || q.ByHeights())
}

// neededOfLayout is what the length of a rope hangs on besides the hitch.
func (q Question) neededOfLayout() (out []Field) {
	if q.Has(Rise, LoadHeight, Apart) {
		out = append(out, Parts) // of a tackle
	}
	if q.Noted(DeadEndOnTrunk) {
		out = append(out, TrunkAcross)
	}
	if q.Noted(DrumAside) {
		out = append(out, DrumAway)
	}
	return out
}

// neededOfAnchor is what hangs on an anchor, and how far from its base: up a
// spar, or out a limb.
func (q Question) neededOfAnchor() []Field {
	redirect := q.Shape == nil && !q.Has(HitchHeight) && slices.ContainsFunc(q.Notes, Redirecting)
	if !q.Has(Tie) && (q.OnSpar() || redirect && !q.Noted(NoteAnchorLimb)) {
		return []Field{Weight, HitchHeight} // a sling goes round a stem
	}
	return []Field{Weight, Tie}
}

// OnSpar says whether the anchor is upright wood rather than a limb. Where its
// shape is not told, a sling near the ground is round a stem.
func (q Question) OnSpar() bool {
	if x, ok := q.Get(HitchHeight); ok && q.Shape == nil && x.High <= HighestSling && !slices.Contains(q.Notes, NoteAnchorLimb) {
		return true
	}
	log := q.Shape != nil && q.Shape.Value == Log
	return (log || slices.Contains(q.Notes, NoteAnchorSpar)) && !slices.Contains(q.Notes, NoteAnchorLimb)
}

// Pieceless says whether nothing was told of a piece.
func (q Question) Pieceless() bool {
	return q.Species == nil && !q.Has(Across...) && !q.Has(Length, Weight)
}

// missingBalance lists what is missing of what a balance question tells: the
// point itself needs no more than a length.
func (q Question) missingBalance() []Field {
	weighed := func(more ...Field) []Field {
		return append(q.MissingPiece(), q.Without(more)...)
	}
	switch {
	case q.Has(SideBranch, SideBranchOut):
		return q.Without([]Field{SideBranch, SideBranchOut})
	case q.Has(SecondTie):
		out := weighed(Tie, SecondTie)
		if !q.Has(Length) && !slices.Contains(out, Length) {
			out = append(out, Length)
		}
		return out
	case q.Has(SecondLeg, LegAngle):
		return weighed(LegAngle)
	case q.Noted(Bridled):
		if q.Has(BlockAngle) {
			return weighed()
		}
		return weighed(LegAngle)
	case q.WeightWanted():
		return append([]Field{Weight}, q.Without(q.ofTag())...)
	case q.Has(Sideways) && !q.Noted(NoteEitherEnd), q.Noted(TagPull):
		return weighed(q.ofTag()...)
	}
	return q.Without([]Field{Length})
}

// ofTag is what a tag line hangs on besides the piece.
func (q Question) ofTag() []Field {
	if q.ByHeights() || q.Has(BlockHeight) {
		return []Field{Sideways} // it hangs as far below its block as that is above it
	}
	return []Field{Sideways, LineOut}
}

// OnlyBalance says whether no more is asked than where a piece balances, of
// which a length is told and nothing that a weight could be worked out from.
func (q Question) OnlyBalance() bool {
	more := q.Has(Across...) || q.Has(Sideways, SecondTie, SecondLeg, LegAngle, BlockAngle, SideBranch, SideBranchOut)
	return q.Intent == AskBalance && q.Has(Length) && !more && !q.Noted(Bridled) && !q.Noted(TagPull)
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
	return q.missingOf(SpeciesField, AcrossField(q.Limb()), Length)
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

// Limb says whether the piece has brush.
func (q Question) Limb() bool { return q.Shape != nil && q.Shape.Value == Limb }

// missingOf lists those of tree, thickness and length that were not said.
func (q Question) missingOf(fields ...Field) []Field {
	var out []Field
	for _, f := range fields {
		switch {
		case f == SpeciesField && q.Species != nil:
		case f == AcrossField(q.Limb()) && q.Has(Diameter, ButtDiameter, MidDiameter):
		case f == Length && q.Has(Length):
		default:
			out = append(out, f)
		}
	}
	return out
}

// Without are those of the fields that were not said.
func (q Question) Without(fields []Field) []Field {
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
	Bare           = "bare"        // without its brush
	Bridled        = "bridle"      // two lines run to one point
	Snubbed        = "snubbed"     // the line is held fast
	SnubOrRun      = "snub-or-run" // held fast and let run are weighed against each other
	LetRun         = "let-run"
	Worn           = "worn"            // the gear is used, old or has no label
	LogUnconfirmed = "log-unconfirmed" // of the log: what nobody stood by yet
	NewTree        = "new-tree"

	PlanHeaviest = "plan-heaviest" // what the heaviest piece of a cut plan takes
	MovedByHand  = "moved-by-hand" // somebody lifts, rolls or carries the piece
	ThickWanted  = "thick-wanted"  // how thick a piece of a length may be
	PlanTop      = "plan-top"      // what its top piece takes
	PlanBottom   = "plan-bottom"   // what its bottom piece takes

	gearWanted    = "gear-wanted"    // how strong it must be
	MostWanted    = "most-wanted"    // how heavy a piece may be
	PartsWanted   = "parts-wanted"   // on how many parts of line
	HighestWanted = "highest-wanted" // how high the block may be
	Slipped       = "slipped"        // the rope slipped on the drum
	TooMany       = "too-many"       // whether the wraps told are more than it takes
)

// Noted says whether a note was made.
func (q Question) Noted(n string) bool { return slices.Contains(q.Notes, n) }

// Stem says whether the piece is wood without brush, and longer than a log that
// is handled whole.
func (q Question) Stem() bool {
	const longestLog = 5 // m, common practice, no source
	return q.Shape != nil && q.Shape.Value == Log && q.Length(Length).High > longestLog
}

// missingObstacle lists what a swing past a thing still needs: how far it is.
// Without both heights it is taken to be as tall as the block.
func (q Question) missingObstacle() []Field {
	if q.Intent != AskSwing || q.Obstacle == nil && !q.Has(ObstacleOut, ObstacleHeight) {
		return nil
	}
	return q.Without([]Field{ObstacleOut})
}
