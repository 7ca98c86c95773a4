package bot_test

import (
	"slices"
	"testing"

	"heft/bot"
)

// A conversation is a list of messages, and what the reply to each must hold.
type step struct {
	text    string
	status  bot.Status
	facts   map[string]any // of understood; nil means that it must be absent
	changed []string
}

func TestConversations(t *testing.T) {
	tests := map[string][]step{
		"one thing changed": {
			{"14 in red oak limb 22 ft, hitched at 35 ft", bot.Answered, map[string]any{"length_m": 6.7056}, nil},
			{"what about 16 ft", bot.Answered, map[string]any{"length_m": 4.8768, "hitch_height_m": 10.668, "species": "Quercus rubra"}, []string{"length_m"}},
			{"same but white ash", bot.Answered, map[string]any{"species": "Fraxinus americana", "length_m": 4.8768}, []string{"species"}},
			{"and with 3 wraps", bot.Answered, map[string]any{"wraps": 3.0, "length_m": 4.8768}, nil},
			{"how much rope?", bot.Answered, map[string]any{"hitch_height_m": 10.668}, nil},
		},
		"a number that takes the place of another": {
			{"red oak log 20 in x 7 ft", bot.Answered, map[string]any{"diameter_m": 0.508}, nil},
			{"its really 16 where he cuts not 20", bot.Answered, map[string]any{"diameter_m": 0.4064, "length_m": 2.1336}, []string{"diameter_m"}},
			{"9 ft not 16", bot.Needs, nil, nil},
		},
		"another weight takes the place of the one that falls": {
			{"400 lb log drops 3 ft into the block, rope breaks at 16,000 lb, 60 ft of rope", bot.Answered, map[string]any{"weight_kg": 181.436948}, nil},
			{"make it 200 lb", bot.Answered, map[string]any{"weight_kg": 90.718474}, []string{"weight_kg"}},
		},
		"a falling piece told by its weight keeps it when its length is told first": {
			{"400 lb log drops into the block, rope breaks at 16,000 lb, 60 ft of rope", bot.Needs, map[string]any{"weight_kg": 181.436948}, nil},
			{"its a 5 ft log, block right under the cut", bot.Needs, map[string]any{"weight_kg": 181.436948, "length_m": 1.524}, nil},
			{"1 ft", bot.Answered, map[string]any{"block_below_m": 0.3048, "weight_kg": 181.436948}, nil},
			{"what if it is 8 ft long", bot.Needs, map[string]any{"weight_kg": nil, "length_m": 2.4384}, []string{"length_m"}},
		},
		"gear told where a question waits goes with it": {
			{"sycamore log 22 in 4 ft, we catch it in the block, how hard does it hit", bot.Needs, map[string]any{"diameter_m": 0.5588}, nil},
			{"9/16 double braid, breaks at 12,000 lb", bot.Needs, map[string]any{"diameter_m": 0.5588, "rope_mbs_n": 53378.659383126}, nil},
			{"drop 3 ft", bot.Needs, map[string]any{"diameter_m": 0.5588, "drop_m": 0.9144}, nil},
		},
		"a figure of the gear that was spoken of": {
			{"500 lb log, is our block good for that? it says 40 kN", bot.Needs, map[string]any{"weight_kg": 226.796185}, nil},
			{"the new one says 32 kN. same log", bot.Needs, map[string]any{"weight_kg": 226.796185}, nil},
			{"2", bot.Answered, map[string]any{"weight_kg": 226.796185, "block_mbs_n": 32000.0}, nil},
		},
		"people told anew where the parts were asked for": {
			{"can 4 people lift a hackberry log 12 in 5 ft", bot.Needs, map[string]any{"people": 4.0}, nil},
			{"what about just 3", bot.Needs, nil, nil},
			{"2", bot.Needs, map[string]any{"people": 3.0, "parts": nil}, nil},
			{"2", bot.Answered, map[string]any{"people": 3.0, "parts": 2.0}, nil},
		},
		"a mass by itself behind a piece told by its sizes is asked about": {
			{"white oak log 24 in across, 6 ft, how heavy", bot.Answered, map[string]any{"length_m": 1.8288}, nil},
			{"400 lb", bot.Needs, map[string]any{"length_m": 1.8288, "weight_kg": nil}, nil},
			{"2", bot.Answered, map[string]any{"length_m": 1.8288, "limit_kg": 181.436948, "weight_kg": nil}, nil},
		},
		"what was cut last week is no size of the piece": {
			{"sugar maple log 24 in across, how long can I cut it for 800 lb", bot.Answered, map[string]any{"diameter_m": 0.6096}, nil},
			{"why so short? last week we were cutting five feet at that width", bot.Answered, map[string]any{"diameter_m": 0.6096, "length_m": nil}, nil},
		},
		"the limb that a strap is on is no piece": {
			{"white oak log 20 in x 6 ft", bot.Answered, map[string]any{"shape": "log"}, nil},
			{"what if we rig a 3:1 off the limb above", bot.Answered, map[string]any{"shape": "log"}, nil},
			{"and what does that limb's strap feel", bot.Answered, map[string]any{"shape": "log"}, nil},
		},
		"a length told in feet is not told anew in inches": {
			{"red oak log 14 in, 15 ft", bot.Answered, map[string]any{"length_m": 4.572}, nil},
			{"length is 380", bot.Needs, nil, nil},
		},
		"a limit told for each piece, and changed, in a talk about a cut plan": {
			{"cut plan hackberry stem 30 ft, 22 in butt 14 in top", bot.Needs, nil, nil},
			{"400 each", bot.Answered, map[string]any{"limit_kg": 181.436948, "length_m": 9.144}, nil},
			{"bring it down to 300", bot.Answered, map[string]any{"limit_kg": 136.0777110, "length_m": 9.144}, []string{"limit_kg"}},
			{"top piece, how many wraps", bot.Answered, map[string]any{"shape": "log", "tip_diameter_m": 0.3556}, nil},
			{"and which of these is the heaviest", bot.Answered, map[string]any{"length_m": 9.144}, nil},
		},
		"un límite por pieza, y otro": {
			{"plan de cortes de un fuste de almez 30 ft, 22 in abajo y 14 in arriba", bot.Needs, nil, nil},
			{"400 por pieza", bot.Answered, map[string]any{"limit_kg": 181.436948, "length_m": 9.144}, nil},
			{"bájale a 300", bot.Answered, map[string]any{"limit_kg": 136.0777110, "length_m": 9.144}, []string{"limit_kg"}},
			{"el pedazo de arriba, cuántas vueltas", bot.Answered, map[string]any{"tip_diameter_m": 0.3556}, nil},
		},
		"the rope at hand, beside where the block is": {
			{"is my rope long enough", bot.Needs, nil, nil},
			{"150 ft, block at 50 ft", bot.Answered, map[string]any{"rope_m": 45.72, "hitch_height_m": 15.24, "length_m": nil}, nil},
		},
		"where it lands lower leaves the talk as it was": {
			{"how much rope, block at 50 ft", bot.Answered, map[string]any{"hitch_height_m": 15.24}, nil},
			{"the street is 12 ft lower than the base", bot.Needs, nil, nil},
			{"drum is 20 ft from the tree", bot.Answered, map[string]any{"hitch_height_m": 15.24, "length_m": nil}, nil},
		},
		"how far out somebody gets, where it was asked where to tie": {
			{"where do i tie a red oak limb 12 in butt 24 ft so it hangs level", bot.Answered, nil, nil},
			{"he can only get out to 6 ft", bot.Needs, nil, nil},
			{"1", bot.Answered, map[string]any{"tie_m": 1.8288, "length_m": 7.3152}, nil},
		},
		"a tree that was spoken of": {
			{"doug fir log 14 in x 10 ft", bot.Answered, nil, nil},
			{"and wraps for the fir", bot.Answered, map[string]any{"species": "Pseudotsuga menziesii", "length_m": 3.048}, nil},
		},
		"a thickness replaces all thicknesses": {
			{"red oak limb butt 14 in tip 10 in 22 ft long", bot.Answered, map[string]any{"tip_diameter_m": 0.254}, nil},
			{"what about 16 in", bot.Answered, map[string]any{"butt_diameter_m": 0.4064, "tip_diameter_m": nil, "diameter_m": nil}, []string{"butt_diameter_m"}},
		},
		"an ask answered by its number, or a word": {
			{"maple limb 12 in 15 ft", bot.Needs, map[string]any{"species": nil}, nil},
			{"2", bot.Answered, map[string]any{"species": "Acer rubrum", "length_m": 4.572}, nil},
			{"maple log 12 in 15 ft", bot.Needs, map[string]any{"species": nil}, nil},
			{"sugar", bot.Answered, map[string]any{"species": "Acer saccharum", "shape": "log"}, nil},
		},
		"an ask completed by what was missing": {
			{"red oak limb 14 in", bot.Needs, nil, nil},
			{"22 ft", bot.Answered, map[string]any{"length_m": 6.7056}, nil},
		},
		"a number that had no unit": {
			{"red oak limb 14, 22 ft", bot.Needs, map[string]any{"butt_diameter_m": nil}, nil},
			{"14 in", bot.Answered, map[string]any{"butt_diameter_m": 0.3556, "length_m": 6.7056}, nil},
		},
		"a tree in doubt never falls back on the tree before": {
			{"14 in red oak limb 22 ft", bot.Answered, nil, nil},
			{"maple limb 12 in 15 ft", bot.Needs, map[string]any{"species": nil}, nil},
			{"16 ft", bot.Answered, map[string]any{"species": "Acer spp."}, nil}, // the heaviest of those asked about
		},
		"a doubtful reading is not kept": {
			{"40 in girth 8 ft red oak log", bot.Needs, nil, nil},
			{"ok", bot.Answered, map[string]any{"diameter_m": nil}, nil}, // help, not a weight
			{"14 in red oak limb not 22 ft", bot.Needs, nil, nil},
			{"yes", bot.Needs, map[string]any{"length_m": nil}, nil},
		},
		"a new question stands alone": {
			{"14 in red oak limb 22 ft, hitched at 35 ft", bot.Answered, nil, nil},
			{"10 in white ash log 8 ft", bot.Answered, map[string]any{"hitch_height_m": nil, "shape": "log"}, nil},
		},
		"a weight replaces the sizes": {
			{"14 in red oak limb 22 ft, hitched at 35 ft", bot.Answered, nil, nil},
			{"make it 600 lb", bot.Answered, map[string]any{"weight_kg": 272.155422, "length_m": nil, "butt_diameter_m": nil, "hitch_height_m": 10.668}, nil},
		},
		"the job's limit and rope hold for every piece": {
			{"limit is 600 lb", bot.Answered, map[string]any{"limit_kg": 272.1554220}, nil},
			{"14 in red oak limb 22 ft", bot.Answered, map[string]any{"limit_kg": 272.1554220}, nil},
			{"10 in white ash log 8 ft", bot.Answered, map[string]any{"limit_kg": 272.1554220, "species": "Fraxinus americana"}, nil},
			{"300 lb log, limit 400 lb, 100 ft of rope, hitched at 45 ft", bot.Answered, map[string]any{"limit_kg": 181.436948}, nil},
			{"200 lb log hitched at 50 ft", bot.Answered, map[string]any{"limit_kg": 181.436948, "rope_m": 30.48, "hitch_height_m": 15.24}, nil},
		},
		"a cut plan asks for the length, so it keeps none": {
			{"16 in white ash log 5 ft", bot.Answered, nil, nil},
			{"how long a piece of 20 in red oak log, limit 400 lb", bot.Answered, map[string]any{"length_m": nil}, nil},
			{"what about 24 in", bot.Answered, map[string]any{"length_m": nil, "limit_kg": 181.436948}, nil},
		},
		"hands and height of a lift are the lift's": {
			{"two of us on a 2:1, 600 lb limb, enough?", bot.Answered, map[string]any{"intent": "lift"}, nil},
			{"what about 4 guys", bot.Answered, map[string]any{"intent": "lift", "people": 4.0}, []string{"people"}},
			{"hitched at 40 ft", bot.Answered, map[string]any{"intent": "lift", "hitch_height_m": 12.192}, nil},
			{"how much rope", bot.Answered, map[string]any{"intent": "rope", "hitch_height_m": 12.192}, nil},
			{"y si somos 2", bot.Answered, map[string]any{"intent": "rope"}, nil},
		},
		"wraps and a hitch make a weight a lower": {
			{"14 in red oak limb 22 ft", bot.Answered, map[string]any{"intent": "weight"}, nil},
			{"and with 3 wraps", bot.Answered, map[string]any{"intent": "lower", "wraps": 3.0}, nil},
		},
		"a stop is no part of the talk": {
			{"14 in red oak limb 22 ft", bot.Answered, nil, nil},
			{"power line there", bot.Refused, map[string]any{"species": nil}, nil},
			{"what about 16 ft", bot.Answered, map[string]any{"length_m": 4.8768}, nil},
		},
	}
	d := newDesk(t)
	for name, steps := range tests {
		t.Run(name, func(t *testing.T) {
			var turn bot.Turn
			var job bot.Job
			for _, s := range steps {
				ev := event(s.text)
				ev.Job = job
				r, e, now := d.Answer(ev, turn)
				if turn = now; e.Intent == "job" && e.Status == bot.Answered {
					job = bot.JobOf(e)
				}
				check(t, s, r)
			}
		})
	}
}

func check(t *testing.T, s step, r bot.Reply) {
	t.Helper()
	o := decode(t, r)
	if r.Status() != s.status {
		t.Fatalf("%q: %s, want %s: %s", s.text, r.Status(), s.status, r.Text())
	}
	o.Understood["intent"] = o.Intent
	for field, want := range s.facts {
		if got := o.Understood[field]; got != want {
			t.Errorf("%q: %s is %v, want %v", s.text, field, got, want)
		}
	}
	for _, c := range s.changed {
		if !slices.Contains(o.Changed, c) {
			t.Errorf("%q: changed %v, want %s among them", s.text, o.Changed, c)
		}
	}
}
