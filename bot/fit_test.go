package bot_test

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"heft/bot"
)

// places are the figures that hang on no weight.
type places struct {
	Status, Intent string
	Raise          *struct {
		Line      *float64 `json:"line_force_n"`
		Haul      *float64 `json:"haul_force_n"`
		Travel    *float64 `json:"haul_travel_m"`
		TieMin    *float64 `json:"tie_min_m"`
		TieMax    *float64 `json:"tie_max_m"`
		TwoBlocks *bool    `json:"two_blocks"`
	}
	Swing *struct {
		Bottom    *float64 `json:"bottom_force_n"`
		Speed     float64  `json:"speed_m_s"`
		Reach     float64  `json:"reach_m"`
		Lowest    *float64 `json:"lowest_m"`
		Clears    *bool
		Clearance *float64 `json:"clearance_m"`
	}
	Weight    *json.RawMessage
	BlockLoad *float64 `json:"block_load_n"`
}

func placesOf(t fataler, d *bot.Desk, text string) (places, string) {
	t.Helper()
	r, _, _ := d.Answer(event(text), bot.Turn{})
	var p places
	if err := json.Unmarshal(r.JSON(), &p); err != nil {
		t.Fatalf("%s: %v", r.JSON(), err)
	}
	return p, r.Text()
}

type fataler interface {
	Helper()
	Fatalf(string, ...any)
}

func same[T comparable](a, b *T) bool { return (a == nil) == (b == nil) && (a == nil || *a == *b) }

// Whether blocks meet, and where to tie, is answered alike with a weight and
// without; no force is said without.
func TestPlacesOfARaiseAreThoseOfEveryWeight(t *testing.T) {
	d := newDesk(t)
	seen := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		feet := func(low, high int, name string) int { return rapid.IntRange(low, high).Draw(t, name) }
		length, height := feet(10, 60, "length"), feet(4, 40, "height")
		set := fmt.Sprintf("limb %d ft long, stand it up on a 2:1, tied %d ft from the cut, block %d ft above the cut, %d° above horizontal",
			length, feet(2, length, "tie"), height, feet(0, 60, "angle"))
		if behind := feet(0, 4, "behind"); behind > 0 {
			set += fmt.Sprintf(", block %d ft behind the hinge", behind)
		}
		with, _ := placesOf(t, d, fmt.Sprintf("%d lb ", feet(50, 900, "weight"))+set)
		without, text := placesOf(t, d, set)
		if with.Status != without.Status || (with.Raise == nil) != (without.Raise == nil) {
			t.Fatalf("%s: %s with a weight, %s without: %s", set, with.Status, without.Status, text)
		}
		seen[without.Status]++
		if without.Raise == nil {
			return
		}
		a, b := with.Raise, without.Raise
		if !same(a.TwoBlocks, b.TwoBlocks) || !same(a.TieMin, b.TieMin) || !same(a.TieMax, b.TieMax) || !same(a.Travel, b.Travel) {
			t.Fatalf("%s: %s", set, text)
		}
		if b.Line != nil || b.Haul != nil || without.Weight != nil || without.BlockLoad != nil || strings.Contains(text, "lb") {
			t.Fatalf("%s: a force of no weight: %s", set, text)
		}
	})
	if seen["answered"] == 0 || seen["refused"] == 0 {
		t.Errorf("%v", seen)
	}
}

// So is where a swing goes, and what it clears.
func TestPlacesOfASwingAreThoseOfEveryWeight(t *testing.T) {
	d := newDesk(t)
	clears := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		feet := func(low, high int, name string) int { return rapid.IntRange(low, high).Draw(t, name) }
		line := feet(5, 30, "line")
		set := fmt.Sprintf("limb %d ft long, swing, %d ft of line out, %d ft to the side, block at 60 ft, roof %d ft past the block, %d ft high",
			feet(1, 2*line, "length"), line, feet(1, line, "aside"), feet(1, 80, "out"), feet(1, 60, "high"))
		with, _ := placesOf(t, d, fmt.Sprintf("%d lb ", feet(50, 900, "weight"))+set)
		without, text := placesOf(t, d, set)
		if with.Status != without.Status || (with.Swing == nil) != (without.Swing == nil) {
			t.Fatalf("%s: %s with a weight, %s without: %s", set, with.Status, without.Status, text)
		}
		if without.Swing == nil {
			return
		}
		a, b := with.Swing, without.Swing
		if a.Speed != b.Speed || a.Reach != b.Reach || !same(a.Lowest, b.Lowest) || !same(a.Clears, b.Clears) || !same(a.Clearance, b.Clearance) {
			t.Fatalf("%s: %s", set, text)
		}
		if b.Bottom != nil || without.Weight != nil || without.BlockLoad != nil || strings.Contains(text, " lb") {
			t.Fatalf("%s: a force of no weight: %s", set, text)
		}
		clears[*b.Clears]++
	})
	if len(clears) != 2 {
		t.Errorf("%v", clears)
	}
}

// weightlessScenes are those of what has no weight.
func weightlessScenes(t *testing.T) map[string]*bot.Scene {
	t.Helper()
	d := newDesk(t)
	all := map[string]*bot.Scene{}
	for name, question := range map[string]string{
		"fit":            "stand up a limb tied 16 ft from the cut, block 20 ft above the cut, do the blocks meet",
		"fit-two-blocks": "stand up a 25 ft limb tied 17 ft from the cut, block 18 ft above the cut, 20° above horizontal",
		"sweep":          "limb 6 ft long, starts 8 ft to the side, hangs on 20 ft of line, house wall 17 ft beyond the block 10 ft high, block at 40 ft",
		"sweep-alone":    "starts 8 ft to the side, hangs on 20 ft of line",
		"sweep-heights":  "limb 4 ft long, starts 8 ft to the side, hangs on 20 ft of line, house wall 17 ft beyond the block",
	} {
		r, _ := answer(t, d, question)
		if r.Scene() == nil {
			t.Fatalf("%q has no picture: %s", question, r.Text())
		}
		all[name] = r.Scene()
	}
	return all
}

// A picture of what has no weight has no load on it.
func TestScenesWithoutAWeightShowNoLoad(t *testing.T) {
	d := newDesk(t)
	for text, plan := range map[string]string{
		"raising a limb, tied 16 ft out from the hinge, block is 19 ft above the hinge. do my blocks meet":                "Blocks 3 ft apart",
		"stand up a 25 ft limb tied 14 ft out, block 18 ft above the hinge, level, on a 3:1, block at 40 ft":              "Blocks 4 ft apart",
		"starts 8 ft to the side, hangs on 20 ft of line":                                                                 "Comes 8 ft plus its length",
		"limb 4 ft long, starts 8 ft to the side, hangs on 20 ft of line, house wall 20 ft beyond the block":              "Clears by 8 ft",
		"raising a limb, tied 17 ft out from the hinge, block is 18 ft above the hinge right over it, do the blocks meet": "",
	} {
		r, _ := answer(t, d, text)
		s := r.Scene()
		if s == nil || s.Plan != plan {
			t.Fatalf("%q: %+v: %s", text, s, r.Text())
		}
		for _, m := range s.Marks {
			if m.Kind == bot.Load || m.Kind == bot.Balance || strings.Contains(m.Label, "lb") {
				t.Errorf("%q: %+v", text, m)
			}
		}
	}
}

// A talk comes to the forces once the weight is told, and nothing told before
// is lost on the way.
func TestAWeightComesAfterThePlaces(t *testing.T) {
	d := newDesk(t)
	for _, test := range []struct {
		talk        []string
		intent      string
		has, hasNot string
	}{
		{[]string{"raising a limb, tied 16 ft out from the hinge, block is 20 ft above the hinge, do my blocks meet",
			"red oak limb 14 in, 28 ft", "20° above level, 2:1"}, "raise", "it takes a pull of", "NO FORCES"},
		{[]string{"starts 8 ft to the side, hangs on 20 ft of line", "limb 4 ft long", "it weighs 600 lb"}, "swing", "4 ft long, your weight 600 lb, swings: line up to", "NO FORCES"},
		{[]string{"600 lb log, starts 8 ft to the side, hangs on 20 ft of line", "4 ft long"}, "swing", "your weight 600 lb, swings: line up to", "NO FORCES"},
		{[]string{"will it hit the wall 9 ft past the block", "8 ft to the side on 20 ft of line"}, "swing", "CLEARS BY 1 ft LESS ITS LENGTH", "line up to"},
		{[]string{"tag line to pull it 6 ft to the side, 20 ft of line out", "600 lb"}, "balance", "tag line", "I still need"},
		{[]string{"600 lb limb 20 ft long", "starts 8 ft to the side, hangs on 20 ft of line"}, "swing", "line up to", "NO FORCES"},
	} {
		var turn bot.Turn
		var r bot.Reply
		for _, line := range test.talk {
			r, _, turn = d.Answer(event(line), turn)
		}
		if o := decode(t, r); o.Intent != test.intent || !strings.Contains(o.Text, test.has) || strings.Contains(o.Text, test.hasNot) {
			t.Errorf("%q: %s: %s", test.talk, o.Intent, o.Text)
		}
	}
}

// What is asked back is what the answer hangs on, two at the most, and never
// the tree where no force is.
func TestPlacesAreAskedForFirst(t *testing.T) {
	d := newDesk(t)
	for text, want := range map[string]string{
		"how far will it swing": "offset_m line_m",
		"will it hit the house": "offset_m line_m",
		"swing, 8 ft to the side, block at 40 ft, roof 12 ft away and 14 ft high": "line_m",
		"stand up a limb":                                                            "block_height_m tie_m",
		"stand up a limb, tied 16 ft out":                                            "block_height_m",
		"stand up a limb, how far out can i tie":                                     "block_height_m",
		"stand up a limb, block 18 ft above the hinge":                               "tie_m",
		"tag line to pull it 6 ft to the side":                                       "weight_kg line_m",
		"stand up a red oak limb 14 in, tied 16 ft out, block 18 ft above the hinge": "length_m limb_angle_deg",
	} {
		r, _ := answer(t, d, text)
		if o := decode(t, r); o.Status != "needs" || strings.Join(o.Needs, " ") != want {
			t.Errorf("%q: %s %v, want %s", text, o.Status, o.Needs, want)
		}
	}
}

// A range is planned on its worse end, for the blocks and for the balance.
func TestRangesOfARaiseAreTakenAtTheirWorse(t *testing.T) {
	d := newDesk(t)
	for text, want := range map[string]string{
		"stand up a limb 20 ft long, tied 12-19 ft from the cut, block 20 ft above the cut":    "the blocks meet",
		"stand up a limb 20 ft long, tied 8-14 ft from the cut, block 20 ft above the cut":     "turns over",
		"stand up a limb 20 ft long, tied 14 ft from the cut, block 14-20 ft above the cut":    "the blocks meet",
		"stand up a limb 18-20 ft long, block 30 ft above the cut, where do i tie it":          "tie between 11 ft and 18 ft",
		"stand up a limb 20 ft long, tied 12-14 ft from the cut, block 17-20 ft above the cut": "the blocks stay apart, 3 ft",
	} {
		if _, got := placesOf(t, d, text); !strings.Contains(got, want) {
			t.Errorf("%q: want %q in\n%s", text, want, got)
		}
	}
}

// So is a raise of which the weight is known: what pulls hardest and what rope
// goes in can each be at another end.
func TestRangesOfARaiseWithAWeightAreTakenAtTheirWorse(t *testing.T) {
	d := newDesk(t)
	const raise = "stand up a 600 lb limb 20 ft long, level, 4:1, block 20 ft above the cut, tied "
	for ties, want := range map[string]string{
		"12-19 ft from the cut": "the blocks meet",
		"8-14 ft from the cut":  "turns over",
		"12-14 ft from the cut": "tied 12–14 ft from the cut",
	} {
		if _, got := placesOf(t, d, raise+ties); !strings.Contains(got, want) {
			t.Errorf("%q: want %q in\n%s", ties, want, got)
		}
	}
	const low = "stand up a 600 lb limb 20 ft long, 30 degrees below level, 4:1, block 20 ft above the cut, tied "
	near, _ := placesOf(t, d, low+"12 ft from the cut")
	far, _ := placesOf(t, d, low+"14 ft from the cut")
	both, _ := placesOf(t, d, low+"12-14 ft from the cut")
	if near.Raise == nil || far.Raise == nil || both.Raise == nil {
		t.Fatalf("no raise: %+v, %+v, %+v", near, far, both)
	}
	if *near.Raise.Line <= *far.Raise.Line || *near.Raise.Travel >= *far.Raise.Travel {
		t.Fatalf("the near tie is to pull harder and haul less: %+v, %+v", near.Raise, far.Raise)
	}
	if !same(both.Raise.Line, near.Raise.Line) || !same(both.Raise.Travel, far.Raise.Travel) {
		t.Errorf("line %v and travel %v of the range, want %v and %v", *both.Raise.Line, *both.Raise.Travel, *near.Raise.Line, *far.Raise.Travel)
	}
}
