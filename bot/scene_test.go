package bot_test

import (
	"encoding/json"
	"maps"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"heft/bot"
	"heft/calc"
	"heft/calc/hinge"
	"heft/calc/redirect"
	"heft/calc/swing"
	"heft/calc/tackle"
	"heft/calc/unit"
)

func feet(f float64) unit.Length { return unit.Length(f) * unit.Foot }

func pounds(p float64) unit.Mass { return unit.Mass(p) * unit.Pound }

func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

func must[T any](t *testing.T) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

// oak is the limb of most scenes.
func oak() bot.Pictured {
	return bot.Pictured{Name: "Red oak limb, 14 in butt × 22 ft", Weight: pounds(1350), Length: feet(22), Butt: 14 * unit.Inch}
}

func standing() hinge.Setup {
	return hinge.Setup{
		Weight: oak().Weight, Balance: feet(11), Length: feet(22), Angle: degrees(20), Tie: feet(14), Height: feet(20),
		Hitch: feet(55), Tackle: tackle.Tackle{Parts: 3, Efficiency: 0.9}, Power: tackle.Power{People: 2, PerPerson: tackle.PerPerson},
	}
}

// scenes are those that were looked at, as pictures, and accepted.
func scenes(t *testing.T) map[string]*bot.Scene {
	t.Helper()
	raise := func(metric bool, change func(*hinge.Setup)) *bot.Scene {
		s := standing()
		change(&s)
		return bot.RaiseScene(metric, oak(), s, must[hinge.Raising](t)(hinge.Raise(s)))
	}
	lift := func(metric bool, p bot.Pictured, l tackle.Lift, hitch unit.Length) *bot.Scene {
		l.Load = p.Weight
		return bot.LiftScene(metric, p, l, must[tackle.Result](t)(tackle.Plan(l)), hitch)
	}
	lower := func(p bot.Pictured, l bot.Lowering) *bot.Scene {
		j := calc.Job{Given: unit.Exactly(p.Weight), Hitch: unit.Exactly(l.Hitch), Between: l.Between, Parts: l.Parts, People: l.People, Lower: true}
		return bot.LowerScene(false, p, must[calc.Result](t)(calc.Work(j)), l)
	}
	swung := func(o *swing.Obstacle) *bot.Scene {
		s := swing.Setup{Heavy: pounds(400), Line: feet(18), Start: degrees(45), Hung: feet(8), Hitch: feet(40), Obstacle: o}
		p := bot.Pictured{Name: "White ash limb, 8 in butt × 8 ft", Weight: pounds(400), Length: feet(8), Butt: 8 * unit.Inch}
		return bot.SwingScene(false, p, s, must[swing.Swing](t)(swing.Plan(s)))
	}
	led := func(blocks ...redirect.Block) *bot.Scene {
		p := bot.Pictured{Name: "Piece, your weight 300 lb", Weight: pounds(300)}
		c := redirect.Chain{Tension: p.Weight.Weight(), Blocks: blocks, Motion: redirect.Raising}
		return bot.RedirectScene(false, p, c, must[[]redirect.Load](t)(redirect.Loads(c)))
	}
	log := bot.Pictured{Name: "White ash log, 20 in × 8 ft", Weight: pounds(920), Length: feet(8), Butt: 20 * unit.Inch, Log: true}
	legs := degrees(40)
	all := map[string]*bot.Scene{
		"raise":            raise(false, func(*hinge.Setup) {}),
		"raise-enough":     raise(false, func(s *hinge.Setup) { s.People, s.Winch, s.Hitch = 0, 3500*unit.PoundForce, feet(34) }),
		"raise-metric":     raise(true, func(s *hinge.Setup) { s.People, s.Winch, s.Offset, s.Hitch = 0, 9000, 1.5, 0 }),
		"raise-drooping":   raise(false, func(s *hinge.Setup) { s.Angle = degrees(-25); s.Hitch = feet(90) }),
		"raise-two-blocks": raise(false, func(s *hinge.Setup) { s.Height, s.Tie = feet(14), feet(14.5) }),
		"raise-turns-over": raise(false, func(s *hinge.Setup) { s.Tie = feet(10) }),
		"lift":             lift(false, log, tackle.Lift{Tackle: tackle.Tackle{Parts: 4, Efficiency: 0.9}, Power: tackle.Power{People: 3, PerPerson: tackle.PerPerson}}, feet(30)),
		"lift-unsaid":      lift(true, bot.Pictured{Name: "Piece, your weight 150 kg", Weight: 150}, tackle.Lift{Tackle: tackle.Tackle{Parts: 1, Efficiency: 0.9}, Power: tackle.Power{PerPerson: tackle.PerPerson}}, 0),
		"lift-upward":      lift(false, log, tackle.Lift{Tackle: tackle.Tackle{Parts: 3, Efficiency: 0.9, Upward: true, Redirects: []tackle.Redirect{{Sheave: tackle.Sheave{Efficiency: 0.9}, Turn: degrees(90)}}}, Power: tackle.Power{PerPerson: tackle.PerPerson}}, feet(30)),
		"lower-drum-off":   lower(log, bot.Lowering{Hitch: feet(40), Away: feet(20)}),
		"lower":            lower(oak(), bot.Lowering{Hitch: feet(35)}),
		"lower-high":       lower(log, bot.Lowering{Hitch: feet(110), Parts: 2, People: 2}),
		"lower-angle":      lower(log, bot.Lowering{Hitch: feet(35), Between: &legs}),
		"lower-long":       lower(bot.Pictured{Name: "Red oak limb, 10 in butt × 30 ft", Weight: pounds(1200), Length: feet(30), Butt: 10 * unit.Inch}, bot.Lowering{Hitch: feet(22)}),
		"redirect":         led(redirect.Block{To: redirect.Direction{FromDown: degrees(60)}, Sheave: tackle.Sheave{Efficiency: 0.9}}, redirect.Block{To: redirect.Direction{FromDown: degrees(0)}, Sheave: tackle.Sheave{Efficiency: 0.9}}),
		"redirect-back":    led(redirect.Block{To: redirect.Direction{}, Sheave: tackle.Sheave{Efficiency: 0.9}}),
		"swing":            swung(&swing.Obstacle{Distance: feet(28), Top: feet(14)}),
		"swing-strikes":    swung(&swing.Obstacle{Distance: feet(15), Top: feet(20)}),
	}
	maps.Copy(all, spanishScenes(t))
	maps.Copy(all, weightlessScenes(t))
	return all
}

const sceneDir = "picture/testdata"

// TestScenes compares scenes with those that were accepted; the drawer's
// tests draw them.
func TestScenes(t *testing.T) {
	for name, scene := range scenes(t) {
		t.Run(name, func(t *testing.T) {
			got, err := json.MarshalIndent(scene, "", "\t")
			if err != nil {
				t.Fatal(err)
			}
			file := filepath.Join(sceneDir, name+".json")
			if *update {
				if err := os.WriteFile(file, append(got, '\n'), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if string(want) != string(got)+"\n" {
				t.Errorf("the scene is no longer the accepted one; look at it, then run with -update:\n%s", got)
			}
		})
	}
}

// A set-up that is refused shows why, and neither a weight nor a load.
func TestRefusedScenesShowNoLoad(t *testing.T) {
	doNot := map[string]string{"": "DO NOT", "en": "DO NOT", "es": "NO LO HAGA"}
	n := 0
	for name, s := range scenes(t) {
		loads, crosses := 0, 0
		for _, m := range s.Marks {
			switch m.Kind {
			case bot.Load:
				loads++
			case bot.Cross:
				crosses++
			}
		}
		if s.Refused {
			n++
		}
		if s.Refused != (loads == 0 && s.Plan == "" && crosses == 1 && s.Verdict == doNot[s.Language]) {
			t.Errorf("%s: refused %v, %d loads, %d crosses, %q, %q", name, s.Refused, loads, crosses, s.Plan, s.Verdict)
		}
	}
	if n != 5 {
		t.Errorf("%d refused scenes", n)
	}
}

// figure is a number with its unit, as the words and the picture have it.
var figure = regexp.MustCompile(`[0-9][0-9.,]* (?:lb|kN|kg|people|wraps)`)

// Every load, pull and number of wraps on a picture stands in the words too.
func TestPictureSaysWhatTheWordsSay(t *testing.T) {
	d := newDesk(t)
	for _, question := range []string{
		"14 in red oak limb 22 ft, hitched at 35 ft",
		"400 kg log, hitched at 10 m, 2 people",
		"600 lb piece on 3:1, 2 people, hitched at 35 ft, can we lift it?",
		"red oak limb 10 in 20 ft, stand it up on a 2:1, tied 12 ft from the cut, block 20 ft above the cut, 20° above horizontal",
	} {
		r, _ := answer(t, d, question)
		s := r.Scene()
		if s == nil {
			t.Fatalf("%q has no picture: %s", question, r.Text())
		}
		words := []string{s.Plan}
		for _, m := range s.Marks {
			if m.Kind == bot.Load || m.Kind == bot.Drum {
				words = append(words, m.Label)
			}
		}
		n := 0
		for _, w := range words {
			for _, f := range figure.FindAllString(w, -1) {
				if n++; !strings.Contains(r.Text(), f) {
					t.Errorf("%q: the picture says %q, the words do not:\n%s", question, f, r.Text())
				}
			}
		}
		if n < 4 {
			t.Errorf("%q: %d figures on the picture", question, n)
		}
	}
}

// What is drawn is to scale: the tie, the blocks and the tip are as far apart
// as they were said to be, and where a part was left out a break says so.
func TestScenesAreToScale(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		metres := func(low, high float64, name string) unit.Length {
			return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
		}
		s := standing()
		s.Height, s.Length = metres(2, 15, "height"), metres(1, 20, "length")
		s.Tie = metres(0.5, float64(min(s.Length, s.Height)), "tie")
		s.Balance = metres(0.1, float64(s.Length), "balance")
		s.Angle = degrees(rapid.Float64Range(-40, 80).Draw(t, "angle"))
		s.Hitch = s.Height + metres(0.1, 20, "cut")
		r, err := hinge.Raise(s)
		if err != nil {
			return // past any rope
		}
		p := oak()
		p.Length = s.Length
		out := bot.RaiseScene(true, p, s, r)
		find := func(k bot.Kind) (marks []bot.Mark) {
			for _, m := range out.Marks {
				if m.Kind == k {
					marks = append(marks, m)
				}
			}
			return marks
		}
		limb, blocks := find(bot.Wood)[0].Path, find(bot.Block)
		tip := middle(limb[1], limb[2])
		near(t, "limb", distance(middle(limb[0], limb[3]), tip), s.Length)
		near(t, "tip", tip.Y-blocks[0].Path[0].Y, s.Length*unit.Length(math.Sin(float64(s.Angle)))-s.Height)
		near(t, "tie", distance(blocks[1].Path[0], middle(limb[0], limb[3])), s.Tie)
		up := blocks[0].Path[0].Y - find(bot.Ground)[0].Path[0].Y
		if len(find(bot.Break)) == 0 {
			near(t, "block", up, max(s.Hitch, s.Height-unit.Length(tip.Y)))
		} else if up >= float64(s.Hitch) {
			t.Fatalf("a break, and the block %v m up of %v", up, s.Hitch)
		}
	})
}

func middle(a, b bot.Point) bot.Point { return bot.Point{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2} }

func distance(a, b bot.Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }

func near(t *rapid.T, what string, got float64, want unit.Length) {
	t.Helper()
	if math.Abs(got-float64(want)) > 1e-6 {
		t.Fatalf("%s: %v m, want %v", what, got, want)
	}
}
