package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// follow runs lines of one talk after a first one, each by itself behind it, and checks what
// every reply understood.
func follow(t *testing.T, first string, status bot.Status, facts map[string]any, lines ...string) {
	t.Helper()
	d := newDesk(t)
	for _, l := range lines {
		_, _, turn := d.Answer(event(first), bot.Turn{})
		r, _, _ := d.Answer(event(l), turn)
		check(t, step{l, status, facts, nil}, r)
	}
}

// TestSizeBesideItsWord: "shorter" and "thicker" say what the one length of a follow-up is,
// and a number with the word of a thickness is in the unit that its size leaves.
func TestSizeBesideItsWord(t *testing.T) {
	const log = "european beech log 50 cm, 1.2 m, how heavy"
	follow(t, log, bot.Answered, map[string]any{"length_m": 0.8, "diameter_m": 0.5},
		"shorter, 80 cm", "right il cut them shorter, 80cm", "a bit shorter, 80 cm", "shorter piece, 80 cm", "mas corta, 80 cm", "un poco más corta, 80 cm", "shorter then, 0.8")
	follow(t, log, bot.Answered, map[string]any{"length_m": 1.2, "diameter_m": 0.6},
		"thicker, 60 cm", "what if its thicker, 60 cm", "más gruesa, 60 cm", "sorry should of said 600 dia", "i should have said 60 dia", "600 across sorry", "make that 600 dia")
	follow(t, log, bot.Needs, nil,
		"shorter by 20 cm", "shorter than 60 cm")
	follow(t, "white oak log 14 in 8 ft, weight", bot.Answered, map[string]any{"length_m": 2.4384, "diameter_m": 0.4064},
		"sorry should of said 16 dia", "i meant 16 dia", "should have said 16 in")
}

// TestLimbDownTheTrunk: a trunk that a limb is lowered along makes no log of it; one with a
// size of its own, or asked about for its longest piece, is one.
func TestLimbDownTheTrunk(t *testing.T) {
	const limb = "european beech limb 5 m, 280mm at the butt 120mm at the end"
	follow(t, limb, bot.Answered, map[string]any{"shape": "limb", "length_m": 5.0},
		"and if i block it straight down the stem what does the pulley get", "what if we lower it down the trunk", "lower it along the stem, what does the block see",
		"y si la bajo por el tronco cuánto le toca a la polea", "y si la bajo a lo largo del tronco, cuánto le toca a la polea")
	follow(t, limb, bot.Answered, map[string]any{"shape": "log", "length_m": 3.0},
		"and down the stem, 40 cm, 3 m, what does the block see")
	follow(t, limb, bot.Answered, map[string]any{"shape": "log"},
		"how long can i go on down the stem under 200 kg")
}

// TestLastSizePutRight: a number put right by no word is the one size that was told last.
func TestLastSizePutRight(t *testing.T) {
	d, turn := newDesk(t), bot.Turn{}
	for _, s := range []step{
		{"white oak log 14 in 8 ft, weight", bot.Answered, map[string]any{"length_m": 2.4384}, nil},
		{"no, 16 dia", bot.Answered, map[string]any{"diameter_m": 0.4064, "length_m": 2.4384}, nil},
		{"i should have said 18", bot.Answered, map[string]any{"diameter_m": 0.4572, "length_m": 2.4384}, nil},
	} {
		r, _, next := d.Answer(event(s.text), turn)
		check(t, s, r)
		turn = next
	}
}

// TestOneMoreOrLess: behind wraps, one more or less is of them where nothing else is said.
func TestOneMoreOrLess(t *testing.T) {
	const limb = "red oak limb 14 in 20 ft, wraps" // 4½ to start with
	follow(t, limb, bot.Answered, map[string]any{"wraps": 3.5},
		"so can i drop a wrap", "can i take a wrap off", "one less?", "what if i take one off", "puedo quitarle una vuelta", "y una menos")
	follow(t, limb, bot.Answered, map[string]any{"wraps": 5.5},
		"should i add one", "add a wrap", "what if i put one more on", "le pongo una más?")
	for _, other := range []string{"one more thing", "another one", "one more guy", "otra"} {
		d, turn := newDesk(t), bot.Turn{}
		_, _, turn = d.Answer(event(limb), turn)
		r, _, _ := d.Answer(event(other), turn)
		if got := decode(t, r).Understood["wraps"]; got != nil {
			t.Errorf("%q: %v wraps", other, got)
		}
	}
}

// TestUnitAskedAgain: what has no unit yet is asked again with the next question, and no
// other piece is asked for.
func TestUnitAskedAgain(t *testing.T) {
	d, turn := newDesk(t), bot.Turn{}
	for _, s := range []step{
		{"wraps for 450", bot.Needs, nil, nil},
		{"wet rope now. same?", bot.Needs, nil, nil},
		{"block load?", bot.Needs, nil, nil},
		{"pounds", bot.Answered, map[string]any{"intent": "block-load", "weight_kg": 204.1165665}, nil},
	} {
		r, _, next := d.Answer(event(s.text), turn)
		check(t, s, r)
		turn = next
	}
	follow(t, "cuantas vueltas para 450", bot.Needs, map[string]any{"weight_kg": nil}, "y la polea cuanto recibe", "what does the block see")
}

// TestTailOfRope: what is left for the knot, the wraps and the hands is the tail.
func TestTailOfRope(t *testing.T) {
	follow(t, "rope 55m, block at 22, drum at the foot of the same tree. will it reach", bot.Answered, map[string]any{"tail_m": 4.0, "rope_m": 55.0},
		"about 4 m for the knot and the drum and some tail", "leave 4 m tail", "add 4 for the knots", "plus 4 m of tail", "4 m pal nudo y la cola", "deja 4 m de cola")
}

// TestDrumMoved: a drum that is moved to the foot of its tree is no way off any more, and one
// that is moved to another tree stands as far off as is told then.
func TestDrumMoved(t *testing.T) {
	const away = "rope for a hitch at 50 ft, drum on another tree 25 ft away"
	follow(t, away, bot.Answered, map[string]any{"intent": "rope", "drum_away_m": 0.0, "hitch_height_m": 15.24},
		"what if the drum is on the same tree", "put the drum at the base instead", "drum right on this tree then", "what if i put it at the base", "y si pongo el drum en el mismo tronco?", "ok si lo pongo al pie del árbol")
	follow(t, away, bot.Answered, map[string]any{"drum_away_m": 7.62}, "drum on the other tree")
	follow(t, "rope for a hitch at 50 ft, drum at the foot of the tree", bot.Needs, map[string]any{"hitch_height_m": 15.24},
		"could the drum go at the oak instead, would that save any", "move the drum to the ash", "y si pongo el tambor en el roble")
	d, turn := newDesk(t), bot.Turn{}
	for _, s := range []step{
		{away, bot.Answered, nil, nil},
		{"drum on the same tree", bot.Answered, map[string]any{"drum_away_m": 0.0}, nil},
		{"drum on the other tree then", bot.Needs, map[string]any{"drum_away_m": nil, "hitch_height_m": 15.24}, nil},
	} {
		r, _, next := d.Answer(event(s.text), turn)
		check(t, s, r)
		turn = next
	}
}

// TestHeightToldAnew: in a talk of a rope alone, a length that may be how high its block is, or
// how long a piece is, is what was told before in such a size, and is never left out unsaid.
func TestHeightToldAnew(t *testing.T) {
	const rope = "is a 50 m line enough, block 24 m up"
	follow(t, rope, bot.Answered, map[string]any{"hitch_height_m": 24.384, "length_m": nil, "rope_m": 50.0},
		"the block's actually 80 ft, he just called down", "block is 80 ft", "the pulley is more like 80 ft", "la polea son 80 ft")
	follow(t, rope, bot.Answered, map[string]any{"hitch_height_m": 26.0, "rope_m": 50.0}, "its 26 m not 24")
	follow(t, rope, bot.Needs, map[string]any{"length_m": nil}, "no sorry 20 m", "20 m")
	d, turn := newDesk(t), bot.Turn{}
	for _, s := range []step{
		{"how much rope for a hitch at 60 ft, got 200 ft", bot.Answered, nil, nil},
		{"what about 80 ft", bot.Needs, nil, nil},
		{"and 45 ft", bot.Answered, map[string]any{"hitch_height_m": 13.716, "length_m": nil}, nil},
	} {
		r, _, next := d.Answer(event(s.text), turn)
		check(t, s, r)
		turn = next
	}
}

// TestInsteadOf: a bare number in place of one that the talk has told is of the same.
func TestInsteadOf(t *testing.T) {
	const log = "white oak log 14 in 8 ft, weight"
	follow(t, log, bot.Answered, map[string]any{"length_m": 1.8288, "diameter_m": 0.3556},
		"what if i cut it at 6 instead of 8", "instead of 8 make it 6", "do 6 rather than 8", "6 ft long instead of 8", "y si la corto a 6 en vez de 8")
	follow(t, log, bot.Answered, map[string]any{"length_m": 2.4384, "diameter_m": 0.4064},
		"16 instead of 14", "make it 16 rather than 14", "16 en lugar de 14")
	follow(t, log, bot.Needs, nil, "i put 13 instead of 15", "use 3 instead of 4")
}

// TestTalkStands: what is in doubt about a message that changes one thing, or tells nothing
// for sure, leaves the piece of the talk as it was.
func TestTalkStands(t *testing.T) {
	const limb = "red oak limb 14 in 22 ft, hitched at 35 ft, how much rope"
	d := newDesk(t)
	for _, doubtful := range []string{"block is 40 ft", "do it at 6 rather than 8 instead", "shorter by 2 ft"} {
		_, _, turn := d.Answer(event(limb), bot.Turn{})
		r, _, turn := d.Answer(event(doubtful), turn)
		check(t, step{doubtful, bot.Needs, nil, nil}, r)
		r, _, _ = d.Answer(event("wraps?"), turn)
		check(t, step{"wraps?", bot.Answered, map[string]any{"length_m": 6.7056, "butt_diameter_m": 0.3556, "hitch_height_m": 10.668}, nil}, r)
	}
}

// TestWhoMayCome: who pulls besides if somebody comes is not counted with those who are
// there.
func TestWhoMayCome(t *testing.T) {
	const lift = "can we lift a limb by hand, 140 kg, over a block and down to us"
	follow(t, lift, bot.Answered, map[string]any{"intent": "lift", "people": 2.0, "parts": 1.0},
		"theres 2 of us, well 3 if the boss gets off the phone", "2 guys, maybe 3 if dave comes", "somos 2, o 3 si viene el jefe")
}

// TestTopOfLift: what is asked of the top block in a talk of a lift is answered with the pull
// in it, and a rope at hand waits for how high that block is.
func TestTopOfLift(t *testing.T) {
	const lift = "need to lift a 900 lb log on a 3:1, 2 of us"
	follow(t, lift, bot.Answered, map[string]any{"intent": "lift", "parts": 3.0},
		"block load?", "what does the top anchor see", "and the anchor up top gets what", "what does the anchor tree get", "y la polea de arriba cuánto recibe")
	if got := say(t, lift, "we got 150 ft of rope, enough?"); !strings.Contains(got, "Rope: tell me how high the top block is") {
		t.Error(got)
	}
	if got := say(t, lift, "we got 150 ft of rope, enough?", "block is 40 ft up"); !strings.Contains(got, "Your 150 ft rope is too short") {
		t.Error(got)
	}
}

// TestWrapsWithoutTheWord: behind an answer that says how many wraps to start with, a bare
// number near that may be the wraps too, and is no thickness or length unasked.
func TestWrapsWithoutTheWord(t *testing.T) {
	follow(t, "red oak limb 14 in 20 ft, wraps", bot.Needs, map[string]any{"wraps": nil, "butt_diameter_m": 0.3556}, "ok 5 then", "what about 6")
	follow(t, "450 lb log, wraps", bot.Answered, map[string]any{"wraps": 4.0}, "and 4?", "4 then")
	follow(t, "tronco de 450 lb, cuántas vueltas", bot.Answered, map[string]any{"wraps": 4.0}, "y si son 4", "y 4?")
	follow(t, "red oak limb 14 in 20 ft, wraps", bot.Answered, map[string]any{"wraps": nil, "butt_diameter_m": 0.4064}, "make it 16 in", "what about 16 in")
	if got := say(t, "red oak limb 14 in 20 ft, wraps", "ok 5 then", "2"); !strings.Contains(got, "5 wraps hold it") {
		t.Error(got)
	}
}
