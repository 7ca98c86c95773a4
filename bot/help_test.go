package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// TestHelpIsOfTheKindThatIsAskedFor: who asks how to ask is shown questions of
// that kind, and every one of them is answered without another word.
func TestHelpIsOfTheKindThatIsAskedFor(t *testing.T) {
	d := newDesk(t)
	for _, x := range []struct{ ask, intent string }{
		{"so how do i ask you the wraps thing whats the words", "lower"},
		{"what do you need from me for a swing", "swing"},
		{"how do i ask how heavy a log is", "weight"},
		{"what do you need to know to lift a log", "lift"},
		{"how do i ask you about a snubbed log", "drop"},
		{"what do you need from me to stand a limb up", "raise"},
		{"how do i ask about the notch", "notch"},
		{"how do i ask you how much rope", "rope"},
		{"how do i ask for the load on the block", "block-load"},
		{"what do you need to know for the cut plan, in pieces under what", "cut-plan"},
		{"what do you need from me for the safety factor", "gear"},
		{"how do i ask if the anchor limb is a good anchor", "anchor"},
		{"how do i ask you where it balances, the balance point", "balance"},
		{"como te pregunto cuanto pesa un tronco, que datos quieres", "weight"},
		{"qué datos quieres para las vueltas", "lower"},
		{"qué datos necesitas para un columpio", "swing"},
		{"cómo te pregunto para levantar un tronco", "lift"},
		{"cómo te pregunto cuánta cuerda", "rope"},
		{"qué datos quieres para la muesca", "notch"},
		{"cómo te pregunto dónde se equilibra", "balance"},
	} {
		r, _, _ := d.Answer(event(x.ask), bot.Turn{})
		o := decode(t, r)
		lines := strings.Split(r.Text(), "\n")
		if o.Intent != "help" || len(lines) < 3 {
			t.Errorf("%q: %s", x.ask, r.Text())
			continue
		}
		for _, line := range lines[1 : len(lines)-1] {
			said, _, _ := d.Answer(event(strings.Trim(line, "“”")), bot.Turn{})
			if o := decode(t, said); o.Status != "answered" || o.Intent != x.intent {
				t.Errorf("%q shows %q, which is %s of %s: %s", x.ask, line, o.Status, o.Intent, said.Headline())
			}
		}
	}
}

// TestAPieceIsNoCallForHelp: a whole question goes before the words around it.
func TestAPieceIsNoCallForHelp(t *testing.T) {
	d := newDesk(t)
	for _, ask := range []string{"help me lower a 14 in red oak limb 22 ft with 3 wraps", "how do i ask, 600 lb limb 3 wraps", "ayuda para bajar 600 lb con 3 vueltas"} {
		r, _, _ := d.Answer(event(ask), bot.Turn{})
		if o := decode(t, r); o.Intent != "lower" {
			t.Errorf("%q is %s: %s", ask, o.Intent, r.Text())
		}
	}
}
