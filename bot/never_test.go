package bot_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"heft/calc/tackle"
	"heft/calc/unit"
)

// TestByHandSaysWhatOnePersonHolds keeps the sentence with the figure that every answer
// plans one person with.
func TestByHandSaysWhatOnePersonHolds(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	pounds := math.Round(float64(tackle.PerPerson / unit.PoundForce))
	lb, kg := fmt.Sprintf("%.0f lb", pounds), fmt.Sprintf("%.0f kg", float64(tackle.PerPerson.Held()))
	for _, text := range []string{"can i just hold a 60 lb limb by hand with no wraps", "aguanto una rama de 30 kg a mano sin vueltas"} {
		if r, _ := k.say(text, "1"); !strings.Contains(r.Text(), lb) || !strings.Contains(r.Text(), kg) {
			t.Errorf("%q does not say %s and %s: %s", text, lb, kg, r.Text())
		}
	}
}
