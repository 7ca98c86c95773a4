package hinge_test

import (
	"errors"
	"math"
	"testing"

	"heft/calc/hinge"
	"heft/calc/limits"
	"heft/calc/unit"
)

func TestRefusals(t *testing.T) {
	refused := func(change func(*hinge.Setup)) error {
		s := leaning()
		change(&s)
		r, err := hinge.Raise(s)
		if err != nil && r != (hinge.Raising{}) {
			t.Errorf("figures beside a refusal: %+v", r)
		}
		return err
	}
	nan := math.NaN()
	length := unit.Length(nan)
	at := func(d float64) error { _, err := leaning().Force(degrees(d)); return err }
	notch := func(from, to float64) error { _, err := hinge.Notch(degrees(from), degrees(to)); return err }
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"no weight":             {refused(func(s *hinge.Setup) { s.Weight = 0 }), limits.Weight},
		"no number, weight":     {refused(func(s *hinge.Setup) { s.Weight = unit.Mass(nan) }), limits.Weight},
		"balance unsaid":        {refused(func(s *hinge.Setup) { s.Balance = 0 }), limits.BalancePoint},
		"no number, balance":    {refused(func(s *hinge.Setup) { s.Balance = length }), limits.BalancePoint},
		"tie unsaid":            {refused(func(s *hinge.Setup) { s.Tie = 0 }), limits.Tie},
		"a tie behind":          {refused(func(s *hinge.Setup) { s.Tie = -1 }), limits.Tie},
		"no number, tie":        {refused(func(s *hinge.Setup) { s.Tie = length }), limits.Tie},
		"height unsaid":         {refused(func(s *hinge.Setup) { s.Height = 0 }), limits.BlockHeight},
		"no end of height":      {refused(func(s *hinge.Setup) { s.Height = unit.Length(math.Inf(1)) }), limits.BlockHeight},
		"block out over it":     {refused(func(s *hinge.Setup) { s.Offset = -0.5 }), limits.Offset},
		"no number, offset":     {refused(func(s *hinge.Setup) { s.Offset = length }), limits.Offset},
		"a minus of length":     {refused(func(s *hinge.Setup) { s.Length = -1 }), limits.Length},
		"no number, length":     {refused(func(s *hinge.Setup) { s.Length = length }), limits.Length},
		"hanging down":          {refused(func(s *hinge.Setup) { s.Angle = degrees(-60) }), limits.LimbAngle},
		"up already":            {refused(func(s *hinge.Setup) { s.Angle = degrees(90) }), limits.LimbAngle},
		"no number, angle":      {refused(func(s *hinge.Setup) { s.Angle = unit.Angle(nan) }), limits.LimbAngle},
		"no parts":              {refused(func(s *hinge.Setup) { s.Parts = 0 }), limits.Parts},
		"efficiency unsaid":     {refused(func(s *hinge.Setup) { s.Efficiency = 0 }), limits.Efficiency},
		"pull unsaid":           {refused(func(s *hinge.Setup) { s.PerPerson = 0 }), limits.PersonPull},
		"hitch in the clouds":   {refused(func(s *hinge.Setup) { s.Hitch = 100 }), limits.HitchHeight},
		"hitch not a number":    {refused(func(s *hinge.Setup) { s.Hitch = length }), limits.HitchHeight},
		"a line past any rope":  {refused(func(s *hinge.Setup) { s.Weight, s.Tie, s.Balance, s.Length = 10000, 0.05, 6, 0 }), limits.Tension},
		"force before now":      {at(20), limits.LimbAngle},
		"force past upright":    {at(91), limits.LimbAngle},
		"no number, force":      {at(nan), limits.LimbAngle},
		"notch past upright":    {notch(30, 100), limits.Angle},
		"notch, no number":      {notch(nan, 90), limits.Angle},
		"notch to no number":    {notch(30, nan), limits.Angle},
		"notch from underneath": {notch(-100, 90), limits.Angle},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
	for name, test := range map[string]struct {
		err           error
		first, second limits.Quantity
	}{
		"a tie past the tip":     {refused(func(s *hinge.Setup) { s.Tie = 7.1 }), limits.Tie, limits.Length},
		"a balance past the tip": {refused(func(s *hinge.Setup) { s.Balance = 7.1 }), limits.BalancePoint, limits.Length},
		"a cut underground":      {refused(func(s *hinge.Setup) { s.Hitch = 5 }), limits.BlockHeight, limits.HitchHeight},
		// A limb 45 degrees down, carried back 8 m, is 8 m up: above the block.
		"a block below the limb": {refused(func(s *hinge.Setup) { s.Angle, s.Offset = degrees(-45), 8 }), limits.BlockHeight, limits.Offset},
	} {
		c, ok := errors.AsType[*limits.Contradiction](test.err)
		if !ok || c.First != test.first || c.Second != test.second || c.Why == "" {
			t.Errorf("%s: got %v, want %s against %s", name, test.err, test.first, test.second)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range hinge.Domains() {
		s, beyond := leaning(), d.High*1.5
		s.Length = 0
		var err error
		switch d.Quantity {
		case limits.Weight:
			s.Weight = unit.Mass(beyond)
		case limits.BalancePoint:
			s.Balance = unit.Length(beyond)
		case limits.Length:
			s.Length = unit.Length(beyond)
		case limits.LimbAngle:
			s.Angle = degrees(beyond)
		case limits.Tie:
			s.Tie = unit.Length(beyond)
		case limits.BlockHeight:
			s.Height = unit.Length(beyond)
		case limits.Offset:
			s.Offset = unit.Length(beyond)
		}
		if d.Quantity == limits.Angle {
			_, err = hinge.Notch(0, degrees(beyond))
		} else {
			_, err = hinge.Raise(s)
		}
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}
