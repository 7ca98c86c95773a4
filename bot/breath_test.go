package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// Pieces told in one breath are answered one by one, and added up.
func TestPiecesInOneBreath(t *testing.T) {
	for text, want := range map[string][]string{
		"3 logs of black walnut, 15 in x 8 ft, 17 x 6, 20 by 5 and a half, total": {"3 pieces", "17 in × 6 ft", "20 in × 5 ft 6 in"},
		"which is heavier, white oak 40 cm x 2 m or white poplar 35 cm x 3 m":     {"2 pieces", "White oak piece, 40 cm × 2 m", "White poplar piece, 35 cm × 3 m"},
	} {
		r, e, _ := newDesk(t).Answer(event(text), bot.Turn{})
		for _, w := range want {
			if !strings.Contains(r.Text(), w) {
				t.Errorf("%q: %q is missing in\n%s", text, w, r.Text())
			}
		}
		if r.Status() != bot.Answered || e.Words != text {
			t.Errorf("%q: %s, entry %q", text, r.Status(), e.Words)
		}
	}
}
