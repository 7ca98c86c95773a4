package cutplan

import (
	"testing"

	"pgregory.net/rapid"

	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

func TestALongerPartIsNeverLighter(t *testing.T) {
	red, ok := wood.Find("Quercus rubra")
	if !ok {
		t.Fatal("no red oak")
	}
	rapid.Check(t, func(t *rapid.T) {
		metres := func(low, high float64, name string) unit.Length {
			return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
		}
		p := piece.Piece{Wood: red, Shape: piece.Shape(rapid.IntRange(0, 2).Draw(t, "shape"))}
		length, thickest := metres(0.2, 30, "length"), 2.0
		if p.Shape == piece.Limb {
			thickest = min(1.2, float64(length)/3)
		}
		butt := metres(0.02, thickest, "butt")
		tip := metres(0.01, float64(butt), "tip")
		p.Length, p.Butt, p.Tip = unit.Exactly(length), unit.Exactly(butt), unit.Exactly(tip)
		if rapid.Bool().Draw(t, "measured twice") {
			p.Mid = unit.Exactly(metres(float64(tip), float64(butt), "mid"))
		}
		s, err := stickOf(p)
		if err != nil {
			t.Fatal(err)
		}
		short := metres(0.05, float64(s.length), "short")
		long := metres(float64(short), float64(s.length), "long")
		from := func(begin, end unit.Length) unit.Mass {
			c, err := s.cut(begin, end)
			if err != nil {
				t.Fatal(err)
			}
			return c.Heavy
		}
		const bit = 1 - 1e-9
		if from(0, long) < from(0, short)*bit || from(s.length-long, s.length) < from(s.length-short, s.length)*bit {
			t.Fatalf("%v m weigh less than %v", long, short)
		}
		// A part lower down is never the lighter.
		if step := s.length - long; step > 0 && from(0, long) < from(step, s.length)*bit {
			t.Fatalf("%v m at the butt weigh less than at the tip", long)
		}
	})
}
