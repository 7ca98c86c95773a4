package gear_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/gear"
	"heft/calc/unit"
)

// degrees is an angle as the tables print it.
func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

func TestLegFactors(t *testing.T) {
	// Rigging handbook table: tension of a leg by its angle from the level.
	for angle, want := range map[float64]float64{90: 1.000, 75: 1.035, 60: 1.155, 45: 1.414, 35: 1.742, 30: 2.000} {
		got, err := gear.LegFactor(degrees(angle))
		if err != nil || math.Abs(got-want) > 0.002 {
			t.Errorf("%v degrees: %.4f, %v; want %v", angle, got, err, want)
		}
	}
}

func TestSlingsAtAnAngle(t *testing.T) {
	// The same handbook: what a leg of a 1,000-unit sling carries. Its line
	// for 15 degrees, 258, lies flatter than we go.
	for angle, want := range map[float64]float64{60: 866, 45: 707, 30: 500} {
		got, err := gear.Basket(1000, degrees(angle))
		if err != nil || math.Abs(float64(got)/2-want) > 1 {
			t.Errorf("%v degrees: %.1f, %v; want %v", angle, float64(got)/2, err, want)
		}
	}
	// Rigging text: 1000 kg on two legs at 45 degrees, 707 kg in each.
	leg, err := gear.Leg(1000, 2, degrees(45))
	if err != nil || math.Abs(float64(leg)-707) > 1 {
		t.Errorf("leg %.1f, %v; want 707", float64(leg), err)
	}
	// Two such legs of it carry twice what one does; of a single leg at 60
	// degrees the table has 866.
	for legs, want := range map[int]float64{1: 866, 2: 1732} {
		got, err := gear.Bridle(1000, legs, degrees(60))
		if err != nil || math.Abs(float64(got)-want) > 1 {
			t.Errorf("%d legs: %.1f, %v; want %v", legs, float64(got), err, want)
		}
	}
	// A plumb leg by itself carries the load.
	if leg, err := gear.Leg(1000, 1, degrees(90)); err != nil || !near(float64(leg), 1000) {
		t.Errorf("plumb leg %v, %v", float64(leg), err)
	}
}

func TestBasketFigureOfALabel(t *testing.T) {
	// The same table's columns: a sling of 1,000 vertical has 2,000 in a basket, legs plumb.
	leg, err := gear.VerticalOf(2000)
	if err != nil || !near(float64(leg), 1000) {
		t.Errorf("leg %v, %v; want 1000", float64(leg), err)
	}
	if _, err := gear.VerticalOf(0); err == nil {
		t.Error("no figure is taken for one")
	}
}

func TestLegsBalanceTheLoad(t *testing.T) {
	// Statics, apart from the formula: the upright parts of the legs add up
	// to the load.
	rapid.Check(t, func(t *rapid.T) {
		load := rapid.Float64Range(1, 1e5).Draw(t, "load")
		angle := rapid.Float64Range(30, 90).Draw(t, "angle")
		legs := rapid.IntRange(1, 2).Draw(t, "legs")
		leg, err := gear.Leg(unit.Force(load), legs, degrees(angle))
		if err != nil || !near(float64(leg)*math.Cos((90-angle)*math.Pi/180)*float64(legs), load) {
			t.Fatalf("%d legs of %v N at %v degrees carry %v N, %v", legs, leg, angle, load, err)
		}
	})
}

func TestHitches(t *testing.T) {
	// US Navy manual 14081: a basket twice, a choker three quarters of the
	// single vertical leg.
	basket, errBasket := gear.Basket(1000, degrees(90))
	choker, errChoker := gear.Choker(1000, degrees(150))
	if err := errors.Join(errBasket, errChoker); err != nil || !near(float64(basket), 2000) || !near(float64(choker), 750) {
		t.Errorf("basket %v, choker %v, %v", float64(basket), float64(choker), err)
	}
}

func TestChokeTable(t *testing.T) {
	// Rigging handbook table, as a factor on the choker's own rating. Between
	// the whole degrees it prints, the lower line holds.
	for angle, want := range map[float64]float64{
		180: 1.00, 121: 1.00, 120: 0.87, 90: 0.87, 89.5: 0.74, 89: 0.74, 60: 0.74,
		59.5: 0.62, 59: 0.62, 30: 0.62, 29.5: 0.49, 29: 0.49, 0: 0.49,
	} {
		got, err := gear.Choker(1000, degrees(angle))
		if err != nil || !near(float64(got), 750*want) {
			t.Errorf("%v degrees: %.1f, %v; want %v", angle, float64(got), err, 750*want)
		}
	}
}

func TestFlatterOrTighterNeverCarriesMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		flat := rapid.Float64Range(30, 90).Draw(t, "flat")
		steep := rapid.Float64Range(flat, 90).Draw(t, "steep")
		tight := rapid.Float64Range(0, 180).Draw(t, "tight")
		open := rapid.Float64Range(tight, 180).Draw(t, "open")
		flatter, errFlatter := gear.Basket(1e3, degrees(flat))
		steeper, errSteeper := gear.Basket(1e3, degrees(steep))
		tighter, errTighter := gear.Choker(1e3, degrees(tight))
		opener, errOpener := gear.Choker(1e3, degrees(open))
		if err := errors.Join(errFlatter, errSteeper, errTighter, errOpener); err != nil {
			t.Fatal(err)
		}
		if flatter > steeper*(1+1e-9) || tighter > opener || opener > 750 || steeper > 2000*(1+1e-9) {
			t.Fatalf("baskets %v and %v, chokers %v and %v", flatter, steeper, tighter, opener)
		}
	})
}
