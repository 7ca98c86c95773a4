package cutplan_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/cutplan"
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

// long is a piece of a length, its thickness not said.
func long(row wood.Row, shape piece.Shape, length unit.Length) piece.Piece {
	return piece.Piece{Wood: row, Shape: shape, Length: unit.Exactly(length)}
}

func TestThickestAgainstPublishedLogs(t *testing.T) {
	// US National Park Service, Safety for Tree Workers, green-log table: red
	// oak of 20 in weighs 137 lb a foot, so 4 ft of it 548 lb. An average tree
	// may be 20 in thick under that; the heavy end leaves less, but as the weight
	// goes by the square, not less than the root of two thirds.
	thick, err := cutplan.Thickest(long(find(t, "Quercus rubra"), piece.Log, 4*unit.Foot), 4*137*unit.Pound)
	if got := thick.Across.Inches(); err != nil || thick.Any || got > 20 || got < 20*math.Sqrt(2.0/3) {
		t.Errorf("%v in, %v", got, err)
	}
}

func TestThickestIsTheCylinderThatWeighsTheLimit(t *testing.T) {
	red := find(t, "Quercus rubra")
	density := heavy(t, red)
	for _, shape := range []piece.Shape{piece.Unsaid, piece.Log, piece.Limb} {
		for _, length := range []unit.Length{1.2, 2, 6} {
			thick, err := cutplan.Thickest(long(red, shape, length), 150)
			want := math.Sqrt(150 * 4 / math.Pi / density / float64(length))
			if err != nil || thick.Any || math.Abs(float64(thick.Across)-want) > 1e-5 {
				t.Errorf("%v, %v m: %+v, %v; want %v m", shape, length, thick, err, want)
			}
		}
	}
}

func TestThickestLimbIsNoLog(t *testing.T) {
	// A limb of a metre is a third of one thick at most, some 100 kg of red oak.
	red := find(t, "Quercus rubra")
	thick, err := cutplan.Thickest(long(red, piece.Limb, 1), 2000)
	if err != nil || !thick.Any || math.Abs(float64(thick.Across)-1.0/3) > 1e-9 {
		t.Errorf("%+v, %v", thick, err)
	}
	if thick, err = cutplan.Thickest(long(red, piece.Limb, 20), 20000); err != nil || thick.Across > piece.LimbButts.High {
		t.Errorf("%+v, %v", thick, err)
	}
}

func TestThickestRefuses(t *testing.T) {
	red := find(t, "Quercus rubra")
	for name, test := range map[string]struct {
		length unit.Length
		limit  unit.Mass
		want   limits.Quantity
	}{
		"no limit":         {2, 0, limits.Limit},
		"a limit past all": {2, 20001, limits.Limit},
		"no number, limit": {2, unit.Mass(math.NaN()), limits.Limit},
		"too long":         {31, 200, limits.Length},
		"too short":        {0.01, 200, limits.Length},
		"no number":        {unit.Length(math.NaN()), 200, limits.Length},
	} {
		_, err := cutplan.Thickest(long(red, piece.Log, test.length), test.limit)
		if out, ok := errors.AsType[*limits.OutOfRange](err); !ok || out.Quantity != test.want {
			t.Errorf("%s: %v", name, err)
		}
	}
	_, err := cutplan.Thickest(long(red, piece.Log, 0), 200)
	if m, ok := errors.AsType[*limits.Missing](err); !ok || m.Quantity != limits.Length {
		t.Errorf("no length: %v", err)
	}
	_, err = cutplan.Thickest(long(red, piece.Log, 30), 1)
	if c, ok := errors.AsType[*limits.Contradiction](err); !ok || c.First != limits.Limit || c.Limit < 1 {
		t.Errorf("even a stick of a centimetre: %v", err)
	}
}

func TestThickestStaysUnderAndTheNextStepIsOver(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawStick(t)
		p.Butt, p.Mid, p.Tip = unit.Range[unit.Length]{}, unit.Range[unit.Length]{}, unit.Range[unit.Length]{}
		limit := unit.Mass(rapid.Float64Range(20, 5000).Draw(t, "limit"))
		thick, err := cutplan.Thickest(p, limit)
		if err != nil {
			return // even a stick of a centimetre is over it, or the wood is not weighed
		}
		if thick.Heavy > limit*(1+1e-9) {
			t.Fatalf("%v kg of %v", thick.Heavy, limit)
		}
		weigh := func(d unit.Length) unit.Mass {
			p := p
			if p.Diameter = unit.Exactly(d); p.Shape == piece.Limb {
				p.Diameter, p.Butt = p.Butt, p.Diameter
			}
			w, err := piece.Weigh(p)
			if err != nil {
				t.Fatal(err)
			}
			return w.High
		}
		if w := weigh(thick.Across); math.Abs(float64(w/thick.Heavy-1)) > 1e-9 {
			t.Fatalf("%v kg, weighed %v", thick.Heavy, w)
		}
		if !thick.Any && weigh(thick.Across+unit.Millimetre) <= limit {
			t.Fatalf("a millimetre more than %v is under %v kg too", thick.Across, limit)
		}
		if more, err := cutplan.Thickest(p, limit*1.1); err != nil || more.Across < thick.Across {
			t.Fatalf("%v under %v kg, %+v under a tenth more, %v", thick.Across, limit, more, err)
		}
	})
}
