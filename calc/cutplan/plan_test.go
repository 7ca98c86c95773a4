package cutplan_test

import (
	"errors"
	"math"
	"slices"
	"testing"

	"heft/calc/cutplan"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

func find(t testing.TB, scientific string) wood.Row {
	t.Helper()
	r, ok := wood.Find(scientific)
	if !ok {
		t.Fatalf("%s is not in the table", scientific)
	}
	return r
}

// log is a log of sizes to the point; 0 was not said.
func log(row wood.Row, diameter, butt, mid, tip, length unit.Length) piece.Piece {
	return piece.Piece{Wood: row, Shape: piece.Log, Diameter: unit.Exactly(diameter), Butt: unit.Exactly(butt),
		Mid: unit.Exactly(mid), Tip: unit.Exactly(tip), Length: unit.Exactly(length)}
}

// heavy is what a cubic metre of a wood may weigh, from a log of one.
func heavy(t testing.TB, row wood.Row) float64 {
	t.Helper()
	w, err := piece.Weigh(log(row, 1, 0, 0, 0, 1))
	if err != nil {
		t.Fatal(err)
	}
	return float64(w.High) / (math.Pi / 4)
}

// discs adds up the weight and the first moment, about its thick end, of the
// part of a stick between two distances from the butt, cut into thin discs.
func discs(density, from, to float64, at func(float64) float64) (weight, moment float64) {
	const n = 20000
	for i := range n {
		along := (float64(i) + 0.5) * (to - from) / n
		d := at(from + along)
		disc := density * math.Pi / 4 * d * d * (to - from) / n
		weight += disc
		moment += disc * along
	}
	return weight, moment
}

func TestLongestAgainstSlices(t *testing.T) {
	red := find(t, "Quercus rubra")
	density := heavy(t, red)
	for name, s := range map[string]struct {
		stick piece.Piece
		at    func(float64) float64
	}{
		"cylinder":   {log(red, 0.5, 0, 0, 0, 9), func(float64) float64 { return 0.5 }},
		"butt alone": {log(red, 0, 0.5, 0, 0, 9), func(float64) float64 { return 0.5 }},
		"taper":      {log(red, 0, 0.6, 0, 0.2, 9), func(x float64) float64 { return 0.6 - 0.4*x/9 }},
	} {
		for _, from := range []cutplan.End{cutplan.Butt, cutplan.Tip} {
			for _, limit := range []float64{60, 181.437, 700} {
				cut, err := cutplan.Longest(s.stick, from, unit.Mass(limit), 0)
				if err != nil {
					t.Errorf("%s under %v kg: %v", name, limit, err)
					continue
				}
				a, b := 0.0, float64(cut.Length)
				if from == cutplan.Tip {
					a, b = 9-b, 9
				}
				weight, moment := discs(density, a, b, s.at)
				if cut.Uncut || math.Abs(weight/limit-1) > 1e-5 || math.Abs(float64(cut.Heavy)/weight-1) > 1e-5 ||
					math.Abs(float64(cut.Balance)-moment/weight) > 1e-4 {
					t.Errorf("%s from end %d under %v kg: %+v; sliced %v kg, balance %v", name, from, limit, cut, weight, moment/weight)
				}
			}
		}
	}
}

func TestPublishedLogs(t *testing.T) {
	// US National Park Service, Safety for Tree Workers, green-log table: red
	// oak of 20 in weighs 137 lb a foot. Under 400 lb that is 2.92 ft of an
	// average tree; the heavy end leaves less, but not less than two thirds.
	cut, err := cutplan.Longest(log(find(t, "Quercus rubra"), 20*unit.Inch, 0, 0, 0, 0), cutplan.Butt, 400*unit.Pound, 0)
	if got := cut.Length.Feet(); err != nil || got > 400.0/137 || got < 400.0/137*2/3 {
		t.Errorf("%v ft, %v", got, err)
	}
}

func TestUncut(t *testing.T) {
	red := find(t, "Quercus rubra")
	cut, err := cutplan.Longest(log(red, 0, 0.2, 0, 0.1, 4), cutplan.Butt, 2000, 0)
	if err != nil || !cut.Uncut || cut.Length != 4 {
		t.Errorf("%+v, %v", cut, err)
	}
	// No length said: as long as a piece may be.
	cut, err = cutplan.Longest(log(red, 0.02, 0, 0, 0, 0), cutplan.Butt, 2000, 0)
	if err != nil || !cut.Uncut || cut.Length != piece.Lengths.High {
		t.Errorf("%+v, %v", cut, err)
	}
	plan, err := cutplan.Pieces(log(red, 0, 0.2, 0, 0.1, 4), 2000, 0, 0)
	if err != nil || len(plan.Pieces) != 1 || plan.Cuts != 1 || plan.Pieces[0].Length != 4 {
		t.Errorf("%+v, %v", plan, err)
	}
}

func TestPieces(t *testing.T) {
	// A cylinder of 10 m, limit for just 3 m of it: 3, 3, 3 and 1, each
	// balanced at its middle.
	red := find(t, "Quercus rubra")
	limit := unit.Mass(heavy(t, red) * math.Pi / 4 * 0.4 * 0.4 * 3)
	plan, err := cutplan.Pieces(log(red, 0.4, 0, 0, 0, 10), limit, 0, 0)
	if err != nil || len(plan.Pieces) != 4 || plan.Cuts != 4 {
		t.Fatalf("%+v, %v", plan, err)
	}
	for i, want := range []float64{3, 3, 3, 1} {
		p := plan.Pieces[i]
		if math.Abs(float64(p.Length)-want) > 1e-5 || math.Abs(float64(p.Balance)-want/2) > 1e-5 ||
			math.Abs(float64(p.Heavy/limit)-want/3) > 1e-5 {
			t.Errorf("piece %d: %+v, want %v m", i, p, want)
		}
	}
}

func TestPiecesNoLongerThanTold(t *testing.T) {
	// The same cylinder, limit for 3 m of it and no piece longer than 2.5 m: four of
	// those; a most of 4 m changes nothing.
	red := find(t, "Quercus rubra")
	limit := unit.Mass(heavy(t, red) * math.Pi / 4 * 0.4 * 0.4 * 3)
	for most, want := range map[unit.Length][]float64{2.5: {2.5, 2.5, 2.5, 2.5}, 4: {3, 3, 3, 1}} {
		plan, err := cutplan.Pieces(log(red, 0.4, 0, 0, 0, 10), limit, 0, most)
		if err != nil || len(plan.Pieces) != len(want) {
			t.Fatalf("%v m at most: %+v, %v", most, plan, err)
		}
		for i, p := range plan.Pieces {
			if math.Abs(float64(p.Length)-want[i]) > 1e-5 {
				t.Errorf("%v m at most: piece %d is %v m, want %v", most, i, p.Length, want[i])
			}
		}
	}
	for _, from := range []cutplan.End{cutplan.Butt, cutplan.Tip} {
		cut, err := cutplan.Longest(log(red, 0.4, 0, 0, 0, 10), from, limit, 2.5)
		if err != nil || cut.Uncut || math.Abs(float64(cut.Length)-2.5) > 1e-9 {
			t.Errorf("from %v: %+v, %v", from, cut, err)
		}
	}
}

func TestPiecesByTheTape(t *testing.T) {
	// The same cylinder, limit for 2.97 m of it, and a tape in steps of 5 cm:
	// 2.95 three times leaves 1.15.
	red := find(t, "Quercus rubra")
	limit := unit.Mass(heavy(t, red) * math.Pi / 4 * 0.4 * 0.4 * 2.97)
	plan, err := cutplan.Pieces(log(red, 0.4, 0, 0, 0, 10), limit, 0.05, 0)
	if err != nil || len(plan.Pieces) != 4 {
		t.Fatalf("%+v, %v", plan, err)
	}
	for i, want := range []float64{2.95, 2.95, 2.95, 1.15} {
		if got := float64(plan.Pieces[i].Length); math.Abs(got-want) > 1e-9 {
			t.Errorf("piece %d: %v m, want %v", i, got, want)
		}
	}
}

func TestAShortRestIsMadeLongEnough(t *testing.T) {
	// 6.02 m in pieces of 3 m leave 2 cm, which nobody can weigh or cut.
	red := find(t, "Quercus rubra")
	limit := unit.Mass(heavy(t, red) * math.Pi / 4 * 0.4 * 0.4 * 3)
	plan, err := cutplan.Pieces(log(red, 0.4, 0, 0, 0, 6.02), limit, 0, 0)
	if err != nil || len(plan.Pieces) != 3 {
		t.Fatalf("%+v, %v", plan, err)
	}
	for i, want := range []float64{3, 2.97, 0.05} {
		if got := float64(plan.Pieces[i].Length); math.Abs(got-want) > 1e-5 {
			t.Errorf("piece %d: %v m, want %v", i, got, want)
		}
	}
}

func TestThreeDiameters(t *testing.T) {
	red := find(t, "Quercus rubra")
	density := heavy(t, red)
	for name, mid := range map[string]float64{"bellied": 0.50, "straight": 0.35, "flared": 0.25} {
		at := func(x float64) float64 {
			if x < 4 {
				return 0.6 + (mid-0.6)*x/4
			}
			return mid + (0.1-mid)*(x-4)/4
		}
		stick := log(red, 0, 0.6, unit.Length(mid), 0.1, 8)
		for _, limit := range []float64{100, 500, 900, 1500} {
			cut, err := cutplan.Longest(stick, cutplan.Butt, unit.Mass(limit), 0)
			if err != nil {
				t.Errorf("%s under %v kg: %v", name, limit, err)
				continue
			}
			// The discs weigh no more than 3 % over what was promised; where
			// the stick flares, less.
			if weight, _ := discs(density, 0, float64(cut.Length), at); weight > 1.03*limit || !cut.Uncut && weight < 0.6*limit {
				t.Errorf("%s under %v kg: %v m, sliced %v kg", name, limit, cut.Length, weight)
			}
		}
	}
}

func TestRangesCountWithTheirThickEnd(t *testing.T) {
	red := find(t, "Quercus rubra")
	between := func(low, high unit.Length) unit.Range[unit.Length] {
		return unit.Range[unit.Length]{Low: low, High: high}
	}
	said := log(red, 0, 0, 0, 0, 0)
	said.Butt, said.Tip, said.Length = between(0.5, 0.6), between(0.1, 0.2), between(6, 9)
	for name, test := range map[string]struct {
		from   cutplan.End
		length unit.Length // whose taper is the thicker there
	}{"butt": {cutplan.Butt, 9}, "tip": {cutplan.Tip, 6}} {
		got, errGot := cutplan.Longest(said, test.from, 150, 0)
		want, errWant := cutplan.Longest(log(red, 0, 0.6, 0, 0.2, test.length), test.from, 150, 0)
		if err := errors.Join(errGot, errWant); err != nil || got != want || got.Uncut {
			t.Errorf("from the %s: %+v, %v; want %+v", name, got, err, want)
		}
	}
	one := log(red, 0, 0, 0, 0, 9)
	one.Diameter = between(0.4, 0.5)
	got, errGot := cutplan.Pieces(one, 300, 0, 0)
	want, errWant := cutplan.Pieces(log(red, 0.5, 0, 0, 0, 9), 300, 0, 0)
	if err := errors.Join(errGot, errWant); err != nil || !slices.Equal(got.Pieces, want.Pieces) {
		t.Errorf("%+v, %v; want %+v", got, err, want)
	}
}

func TestLimbs(t *testing.T) {
	red := find(t, "Quercus rubra")
	limb := log(red, 0, 0.3556, 0, 0, 6.7056)
	limb.Shape = piece.Limb
	// By its butt alone the heavy end of a limb is the full cylinder: half
	// the limit is half the length.
	whole, err := piece.Weigh(limb)
	if err != nil {
		t.Fatal(err)
	}
	cut, err := cutplan.Longest(limb, cutplan.Butt, whole.High/2, 0)
	if err != nil || math.Abs(float64(cut.Length)-6.7056/2) > 1e-5 {
		t.Errorf("%+v, %v", cut, err)
	}
	// A measured limb has its brush: never longer than the bare log of the
	// same sizes.
	limb.Tip = unit.Exactly(unit.Length(0.1))
	bare := limb
	bare.Shape = piece.Log
	brushed, errBrushed := cutplan.Longest(limb, cutplan.Butt, 200, 0)
	bareCut, errBare := cutplan.Longest(bare, cutplan.Butt, 200, 0)
	if err := errors.Join(errBrushed, errBare); err != nil || brushed.Length >= bareCut.Length {
		t.Errorf("limb %v m, log %v, %v", brushed.Length, bareCut.Length, err)
	}
	// Nor lighter as a whole than the limb that piece.Weigh has.
	weighed, errWeighed := piece.Weigh(limb)
	uncut, errUncut := cutplan.Longest(limb, cutplan.Butt, 5000, 0)
	if err := errors.Join(errWeighed, errUncut); err != nil || float64(uncut.Heavy) < float64(weighed.High)*(1-1e-9) {
		t.Errorf("in one piece %v kg, weighed %v, %v", uncut.Heavy, weighed.High, err)
	}
}
