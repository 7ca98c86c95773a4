package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// A bare number is asked about, until the crew says which units its job is in:
// then it is read in them, and that is said.
func TestABareNumberIsInTheUnitsOfTheJob(t *testing.T) {
	for _, tt := range []struct{ units, question, read, headline string }{
		{"imperial", "wraps for 600", "Read “600” as 600 lb: the units of this job.", "plan on 600 lb"},
		{"metric", "wraps for 600", "Read “600” as 600 kg: the units of this job.", "plan on 600 kg"},
		{"metric", "300 kg limb, hitched at 12", "Read “12” as 12 m: the units of this job.", "plan on 300 kg"},
		{"imperial", "cuántas vueltas para 600", "Leí “600” como 600 lb: las unidades de este trabajo.", "600 lb"},
	} {
		k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
		if r, _ := k.say(tt.question, "1"); r.Status() != bot.Needs {
			t.Errorf("%q without a job: %s", tt.question, r.Text())
		}
		k.say("job: house units "+tt.units, "2")
		r, _ := k.say(tt.question, "3")
		if r.Status() != bot.Answered || !strings.Contains(r.Headline(), tt.headline) || !strings.Contains(r.Text(), tt.read) {
			t.Errorf("%q in %s: %s", tt.question, tt.units, r.Text())
		}
	}
	// Inches and feet are both of one system: the job settles nothing.
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	k.say("job: house units imperial", "1")
	if r, _ := k.say("red oak limb 14, 22 ft", "2"); r.Status() != bot.Needs {
		t.Error(r.Text())
	}
}
