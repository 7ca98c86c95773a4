package balance_test

import (
	"errors"
	"math"
	"testing"

	"heft/calc/balance"
	"heft/calc/limits"
	"heft/calc/unit"
)

var nan = math.NaN()

func ties(low, high, length float64, as balance.Hang) error {
	_, err := balance.Ties(unit.Range[unit.Length]{Low: unit.Length(low), High: unit.Length(high)}, unit.Length(length), as)
	return err
}

func twoLines(weight, at, first, second float64) error {
	_, _, err := balance.TwoLines(unit.Mass(weight), exactly(unit.Length(at)), unit.Length(first), unit.Length(second))
	return err
}

func legs(weight, first, second float64) error {
	_, _, err := balance.Legs(unit.Mass(weight), degrees(first), degrees(second))
	return err
}

func roll(weight, offset float64) error {
	_, err := balance.Roll([]balance.Branch{{Weight: unit.Exactly(unit.Mass(weight)), Offset: unit.Length(offset)}})
	return err
}

func tagLine(weight, line, sideways, below float64) error {
	_, err := balance.TagLine(unit.Mass(weight), unit.Length(line), unit.Length(sideways), degrees(below))
	return err
}

func TestOutOfRange(t *testing.T) {
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"balance behind the cut":  {ties(-1, 2, 7, balance.Level), limits.BalancePoint},
		"no number, balance":      {ties(nan, nan, 7, balance.Level), limits.BalancePoint},
		"length unsaid":           {ties(2, 2, 0, balance.Level), limits.Length},
		"no number, length":       {ties(2, 2, nan, balance.Level), limits.Length},
		"nothing on two lines":    {twoLines(0, 2, 1, 5), limits.Weight},
		"no number on two lines":  {twoLines(nan, 2, 1, 5), limits.Weight},
		"balance of two lines":    {twoLines(100, 40, 1, 5), limits.BalancePoint},
		"first tie behind":        {twoLines(100, 2, -1, 5), limits.Tie},
		"second tie in the air":   {twoLines(100, 2, 1, 31), limits.SecondTie},
		"no number, second":       {twoLines(100, 2, 1, nan), limits.SecondTie},
		"nothing on legs":         {legs(0, 45, 45), limits.Weight},
		"flat leg":                {legs(100, 10, 45), limits.Angle},
		"past plumb":              {legs(100, 45, 100), limits.Angle},
		"no number, leg":          {legs(100, nan, 45), limits.Angle},
		"a branch of nothing":     {roll(0, 1), limits.Weight},
		"no number, branch":       {roll(nan, 1), limits.Weight},
		"a branch far out":        {roll(10, 21), limits.Offset},
		"no number, offset":       {roll(10, nan), limits.Offset},
		"nothing to tag":          {tagLine(0, 5, 1, 0), limits.Weight},
		"no end of weight":        {tagLine(math.Inf(1), 5, 1, 0), limits.Weight},
		"no line":                 {tagLine(100, 0, 0, 0), limits.LineLength},
		"no number, line":         {tagLine(100, nan, 1, 0), limits.LineLength},
		"aside the other way":     {tagLine(100, 5, -1, 0), limits.Sideways},
		"no number, aside":        {tagLine(100, 5, nan, 0), limits.Sideways},
		"a tag straight down":     {tagLine(100, 5, 1, 90), limits.Angle},
		"no number, tag's angle":  {tagLine(100, 5, 1, nan), limits.Angle},
		"a tag from straight up":  {tagLine(100, 5, 1, -80), limits.Angle},
		"no end of balance point": {ties(2, math.Inf(1), 7, balance.Level), limits.BalancePoint},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
}

func TestContradictions(t *testing.T) {
	for name, test := range map[string]struct {
		err           error
		first, second limits.Quantity
	}{
		"ends the wrong way round": {ties(3, 2, 7, balance.Level), limits.BalancePoint, limits.BalancePoint},
		"balance past the tip":     {ties(8, 8, 7, balance.Level), limits.BalancePoint, limits.Length},
		"no room toward the tip":   {ties(6, 6.9, 7, balance.ButtHeavy), limits.Tie, limits.Length},
		"no room toward the butt":  {ties(0.2, 2, 7, balance.TipHeavy), limits.Tie, limits.BalancePoint},
		"ties the wrong way round": {twoLines(100, 2, 5, 1), limits.SecondTie, limits.Tie},
		"two ties in one":          {twoLines(100, 2, 2, 2), limits.SecondTie, limits.Tie},
		"both ties beyond":         {twoLines(100, 2, 3, 5), limits.BalancePoint, limits.Tie},
		"both ties before":         {twoLines(100, 6, 3, 5), limits.BalancePoint, limits.SecondTie},
		"further than the rope":    {tagLine(100, 5, 5.5, 0), limits.Sideways, limits.LineLength},
		"nearly level rope":        {tagLine(100, 5, 4.9, 0), limits.Sideways, limits.LineLength},
		// 20 degrees out of plumb and 60 below are 80 together.
		"a steep tag, far out": {tagLine(100, 5, 5*math.Sin(20*math.Pi/180), 60), limits.Sideways, limits.LineLength},
	} {
		c, ok := errors.AsType[*limits.Contradiction](test.err)
		if !ok || c.First != test.first || c.Second != test.second || c.Why == "" {
			t.Errorf("%s: got %v, want %s against %s", name, test.err, test.first, test.second)
		}
	}
}

func TestMissing(t *testing.T) {
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"balance unsaid":           {ties(0, 0, 7, balance.Level), limits.BalancePoint},
		"balance unsaid, on lines": {twoLines(100, 0, 1, 5), limits.BalancePoint},
		"no such way to hang":      {ties(2, 2, 7, "sideways"), limits.Tie},
	} {
		m, ok := errors.AsType[*limits.Missing](test.err)
		if !ok || m.Quantity != test.want {
			t.Errorf("%s: got %v, want %s missing", name, test.err, test.want)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range balance.Domains() {
		beyond := d.High * 1.5
		var err error
		switch d.Quantity {
		case limits.Weight:
			err = twoLines(beyond, 2, 1, 5)
		case limits.Length:
			err = ties(2, 2, beyond, balance.Level)
		case limits.BalancePoint:
			err = ties(2, beyond, 7, balance.Level)
		case limits.Tie:
			err = twoLines(100, 2, beyond, 5)
		case limits.Offset:
			err = roll(10, beyond)
		case limits.LineLength:
			err = tagLine(100, beyond, 1, 0)
		case limits.Sideways:
			err = tagLine(100, 5, beyond, 0)
		case limits.Angle:
			err = legs(100, beyond, 45)
			if d.Low < 0 {
				err = tagLine(100, 5, 1, beyond)
			}
		}
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}
