package swing_test

import (
	"errors"
	"math"
	"testing"

	"heft/calc/limits"
	"heft/calc/swing"
	"heft/calc/unit"
)

// changed plans the usual setup, an obstacle in it, with a change.
func changed(change func(*swing.Setup)) error {
	s := usual()
	s.Obstacle = &swing.Obstacle{Distance: 3, Top: 4}
	change(&s)
	_, err := swing.Plan(s)
	return err
}

func TestOutOfRange(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	at := func(angle float64) error { _, err := swing.At(10, degrees(30), degrees(angle)); return err }
	fastest := func(line, start float64) error {
		_, err := swing.Fastest(unit.Length(line), degrees(start))
		return err
	}
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"no weight":             {changed(func(s *swing.Setup) { s.Heavy = 0 }), limits.Weight},
		"no number, weight":     {changed(func(s *swing.Setup) { s.Heavy = unit.Mass(nan) }), limits.Weight},
		"too heavy":             {changed(func(s *swing.Setup) { s.Heavy = 3001 }), limits.Weight},
		"above the block":       {changed(func(s *swing.Setup) { s.Start = degrees(91) }), limits.Angle},
		"the other way":         {changed(func(s *swing.Setup) { s.Start = degrees(-5) }), limits.Angle},
		"no number, angle":      {changed(func(s *swing.Setup) { s.Start = unit.Angle(nan) }), limits.Angle},
		"legs turned over":      {changed(func(s *swing.Setup) { s.Between = degrees(190) }), limits.Angle},
		"no line":               {changed(func(s *swing.Setup) { s.Line = 0 }), limits.LineLength},
		"no end of line":        {changed(func(s *swing.Setup) { s.Line = unit.Length(inf) }), limits.LineLength},
		"a piece upside down":   {changed(func(s *swing.Setup) { s.Hung = -1 }), limits.Length},
		"no number, piece":      {changed(func(s *swing.Setup) { s.Hung = unit.Length(nan) }), limits.Length},
		"a block underground":   {changed(func(s *swing.Setup) { s.Hitch = -3 }), limits.HitchHeight},
		"a block in the clouds": {changed(func(s *swing.Setup) { s.Hitch = 61 }), limits.HitchHeight},
		"no number, block":      {changed(func(s *swing.Setup) { s.Hitch = unit.Length(nan) }), limits.HitchHeight},
		"an obstacle behind":    {changed(func(s *swing.Setup) { s.Obstacle.Distance = -1 }), limits.Obstacle},
		"no number, obstacle":   {changed(func(s *swing.Setup) { s.Obstacle.Distance = unit.Length(nan) }), limits.Obstacle},
		"a sunken obstacle":     {changed(func(s *swing.Setup) { s.Obstacle.Top = -1 }), limits.ObstacleTop},
		"no end of obstacle":    {changed(func(s *swing.Setup) { s.Obstacle.Top = unit.Length(inf) }), limits.ObstacleTop},
		"no number, on the way": {at(nan), limits.Angle},
		"no speed, no line":     {fastest(0, 30), limits.LineLength},
		"no speed, no angle":    {fastest(5, nan), limits.Angle},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
}

func TestImpossible(t *testing.T) {
	ground := usual()
	ground.Hitch = 7.9
	long := usual()
	long.Line, long.Hung = 0.9, 2
	_, pastStart := swing.At(10, degrees(30), degrees(-31))
	_, errGround := swing.Plan(ground)
	_, errLong := swing.Plan(long)
	for name, test := range map[string]struct {
		err           error
		first, second limits.Quantity
	}{
		"into the ground":      {errGround, limits.LineLength, limits.HitchHeight},
		"a piece that tumbles": {errLong, limits.Length, limits.LineLength},
		"past its start":       {pastStart, limits.Angle, limits.Angle},
	} {
		c, ok := errors.AsType[*limits.Contradiction](test.err)
		if !ok || c.First != test.first || c.Second != test.second || c.Why == "" {
			t.Errorf("%s: got %v", name, test.err)
		}
	}
	unsaid := usual()
	unsaid.Hitch, unsaid.Obstacle = 0, &swing.Obstacle{Distance: 3, Top: 4}
	if w, err := swing.Plan(unsaid); err != nil || w.Gap == nil || w.Lowest != nil {
		t.Errorf("an obstacle past a block of no height: %+v, %v", w, err)
	} else if !near(float64(*w.Gap), 3-(6*0.5+2)) {
		t.Errorf("it is %v near, not as tall as the block", *w.Gap)
	}
	// Line and piece of 26 ft 3 in together just touch the ground.
	touch := usual()
	touch.Line, touch.Hung, touch.Hitch = 20*unit.Foot, 75*unit.Inch, 26.25*unit.Foot
	if w, err := swing.Plan(touch); err != nil || *w.Lowest < 0 || *w.Lowest > 1e-9 {
		t.Errorf("%+v, %v", w.Lowest, err)
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range swing.Domains() {
		s := usual()
		s.Obstacle = &swing.Obstacle{Distance: 3, Top: 4}
		beyond := unit.Length(d.High * 1.01)
		switch d.Quantity {
		case limits.Angle:
			s.Start = degrees(float64(beyond))
		case limits.LineLength:
			s.Line = beyond
		case limits.Length:
			s.Hung = beyond
		case limits.Obstacle:
			s.Obstacle.Distance = beyond
		case limits.ObstacleTop:
			s.Obstacle.Top = beyond
		}
		_, err := swing.Plan(s)
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}
