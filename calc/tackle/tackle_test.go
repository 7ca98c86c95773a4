package tackle_test

import (
	"math"
	"os"
	"testing"

	"heft/calc/published"
	"heft/calc/tackle"
	"heft/calc/unit"
)

func kind(t testing.TB, name string) tackle.Sheave {
	t.Helper()
	for _, k := range tackle.Kinds() {
		if k.Name == name {
			return k.Sheave
		}
	}
	t.Fatalf("no %s", name)
	return tackle.Sheave{}
}

func advantage(t testing.TB, parts int, efficiency float64, redirects ...tackle.Redirect) float64 {
	t.Helper()
	a, err := tackle.Tackle{Parts: parts, Efficiency: efficiency, Redirects: redirects}.Advantage()
	if err != nil {
		t.Fatal(err)
	}
	return a
}

func TestRatioTable(t *testing.T) {
	plain, ball := kind(t, "plain bushed sheave"), kind(t, "ball-bearing sheave")
	rows := published.Rows(t, os.DirFS("testdata"), "sheave_ratios.csv")
	if len(rows) != 6 {
		t.Errorf("%d rows, want 6", len(rows))
	}
	for _, row := range rows {
		parts := int(published.Number(t, row[0]))
		if got, want := advantage(t, parts, plain.Efficiency), published.Number(t, row[1]); math.Abs(got-want) > 0.01 {
			t.Errorf("%d parts, plain bushed: got %.3f, want %v", parts, got, want)
		}
		if got, want := advantage(t, parts, ball.Efficiency), published.Number(t, row[2]); math.Abs(got-want) > 0.02 {
			t.Errorf("%d parts, ball bearings: got %.3f, want %v", parts, got, want)
		}
	}
}

func TestPrintedTackles(t *testing.T) {
	lead := tackle.Redirect{Sheave: tackle.Sheave{Efficiency: 1 / 1.09}, Turn: 180 * unit.Degree}
	for _, test := range []struct {
		name                  string
		load, advantage, want float64
		tolerance             float64
	}{
		// US Navy Builder training manual: gun tackle and luff, frictionless.
		{"gun tackle", 200, advantage(t, 2, 1), 100, 1e-9},
		{"luff tackle", 600, advantage(t, 3, 1), 200, 1e-9},
		// Wire rope users' manual: friction factor 1.09, four parts, lead-line
		// factor 0.309; with two lead sheaves 0.367, by which 6,000 lb take
		// 2,202: half a unit of its last place is 3 lb.
		{"four parts", 1, advantage(t, 4, 1/1.09), 0.309, 0.001},
		{"two lead sheaves", 6000, advantage(t, 4, 1/1.09, lead, lead), 2202, 3},
		// The ratio table's sum for two parts, worked out; carabiners from the
		// published redirect test are worse than no tackle at all.
		{"plain bushed", 1, advantage(t, 2, 0.96), 0.531, 0.002},
		{"ordinary", 1, advantage(t, 2, 0.90), 0.585, 0.002},
		{"carabiners", 1, advantage(t, 2, kind(t, "carabiner").Efficiency), 1.23, 0.004},
		// US Navy Builder training manual: 10 % of the load a sheave make 120 lb
		// of 200 on a gun tackle. Its sum charges both sheaves with the whole
		// load, ours each with what it carries: 2.6 % less.
		{"gun tackle with friction", 200, advantage(t, 2, 0.90), 120, 3.2},
	} {
		if got := test.load / test.advantage; math.Abs(got-test.want) > test.tolerance {
			t.Errorf("%s: haul %.4f, want %v", test.name, got, test.want)
		}
	}
	// University of Oregon notes: three to one on plain carabiners is about
	// two to one. That tackle is hauled at the moving block, which spares it
	// the last sheave.
	e := kind(t, "carabiner").Efficiency
	if got := advantage(t, 3, e) / e; math.Abs(got-2) > 0.25 {
		t.Errorf("three to one on carabiners: %.2f, want about 2", got)
	}
}

func TestAdvantageLiesBetweenTheHandbooks(t *testing.T) {
	// US Navy manual: the threefold purchase, 6 parts on 6 sheaves, lifts 7.5 t
	// with 2 t of pull; each sheave charged with the whole load, that is a
	// floor. No friction, 6 times the pull, is the ceiling.
	if got := advantage(t, 6, 0.90) * 2; got < 7.5 || got >= 12 {
		t.Errorf("threefold purchase: %.2f t", got)
	}
	// The same rule, parts·10/(10 + sheaves), for the smaller ones.
	for parts := 2; parts < 6; parts++ {
		n := float64(parts)
		if got := advantage(t, parts, 0.90); got < n*10/(10+n) || got >= n {
			t.Errorf("%d parts: %.3f", parts, got)
		}
	}
}

func TestSumsAgreeWithTheRopeWalkedThrough(t *testing.T) {
	// Independent of the sum: the haul is searched until the pulls of the
	// parts, sheave after sheave, add up to the load.
	carried := func(haul, e float64, parts int) (load float64) {
		for range parts {
			haul *= e
			load += haul
		}
		return load
	}
	for _, k := range tackle.Kinds() {
		for parts := 1; parts <= 6; parts++ {
			low, high := 0.0, 10.0
			for range 60 {
				if mid := (low + high) / 2; carried(mid, k.Efficiency, parts) < 1 {
					low = mid
				} else {
					high = mid
				}
			}
			e, n := k.Efficiency, float64(parts)
			got := 1 / advantage(t, parts, e)
			if math.Abs(got/high-1) > 1e-9 {
				t.Errorf("%s, %d parts: haul %.6f, searched %.6f", k.Name, parts, got, high)
			}
			if closed := e * (1 - math.Pow(e, n)) / (1 - e); math.Abs(got*closed-1) > 1e-9 {
				t.Errorf("%s, %d parts: %.6f, geometric series %.6f", k.Name, parts, 1/got, closed)
			}
		}
	}
}

func TestRopeHauled(t *testing.T) {
	// Statics: without friction the hands do the work that the load gains, so
	// two parts take twice the rise, and three three times.
	for parts := 1; parts <= 6; parts++ {
		const rise, load = 2.5, 1000
		l, err := tackle.Hauled(parts, rise)
		if work := float64(l) * load / advantage(t, parts, 1); err != nil || math.Abs(work-load*rise) > 1e-9 {
			t.Errorf("%d parts: %v m, %v", parts, l, err)
		}
	}
}
