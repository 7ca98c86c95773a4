package drop_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/drop"
	"heft/calc/unit"
)

// onto is the stiffness of a line that a mass hanging still stretches so far.
func onto(mass unit.Mass, stretch unit.Length) drop.Stiffness {
	return drop.Stiffness(float64(mass.Weight()) / float64(stretch))
}

func TestImpactFactors(t *testing.T) {
	// Gere & Goodno, impact-factor problem of chapter 9: the peak over the
	// weight by the fall over the static stretch. It prints 4.33 at 5, which
	// is exactly 4.317.
	for _, test := range []struct{ ratio, want float64 }{{0, 2.00}, {2.5, 3.45}, {5, 4.32}, {7.5, 5.00}, {10, 5.58}} {
		const stretch = 0.2
		peak, err := drop.Peak(50, unit.Length(test.ratio*stretch), onto(50, stretch))
		if got := float64(peak / unit.Mass(50).Weight()); err != nil || math.Abs(got-test.want) > 0.01 {
			t.Errorf("%v: got %.3f, %v; want %v", test.ratio, got, err, test.want)
		}
	}
}

func TestWorkedImpact(t *testing.T) {
	// Akin, Rice University notes: 80 kg fall 10 mm onto what they stretch by
	// 1.049 mm, n = 5.48 and P = 4,301 N, with gravity rounded to 9.81.
	const mass unit.Mass = 80 * 9.81 / unit.StandardGravity
	peak, err := drop.Peak(mass, 10*unit.Millimetre, onto(mass, 1.049*unit.Millimetre))
	if n := float64(peak / mass.Weight()); err != nil || math.Abs(n-5.48) > 0.01 || math.Abs(float64(peak)-4301) > 2 {
		t.Errorf("n %.3f, P %.1f N, %v", n, float64(peak), err)
	}
}

func TestSuddenlyApplied(t *testing.T) {
	// The same notes, and others: a load set on at once pulls twice its
	// weight, whatever the line.
	for _, k := range []drop.Stiffness{100, 1e4, 1e6} {
		peak, err := drop.Peak(300, 0, k)
		if err != nil || math.Abs(float64(peak/unit.Mass(300).Weight())-2) > 1e-12 {
			t.Errorf("%v N/m: %v N, %v", float64(k), float64(peak), err)
		}
	}
}

func TestHighFallsGoByTheRoot(t *testing.T) {
	// Algebra: for a high fall the factor nears √(2h/δ), to 1 % where h/δ is
	// 10,000 (at 5,000 the 1 in front is just that 1 %).
	const stretch = 0.0005
	peak, err := drop.Peak(10, 10000*stretch, onto(10, stretch))
	if got := float64(peak/unit.Mass(10).Weight()) / math.Sqrt(20000); err != nil || math.Abs(got-1) > 0.01 {
		t.Errorf("got %v, %v", got, err)
	}
}

func TestAgainstTheMotion(t *testing.T) {
	for _, mass := range []float64{20, 400} {
		for _, height := range []float64{0, 0.4, 3} {
			for _, k := range []float64{5e3, 2e5} {
				want, _, _ := fall(mass, height, k, math.Inf(1))
				got, err := drop.Peak(unit.Mass(mass), unit.Length(height), drop.Stiffness(k))
				if err != nil || math.Abs(float64(got)/want-1) > 1e-6 {
					t.Errorf("%v kg, %v m, %v N/m: %v N, %v; integrated %v", mass, height, k, float64(got), err, want)
				}
				// Run over a perfect brake set to Braked, the piece stops just
				// when it has run so far.
				for _, run := range []float64{0.05, 0.5, 4} {
					braked, err := drop.Braked(unit.Mass(mass), unit.Length(height), unit.Length(run), drop.Stiffness(k))
					if err != nil {
						t.Fatal(err)
					}
					peak, _, ran := fall(mass, height, k, float64(braked))
					if math.Abs(ran-run) > 2e-3*run || math.Abs(peak/float64(braked)-1) > 1e-6 {
						t.Errorf("%v kg, %v m, %v N/m: braked at %v N it ran %v m, want %v", mass, height, k, peak, ran, run)
					}
				}
			}
		}
	}
}

func TestAverageIsOfAnyStop(t *testing.T) {
	// However the piece is stopped, by stretch, run or both, its peak is no
	// less than the average over the way.
	for _, mass := range []float64{20, 400} {
		for _, slips := range []float64{1.5, 3, 8, 1e6} {
			const height = 1.2
			peak, stopped, _ := fall(mass, height, 3e4, slips*mass*gravity)
			average, err := drop.Average(unit.Mass(mass), height, unit.Length(stopped))
			if err != nil || peak < float64(average)*(1-1e-6) {
				t.Errorf("%v kg slipping at %v times its weight: peak %v N, average %v, %v", mass, slips, peak, float64(average), err)
			}
		}
	}
}

func TestARunOnAStiffLineNearsTheAverage(t *testing.T) {
	braked, errBraked := drop.Braked(100, 2, 3, 1e7)
	average, errAverage := drop.Average(100, 2, 3)
	if err := errors.Join(errBraked, errAverage); err != nil || math.Abs(float64(braked/average)-1) > 1e-3 {
		t.Errorf("braked %v N, average %v, %v", float64(braked), float64(average), err)
	}
}

func TestPeaksGoTheRightWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass := unit.Mass(rapid.Float64Range(0.01, 1500).Draw(t, "mass"))
		height := unit.Length(rapid.Float64Range(0, 8).Draw(t, "height"))
		run := unit.Length(rapid.Float64Range(0, 20).Draw(t, "run"))
		k := drop.Stiffness(rapid.Float64Range(10, 5e6).Draw(t, "k"))
		more := rapid.Float64Range(1, 2).Draw(t, "more")
		further := unit.Length(rapid.Float64Range(0, 2).Draw(t, "further"))
		must := func(f unit.Force, err error) unit.Force {
			if err != nil {
				t.Fatal(err)
			}
			return f
		}
		base := must(drop.Braked(mass, height, run, k))
		const bit = 1 - 1e-9
		for name, never := range map[string]bool{
			"heavier, less":  must(drop.Braked(mass*unit.Mass(more), height, run, k)) < base*bit,
			"higher, less":   must(drop.Braked(mass, height+further, run, k)) < base*bit,
			"further, more":  must(drop.Braked(mass, height, run+further, k)) > base/bit,
			"run, over held": base > must(drop.Peak(mass, height, k))/bit,
			"held softer":    must(drop.Peak(mass, height, k*drop.Stiffness(more))) < must(drop.Peak(mass, height, k))*bit,
			"below weight":   base < mass.Weight()*bit,
		} {
			if never {
				t.Fatalf("%s: %v N for %v kg, %v m, run %v m, %v N/m", name, base, mass, height, run, k)
			}
		}
	})
}
