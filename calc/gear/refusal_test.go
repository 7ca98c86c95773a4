package gear_test

import (
	"errors"
	"math"
	"testing"

	"heft/calc/gear"
	"heft/calc/limits"
	"heft/calc/unit"
)

// refusal is an error, and the quantity that should be out of range in it.
type refusal struct {
	err  error
	want limits.Quantity
}

func (r refusal) check(t *testing.T, name string) {
	t.Helper()
	out, ok := errors.AsType[*limits.OutOfRange](r.err)
	if !ok || out.Quantity != r.want || out.Why == "" {
		t.Errorf("%s: got %v, want %s out of range", name, r.err, r.want)
	}
}

func TestLoadsOutOfRange(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	working := func(breaking, factor float64) error {
		_, err := gear.WorkingLoad(unit.Force(breaking), factor)
		return err
	}
	used := func(load, working float64) error {
		_, err := gear.Used(unit.Force(load), unit.Force(working))
		return err
	}
	weakest := func(l gear.Link) error { _, err := gear.Weakest([]gear.Link{l}); return err }
	for name, r := range map[string]refusal{
		"four to one":        {working(5e4, 4), limits.DesignFactor},
		"twenty to one":      {working(5e4, 20), limits.DesignFactor},
		"no number, factor":  {working(5e4, nan), limits.DesignFactor},
		"a rope of nothing":  {working(0, 10), limits.RopeBreak},
		"no number, break":   {working(nan, 10), limits.RopeBreak},
		"no end of strength": {working(inf, 10), limits.RopeBreak},
		"a load upward":      {used(-1, 1e3), limits.Tension},
		"no number, load":    {used(nan, 1e3), limits.Tension},
		"no working load":    {used(1, 0), limits.WorkingLoad},
		"no number, working": {used(1, nan), limits.WorkingLoad},
		"no share":           {weakest(gear.Link{Working: 1e3}), limits.LineShare},
		"no number, share":   {weakest(gear.Link{Working: 1e3, Carries: nan}), limits.LineShare},
		"no number, marked":  {weakest(gear.Link{Working: unit.Force(nan), Carries: 1}), limits.WorkingLoad},
		"no factor":          {weakest(gear.Link{Break: 5e4, Carries: 1}), limits.DesignFactor},
	} {
		r.check(t, name)
	}
}

func TestSlingsOutOfRange(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	leg := func(load float64, legs int, angle float64) error {
		_, err := gear.Leg(unit.Force(load), legs, degrees(angle))
		return err
	}
	basket := func(load, angle float64) error { _, err := gear.Basket(unit.Force(load), degrees(angle)); return err }
	choker := func(load, angle float64) error { _, err := gear.Choker(unit.Force(load), degrees(angle)); return err }
	for name, r := range map[string]refusal{
		"nearly level":        {leg(1e3, 2, 29), limits.LegAngle},
		"past plumb":          {leg(1e3, 2, 91), limits.LegAngle},
		"no number, leg":      {leg(1e3, 2, nan), limits.LegAngle},
		"no leg":              {leg(1e3, 0, 60), limits.Legs},
		"four legs":           {leg(1e3, 4, 60), limits.Legs},
		"no number, on legs":  {leg(nan, 2, 60), limits.Tension},
		"a flat basket":       {basket(1e3, 15), limits.LegAngle},
		"no basket":           {basket(nan, 60), limits.WorkingLoad},
		"a choke turned over": {choker(1e3, 181), limits.ChokeAngle},
		"a choke inside out":  {choker(1e3, -1), limits.ChokeAngle},
		"no number, choke":    {choker(1e3, nan), limits.ChokeAngle},
		"no choker":           {choker(inf, 90), limits.WorkingLoad},
	} {
		r.check(t, name)
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range gear.Domains() {
		beyond := d.High * 1.5
		var err error
		switch d.Quantity {
		case limits.DesignFactor:
			_, err = gear.WorkingLoad(5e4, beyond)
		case limits.RopeBreak:
			_, err = gear.WorkingLoad(unit.Force(beyond), 10)
		case limits.WorkingLoad:
			_, err = gear.Used(1, unit.Force(beyond))
		case limits.Tension:
			_, err = gear.Used(unit.Force(beyond), 1e3)
		case limits.LineShare:
			_, err = gear.Weakest([]gear.Link{{Working: 1e3, Carries: beyond}})
		case limits.Legs:
			_, err = gear.Leg(1e3, int(beyond), degrees(60))
		case limits.LegAngle:
			_, err = gear.LegFactor(degrees(beyond))
		case limits.ChokeAngle:
			_, err = gear.Choker(1e3, degrees(beyond))
		}
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}
