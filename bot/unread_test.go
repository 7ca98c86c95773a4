package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// What a message comes to without a word that is not known is what it comes to
// where the word was never typed; one tap gives the whole of it. What ends all
// arithmetic ends it all the same.
func TestWithoutWhatIsNotKnown(t *testing.T) {
	d := newDesk(t)
	for _, question := range []string{
		"red oak limb 14 in, 22 ft", "a 400 lb log on 3 wraps", "lower a 700 lb log, limit 600 lb, hitched at 35 ft",
		"lift 400 lb on a 3:1 with 4 guys", "rama de roble rojo de 14 pulgadas y 22 pies",
	} {
		whole, _ := answer(t, d, question)
		r, _ := answer(t, d, "about blorf, "+question)
		head := "I do not know “blorf”. Without it: "
		if strings.HasPrefix(question, "rama") {
			head = "No conozco “blorf”. Sin eso: "
		}
		if r.Status() != bot.Needs || r.Headline() != head+whole.Headline() {
			t.Errorf("%q: %s\n%s", question, r.Status(), r.Text())
		}
		if len(r.Choices()) != 1 {
			t.Fatalf("%q: %d choices", question, len(r.Choices()))
		}
		if tapped, _ := answer(t, d, r.Choices()[0].Message); tapped.Text() != whole.Text() {
			t.Errorf("%q: the tap gives\n%s\nnot\n%s", question, tapped.Text(), whole.Text())
		}
	}
}

// No word is left out that may say which tree, what a number is, or that
// somebody is in danger; nor are many.
func TestWhatIsNeverLeftOut(t *testing.T) {
	d := newDesk(t)
	for _, question := range []string{
		"blorf red oak limb 14 in, 22 ft", "red oak blorf 14 in, 22 ft", "red oak limb 14 in, 22 ft 5 blorf", "red oak limb 14 in, 22 ft, 20 ft blorf",
		"blorf gum log 40 cm, 2 m", "red oak limb 14 in, 22 ft, blorf 12 ft", "blorf, zork, murk and quib: red oak limb 14 in, 22 ft",
		"the tree is blorf, red oak limb 14 in, 22 ft", "looks really blorf, red oak limb 14 in, 22 ft", "it blorfs, red oak limb 14 in, 22 ft",
		"with blorf on it, red oak limb 14 in, 22 ft", "blorf bark, red oak limb 14 in, 22 ft", "la rama está blorf, roble rojo de 14 pulgadas y 22 pies",
		"the wood is unsound, red oak limb 14 in, 22 ft", "about blorf, red oak limb 14 in, 22 ft next to a power line", "about blorf, he is hurt", "about blorf, red oak limb 14 in, 22 ft, rotten",
	} {
		if r, _ := answer(t, d, question); r.Status() == bot.Answered || strings.Contains(r.Text(), "plan on 1") || strings.Contains(r.Text(), "plan on 3") {
			t.Errorf("%q: %s\n%s", question, r.Status(), r.Text())
		}
	}
}
