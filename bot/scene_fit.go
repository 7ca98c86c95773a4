package bot

import (
	"heft/calc/hinge"
	"heft/calc/tackle"
)

// fitScene shows a limb that is stood up of which no weight is known: where it
// is and will be, the blocks, and where a tie is good. It has no load.
func fitScene(v speaker, p pictured, l hinge.Layout, f hinge.Fitting) *Scene {
	s := hinge.Setup{Length: l.Length, Balance: l.Balance, Tie: l.Tie, Height: l.Height, Offset: l.Offset, Hitch: l.Hitch,
		Tackle: tackle.Tackle{Parts: l.Parts}}
	if l.Angle != nil {
		s.Angle = *l.Angle
	}
	d := newStoodUp(p, s)
	out := &Scene{Title: v.say("%s, stood up", p.Name), Refused: f.TwoBlocks != nil || f.TurnsOver, Bar: v.barFor(d.length + d.height/3)}
	d.surroundings(out)
	d.ways(out, s)
	d.window(out, v, s, f.Window)
	if out.Refused {
		d.wrong(out, v, f.TwoBlocks)
	} else {
		out.Plan = v.say("Blocks %s apart", v.alongDown(f.Apart))
		d.gap(out, v)
		out.Notes = []string{v.word("No forces: no weight is known.")}
		if f.Travel > 0 {
			out.Notes = []string{v.say("No forces: no weight is known. Haul in %s to upright.", v.ropeNeeded(f.Travel))}
		}
	}
	d.shortened(out, v, s)
	out.Notes = append(out.Notes, v.undrawn(l)...)
	return out
}

// undrawn says what of the limb was not told, and is drawn all the same.
func (s speaker) undrawn(l hinge.Layout) []string {
	switch {
	case l.Length == 0 && l.Angle == nil:
		return []string{s.word("NOT CHECKED: balance, no length told. Drawn level.")}
	case l.Length == 0:
		return []string{s.word("NOT CHECKED: balance, no length told.")}
	case l.Angle == nil:
		return []string{s.word("Drawn level: how it lies was not told.")}
	}
	return nil
}
