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
	AskGear:  {RopeBreak},
	AskHelp:  nil, AskEmergency: nil, AskJob: nil, AskLog: nil,
}

// Missing lists the facts that an answer to the question needs and the
// message did not give.
func (q Question) Missing() []Field {
	if fields, ok := needed[q.Intent]; ok {
		if q.Intent == AskRope && slices.Contains(q.Notes, DeadEndOnTrunk) {
			fields = append(slices.Clone(fields), TrunkAcross)
		}
		return q.without(fields)
	}
	if q.Intent == AskCutPlan {
		return append(q.missingOf(SpeciesField, acrossField(q.limb())), q.without([]Field{Limit})...)
	}
	if q.Intent == AskAnchor {
		return append(q.missingOf(SpeciesField, acrossField(q.limb())), q.without([]Field{Weight, Tie})...)
	}
	out := q.MissingPiece()
	if q.Intent == AskBlockLoad && q.unturned() {
		out = append(out, Turn)
	}
	if q.Intent == AskSwing && !q.Has(Sideways, StartAngle) {
		out = append(out, Sideways)
	}
	if q.Intent == AskBalance && q.Has(Sideways) && !q.Has(LineOut) {
		out = append(out, LineOut)
	}
	for _, f := range q.without(alsoNeeded[q.Intent]) {
		if !slices.Contains(out, f) {
			out = append(out, f)
		}
	}
	return out
}

// MissingPiece lists what a weight still needs: nothing where the crew gave
// one.
func (q Question) MissingPiece() []Field {
	if q.Has(Weight) {
		return nil
	}
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
