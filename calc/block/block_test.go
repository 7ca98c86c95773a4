package block_test

import (
	"errors"
	"math"
	"os"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/published"
	"heft/calc/unit"
)

// degrees is an angle as the tables print it.
func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

func TestBlockTable(t *testing.T) {
	rows := published.Rows(t, os.DirFS("testdata"), "block_factors.csv")
	if len(rows) != 21 {
		t.Errorf("%d angles, want 21", len(rows))
	}
	for _, row := range rows {
		got, err := block.Load(1, degrees(published.Number(t, row[0])))
		if want := published.Number(t, row[1]); err != nil || math.Abs(float64(got)-want) > 0.011 {
			t.Errorf("%s degrees: got %.3f, %v; want %v", row[0], float64(got), err, want)
		}
	}
}

func TestPrintedExamples(t *testing.T) {
	// The same two printed tables, their worked examples.
	for _, test := range []struct{ tension, between, want, tolerance float64 }{
		{1000, 50, 1810, 10}, {1000, 135, 760, 10},
		{500, 0, 1000, 5}, {500, 30, 965, 5}, {500, 90, 705, 5},
		{150, 100, 194, 2},
	} {
		got, err := block.Load(unit.Force(test.tension), degrees(test.between))
		if err != nil || math.Abs(float64(got)-test.want) > test.tolerance {
			t.Errorf("%v at %v degrees: got %.1f, %v; want %v", test.tension, test.between, float64(got), err, test.want)
		}
	}
}

func TestMeasuredBlocks(t *testing.T) {
	// 11 lb weighed over a pulley and a carabiner, to the pound: raising
	// pulls more than twice the load, lowering less.
	const load = 11
	for _, row := range published.Rows(t, os.DirFS("testdata"), "block_pulls.csv") {
		over := func(column int) float64 { return math.Exp(-math.Pi * published.Number(t, row[column])) }
		up, err := block.Raising(load, over(3), 0)
		if want := published.Number(t, row[1]); err != nil || math.Abs(float64(up)-want) > 1 || up <= 2*load {
			t.Errorf("raising over a %s: got %.1f lb, %v; want %v", row[0], float64(up), err, want)
		}
		down, err := block.Lowering(load, over(4), 0)
		if want := published.Number(t, row[2]); err != nil || math.Abs(float64(down)-want) > 1 || down >= 2*load {
			t.Errorf("lowering over a %s: got %.1f lb, %v; want %v", row[0], float64(down), err, want)
		}
	}
}

func TestRedirectOverACarabiner(t *testing.T) {
	// Published redirect test: 0.100 kN hanging take 0.188 kN to pull over a
	// carabiner (efficiency 0.53) and 0.12 over a small pulley (0.83), legs
	// parallel: 0.288 and 0.22 kN on the anchor.
	for _, test := range []struct{ efficiency, want float64 }{{0.53, 0.288}, {0.83, 0.22}} {
		got, err := block.Raising(0.100, test.efficiency, 0)
		if err != nil || math.Abs(float64(got)-test.want) > 0.005 {
			t.Errorf("efficiency %v: got %.3f kN, %v; want %v", test.efficiency, float64(got), err, test.want)
		}
	}
}

func TestFrictionInTheBlock(t *testing.T) {
	// Capstan and statics worked through: 100, μ 0.2, 180 degrees of contact
	// make 153 on the way down and 287 on the way up.
	e := math.Exp(-0.2 * math.Pi)
	down, err := block.Lowering(100, e, 0)
	if err != nil || math.Abs(float64(down)-153) > 1 {
		t.Errorf("lowering: got %.1f, %v; want 153", float64(down), err)
	}
	up, err := block.Raising(100, e, 0)
	if err != nil || math.Abs(float64(up)-287) > 1 {
		t.Errorf("raising: got %.1f, %v; want 287", float64(up), err)
	}
	// Right angles are Pythagoras: legs of 3 and 4 pull 5.
	if got, err := block.Lowering(4, 0.75, degrees(90)); err != nil || math.Abs(float64(got)-5) > 1e-9 {
		t.Errorf("right angle: got %v, %v; want 5", float64(got), err)
	}
}

func TestRefusals(t *testing.T) {
	load := func(tension, between float64) error {
		_, err := block.Load(unit.Force(tension), degrees(between))
		return err
	}
	lowering := func(efficiency float64) error { _, err := block.Lowering(1, efficiency, 0); return err }
	raising := func(efficiency float64) error { _, err := block.Raising(1, efficiency, 0); return err }
	nan := math.NaN()
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"beyond straight on":   {load(1, 181), limits.Angle},
		"less than parallel":   {load(1, -1), limits.Angle},
		"no number, angle":     {load(1, nan), limits.Angle},
		"a rope that pushes":   {load(-1, 0), limits.Tension},
		"no number, tension":   {load(nan, 0), limits.Tension},
		"no end of tension":    {load(math.Inf(1), 0), limits.Tension},
		"a block that gives":   {lowering(1.1), limits.Efficiency},
		"a block that eats":    {raising(0), limits.Efficiency},
		"no number, block":     {raising(nan), limits.Efficiency},
		"a rusty block, lower": {lowering(0.1), limits.Efficiency},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range block.Domains() {
		beyond := d.High * 1.5
		var err error
		switch d.Quantity {
		case limits.Angle:
			_, err = block.Load(1, degrees(beyond))
		case limits.Efficiency:
			_, err = block.Raising(1, beyond, 0)
		case limits.Tension:
			_, err = block.Load(unit.Force(beyond), 0)
		}
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}

func TestFrictionNeverMakesRaisingEasier(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		load := unit.Force(rapid.Float64Range(1, 50000).Draw(t, "load"))
		efficiency := rapid.Float64Range(0.3, 1).Draw(t, "efficiency")
		between := degrees(rapid.Float64Range(0, 90).Draw(t, "between"))
		down, errDown := block.Lowering(load, efficiency, between)
		still, errStill := block.Load(load, between)
		up, errUp := block.Raising(load, efficiency, between)
		if err := errors.Join(errDown, errStill, errUp); err != nil {
			t.Fatal(err)
		}
		const bit = 1 - 1e-12
		if down*bit > still || still*bit > up {
			t.Fatalf("down %v, still %v, up %v N", down, still, up)
		}
	})
}

func TestWiderAnglesLoadTheBlockLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		narrow := rapid.Float64Range(0, 180).Draw(t, "narrow")
		wide := rapid.Float64Range(narrow, 180).Draw(t, "wide")
		a, errA := block.Load(1000, degrees(narrow))
		b, errB := block.Load(1000, degrees(wide))
		if err := errors.Join(errA, errB); err != nil {
			t.Fatal(err)
		}
		if b > a*(1+1e-12) {
			t.Fatalf("%v N at %v degrees, %v at %v", a, narrow, b, wide)
		}
	})
}
