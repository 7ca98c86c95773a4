package swing_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/swing"
	"heft/calc/unit"
)

// degrees is an angle as it is said.
func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

// times is a pull as a multiple of the weight of 100 kg.
func times(t *testing.T, pull unit.Force, err error) float64 {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
	return float64(pull / unit.Mass(100).Weight())
}

func TestTensionOfTeachingPages(t *testing.T) {
	for _, test := range []struct{ start, want, tolerance float64 }{
		// Several university teaching pages: let go level with the anchor, a
		// swing pulls three times the weight at the bottom.
		{90, 3, 1e-9},
		// Worked out from T = m·g·(3·cos θ − 2·cos θ₀) of an education page
		// on pendulums.
		{30, 1.268, 0.001}, {45, 1.586, 0.001}, {60, 2.000, 0.001},
		// At rest the line holds the weight.
		{0, 1, 1e-12},
	} {
		pull, err := swing.Tension(100, degrees(test.start))
		if got := times(t, pull, err); math.Abs(got-test.want) > test.tolerance {
			t.Errorf("from %v degrees: %.4f times the weight, want %v", test.start, got, test.want)
		}
	}
}

func TestWhereItTurns(t *testing.T) {
	// The same formula where the swing starts and turns: m·g·cos θ₀.
	for _, start := range []float64{10, 30, 60, 90} {
		for _, side := range []float64{start, -start} {
			pull, err := swing.At(100, degrees(start), degrees(side))
			if got, want := times(t, pull, err), math.Cos(start*math.Pi/180); math.Abs(got-want) > 1e-9 {
				t.Errorf("%v of %v degrees: %.4f times the weight, want %.4f", side, start, got, want)
			}
		}
	}
}

func TestAgainstTheMotionOfAPoint(t *testing.T) {
	for _, line := range []float64{1.5, 8, 25} {
		for _, start := range []float64{12, 45, 80, 90} {
			from := start * math.Pi / 180
			var peak, fastest float64
			end := point{line}.pass(from, func(angle, tension, speed float64) {
				peak, fastest = max(peak, tension), max(fastest, math.Abs(speed))
				if math.Abs(angle) > from {
					return
				}
				pull, err := swing.At(1, degrees(start), unit.Angle(angle))
				if err != nil || math.Abs(float64(pull)-tension) > 1e-4 {
					t.Errorf("%v m from %v degrees, at %v: %v N, %v; integrated %v", line, start, angle, pull, err, tension)
				}
			})
			bottom, err := swing.Tension(1, degrees(start))
			if err != nil || math.Abs(float64(bottom)/peak-1) > 1e-6 {
				t.Errorf("%v m from %v degrees: bottom %v N, %v; integrated %v", line, start, bottom, err, peak)
			}
			speed, err := swing.Fastest(unit.Length(line), degrees(start))
			if err != nil || math.Abs(float64(speed)/fastest-1) > 1e-6 {
				t.Errorf("%v m from %v degrees: %v m/s, %v; integrated %v", line, start, speed, err, fastest)
			}
			if math.Abs(end+from) > 1e-3 {
				t.Errorf("%v m from %v degrees: turns at %v", line, start, end*180/math.Pi)
			}
		}
	}
}

func TestAgainstTheMotionOfAStiffRod(t *testing.T) {
	for _, r := range []rod{{8, 0.5}, {8, 4}, {5, 5}, {2, 4}} {
		for _, start := range []float64{20, 60, 90} {
			got, err := swing.InLine(1, degrees(start), unit.Length(r.line), unit.Length(r.length))
			if want := r.stiff(start * math.Pi / 180); err != nil || math.Abs(float64(got)/want-1) > 1e-3 {
				t.Errorf("%+v from %v degrees: %v N, %v; integrated %v", r, start, got, err, want)
			}
		}
	}
}

func TestAgainstTheMotionOfALooseRod(t *testing.T) {
	beyondPoint := 0
	for _, length := range []float64{0.1, 0.2, 0.3, 0.5, 1, 2} {
		for _, start := range []float64{10, 30, 45, 60, 75, 90} {
			from := start * math.Pi / 180
			point, errPoint := swing.Tension(1, degrees(start))
			askew, errAskew := swing.Askew(1, degrees(start))
			plan, errPlan := swing.Plan(swing.Setup{Heavy: 1, Line: 1, Start: degrees(start), Hung: unit.Length(length)})
			if err := errors.Join(errPoint, errAskew, errPlan); err != nil {
				t.Fatal(err)
			}
			// Plumb, between, and in line with the line.
			for _, share := range []float64{0, 0.25, 0.5, 0.75, 1} {
				peak, reach := rod{1, length}.pass(from, share*from)
				if peak > float64(askew) || reach > float64(plan.Reach) {
					t.Errorf("rod of %v lines from %v degrees, %v in line: peak %.3f N, most %.3f; reach %.3f m, most %.3f",
						length, start, share, peak, float64(askew), reach, float64(plan.Reach))
				}
				if peak > 2*float64(point) {
					beyondPoint++
				}
				// In line, what the doc comment of Tension promises.
				if over := peak / float64(point); share == 1 && (length <= 0.5 && over > 1.05 || length <= 1 && over > 1.18+0.002) {
					t.Errorf("rod of %v lines from %v degrees, in line: %.3f times the point", length, start, over)
				}
			}
		}
	}
	// The point alone would be a dangerous answer for a rod askew.
	if beyondPoint < 10 {
		t.Errorf("%d rods pull more than twice the point, want at least 10", beyondPoint)
	}
}

func TestFurtherOutNeverPullsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		light := unit.Mass(rapid.Float64Range(0.01, 2000).Draw(t, "light"))
		heavy := light * unit.Mass(rapid.Float64Range(1, 1.5).Draw(t, "heavier"))
		near := rapid.Float64Range(0, 90).Draw(t, "near")
		far := rapid.Float64Range(near, 90).Draw(t, "far")
		for name, pull := range map[string]func(unit.Mass, unit.Angle) (unit.Force, error){
			"tension": swing.Tension,
			"askew":   swing.Askew,
			"in line": func(w unit.Mass, a unit.Angle) (unit.Force, error) { return swing.InLine(w, a, 5, 3) },
		} {
			base, errBase := pull(light, degrees(near))
			heavier, errHeavier := pull(heavy, degrees(near))
			further, errFurther := pull(light, degrees(far))
			if err := errors.Join(errBase, errHeavier, errFurther); err != nil {
				t.Fatal(err)
			}
			const bit = 1 - 1e-9
			if heavier < base*bit || further < base*bit || base < light.Weight()*bit {
				t.Fatalf("%s: %v N, heavier %v, further out %v", name, base, heavier, further)
			}
		}
	})
}
