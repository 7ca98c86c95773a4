package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// TestItsWithoutItsApostropheIsABareNumber: "its 60 ft" is read as "it's 60 ft" is, the one thing
// of the talk that it can change. Twice 60 ft and the 20 ft of tail that is planned make 140.
func TestItsWithoutItsApostropheIsABareNumber(t *testing.T) {
	for _, told := range []string{"its 60 ft", "it's 60 ft", "60 ft"} {
		d := newDesk(t)
		_, _, talk := d.Answer(event("700 lb, hitched at 50 ft, how much rope"), bot.Turn{})
		if r, _, _ := d.Answer(event(told), talk); !strings.HasPrefix(r.Headline(), "Rope: 140 ft") {
			t.Errorf("%q: %s", told, r.Text())
		}
	}
}
