package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// TestClearsByHeightAlone: where block, line, piece and roof have their heights, nothing
// else is asked for; where a place is told, or what is passed is somebody, it is.
func TestClearsByHeightAlone(t *testing.T) {
	d := newDesk(t)
	for _, x := range []struct{ ask, head string }{
		{"block at 38 ft, 6 ft of line out, 14 ft limb, does it clear the shed roof 12 ft high", "CLEARS BY 6 ft"},
		{"block at 38 ft, 6 ft of line out, 14 ft limb, does it clear the shed roof 17 ft high", "CLEARS BY ONLY 1 ft"},
		{"block at 38 ft, 6 ft of line out, 14 ft limb, does it clear the shed roof 20 ft high", "HANGS 2 ft BELOW"},
		{"600 lb limb, block at 38 ft, 6 ft of line out, 14 ft long, does it clear the roof 12 ft high", "CLEARS BY 6 ft"},
		{"polea a 12 m, 2 m de línea afuera, rama de 4 m, libra el techo de 3 m de alto?", "PASA LIBRE POR 3 m"},
		{"block at 38 ft, 6 ft of line out, does it clear the shed roof 12 ft high", "I still need"},
		{"block at 38 ft, 6 ft of line out, 14 ft limb, does it clear the climber 12 ft up", "I still need"},
		{"block at 38 ft, 6 ft of line out, 14 ft limb, 8 ft to the side, does it clear the shed roof 12 ft high", "I still need"},
		{"block at 18 ft, 6 ft of line out, 14 ft limb, does it clear the roof 12 ft high", "Line out 20 ft does not go"},
	} {
		r, _, _ := d.Answer(event(x.ask), bot.Turn{})
		if !strings.HasPrefix(r.Headline(), x.head) {
			t.Errorf("%q: %q, want %q", x.ask, r.Headline(), x.head)
		}
	}
}
