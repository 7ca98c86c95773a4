package bot_test

import (
	"testing"

	"heft/bot"
)

// The unit alone answers which unit a number was in; what it was not in, another number, a
// word that fits no choice and a stop do not.
func TestAUnitAloneAnswers(t *testing.T) {
	d := newDesk(t)
	for said, want := range map[string]float64{ // 300 lb are 136.08 kg
		"pounds": 136.08, "its lbs": 136.08, "kilos": 300, "300, kg": 300, "not pounds": 0, "feet": 0, "200 pounds": 90.72, "pounds hit him": 0,
	} {
		_, _, turn := d.Answer(bot.Event{Text: "lower a 300 log, how many wraps"}, bot.Turn{})
		if r, e, _ := d.Answer(bot.Event{Text: said}, turn); e.PlanKg < want-0.01 || e.PlanKg > want+0.01 {
			t.Errorf("%q: %g kg, want %g: %s", said, e.PlanKg, want, r.Text())
		}
	}
}
