package bot_test

import (
	"encoding/csv"
	"os"
	"strings"
	"testing"

	"heft/bot"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

// Where the weight hardly hangs on which tree of a name it is, it is planned
// as any of them and said so; where it does, or where what is asked is no
// weight, it is asked.
func TestTreesThatWeighAlike(t *testing.T) {
	d := newDesk(t)
	r, e := answer(t, d, "lime log 55 cm 2 m")
	if r.Status() != bot.Answered || !strings.HasPrefix(r.Headline(), "Any lime log, 55 cm × 2 m: plan on") {
		t.Errorf("%s", r.Text())
	}
	if _, one := answer(t, d, "littleleaf linden log 55 cm 2 m"); one.PlanKg == 0 || e.PlanKg < one.PlanKg {
		t.Errorf("any lime: %g kg, one of them %g kg", e.PlanKg, one.PlanKg)
	}
	for _, q := range []string{"maple limb 12 in 15 ft", "live oak limb 14 in 20 ft", "lime log 55 cm", "is a lime limb 20 cm good as an anchor, 3 m out"} {
		if r, _ := answer(t, d, q); r.Status() != bot.Needs {
			t.Errorf("%q: %s", q, r.Text())
		}
	}
}

// A girth is asked about with the thickness that goes with it: 74 in over π is
// 23.55, rounded up.
func TestGirthIsWorkedOut(t *testing.T) {
	d := newDesk(t)
	r, _ := answer(t, d, "pin oak log 74 inches around, 8 ft long")
	if r.Status() != bot.Needs || len(r.Choices()) != 1 || r.Choices()[0].Label != "23.6 inches across" {
		t.Fatalf("%s: %v", r.Text(), r.Choices())
	}
	if whole, _ := answer(t, d, r.Choices()[0].Message); !strings.HasPrefix(whole.Headline(), "Pin oak log, 24 in × 8 ft") && !strings.HasPrefix(whole.Headline(), "Pin oak log, 23.6 in × 8 ft") {
		t.Errorf("%s", whole.Text())
	}
}

// What can only be a load is not taken for a length that lacks its unit.
func TestALoadWithoutItsUnit(t *testing.T) {
	r, _ := answer(t, newDesk(t), "lower 300, how many wraps")
	if got := r.Choices(); r.Status() != bot.Needs || len(got) != 2 || got[0].Label != "300 lb" || got[1].Label != "300 kg" {
		t.Errorf("%s: %v", r.Text(), got)
	}
}

// "Any" of the trees that share a name is planned no lighter than each of them.
func TestAnyIsNoLighterThanEach(t *testing.T) {
	f, err := os.Open("../parser/names.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for _, r := range rows[1:] {
		if r[3] == "" || !strings.HasSuffix(r[2], " spp.") {
			continue
		}
		n++
		all := heavyEnd(t, r[2])
		for _, one := range strings.Split(r[3], "; ") {
			if w := heavyEnd(t, one); w > all {
				t.Errorf("%s: %s %.0f kg, any of them, %s, %.0f kg", r[0], one, float64(w), r[2], float64(all))
			}
		}
	}
	if n < 30 {
		t.Errorf("only %d names", n)
	}
}

// heavyEnd is the heavy end of a log of 40 cm by 2 m.
func heavyEnd(t *testing.T, scientific string) unit.Mass {
	t.Helper()
	row, ok := wood.Find(scientific)
	if !ok {
		t.Fatalf("%s is not in the table", scientific)
	}
	w, err := piece.Weigh(piece.Piece{Wood: row, Shape: piece.Log, Diameter: unit.Exactly(0.4 * unit.Metre), Length: unit.Exactly(2 * unit.Metre)})
	if err != nil {
		t.Fatalf("%s: %v", scientific, err)
	}
	return w.High
}
