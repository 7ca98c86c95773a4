package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// A word that may be a slip of one that stops is asked about as such, and never
// offered to be left out.
func TestASlipOfAStopIsAskedAbout(t *testing.T) {
	for text, want := range map[string]string{
		"red oak limb 14 in 22 ft, its crakced":                       "do you mean “cracked”? Then stop",
		"how many wraps for a 600 lb limb, the crotch is splitt":      "do you mean “split”? Then stop",
		"la rama esta podrdida, 14 pulgadas y 22 pies, de roble rojo": "¿quiere decir “podrido”? Entonces pare",
	} {
		r, _, _ := newDesk(t).Answer(event(text), bot.Turn{})
		if r.Status() != bot.Needs || !strings.Contains(r.Headline(), want) || len(r.Choices()) > 0 {
			t.Errorf("%q: %s, choices %v", text, r.Text(), r.Choices())
		}
	}
}
