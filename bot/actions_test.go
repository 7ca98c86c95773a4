package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

func TestAnActionChangesOneThing(t *testing.T) {
	d := newDesk(t)
	for question, wants := range map[string]map[string]string{
		"14 in red oak limb 22 ft, hitched at 35 ft": {
			"Show the working": "lb/ft³", "In metric": "35.6 cm butt × 6.71 m: plan on 880 kg", "If it is 16 in": "16 in butt × 22 ft: plan on 2,550 lb",
		},
		"white ash log 40 cm x 3 m": {"In feet and pounds": " lb, ", "If it is 45 cm": "45 cm × 3 m", "Show the working": "kg/m³"},
		"two of us on a 2:1, 600 lb limb, enough?": {
			"One more part of line": "on 3:1", "In metric": "273 kg on 2:1", "Show the working": "600 lb on 2:1",
		},
		"how much rope for a hitch at 45 ft": {"In metric": "13.72 m", "Show the working": "Rope"},
	} {
		r, _, _ := d.Answer(event(question), bot.Turn{})
		if len(r.Actions()) != len(wants) {
			t.Errorf("%q has the actions %v", question, r.Actions())
		}
		for _, a := range r.Actions() {
			want, ok := wants[a.Label]
			changed, _, _ := d.Answer(event(a.Message), bot.Turn{})
			if !ok || !strings.Contains(changed.Text(), want) {
				t.Errorf("%q, %q stands for %q: %s\nlacks %q", question, a.Label, a.Message, changed.Text(), want)
			}
			if changed.Status() != bot.Answered {
				t.Errorf("%q, %q stands for %q, which is %s", question, a.Label, a.Message, changed.Status())
			}
		}
	}
	for _, question := range []string{"maple limb 12 in 15 ft", "help", "power line", "what's the job?"} {
		if r, _, _ := d.Answer(event(question), bot.Turn{}); len(r.Actions()) > 0 {
			t.Errorf("%q has the actions %v", question, r.Actions())
		}
	}
}
