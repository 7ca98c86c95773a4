package bot_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

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
	return map[string]*bot.Scene{
		"raise":            raise(false, func(*hinge.Setup) {}),
		"raise-enough":     raise(false, func(s *hinge.Setup) { s.People, s.Winch, s.Hitch = 0, 3500*unit.PoundForce, feet(34) }),
		"raise-metric":     raise(true, func(s *hinge.Setup) { s.People, s.Winch, s.Offset, s.Hitch = 0, 9000, 1.5, 0 }),
		"raise-drooping":   raise(false, func(s *hinge.Setup) { s.Angle = degrees(-25); s.Hitch = feet(90) }),
		"raise-two-blocks": raise(false, func(s *hinge.Setup) { s.Height, s.Tie = feet(14), feet(14.5) }),
		"raise-turns-over": raise(false, func(s *hinge.Setup) { s.Tie = feet(10) }),
		"lift":             lift(false, log, tackle.Lift{Tackle: tackle.Tackle{Parts: 4, Efficiency: 0.9}, Power: tackle.Power{People: 3, PerPerson: tackle.PerPerson}}, feet(30)),
		"lift-unsaid":      lift(true, bot.Pictured{Name: "Piece, your weight 150 kg", Weight: 150}, tackle.Lift{Tackle: tackle.Tackle{Parts: 1, Efficiency: 0.9}, Power: tackle.Power{PerPerson: tackle.PerPerson}}, 0),
		"lower":            lower(oak(), bot.Lowering{Hitch: feet(35)}),
		"lower-high":       lower(log, bot.Lowering{Hitch: feet(110), Parts: 2, People: 2}),
		"lower-angle":      lower(log, bot.Lowering{Hitch: feet(35), Between: &legs}),
		"lower-long":       lower(bot.Pictured{Name: "Red oak limb, 10 in butt × 30 ft", Weight: pounds(1200), Length: feet(30), Butt: 10 * unit.Inch}, bot.Lowering{Hitch: feet(22)}),
		"redirect":         led(redirect.Block{To: redirect.Direction{FromDown: degrees(60)}, Sheave: tackle.Sheave{Efficiency: 0.9}}, redirect.Block{To: redirect.Direction{FromDown: degrees(0)}, Sheave: tackle.Sheave{Efficiency: 0.9}}),
		"redirect-back":    led(redirect.Block{To: redirect.Direction{}, Sheave: tackle.Sheave{Efficiency: 0.9}}),
		"swing":            swung(&swing.Obstacle{Distance: feet(28), Top: feet(14)}),
		"swing-strikes":    swung(&swing.Obstacle{Distance: feet(15), Top: feet(20)}),
	}
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
