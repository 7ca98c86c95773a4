package piece_test

import (
	"math"
	"os"
	"slices"
	"testing"

	"heft/calc/piece"
	"heft/calc/published"
	"heft/calc/unit"
)

func TestWeighedBranches(t *testing.T) {
	// Twenty branches weighed whole, against a limb of wood and brush at
	// 1000 kg/m³ of the base cylinder, as the ratios were published.
	_, rows := published.Table(t, os.DirFS("testdata"), "weighed_branches.csv")
	inside, aboveLikely := 0, 0
	for _, row := range rows {
		base, length := unit.Length(published.Number(t, row[1]))*unit.Centimetre, unit.Length(published.Number(t, row[2]))
		weighed := unit.Mass(published.Number(t, row[3]) / 1000)
		w := weigh(t, limb(water, base, length))
		if w.Low <= weighed && weighed <= w.High {
			inside++
		}
		if weighed > w.Likely {
			aboveLikely++
		}
		if weighed > w.High {
			t.Errorf("%s: weighed %.3f kg, heavy end %.3f", row[0], float64(weighed), float64(w.High))
		}
	}
	if len(rows) != 20 || inside < 18 {
		t.Errorf("%d branches of %d lie inside the range, want at least 18 of 20", inside, len(rows))
	}
	// The likely weight is neither a floor nor a ceiling.
	if aboveLikely < 5 || aboveLikely > 15 {
		t.Errorf("%d branches of %d are heavier than likely", aboveLikely, len(rows))
	}
}

func TestLimbForm(t *testing.T) {
	const butt, length = 0.3556, 6.7056 // 14 in by 22 ft
	red := find(t, "Quercus rubra")
	full := float64(red.Green()) * math.Pi / 4 * butt * butt * length
	w := weigh(t, limb(red, butt, length))
	// The machine-readable contract: the heavy end is at least the full
	// cylinder, the likely lies between the cone and the cylinder.
	if float64(w.High) < full {
		t.Errorf("heavy end %.0f kg, the full cylinder has %.0f", float64(w.High), full)
	}
	if likely := float64(w.Likely); likely <= full/3 || likely >= full {
		t.Errorf("likely %.0f kg, the cone has %.0f and the cylinder %.0f", likely, full/3, full)
	}
	if w.Method != piece.ByLimbForm || !slices.Contains(w.Spread, piece.LimbForm) {
		t.Errorf("method %s, spread %v", w.Method, w.Spread)
	}
	// A limb's one diameter is at the cut, under whichever name it comes.
	if same := weigh(t, sizes(piece.Limb, red, butt, 0, 0, 0, length)); same.High != w.High || same.Low != w.Low {
		t.Errorf("as a diameter %v, as a butt %v", same, w)
	}
}

func TestMeasuredLimbCarriesBrush(t *testing.T) {
	// Brush of 10 % likely and 30 % at most on the stem (common practice,
	// no source); the light end has none.
	stem := weigh(t, sizes(piece.Log, water, 0, 0.30, 0, 0.10, 5))
	withBrush := weigh(t, sizes(piece.Limb, water, 0, 0.30, 0, 0.10, 5))
	for name, got := range map[string][2]float64{
		"low":    {float64(withBrush.Low / stem.Low), 1},
		"likely": {float64(withBrush.Likely / stem.Likely), 1.1},
		"high":   {float64(withBrush.High / stem.High), 1.3},
	} {
		if math.Abs(got[0]-got[1]) > 1e-9 {
			t.Errorf("%s: %v of the stem, want %v", name, got[0], got[1])
		}
	}
	if withBrush.Method != piece.ByFrustum || !slices.Contains(withBrush.Spread, piece.Brush) {
		t.Errorf("method %s, spread %v", withBrush.Method, withBrush.Spread)
	}
}

func TestShapeUnsaidCoversLogAndLimb(t *testing.T) {
	red := find(t, "Quercus rubra")
	for name, s := range map[string][5]unit.Length{
		"one diameter":    {0.3556, 0, 0, 0, 6.7},
		"butt alone":      {0, 0.3556, 0, 0, 6.7},
		"butt and tip":    {0, 0.3556, 0, 0.1, 6.7},
		"three diameters": {0, 0.3556, 0.2, 0.1, 6.7},
	} {
		weighAs := func(shape piece.Shape) piece.Weight {
			return weigh(t, sizes(shape, red, s[0], s[1], s[2], s[3], s[4]))
		}
		unsaid, asLog, asLimb := weighAs(piece.Unsaid), weighAs(piece.Log), weighAs(piece.Limb)
		near := func(got, want unit.Mass) bool { return math.Abs(float64(got/want)-1) < 1e-9 }
		if !near(unsaid.Low, min(asLog.Low, asLimb.Low)) || !near(unsaid.Likely, asLog.Likely) || !near(unsaid.High, max(asLog.High, asLimb.High)) {
			t.Errorf("%s: unsaid %v, log %v, limb %v", name, unsaid, asLog, asLimb)
		}
		if !slices.Contains(unsaid.Spread, piece.ShapeUnsaid) {
			t.Errorf("%s: spread %v", name, unsaid.Spread)
		}
	}
	// A chunk too short for a limb can only be a log.
	chunk, asLog := weigh(t, sizes(piece.Unsaid, red, 0.6, 0, 0, 0, 0.5)), weigh(t, log(red, 0.6, 0.5))
	if chunk.Low != asLog.Low || slices.Contains(chunk.Spread, piece.ShapeUnsaid) {
		t.Errorf("chunk %v, log %v", chunk, asLog)
	}
}
