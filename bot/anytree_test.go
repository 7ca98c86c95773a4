package bot_test

import (
	"encoding/csv"
	"math"
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

// A girth that could be none is asked about with the thickness that goes with
// it: 74 in over π is 23.55, rounded up.
func TestGirthIsWorkedOut(t *testing.T) {
	d := newDesk(t)
	r, _ := answer(t, d, "pin oak log 74 inches around 8 ft long")
	if r.Status() != bot.Needs || len(r.Choices()) != 1 || r.Choices()[0].Label != "23.6 inches across" {
		t.Fatalf("%s: %v", r.Text(), r.Choices())
	}
	if whole, _ := answer(t, d, r.Choices()[0].Message); !strings.HasPrefix(whole.Headline(), "Pin oak log, 24 in × 8 ft") && !strings.HasPrefix(whole.Headline(), "Pin oak log, 23.6 in × 8 ft") {
		t.Errorf("%s", whole.Text())
	}
}

// A plain girth is planned as the thickness that goes with it, and said so: 22 in
// over 7, times 22, is 69.14, and π a little less than 22/7.
func TestPlainGirthIsPlanned(t *testing.T) {
	d := newDesk(t)
	for q, said := range map[string]string{
		"pin oak log 69.1 inches around, 8 ft long":   "Girth 69.1 inches ÷ 3.14: 22 in across.",
		"pin oak log girth 5 ft 9.1 in, 8 ft long":    "Girth 5 ft 9.1 in ÷ 3.14: 22 in across.",
		"troza de pin oak, contorno 175.5 cm, 2.44 m": "Contorno 175.5 cm ÷ 3.14: 55.9 cm de grueso.",
		"pin oak log girth 69.1 in, 8 ft, two wraps":  "Girth 69.1 in ÷ 3.14: 22 in across.",
	} {
		if r, e := answer(t, d, q); r.Status() != bot.Answered || !strings.Contains(r.Text(), said) {
			t.Errorf("%q: %s", q, r.Text())
		} else if one, want := answer(t, d, "pin oak log 22 in across, 8 ft long"); math.Abs(e.PlanKg/want.PlanKg-1) > 0.01 {
			t.Errorf("%q: %g kg, and %g kg by the thickness: %s", q, e.PlanKg, want.PlanKg, one.Text())
		}
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

// A word that is not known where the tree stands can be planned as any
// hardwood or softwood, which is what a tap on it gives; a word that stands
// elsewhere, or says how the log is, cannot.
func TestAnUnknownTreeIsPlannedAsAny(t *testing.T) {
	d := newDesk(t)
	for asked, plain := range map[string][2]string{
		"blorf log 14 in 8 ft":                       {"hardwood log 14 in 8 ft", "softwood log 14 in 8 ft"},
		"14 in blorf limb 22 ft, hitched at 35 ft":   {"14 in hardwood limb 22 ft, hitched at 35 ft", "14 in softwood limb 22 ft, hitched at 35 ft"},
		"log blorf 14 in":                            {"log hardwood 14 in", "log softwood 14 in"},
		"tronco de blorf de 40 cm de diámetro y 2 m": {"tronco de madera dura de 40 cm de diámetro y 2 m", "tronco de conífera de 40 cm de diámetro y 2 m"},
	} {
		r, _ := answer(t, d, asked)
		if r.Status() != bot.Needs || len(r.Choices()) != 3 {
			t.Errorf("%q: %s\n%s", asked, r.Status(), r.Text())
			continue
		}
		for i, want := range plain {
			tapped, _ := answer(t, d, r.Choices()[i+1].Message)
			if whole, _ := answer(t, d, want); tapped.Text() != whole.Text() {
				t.Errorf("%q: choice %d gives\n%s\nnot\n%s", asked, i+2, tapped.Text(), whole.Text())
			}
		}
	}
	for _, other := range []string{
		"red oak blorf log 14 in 8 ft", "the log is blorf, 14 in 8 ft", "blorf zork log 14 in 8 ft", "log 14 in 9 blorfs",
		"blorf limb good as an anchor, 8 in, 2 ft out", "400 lb blorf log on 3 wraps",
	} {
		r, _ := answer(t, d, other)
		for _, c := range r.Choices() {
			if strings.Contains(c.Message, "hardwood") || strings.Contains(c.Label, "hardwood") {
				t.Errorf("%q: %s", other, r.Text())
			}
		}
	}
}

// A tree of which it is asked which one it is may be dead all the same: what dead wood does
// is said with the choice.
func TestWhichTreeSaysDead(t *testing.T) {
	d := newDesk(t)
	for q, said := range map[string]string{
		"dead maple limb 12 in 15 ft":       "Dead wood breaks without warning",
		"rama de fresno seca de 30 cm, 4 m": "La madera muerta",
	} {
		if r, _ := answer(t, d, q); r.Status() != bot.Needs || len(r.Choices()) < 2 || !strings.Contains(r.Text(), said) {
			t.Errorf("%q: %s", q, r.Text())
		}
	}
	if r, _ := answer(t, d, "maple limb 12 in 15 ft"); strings.Contains(r.Text(), "Dead wood") {
		t.Errorf("%s", r.Text())
	}
}
