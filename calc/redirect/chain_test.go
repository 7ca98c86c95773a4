package redirect_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/block"
	"heft/calc/redirect"
	"heft/calc/tackle"
	"heft/calc/unit"
)

func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

// to is a direction in degrees; the sides are 0 and 180.
func to(fromDown, toward float64) redirect.Direction {
	return redirect.Direction{FromDown: degrees(fromDown), Toward: degrees(toward)}
}

// hung is a load on a rope led over blocks without friction.
func hung(tension unit.Force, legs ...redirect.Direction) redirect.Chain {
	c := redirect.Chain{Tension: tension}
	for _, d := range legs {
		c.Blocks = append(c.Blocks, redirect.Block{To: d, Sheave: tackle.Sheave{Efficiency: 0.9}})
	}
	return c
}

type fataler interface {
	Helper()
	Fatal(...any)
}

func loads(t fataler, c redirect.Chain) []redirect.Load {
	t.Helper()
	l, err := redirect.Loads(c)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func TestPrintedBlockTable(t *testing.T) {
	// Two printed block-load tables: the angle between the legs and the load
	// over the line pull; the turn is what is left to half a turn. 40, 45 and
	// 135 degrees are truncated there.
	for between, want := range map[float64]float64{
		0: 2.00, 10: 1.99, 20: 1.97, 30: 1.93, 40: 1.87, 45: 1.84, 50: 1.81, 60: 1.73, 70: 1.64, 80: 1.53,
		90: 1.41, 100: 1.29, 110: 1.15, 120: 1.00, 130: 0.84, 135: 0.76, 140: 0.68, 150: 0.52, 160: 0.35,
		170: 0.17, 180: 0,
	} {
		l := loads(t, hung(1, to(between, 0)))[0]
		if math.Abs(float64(l.Force)-want) > 0.011 || math.Abs(l.Turn.Degrees()-(180-between)) > 1e-6 {
			t.Errorf("%v degrees between: %+v, want %v", between, l, want)
		}
	}
}

func TestTwoRedirectsByHand(t *testing.T) {
	// A load of 1000 N hangs plumb; the rope goes level over to a second
	// block, and down to the drum: each turns it by a right angle and carries
	// 1000·√2 N, the first down and toward the second, the second down and
	// back.
	l := loads(t, hung(1000, to(90, 0), to(0, 0)))
	for i, want := range []redirect.Load{
		{Force: 1414.2, Direction: to(45, 0), Turn: degrees(90), In: 1000, Out: 1000},
		{Force: 1414.2, Direction: to(45, 180), Turn: degrees(90), In: 1000, Out: 1000},
	} {
		same(t, l[i], want)
	}
	// Turned back, a rope loads the block by twice its pull; turned by five
	// degrees, by 2·sin 2.5° = 0.0872 of it; straight on, not at all.
	l = loads(t, hung(1000, to(0, 0), to(5, 0), to(5, 0)))
	if l[0].Force != 2000 || l[0].Direction != (redirect.Direction{}) {
		t.Errorf("turned back: %+v", l[0])
	}
	if math.Abs(float64(l[1].Force)-87.24) > 0.01 || math.Abs(l[1].Turn.Degrees()-5) > 1e-9 {
		t.Errorf("hardly turned: %+v", l[1])
	}
	if l[2].Force != 0 || l[2].Turn > 1e-9 {
		t.Errorf("straight on: %+v", l[2])
	}
}

func same(t *testing.T, got, want redirect.Load) {
	t.Helper()
	if math.Abs(float64(got.Force-want.Force)) > 0.05 || math.Abs(float64(got.Turn-want.Turn)) > 1e-9 ||
		math.Abs(float64(got.In-want.In)) > 0.05 || math.Abs(float64(got.Out-want.Out)) > 0.05 ||
		math.Abs(float64(got.Direction.FromDown-want.Direction.FromDown)) > 1e-9 ||
		math.Abs(float64(got.Direction.Toward-want.Direction.Toward)) > 1e-9 {
		t.Errorf("got %+v, want %+v", got, want)
	}
}

func TestFrictionInTheBlock(t *testing.T) {
	// Capstan and statics worked through: 100, μ 0.2, half a turn, make 153
	// on the way down and 287 on the way up.
	c := hung(100, to(0, 0))
	c.Blocks[0].Sheave = tackle.Sheave{Efficiency: math.Exp(-0.2 * math.Pi), Slides: true}
	for motion, want := range map[redirect.Motion]float64{redirect.Lowering: 153, redirect.Raising: 287, redirect.Still: 200} {
		c.Motion = motion
		if l := loads(t, c)[0]; math.Abs(float64(l.Force)-want) > 1 {
			t.Errorf("motion %v: %+v, want %v", motion, l, want)
		}
	}
}

func TestFrictionAddsUpAlongTheRope(t *testing.T) {
	// Down, up and down again, three half turns that keep 0.9 each: by hand
	// 1000/0.9 = 1111.1, 1234.6 and 1371.7 N on the way up, 900, 810 and 729
	// on the way down.
	c := hung(1000, to(0, 0), to(180, 0), to(0, 0))
	for motion, pulls := range map[redirect.Motion][]float64{
		redirect.Raising:  {1000, 1111.1, 1234.6, 1371.7},
		redirect.Lowering: {1000, 900, 810, 729},
		redirect.Still:    {1000, 1000, 1000, 1000},
	} {
		c.Motion = motion
		for i, l := range loads(t, c) {
			if math.Abs(float64(l.In)-pulls[i]) > 0.05 || math.Abs(float64(l.Out)-pulls[i+1]) > 0.05 ||
				math.Abs(float64(l.Force)-pulls[i]-pulls[i+1]) > 0.1 {
				t.Errorf("motion %v, block %d: %+v", motion, i, l)
			}
		}
	}
}

// drawChain draws a load led over one to four blocks, anywhere about.
func drawChain(t *rapid.T) redirect.Chain {
	any := func() redirect.Direction {
		return to(rapid.Float64Range(0, 180).Draw(t, "from down"), rapid.Float64Range(-180, 180).Draw(t, "toward"))
	}
	c := redirect.Chain{Tension: unit.Force(rapid.Float64Range(1, 20000).Draw(t, "tension")), From: any(),
		Motion: redirect.Motion(rapid.IntRange(0, 2).Draw(t, "motion"))}
	for range rapid.IntRange(1, 4).Draw(t, "blocks") {
		c.Blocks = append(c.Blocks, redirect.Block{To: any(), Sheave: tackle.Sheave{
			Efficiency: rapid.Float64Range(0.3, 1).Draw(t, "efficiency"), Slides: rapid.Bool().Draw(t, "slides")}})
	}
	return c
}

// point is a place in space, x toward side 0 and z up.
type point [3]float64

func along(d redirect.Direction, far float64) point {
	down, side := float64(d.FromDown), float64(d.Toward)
	return point{far * math.Sin(down) * math.Cos(side), far * math.Sin(down) * math.Sin(side), -far * math.Cos(down)}
}

func apart(a, b point) float64 {
	return math.Sqrt((a[0]-b[0])*(a[0]-b[0]) + (a[1]-b[1])*(a[1]-b[1]) + (a[2]-b[2])*(a[2]-b[2]))
}

func TestLoadIsTheWorkOfTheRope(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawChain(t)
		back := c.From
		for i, l := range loads(t, c) {
			// A block that gives way by a little draws in rope on either leg: the
			// load along each axis is pull times rope, by virtual work.
			before, after := along(back, 10), along(c.Blocks[i].To, 10)
			work := func(p point) float64 {
				return float64(l.In)*apart(p, before) + float64(l.Out)*apart(p, after)
			}
			const step = 1e-4
			got := along(l.Direction, float64(l.Force))
			for axis := range 3 {
				var plus, minus point
				plus[axis], minus[axis] = step, -step
				want := (work(minus) - work(plus)) / (2 * step)
				if math.Abs(got[axis]-want) > 1e-6*float64(l.In+l.Out) {
					t.Fatalf("block %d, axis %d: %v N, by virtual work %v", i, axis, got[axis], want)
				}
			}
			back = redirect.Direction{FromDown: math.Pi - c.Blocks[i].To.FromDown, Toward: c.Blocks[i].To.Toward + math.Pi}
		}
	})
}

func TestAgreesWithASingleBlock(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawChain(t)
		for i, l := range loads(t, c) {
			e, errAt := c.Blocks[i].Sheave.At(l.Turn)
			legs := unit.Angle(math.Pi) - l.Turn
			var want unit.Force
			var err error
			switch c.Motion {
			case redirect.Still:
				want, err = block.Load(l.In, legs)
			case redirect.Raising:
				want, err = block.Raising(l.In, max(0.3, e), legs)
			case redirect.Lowering:
				want, err = block.Lowering(l.In, max(0.3, e), legs)
			}
			if err := errors.Join(errAt, err); err != nil || math.Abs(float64(l.Force-want)) > 1e-7*float64(l.In+l.Out) {
				t.Fatalf("block %d: %+v, by itself %v, %v", i, l, want, err)
			}
		}
	})
}

func TestMoreTurnNeverLoadsABlockLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawChain(t)
		c.From, c.Motion = to(0, 0), redirect.Still
		c.Blocks = c.Blocks[:1]
		wide := rapid.Float64Range(0, 180).Draw(t, "wide")
		narrow := rapid.Float64Range(0, wide).Draw(t, "narrow")
		c.Blocks[0].To = to(wide, 0)
		little := loads(t, c)[0]
		c.Blocks[0].To = to(narrow, 0)
		if much := loads(t, c)[0]; much.Force < little.Force*(1-1e-9) || much.Turn < little.Turn-1e-9 || much.Force > 2*c.Tension*(1+1e-12) {
			t.Fatalf("%+v turned less, %+v turned more", little, much)
		}
	})
}

func TestFrictionNeverMakesTheHandsPullLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawChain(t)
		hands := func(m redirect.Motion) unit.Force {
			c.Motion = m
			l := loads(t, c)
			return l[len(l)-1].Out
		}
		if up, still, down := hands(redirect.Raising), hands(redirect.Still), hands(redirect.Lowering); up < still || still < down {
			t.Fatalf("up %v, still %v, down %v N", up, still, down)
		}
	})
}

func BenchmarkLoads(b *testing.B) {
	c := hung(1000, to(80, 0), to(10, 0), to(90, 180))
	c.Motion = redirect.Raising
	b.ReportAllocs()
	for b.Loop() {
		if _, err := redirect.Loads(c); err != nil {
			b.Fatal(err)
		}
	}
}
