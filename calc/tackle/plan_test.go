package tackle_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/tackle"
	"heft/calc/unit"
)

// lift is a load on ordinary sheaves, hauled by people at 200 N each.
func lift(load unit.Mass, parts, people int) tackle.Lift {
	return tackle.Lift{Load: load, Tackle: tackle.Tackle{Parts: parts, Efficiency: 0.90},
		Power: tackle.Power{People: people, PerPerson: 200}}
}

type fataler interface {
	Helper()
	Fatal(...any)
}

func plan(t fataler, l tackle.Lift) tackle.Result {
	t.Helper()
	r, err := tackle.Plan(l)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func near(got, want unit.Force) bool {
	return math.Abs(float64(got-want)) <= 1e-6*math.Abs(float64(want))
}

func TestWhatTheTreeCarries(t *testing.T) {
	// Statics of an ideal 2:1 led down to the ground: the fixed block carries
	// W, two legs of W/2, and the dead end W/2; 1.5 W on the tree.
	const load = 100 * unit.Kilogram
	w := load.Weight()
	ideal := lift(load, 2, 0)
	ideal.Efficiency = 1
	r := plan(t, ideal)
	if !near(r.Haul, w/2) || !near(r.Holding, w/2) || !near(r.Block, w) || !near(r.DeadEnd, w/2) || !near(r.Tree, w*3/2) {
		t.Errorf("of %v N: %+v", w, r)
	}
	// A single block carries both its legs, twice the load without friction
	// (TCI magazine article: about twice).
	ideal.Parts = 1
	if r := plan(t, ideal); !near(r.Block, 2*w) || r.DeadEnd != 0 || !near(r.Tree, 2*w) {
		t.Errorf("of %v N over one block: %+v", w, r)
	}
	// Published field test: raising 11 lb over a pulley weighs 24 lb on it.
	pulley := lift(11*unit.Pound, 1, 0)
	pulley.Efficiency = kind(t, "small pulley").Efficiency
	if got := plan(t, pulley).Block.Pounds(); math.Abs(got-24) > 1 {
		t.Errorf("raising 11 lb over a pulley: %.1f lb, want 24", got)
	}
	// Ordinary sheaves, worked by hand: the haul is W/1.71 = 0.5848 W, the
	// next part 0.5263 W, the dead end 0.4737 W.
	r = plan(t, lift(load, 2, 0))
	for name, pair := range map[string][2]float64{
		"haul": {float64(r.Haul / w), 0.5848}, "block": {float64(r.Block / w), 1.1111},
		"dead end": {float64(r.DeadEnd / w), 0.4737}, "tree": {float64(r.Tree / w), 1.5848},
		// Going down the friction helps: W/(1/0.9 + 1/0.81) = 0.4263 W.
		"holding": {float64(r.Holding / w), 0.4263}, "actual": {r.Actual, 1.71}, "ideal": {r.Ideal, 2},
	} {
		if math.Abs(pair[0]-pair[1]) > 5e-5 {
			t.Errorf("%s: %.5f, want %v", name, pair[0], pair[1])
		}
	}
}

func TestRedirectsAreHauledAndNotHung(t *testing.T) {
	// By hand: a redirect that keeps half makes 1.71 into 0.855 at the hands,
	// the hold half as much, and leaves the fixed block as it was.
	l := lift(100, 2, 0)
	direct := plan(t, l)
	l.Redirects = []tackle.Redirect{{Sheave: tackle.Sheave{Efficiency: 0.5}, Turn: degrees(180)}}
	r := plan(t, l)
	if math.Abs(r.Actual-0.855) > 1e-9 || !near(r.Haul, 2*direct.Haul) || !near(r.Holding, direct.Holding/2) ||
		r.Tree != direct.Tree || r.Block != direct.Block || r.DeadEnd != direct.DeadEnd {
		t.Errorf("redirected %+v, direct %+v", r, direct)
	}
}

func TestVerdicts(t *testing.T) {
	// 100 kg are 980.7 N, 573.5 on two parts of ordinary sheaves: three people
	// of 200 N, and 716.9 N, four people, with a quarter in reserve.
	r := plan(t, lift(100, 2, 0))
	if r.Verdict != tackle.PowerUnsaid || r.PeopleNeeded != 3 || r.Have != 0 || r.Remedies != (tackle.Remedies{}) {
		t.Errorf("nobody said: %+v", r)
	}
	for people, want := range map[int]tackle.Verdict{
		1: tackle.MorePower, 2: tackle.MorePower, 3: tackle.Marginal, 4: tackle.Enough, 8: tackle.Enough,
	} {
		r := plan(t, lift(100, 2, people))
		if r.Verdict != want || r.PeopleNeeded != 3 || r.Have != unit.Force(people)*200 {
			t.Errorf("%d people: %+v", people, r)
		}
		if (want == tackle.Enough) != (r.Remedies == tackle.Remedies{}) {
			t.Errorf("%d people: remedies %+v", people, r.Remedies)
		}
	}
	winch := lift(100, 2, 8)
	winch.Winch = 570
	if r := plan(t, winch); r.Verdict != tackle.MorePower || r.Have != 570 {
		t.Errorf("a weak winch with hands on its rope: %+v", r)
	}
	// One person: four people, a winch of 716.9 N or a piece of
	// 200·1.71/1.25 = 273.6 N, 27.9 kg; six parts carry 200·4.217/1.25 =
	// 674.7 N, so no tackle does it alone.
	got := plan(t, lift(100, 2, 1)).Remedies
	if got.People != 4 || got.Parts != 0 || math.Abs(float64(got.Winch)-716.9) > 0.05 || math.Abs(float64(got.Piece)-27.9) > 0.05 {
		t.Errorf("remedies %+v", got)
	}
	// 60 kg, two people: 588.4 N; three parts carry 780 N.
	if got := plan(t, lift(60, 1, 2)).Remedies; got.Parts != 3 {
		t.Errorf("remedies %+v, want three parts", got)
	}
	// More people than can haul together are no remedy.
	if r := plan(t, lift(1000, 2, 2)); r.PeopleNeeded != 29 || r.Remedies.People != 0 {
		t.Errorf("a tonne: %+v", r)
	}
}

func TestRemediesAreEnough(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLift(t)
		r := plan(t, l)
		try := func(name string, change func(*tackle.Lift)) {
			helped := l
			change(&helped)
			if again := plan(t, helped); again.Verdict != tackle.Enough {
				t.Fatalf("%s: still %s, %+v", name, again.Verdict, r.Remedies)
			}
		}
		if n := r.Remedies.People; n > 0 {
			try("people", func(l *tackle.Lift) { l.People, l.Winch = n, 0 })
		}
		if n := r.Remedies.Parts; n > 0 {
			try("parts", func(l *tackle.Lift) { l.Parts = n })
		}
		if w := r.Remedies.Winch; w > 0 {
			try("winch", func(l *tackle.Lift) { l.Winch = w })
		}
		if m := r.Remedies.Piece; m > 0 {
			try("piece", func(l *tackle.Lift) { l.Load = m * (1 - 1e-9) })
		}
	})
}

func drawLift(t *rapid.T) tackle.Lift {
	l := lift(unit.Mass(rapid.Float64Range(1, 5000).Draw(t, "load")),
		rapid.IntRange(1, 6).Draw(t, "parts"), rapid.IntRange(0, 8).Draw(t, "people"))
	l.Efficiency = rapid.Float64Range(0.3, 1).Draw(t, "efficiency")
	for range rapid.IntRange(0, 3).Draw(t, "redirects") {
		l.Redirects = append(l.Redirects, tackle.Redirect{
			Sheave: tackle.Sheave{Efficiency: rapid.Float64Range(0.3, 1).Draw(t, "over"), Slides: rapid.Bool().Draw(t, "slides")},
			Turn:   degrees(rapid.Float64Range(0, 180).Draw(t, "turn"))})
	}
	if rapid.Bool().Draw(t, "winched") {
		l.Winch = unit.Force(rapid.Float64Range(500, 100000).Draw(t, "winch"))
	}
	return l
}

func TestHeavierNeverNeedsFewerPeople(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLift(t)
		light := plan(t, l)
		l.Load *= unit.Mass(rapid.Float64Range(1, 1.5).Draw(t, "heavier"))
		heavy := plan(t, l)
		if heavy.PeopleNeeded < light.PeopleNeeded || heavy.Haul < light.Haul || heavy.Tree < light.Tree {
			t.Fatalf("heavier %+v, lighter %+v", heavy, light)
		}
		if light.PeopleNeeded > l.People && l.Winch == 0 && l.People > 0 && light.Verdict != tackle.MorePower {
			t.Fatalf("%d people of %d: %s", l.People, light.PeopleNeeded, light.Verdict)
		}
	})
}

func TestMoreFrictionNeverLowersTheHaul(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLift(t)
		free := plan(t, l)
		if len(l.Redirects) > 0 && rapid.Bool().Draw(t, "at the redirect") {
			r := &l.Redirects[0]
			r.Efficiency = rapid.Float64Range(0.3, r.Efficiency).Draw(t, "rougher")
		} else {
			l.Efficiency = rapid.Float64Range(0.3, l.Efficiency).Draw(t, "rusty")
		}
		stiff := plan(t, l)
		const bit = 1 - 1e-12
		if stiff.Haul < free.Haul*bit || stiff.Holding*bit > free.Holding || stiff.Actual*bit > free.Actual {
			t.Fatalf("stiff %+v, free %+v", stiff, free)
		}
		if free.Holding*bit > free.Haul || free.Actual*bit > free.Ideal {
			t.Fatalf("%+v", free)
		}
	})
}

func BenchmarkPlan(b *testing.B) {
	l := lift(300, 2, 2)
	l.Redirects = []tackle.Redirect{{Sheave: tackle.Sheave{Efficiency: 0.9}, Turn: degrees(90)}}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := tackle.Plan(l); err != nil {
			b.Fatal(err)
		}
	}
}
