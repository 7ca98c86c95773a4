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
		return q.without(fields)
	}
	if q.Intent == AskCutPlan {
		return append(q.missingOf(SpeciesField, acrossField(q.limb())), q.without([]Field{Limit})...)
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
	out := q.MissingPiece()
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

// neededOfAnchor is what hangs on an anchor, and how far from its base: up a
// spar, or out a limb.
func (q Question) neededOfAnchor() []Field {
	if q.OnSpar() && q.Has(HitchHeight) {
		return []Field{Weight}
	}
	return []Field{Weight, Tie}
}

// OnSpar says whether the anchor is upright wood rather than a limb.
func (q Question) OnSpar() bool {
	log := q.Shape != nil && q.Shape.Value == Log
	return (log || slices.Contains(q.Notes, NoteAnchorSpar)) && !slices.Contains(q.Notes, NoteAnchorLimb)
}

// missingOfGear is the strength of what the words told of: of the sling where
// they said how it is rigged, of the rope where they said no more.
func (q Question) missingOfGear() []Field {
	slung := q.Has(Legs, LegAngle, ChokeAngle) || slices.Contains(q.Notes, noteChoker) || slices.Contains(q.Notes, noteBasket)
	switch {
	case slung && !q.Has(SlingBreak, SlingWorking):
		return []Field{SlingBreak}
	case !q.Has(Ratings...):
		return []Field{RopeBreak}
	}
	return nil
}

// Pieceless says whether nothing was told of a piece.
func (q Question) Pieceless() bool {
	return q.Species == nil && !q.Has(across...) && !q.Has(Length, Weight)
}

// MissingPiece lists what a weight still needs: nothing where the crew gave
// one.
func (q Question) MissingPiece() []Field {
	if q.Has(Weight) {
		return nil
	}
	return q.missingOf(SpeciesField, acrossField(q.limb()), Length)
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
