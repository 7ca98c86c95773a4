package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// say asks one thing after another and gives the last reply.
func say(t *testing.T, lines ...string) string {
	t.Helper()
	d, turn, last := newDesk(t), bot.Turn{}, ""
	for _, l := range lines {
		r, _, next := d.Answer(event(l), turn)
		turn, last = next, r.Text()
	}
	return last
}

// TestANumberWithAPlaceIsNotTheStrengthWanted: how far something is from the block is never the
// strength that was asked for, and a number without a place is.
func TestANumberWithAPlaceIsNotTheStrengthWanted(t *testing.T) {
	const asked = "european beech log 25 cm 3 m, dropped onto the block, what does the block see"
	for _, told := range []string{
		"bout 600 from block to the middle of the piece", "about 600 from the block to the middle", "600 from the block",
		"its 600 from the block to the piece", "hay como 600 de la polea a la mitad de la pieza",
	} {
		got := say(t, asked, told)
		if strings.Contains(got, "kN break") || strings.Contains(got, "rompe") || !strings.Contains(got, "600 mm") {
			t.Errorf("%q: %s", told, got)
		}
	}
	if got := say(t, asked, "70 off the tag"); !strings.Contains(got, "70 kN break") {
		t.Errorf("a bare number: %s", got)
	}
	if got := say(t, asked, "about 600 from block to the middle of the piece", "600 mm"); !strings.Contains(got, "middle 0.6 m above the block") {
		t.Errorf("with its unit: %s", got)
	}
}
