package swing_test

import (
	"math"
	"testing"

	"heft/calc/swing"
	"heft/calc/unit"
)

// swept follows a rod that hangs plumb as it is cut free, for one pass, and
// returns how near any of it comes to what is solid from the distance outward
// and from the ground to the top; nought where it strikes. Heights are below
// the block.
func swept(r rod, start, distance, below float64) float64 {
	s := state{start, 0}
	nearest := math.Inf(1)
	const steps = 4000
	h := 0.8 * 2 * math.Pi * math.Sqrt((r.line+r.length)/gravity) / steps
	for i := range steps {
		for part := 0.0; part <= 1; part += 0.125 {
			out := -r.line*math.Sin(s[0]) - part*r.length*math.Sin(s[1])
			down := r.line*math.Cos(s[0]) + part*r.length*math.Cos(s[1])
			nearest = min(nearest, math.Hypot(max(0, distance-out), max(0, below-down)))
		}
		s = step(s, h, r.rates)
		if i > steps/10 && s[2] > 0 {
			break
		}
	}
	return nearest
}

// TestNothingSweptComesNearerThanTheGap integrates the motion of rods, among
// them short ones that are as good as points, past walls and roofs.
func TestNothingSweptComesNearerThanTheGap(t *testing.T) {
	const line, block = 5.0, 20.0
	cleared, struck := 0, 0
	for _, length := range []float64{0.05, 1, 2.5, 5} {
		for _, start := range []float64{15, 30, 50, 70} {
			for _, distance := range []float64{1, 2.5, 4, 6, 9} {
				for _, below := range []float64{0.5, 3, 5, 7, 11} {
					w, err := swing.Plan(swing.Setup{Heavy: 100, Line: line, Hung: unit.Length(length), Hitch: block, Start: degrees(start),
						Obstacle: &swing.Obstacle{Distance: unit.Length(distance), Top: unit.Length(block - below)}})
					if err != nil {
						t.Fatal(err)
					}
					nearest, gap := swept(rod{line, length}, start*math.Pi/180, distance, below), float64(*w.Gap)
					if nearest < gap-1e-3 {
						t.Errorf("rod %v m from %v°, wall %v m out, %v m below the block: comes within %v m, gap %v m", length, start, distance, below, nearest, gap)
					}
					// A point that strikes is told so.
					if length == 0.05 && nearest == 0 && gap > 1e-3 {
						t.Errorf("%v° at %v m out, %v m below: strikes, gap %v m", start, distance, below, gap)
					}
					if nearest == 0 {
						struck++
					} else if gap > 0 {
						cleared++
					}
				}
			}
		}
	}
	if struck < 20 || cleared < 20 {
		t.Errorf("%d strike and %d clear: no test", struck, cleared)
	}
}

// TestFastestIsTheIntegratedSpeed compares with the motion integrated: 15 ft of
// line, 8 ft to the side.
func TestFastestIsTheIntegratedSpeed(t *testing.T) {
	line := 15 * unit.Foot
	start, err := swing.Start(8*unit.Foot, line)
	if err != nil {
		t.Fatal(err)
	}
	v, err := swing.Fastest(line, start)
	if err != nil {
		t.Fatal(err)
	}
	fastest := 0.0
	point{float64(line)}.pass(float64(start), func(_, _, speed float64) { fastest = max(fastest, math.Abs(speed)) })
	if math.Abs(fastest/float64(v)-1) > 1e-5 {
		t.Errorf("%v m/s, integrated %v", v, fastest)
	}
}
