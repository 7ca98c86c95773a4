package rope_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

func TestPlan(t *testing.T) {
	// Worked by hand from the capstan equation with friction 0.14 to 0.30,
	// 200 N a head and 10 N of slack: ln(W/F)/(2πμ), in halves.
	for name, test := range map[string]struct {
		low, high          unit.Mass
		people             int
		start, least, most rope.Wraps
	}{
		// 9807 N: ln 49.03/0.8796 = 4.42, ln 49.03/1.885 = 2.06; 4903 N of
		// light end: ln 490.3/0.8796 = 7.04.
		"half a tonne to a tonne": {500, 1000, 1, 4.5, 2.5, 7},
		// 9807 N over 400 N: 3.64 and 1.70.
		"two people": {500, 1000, 2, 4, 2, 7},
		// 196 N: hands alone hold it; 98 N of light end: 2.59.
		"a bundle of brush": {10, 20, 1, 1, 0, 2.5},
		// 206 N: 0.03 and 0.02; 9.8 N of light end never moves the slack.
		"hardly more than a hand": {1, 21, 1, 1, 0.5, 1},
		// 29420 N: 5.67 and 2.65; light end 9.08, over the drum's 8.
		"the heaviest": {3000, 3000, 1, 6, 3, 8},
	} {
		l, err := rope.Plan(test.low, test.high, rope.Gloved(test.people))
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if l.Start != test.start || l.Least != test.least || l.Most != test.most {
			t.Errorf("%s: start %v, least %v, most %v; want %v, %v, %v", name, l.Start, l.Least, l.Most, test.start, test.least, test.most)
		}
	}
}

func TestPlanSaysWhatTheHandFeels(t *testing.T) {
	// 1000 kg at 4½ slick wraps: 9806.65·e^(−2π·0.14·4.5) = 187.3 N.
	l, err := rope.Plan(500, 1000, rope.Gloved(1))
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(float64(l.Hold)-187.3) > 0.1 || l.PerPerson != l.Hold {
		t.Errorf("hold %v N, per person %v", l.Hold, l.PerPerson)
	}
	// Two people at 4 wraps share 290.7 N.
	l, err = rope.Plan(500, 1000, rope.Gloved(2))
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(float64(l.Hold)-290.7) > 0.1 || math.Abs(float64(l.PerPerson)-145.35) > 0.1 {
		t.Errorf("hold %v N, per person %v", l.Hold, l.PerPerson)
	}
}

func TestHeld(t *testing.T) {
	// At three wraps: 4903.3·e^(−2π·0.30·3) = 17.16 N, 9806.65·e^(−2π·0.14·3)
	// = 700.6 N.
	r, err := rope.Held(500, 1000, 3)
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(float64(r.Low)-17.16) > 0.01 || math.Abs(float64(r.High)-700.6) > 0.1 {
		t.Errorf("got %v N", r)
	}
	// No wrap: the whole weight.
	if r, err := rope.Held(50, 60, 0); err != nil || r.High != unit.Mass(60).Weight() {
		t.Errorf("got %v N, %v", r, err)
	}
}

func TestRefusals(t *testing.T) {
	plan := func(low, high unit.Mass, people int) error {
		_, err := rope.Plan(low, high, rope.Gloved(people))
		return err
	}
	held := func(low, high unit.Mass, wraps rope.Wraps) error { _, err := rope.Held(low, high, wraps); return err }
	needed := func(hitch unit.Length, parts int) error { _, err := rope.Needed(hitch, parts); return err }
	nan := math.NaN()
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"too heavy":         {plan(500, 3001, 1), limits.Weight},
		"no weight":         {plan(0, 0, 1), limits.Weight},
		"less than nothing": {plan(-5, 10, 1), limits.Weight},
		"no number":         {plan(10, unit.Mass(nan), 1), limits.Weight},
		"nobody":            {plan(10, 20, 0), limits.People},
		"a crowd":           {plan(10, 20, 5), limits.People},
		"nine wraps":        {held(10, 20, 9), limits.Wraps},
		"minus one wrap":    {held(10, 20, -1), limits.Wraps},
		"no number, wraps":  {held(10, 20, rope.Wraps(nan)), limits.Wraps},
		"too heavy to hold": {held(10, 4000, 3), limits.Weight},
		"a hitch on a step": {needed(0.4, 1), limits.HitchHeight},
		"a hitch in clouds": {needed(200*unit.Foot, 1), limits.HitchHeight},
		"no number, hitch":  {needed(unit.Length(nan), 1), limits.HitchHeight},
		"no part of line":   {needed(10, 0), limits.Parts},
		"seven parts":       {needed(10, 7), limits.Parts},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
	if _, ok := errors.AsType[*limits.Contradiction](plan(20, 10, 1)); !ok {
		t.Error("a light end over the heavy end was planned with")
	}
}

func TestNeeded(t *testing.T) {
	// Geometry: up and down again, and once more for each further part; the
	// tail is 6 m.
	for _, test := range []struct {
		hitch unit.Length
		parts int
		want  float64
	}{{10, 1, 26}, {10, 2, 36}, {10, 3, 46}, {12.5, 6, 93.5}, {35 * unit.Foot, 1, 2*35*0.3048 + 6}} {
		got, err := rope.Needed(test.hitch, test.parts)
		if err != nil || math.Abs(float64(got)-test.want) > 1e-9 {
			t.Errorf("%v m, %d parts: got %v m, %v; want %v", float64(test.hitch), test.parts, float64(got), err, test.want)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range rope.Domains() {
		beyond := d.High * 1.5
		var err error
		switch d.Quantity {
		case limits.Weight:
			_, err = rope.Plan(1, unit.Mass(beyond), rope.Gloved(1))
		case limits.Wraps:
			_, err = rope.Held(1, 2, rope.Wraps(beyond))
		case limits.People:
			_, err = rope.Plan(1, 2, rope.Gloved(int(beyond)))
		case limits.PersonPull:
			_, err = rope.Plan(1, 2, rope.Hands{People: 1, Each: unit.Force(beyond)})
		case limits.HitchHeight:
			_, err = rope.Needed(unit.Length(beyond), 1)
		case limits.Parts:
			_, err = rope.Needed(10, int(beyond))
		case limits.DrumAway:
			_, err = rope.Layout{Hitch: 10, Parts: 1, Away: unit.Length(beyond)}.Needed()
		case limits.LandsOut:
			_, err = rope.Layout{Hitch: 10, Parts: 1, Lands: unit.Length(beyond)}.Needed()
		case limits.TrunkAcross:
			_, err = rope.Layout{Hitch: 10, Parts: 1, Trunk: unit.Length(beyond)}.Needed()
		case limits.DrumDiameter:
			_, err = rope.Layout{Hitch: 10, Parts: 1, Drum: unit.Length(beyond)}.Needed()
		}
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}

func drawEnds(t *rapid.T) (low, high unit.Mass) {
	high = unit.Mass(rapid.Float64Range(0.01, 2400).Draw(t, "high"))
	return high * unit.Mass(rapid.Float64Range(0.1, 1).Draw(t, "low")), high
}

func mustPlan(t *rapid.T, low, high unit.Mass, people int) rope.Lowering {
	l, err := rope.Plan(low, high, rope.Gloved(people))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func TestPlansAreInOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low, high := drawEnds(t)
		people := rapid.IntRange(1, 4).Draw(t, "people")
		l := mustPlan(t, low, high, people)
		if !(0 <= l.Least && l.Least <= l.Start && 1 <= l.Start && l.Start <= l.Most && l.Most <= 8) {
			t.Fatalf("least %v, start %v, most %v", l.Least, l.Start, l.Most)
		}
		for _, n := range []rope.Wraps{l.Least, l.Start, l.Most} {
			if 2*n != rope.Wraps(math.Trunc(float64(2*n))) {
				t.Fatalf("%v wraps are not in halves", n)
			}
		}
		if l.PerPerson > rope.PerPerson*(1+1e-8) {
			t.Fatalf("%v N a head at %v wraps", l.PerPerson, l.Start)
		}
		// Whatever the drum, fewer wraps than Least run away.
		if l.Least >= 0.5 {
			r, err := rope.Held(low, high, l.Least-0.5)
			grippy := rope.Hold(high.Weight(), rope.Grippy, l.Least-0.5)
			if err != nil || grippy < rope.PerPerson*unit.Force(people)*(1-1e-8) || r.High < grippy {
				t.Fatalf("%v wraps still hold: %v N", l.Least-0.5, grippy)
			}
		}
	})
}

func TestHeavierNeverMeansFewerWraps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low, high := drawEnds(t)
		people := rapid.IntRange(1, 4).Draw(t, "people")
		l := mustPlan(t, low, high, people)
		heavier := mustPlan(t, low, high*unit.Mass(rapid.Float64Range(1, 1.25).Draw(t, "heavier")), people)
		if heavier.Start < l.Start || heavier.Least < l.Least {
			t.Fatalf("heavier takes %v from %v, lighter %v from %v", heavier.Start, heavier.Least, l.Start, l.Least)
		}
	})
}

func TestMorePeopleNeverMeanMoreWraps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low, high := drawEnds(t)
		people := rapid.IntRange(1, 3).Draw(t, "people")
		few, more := mustPlan(t, low, high, people), mustPlan(t, low, high, people+1)
		if more.Start > few.Start || more.Least > few.Least {
			t.Fatalf("%d take %v from %v, one more %v from %v", people, few.Start, few.Least, more.Start, more.Least)
		}
	})
}

func TestPoundsAndKilogramsPlanAlike(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low, high := drawEnds(t)
		metric := mustPlan(t, low, high, 1)
		imperial := mustPlan(t, unit.Mass(low.Pounds())*unit.Pound, unit.Mass(high.Pounds())*unit.Pound, 1)
		if imperial.Start != metric.Start || imperial.Least != metric.Least || imperial.Most != metric.Most {
			t.Fatalf("%+v in pounds, %+v in kilograms", imperial, metric)
		}
	})
}

func BenchmarkPlan(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := rope.Plan(210, 870, rope.Gloved(1)); err != nil {
			b.Fatal(err)
		}
	}
}
