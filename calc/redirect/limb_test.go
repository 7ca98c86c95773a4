package redirect_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/limits"
	"heft/calc/redirect"
	"heft/calc/tackle"
	"heft/calc/unit"
)

func onLimb(t fataler, l redirect.Load, limb redirect.Direction) redirect.OnLimb {
	t.Helper()
	o, err := l.On(limb)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

func TestLoadOnALimb(t *testing.T) {
	// A load hangs plumb and the rope goes on to the drum at the foot: 2000 N
	// straight down on the limb.
	l := loads(t, hung(1000, to(0, 0)))[0]
	for name, test := range map[string]struct {
		limb          redirect.Direction
		along, across float64
		pushes        bool
	}{
		"level":         {to(90, 0), 0, 2000, false},
		"upright":       {to(180, 0), -2000, 0, true},
		"hanging":       {to(0, 0), 2000, 0, false},
		"30 off plumb":  {to(150, 0), -2000 * math.Cos(math.Pi/6), 1000, true},
		"60 off plumb":  {to(120, 180), -1000, 2000 * math.Sin(math.Pi/3), false},
		"drooping limb": {to(45, 90), 2000 * math.Sqrt(0.5), 2000 * math.Sqrt(0.5), false},
	} {
		o := onLimb(t, l, test.limb)
		if math.Abs(float64(o.Along)-test.along) > 1e-6 || math.Abs(float64(o.Across)-test.across) > 1e-6 || o.Pushes() != test.pushes {
			t.Errorf("%s: %+v, pushes %v", name, o, o.Pushes())
		}
	}
	// Led out over the tip and down, the rope pulls a level limb outward and
	// down; back to the trunk, it pushes it in.
	out := loads(t, hung(1000, to(90, 0)))[0]
	if o := onLimb(t, out, to(90, 0)); math.Abs(float64(o.Along)-1000) > 1e-6 || math.Abs(float64(o.Across)-1000) > 1e-6 {
		t.Errorf("led outward: %+v", o)
	}
	if o := onLimb(t, out, to(90, 180)); math.Abs(float64(o.Along)+1000) > 1e-6 {
		t.Errorf("led inward: %+v", o)
	}
}

func TestAlongAndAcrossMakeTheLoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawChain(t)
		limb := to(rapid.Float64Range(0, 180).Draw(t, "limb"), rapid.Float64Range(-180, 180).Draw(t, "side"))
		for _, l := range loads(t, c) {
			o := onLimb(t, l, limb)
			if math.Abs(math.Hypot(float64(o.Along), float64(o.Across))-float64(l.Force)) > 1e-9*float64(l.Force) || o.Across < 0 {
				t.Fatalf("%+v of %+v", o, l)
			}
			// Independent: what the limb's tip gains by a step along the load.
			v, u := along(l.Direction, float64(l.Force)), along(limb, 1)
			if dot := v[0]*u[0] + v[1]*u[1] + v[2]*u[2]; math.Abs(dot-float64(o.Along)) > 1e-9*float64(l.In+l.Out) {
				t.Fatalf("along %v, by components %v", o.Along, dot)
			}
		}
	})
}

func TestRefusals(t *testing.T) {
	nan := math.NaN()
	refused := func(change func(*redirect.Chain)) error {
		c := hung(1000, to(90, 0), to(0, 0))
		c.Motion = redirect.Raising
		change(&c)
		l, err := redirect.Loads(c)
		if err != nil && l != nil {
			t.Errorf("figures beside a refusal: %+v", l)
		}
		return err
	}
	on := func(limb redirect.Direction) error {
		_, err := redirect.Load{Force: 1000}.On(limb)
		return err
	}
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"a rope that pushes":   {refused(func(c *redirect.Chain) { c.Tension = -1 }), limits.Tension},
		"no number, tension":   {refused(func(c *redirect.Chain) { c.Tension = unit.Force(nan) }), limits.Tension},
		"no end of tension":    {refused(func(c *redirect.Chain) { c.Tension = unit.Force(math.Inf(1)) }), limits.Tension},
		"no block":             {refused(func(c *redirect.Chain) { c.Blocks = nil }), limits.Redirects},
		"nine blocks":          {refused(func(c *redirect.Chain) { c.Blocks = make([]redirect.Block, 9) }), limits.Redirects},
		"past straight up":     {refused(func(c *redirect.Chain) { c.Blocks[1].To = to(181, 0) }), limits.Angle},
		"no number, leg":       {refused(func(c *redirect.Chain) { c.Blocks[0].To = to(nan, 0) }), limits.Angle},
		"no number, side":      {refused(func(c *redirect.Chain) { c.Blocks[0].To = to(10, nan) }), limits.Side},
		"twice round":          {refused(func(c *redirect.Chain) { c.Blocks[0].To = to(10, 400) }), limits.Side},
		"no number, first leg": {refused(func(c *redirect.Chain) { c.From = to(nan, 0) }), limits.Angle},
		"a block that gives":   {refused(func(c *redirect.Chain) { c.Blocks[1].Sheave.Efficiency = 1.2 }), limits.Efficiency},
		"a block unsaid":       {refused(func(c *redirect.Chain) { c.Blocks[1].Sheave = tackle.Sheave{} }), limits.Efficiency},
		"a limb past up":       {on(to(200, 0)), limits.Angle},
		"no number, limb":      {on(to(nan, 0)), limits.Angle},
		"no number, its side":  {on(to(90, nan)), limits.Side},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range redirect.Domains() {
		c, beyond := hung(1000, to(90, 0)), d.High*1.5
		c.Motion = redirect.Lowering
		switch d.Quantity {
		case limits.Tension:
			c.Tension = unit.Force(beyond)
		case limits.Redirects:
			c.Blocks = make([]redirect.Block, int(beyond))
		case limits.Angle:
			c.Blocks[0].To.FromDown = degrees(beyond)
		case limits.Side:
			c.Blocks[0].To.Toward = degrees(beyond)
		case limits.Efficiency:
			c.Blocks[0].Sheave.Efficiency = beyond
		}
		_, err := redirect.Loads(c)
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}
