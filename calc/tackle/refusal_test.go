package tackle_test

import (
	"errors"
	"math"
	"testing"

	"heft/calc/limits"
	"heft/calc/tackle"
	"heft/calc/unit"
)

func TestRefusals(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	refused := func(change func(*tackle.Lift)) error {
		l := lift(100, 2, 2)
		change(&l)
		r, err := tackle.Plan(l)
		if err != nil && r != (tackle.Result{}) {
			t.Errorf("figures beside a refusal: %+v", r)
		}
		return err
	}
	over := func(e, turn float64) func(*tackle.Lift) {
		return func(l *tackle.Lift) {
			l.Redirects = []tackle.Redirect{{Sheave: tackle.Sheave{Efficiency: e}, Turn: degrees(turn)}}
		}
	}
	hauled := func(parts int, rise float64) error {
		_, err := tackle.Hauled(parts, unit.Length(rise))
		return err
	}
	pull := func(line float64) error {
		l := lift(1, 2, 1)
		_, err := tackle.Pull(unit.Force(line), l.Tackle, l.Power)
		return err
	}
	advantage := func(parts int, e float64) error {
		_, err := tackle.Tackle{Parts: parts, Efficiency: e}.Advantage()
		return err
	}
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"nothing":              {refused(func(l *tackle.Lift) { l.Load = 0 }), limits.Weight},
		"a house":              {refused(func(l *tackle.Lift) { l.Load = 20000 }), limits.Weight},
		"no number, load":      {refused(func(l *tackle.Lift) { l.Load = unit.Mass(nan) }), limits.Weight},
		"no end of load":       {refused(func(l *tackle.Lift) { l.Load = unit.Mass(inf) }), limits.Weight},
		"no part":              {refused(func(l *tackle.Lift) { l.Parts = 0 }), limits.Parts},
		"seven parts":          {refused(func(l *tackle.Lift) { l.Parts = 7 }), limits.Parts},
		"efficiency unsaid":    {refused(func(l *tackle.Lift) { l.Efficiency = 0 }), limits.Efficiency},
		"a sheave that gives":  {refused(func(l *tackle.Lift) { l.Efficiency = 1.01 }), limits.Efficiency},
		"no number, sheave":    {refused(func(l *tackle.Lift) { l.Efficiency = nan }), limits.Efficiency},
		"minus one person":     {refused(func(l *tackle.Lift) { l.People = -1 }), limits.People},
		"a crowd":              {refused(func(l *tackle.Lift) { l.People = 9 }), limits.People},
		"pull unsaid":          {refused(func(l *tackle.Lift) { l.PerPerson = 0 }), limits.PersonPull},
		"an ox":                {refused(func(l *tackle.Lift) { l.PerPerson = 260 }), limits.PersonPull},
		"no number, pull":      {refused(func(l *tackle.Lift) { l.PerPerson = unit.Force(nan) }), limits.PersonPull},
		"a toy winch":          {refused(func(l *tackle.Lift) { l.Winch = 10 }), limits.Winch},
		"a winch that pays":    {refused(func(l *tackle.Lift) { l.Winch = -1000 }), limits.Winch},
		"no number, winch":     {refused(func(l *tackle.Lift) { l.Winch = unit.Force(nan) }), limits.Winch},
		"redirect unsaid":      {refused(over(0, 90)), limits.Efficiency},
		"a turn too far":       {refused(over(0.9, 181)), limits.Turn},
		"a turn back":          {refused(over(0.9, -1)), limits.Turn},
		"no number, turn":      {refused(over(0.9, nan)), limits.Turn},
		"no rise":              {hauled(2, 0), limits.Rise},
		"no number, rise":      {hauled(2, nan), limits.Rise},
		"rise on no part":      {hauled(0, 1), limits.Parts},
		"a line that pushes":   {pull(-1), limits.Tension},
		"no number, line":      {pull(nan), limits.Tension},
		"advantage, no part":   {advantage(0, 0.9), limits.Parts},
		"advantage, no sheave": {advantage(2, 0), limits.Efficiency},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range tackle.Domains() {
		l, beyond := lift(100, 2, 2), d.High*1.5
		var err error
		switch d.Quantity {
		case limits.Weight:
			l.Load = unit.Mass(beyond)
		case limits.Parts:
			l.Parts = int(beyond)
		case limits.Efficiency:
			l.Efficiency = beyond
		case limits.Turn:
			l.Redirects = []tackle.Redirect{{Sheave: tackle.Sheave{Efficiency: 1}, Turn: degrees(beyond)}}
		case limits.People:
			l.People = int(beyond)
		case limits.PersonPull:
			l.PerPerson = unit.Force(beyond)
		case limits.Winch:
			l.Winch = unit.Force(beyond)
		}
		switch d.Quantity {
		case limits.Tension:
			_, err = tackle.Pull(unit.Force(beyond), l.Tackle, l.Power)
		case limits.Rise:
			_, err = tackle.Hauled(2, unit.Length(beyond))
		case limits.Apart:
			_, err = tackle.Run(tackle.Travel{Apart: unit.Length(beyond)})
		default:
			_, err = tackle.Plan(l)
		}
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}
