package bot_test

import (
	"testing"

	"heft/bot"
)

// spanishScenes show that the captions of another language find room.
func spanishScenes(t *testing.T) map[string]*bot.Scene {
	t.Helper()
	d := newDesk(t).Speaking("es")
	of := func(question string) *bot.Scene {
		r, _ := answer(t, d, question)
		if r.Scene() == nil {
			t.Fatalf("%q has no picture: %s", question, r.Text())
		}
		return r.Scene()
	}
	return map[string]*bot.Scene{
		"lift-spanish":    of("600 lb log, lift on a 3:1, 4 guys, hitched at 30 ft"),
		"lower-spanish":   of("600 lb limb, 1 wrap, two on the rope, hitched at 35 ft, 40° between the legs"),
		"fit-spanish":     of("limb 20 ft long, stand it up on a 2:1, tied 12 ft from the cut, block 20 ft above the cut, 20° above horizontal, hitched at 34 ft"),
		"raise-spanish":   of("600 lb limb 20 ft long, stand it up on a 2:1, tied 12 ft from the cut, block 20 ft above the cut, 20° above horizontal, hitched at 34 ft, 3 guys"),
		"refused-spanish": of("600 lb limb 20 ft long, stand it up on a 2:1, tied 16 ft from the cut, block 15 ft above the cut, 20° above horizontal"),
		"swing-spanish":   of("swing of a 400 lb limb, 18 ft of line out, 45° from plumb, hitched at 40 ft"),
	}
}
