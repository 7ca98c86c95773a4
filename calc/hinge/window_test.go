package hinge_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/hinge"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// scanned is the brute force: whether the blocks come closer than allowed
// anywhere to upright, or the moving block ends above the top block.
func scanned(s hinge.Setup) (meet bool, closest float64) {
	closest = math.Inf(1)
	from := float64(s.Angle)
	for i := 0; i <= 2000; i++ {
		closest = min(closest, apart(s, from+(math.Pi/2-from)*float64(i)/2000))
	}
	return closest < float64(hinge.Clear(s.Closed)) || s.Tie > s.Height, closest
}

func TestTwoBlocksAgreesWithTheScan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		// Beyond the block too, and often close to where they meet.
		if rapid.Bool().Draw(t, "close") {
			s.Tie = max(0.1, s.Height+unit.Length(rapid.Float64Range(-0.8, 0.8).Draw(t, "about")))
			s.Offset = unit.Length(rapid.Float64Range(0, 0.8).Draw(t, "about behind"))
			s.Angle, s.Weight = max(s.Angle, 0), 50
		}
		meet, closest := scanned(s)
		if math.Abs(closest-float64(hinge.Clear(s.Closed))) < 1e-6 || math.Abs(float64(s.Tie-s.Height)) < 1e-6 {
			return // the last bits decide
		}
		r := raise(t, s)
		if (r.TwoBlocks != nil) != meet {
			t.Fatalf("two blocks %+v, scan %v at %v m", r.TwoBlocks, meet, closest)
		}
		if !meet {
			return
		}
		if math.Abs(float64(r.TwoBlocks.Closest)-closest) > 1e-9 {
			t.Fatalf("closest %v m, scanned %v", r.TwoBlocks.Closest, closest)
		}
		mended := s
		mended.Height += r.TwoBlocks.RaiseBy + 1e-6
		if meet, _ := scanned(mended); meet || raise(t, mended).TwoBlocks != nil {
			t.Fatalf("they still meet with the block raised by %v m", r.TwoBlocks.RaiseBy)
		}
		if r.TwoBlocks.MoveIn == 0 {
			return
		}
		mended = s
		mended.Tie -= r.TwoBlocks.MoveIn + 1e-6
		if meet, _ := scanned(mended); meet || raise(t, mended).TwoBlocks != nil || raise(t, mended).TurnsOver {
			t.Fatalf("they still meet with the tie moved in by %v m", r.TwoBlocks.MoveIn)
		}
	})
}

func TestWindowAgreesWithEveryTieTried(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		s.Length = unit.Length(rapid.Float64Range(max(float64(s.Balance), float64(s.Tie)), 20).Draw(t, "length"))
		if rapid.Bool().Draw(t, "winched") {
			s.Winch = unit.Force(rapid.Float64Range(500, 30000).Draw(t, "winch"))
		} else {
			s.People = rapid.IntRange(0, 8).Draw(t, "people")
		}
		w := raise(t, s).Window
		if w.Ties.Low > w.Ties.High {
			t.Fatalf("%+v", w)
		}
		for i := range 60 {
			s.Tie = max(0.05, s.Length*unit.Length(i)/59)
			meet, closest := scanned(s)
			far := !meet && closest-float64(hinge.Clear(s.Closed)) > 1e-9
			beyond := float64(s.Tie - s.Balance - 0.3)
			power := s.People == 0 && s.Winch == 0 || enough(s)
			inside := w.Ties.Low < s.Tie && s.Tie < w.Ties.High
			if good := far && beyond > 1e-9 && power; good != inside && edge(w, s.Tie) > 1e-6 {
				t.Fatalf("tie %v m: good %v, window %+v", s.Tie, good, w)
			}
		}
	})
}

// enough says whether the pull at hand, by virtual work and the bare sum of
// the tackle, raises the limb and its whole weight.
func enough(s hinge.Setup) bool {
	sum, term := 0.0, 1.0
	for range s.Parts {
		term *= s.Efficiency
		sum += term
	}
	have := float64(s.PerPerson) * float64(s.People)
	if s.Winch > 0 {
		have = float64(s.Winch)
	}
	line := max(byWork(s, float64(s.Angle)), float64(s.Weight)*9.80665)
	return line <= have*sum
}

func TestNearestTieByPower(t *testing.T) {
	// The other way about: a pull just good for one tie, by virtual work, has
	// its window begin there.
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		s.Balance = s.Height * unit.Length(rapid.Float64Range(0.3, 0.6).Draw(t, "balances"))
		s.Tie = s.Balance + 0.3 + unit.Length(rapid.Float64Range(0.01, 0.5).Draw(t, "beyond"))
		s.Angle, s.Parts, s.Efficiency = min(s.Angle, degrees(20)), 1, 1
		line := byWork(s, float64(s.Angle))
		if meet, _ := scanned(s); meet || line < float64(s.Weight)*9.80665*1.001 || line < 500 || line > 1e5 {
			return
		}
		seen++
		s.Winch = unit.Force(line)
		w := raise(t, s).Window
		if w.Near != hinge.ByPower || math.Abs(float64(w.Ties.Low-s.Tie)) > 1e-4 {
			t.Fatalf("%+v, want it to begin at %v m", w, s.Tie)
		}
	})
	if seen == 0 {
		t.Error("no draw had power for its nearest tie")
	}
}

// edge is how far a tie lies from the ends of the window, as a share: there
// finite differences decide either way.
func edge(w hinge.Window, tie unit.Length) float64 {
	if w.Ties.IsZero() {
		return 1
	}
	return min(math.Abs(float64(tie/w.Ties.Low-1)), math.Abs(float64(tie/w.Ties.High-1)))
}

func TestAHigherBlockNeverBringsInTheFarEnd(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		low := raise(t, s).Window
		s.Height += unit.Length(rapid.Float64Range(0, 10).Draw(t, "higher"))
		high := raise(t, s).Window
		if high.Ties.High < low.Ties.High {
			t.Fatalf("%+v lower, %+v higher", low, high)
		}
	})
}

func TestWindowNamesItsBounds(t *testing.T) {
	s := leaning()
	s.Length = 5
	if w := raise(t, s).Window; w.Far != hinge.ByTip || w.Ties.High != 5 {
		t.Errorf("%+v", w)
	}
	// 200 kg by two people: 400·1.71 = 684 N never hold 1961.
	s.People = 2
	if r := raise(t, s); !r.Window.Ties.IsZero() || r.Window.Near != hinge.ByPower || r.Lift.Verdict != tackle.MorePower {
		t.Errorf("%+v", r)
	}
	// 1200 N of winch hold 2052: enough for the weight, and for the start from
	// (level limb) 1961.3·2.5·s/(a·6) = 2052 with s² = a² + 36: 6 m apart at
	// a = 6/√(2.511² − 1) = 2.605; with the margin the balance point decides.
	s.Angle, s.Winch = 0, 1200
	if w := raise(t, s).Window; w.Near != hinge.ByBalance || w.Ties.Low != 2.8 {
		t.Errorf("%+v", w)
	}
	// A limb that balances at 4.2 m: K = 2052·6/(1961.3·4.2) = 1.495, a =
	// 6/√(1.495² − 1) = 5.40, no room below 5.4 but the last centimetre.
	s.Balance, s.Tie = 4.2, 4.6
	if w := raise(t, s).Window; w.Near != hinge.ByPower {
		t.Errorf("%+v", w)
	}
	s.Winch, s.Balance, s.Height = 0, 4.5, 5
	r := raise(t, s)
	if !r.Window.Ties.IsZero() || r.TwoBlocks == nil || r.TwoBlocks.MoveIn != 0 || math.Abs(float64(r.TwoBlocks.RaiseBy)-0.2) > 1e-9 {
		t.Errorf("%+v, %+v", r.Window, r.TwoBlocks)
	}
	if _, ok := errors.AsType[*hinge.TwoBlocks](error(r.TwoBlocks)); !ok {
		t.Error("not to be refused with")
	}
}

func TestTwoBlocksInWords(t *testing.T) {
	for want, e := range map[string]*hinge.TwoBlocks{
		"the blocks meet before the limb is upright: tie 0.3 m nearer the cut or raise the top block by 0.3 m": {MoveIn: 0.21, RaiseBy: 0.21},
		"the blocks meet before the limb is upright: raise the top block by 12.4 m":                            {RaiseBy: 12.34},
	} {
		if e.Error() != want {
			t.Errorf("got  %s\nwant %s", e, want)
		}
	}
}
