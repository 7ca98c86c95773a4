package bot_test

import (
	"strings"
	"testing"

	"heft/bot"
)

// A word that changes nothing is left out, and the answer says so: all else is what it
// is where the word was never typed. What ends all arithmetic ends it all the same.
func TestWithoutWhatIsNotKnown(t *testing.T) {
	d := newDesk(t)
	for _, question := range []string{
		"red oak limb 14 in, 22 ft", "a 400 lb log on 3 wraps", "lower a 700 lb log, limit 600 lb, hitched at 35 ft",
		"lift 400 lb on a 3:1 with 4 guys", "rama de roble rojo de 14 pulgadas y 22 pies",
	} {
		whole, _ := answer(t, d, question)
		r, _ := answer(t, d, "about blorf, "+question)
		said := "I do not know “blorf”: left out. If it matters, say it another way.\n"
		if strings.HasPrefix(question, "rama") {
			said = "No conozco “blorf”: no se tomó en cuenta. Si importa, dígalo de otra forma.\n"
		}
		if r.Status() != bot.Answered || strings.Replace(r.Text(), said, "", 1) != whole.Text() || !strings.HasPrefix(r.Text(), r.Headline()+"\n"+said) {
			t.Errorf("%q: %s\n%s", question, r.Status(), r.Text())
		}
		if !strings.Contains(string(r.JSON()), `"problems":["`+strings.TrimSuffix(said, "\n")) {
			t.Errorf("%q: scripts are not told: %s", question, r.JSON())
		}
	}
}

// What it lacks besides is asked in the same breath.
func TestWithoutWhatIsNotKnownItLacks(t *testing.T) {
	r, _ := answer(t, newDesk(t), "about blorf, red oak limb 14 in")
	if r.Status() != bot.Needs || r.Headline() != "I do not know “blorf”. Without it: I still need the length. Type it like “22 ft long”." {
		t.Error(r.Text())
	}
}

// What an unknown word says of people, places and the day changes nothing, wherever
// it stands: the message comes to the same with it and without it.
func TestWhatChangesNothing(t *testing.T) {
	d := newDesk(t)
	for _, question := range []string{
		"are we blorf like a 400 lb log on 3 wraps", "the customer is a blorf, a 400 lb log on 3 wraps", "we are blorf, a 400 lb log on 3 wraps",
		"at blorf's, a 400 lb log on 3 wraps", "by the blorf, a 400 lb log on 3 wraps",
		"over the blorf, a 400 lb log on 3 wraps", "a 400 lb log on 3 wraps because the blorf", "blorf neighbour, a 400 lb log on 3 wraps",
		"a 400 lb log on 3 wraps, the fence is blorf", "a 400 lb log on 3 wraps, the blorf drum", "a 400 lb log on 3 wraps on the blorf", "400 lb log on the blorf 3 wraps",
		"un tronco de 400 lb en 3 vueltas en el blorf", "is that blorf, a 400 lb log on 3 wraps",
		"with the blorf, a 400 lb log on 3 wraps", "bit of a blorf, a 400 lb log on 3 wraps", "to blorf the roof, a 400 lb log on 3 wraps",
		"we blorf it, a 400 lb log on 3 wraps", "the weather is blorf, a 400 lb log on 3 wraps",
		"estamos blorf, un tronco de 400 lb en 3 vueltas", "vamos blorf, un tronco de 400 lb en 3 vueltas", "sobre el blorf, un tronco de 400 lb en 3 vueltas",
		"con el blorf, un tronco de 400 lb en 3 vueltas", "la barda es blorf, un tronco de 400 lb en 3 vueltas", "porque blorf, un tronco de 400 lb en 3 vueltas",
	} {
		without, _ := answer(t, d, strings.ReplaceAll(strings.ReplaceAll(question, "blorf's", ""), "blorf", ""))
		r, _ := answer(t, d, question)
		if r.Headline() != without.Headline() || !strings.Contains(r.Text(), " “blorf") || r.Status() != bot.Answered {
			t.Errorf("%q: %s\n%s", question, r.Status(), r.Text())
		}
	}
}

// All the words that are not known are named at once where one of them may change
// what is told, and none of a stop is lost among them.
func TestAllThatIsNotKnown(t *testing.T) {
	d := newDesk(t)
	for question, head := range map[string]string{
		"we blorf, the limb is zork, red oak limb 14 in, 22 ft":    "I do not know “blorf” and “zork”. Leave them out or say it another way.",
		"the limb is zork, we blorf, red oak limb 14 in, 22 ft":    "I do not know “zork” and “blorf”. Leave them out or say it another way.",
		"estamos blorf, la rama está zork, roble rojo 14 pulgadas": "No conozco “blorf” y “zork”. Quítelos o dígalo de otra forma.",
		"we blorf, send the log of today":                          "The log is with the supervisor: on their home tab in the workspace, or “heft log” on the machine.",
	} {
		if r, _ := answer(t, d, question); r.Headline() != head {
			t.Errorf("%q: %s", question, r.Text())
		}
	}
}

// What the message comes to without the word stands beside the choice to leave it out,
// and never where the word may be a stop.
func TestLeavingOutSaysWhatItComesTo(t *testing.T) {
	d := newDesk(t)
	for question, line := range map[string]string{
		"the limb is zork, red oak limb 14 in, 22 ft":          "1. leave out “zork”: Red oak limb, 14 in butt × 22 ft: plan on 1,950 lb.",
		"we blorf, the limb is zork, red oak limb 14 in 22 ft": "1. leave them out: Red oak limb, 14 in butt × 22 ft: plan on 1,950 lb.",
		"la rama está zork, roble rojo 14 pulgadas y 22 pies":  "1. quitar “zork”: Rama de roble rojo, 14 in en la base × 22 ft: cuente con 1,950 lb.",
	} {
		if r, _ := answer(t, d, question); !strings.Contains(r.Text(), line) {
			t.Errorf("%q: %s", question, r.Text())
		}
	}
	if r, _ := answer(t, d, "how many wraps, the tag on the zork says 4800 lb"); strings.Contains(r.Text(), "plan on") {
		t.Error(r.Text()) // the number may be of the zork
	}
	if r, _ := answer(t, d, "the limb is hpllow, red oak limb 14 in, 22 ft"); strings.Contains(r.Text(), "1,950") {
		t.Error(r.Text())
	}
}

// One tap leaves all of them out.
func TestLeavingAllOut(t *testing.T) {
	d := newDesk(t)
	whole, _ := answer(t, d, "red oak limb 14 in, 22 ft")
	for _, question := range []string{"we blorf, the limb is zork, red oak limb 14 in, 22 ft", "the limb is zork, we blorf, red oak limb 14 in, 22 ft"} {
		r, _ := answer(t, d, question)
		if c := r.Choices(); len(c) != 1 || c[0].Label != "leave them out" {
			t.Fatalf("%q: %v\n%s", question, c, r.Text())
		}
		if tapped, _ := answer(t, d, r.Choices()[0].Message); tapped.Headline() != whole.Headline() {
			t.Errorf("%q: %s", question, tapped.Text())
		}
	}
}

// A length right before a word that is not known may be of what it names: both are left
// out together, and the length is never carried on as the piece's.
func TestLengthOfWhatIsNotKnown(t *testing.T) {
	d := newDesk(t)
	for question, leave := range map[string]string{
		"a 400 lb log on 3 wraps on a 7 in blorf": "leave out “7 in blorf”", "red oak log 14 in, it has a 30 ft blorf": "leave out “30 ft blorf”",
	} {
		r, _ := answer(t, d, question)
		if c := r.Choices(); len(c) != 1 || c[0].Label != leave || strings.Contains(c[0].Message, "7 in") || strings.Contains(c[0].Message, "30 ft") {
			t.Errorf("%q: %v\n%s", question, c, r.Text())
		}
	}
	for _, question := range []string{"14 in blorf red oak limb 22 ft", "red oak limb 14 in, 22 ft, roten"} {
		if r, _ := answer(t, d, question); strings.Contains(r.Text(), "leave out “14 in") || strings.Contains(r.Text(), "leave out “22 ft") {
			t.Errorf("%q: %s", question, r.Text())
		}
	}
}

// No word is left out that may say which tree, what a number is, how wood and gear are, or
// that somebody is in danger; nor are many. What it comes to without them is a choice.
func TestWhatIsNeverLeftOut(t *testing.T) {
	d := newDesk(t)
	for _, question := range []string{
		"blorf red oak limb 14 in, 22 ft", "red oak blorf 14 in, 22 ft", "red oak limb 14 in, 22 ft 5 blorf", "red oak limb 14 in, 22 ft, 20 ft blorf",
		"blorf gum log 40 cm, 2 m", "red oak limb 14 in, 22 ft, blorf 12 ft", "blorf, zork, murk and quib: red oak limb 14 in, 22 ft",
		"the tree is blorf, red oak limb 14 in, 22 ft", "looks really blorf, red oak limb 14 in, 22 ft", "it blorfs, red oak limb 14 in, 22 ft",
		"with blorf on it, red oak limb 14 in, 22 ft", "blorf bark, red oak limb 14 in, 22 ft", "la rama está blorf, roble rojo de 14 pulgadas y 22 pies",

		"red oak limb 14 in, 22 ft, the sling looks blorf", "red oak limb 14 in, 22 ft on a blorf rope", "red oak limb 14 in, 22 ft, the drum is blorf",
		"red oak limb 14 in, 22 ft from the blorf", "red oak limb 14 in, the blorf is 22 ft", "red oak limb, 14 in across at the blorf, 22 ft",
		"blorf on the limb, red oak limb 14 in, 22 ft", "its blorf, red oak limb 14 in, 22 ft", "the red oak limb is dead and blorf, 14 in, 22 ft",
		"it has a bit of blorf, red oak limb 14 in, 22 ft", "blorf wood, red oak limb 14 in, 22 ft",
		"the block's gone blorf, red oak limb 14 in, 22 ft",
		"red oak limb 14 in, 22 ft, blorfed to the gate", "red oak limb 14 in, 22 ft, blorf loaded against the shed", "rama de roble rojo de 14 pulgadas y 22 pies, blorfada a la reja",

		"la eslinga quedó blorf, roble rojo de 14 pulgadas y 22 pies", "anchor to the blorf, red oak limb 14 in, 22 ft",
		"the fork is blorf, red oak limb 14 in, 22 ft", "the blorf weighs 400 lb, 3 wraps",
		"la eslinga se ve blorf, roble rojo de 14 pulgadas y 22 pies", "hay blorf en la rama, roble rojo de 14 pulgadas y 22 pies",
		"rama de roble rojo de 14 pulgadas, 22 pies del blorf", "la madera es blorf, roble rojo de 14 pulgadas y 22 pies",
	} {
		if r, _ := answer(t, d, question); r.Status() == bot.Answered {
			t.Errorf("%q: %s\n%s", question, r.Status(), r.Text())
		}
	}
}

// Where somebody may be hurt, or a stop is told, no figure stands beside the word, not even
// in a choice.
func TestNoFigureBesideSomebody(t *testing.T) {
	d := newDesk(t)
	for _, question := range []string{
		"his arm is blorf, red oak limb 14 in, 22 ft",
		"dave blorfed up his elbow, red oak limb 14 in, 22 ft",
		"he's blorf, red oak limb 14 in, 22 ft",
		"i'm blorf, red oak limb 14 in, 22 ft",
		"the climber looks a bit blorf, red oak limb 14 in, 22 ft",
		"dave blorfed, red oak limb 14 in, 22 ft",
		"el jefe anda blorf, roble rojo de 14 pulgadas y 22 pies",
		"the apprentice got blorfed, red oak limb 14 in, 22 ft",
		"about blorf, he is hurt",
		"about blorf, red oak limb 14 in, 22 ft next to a power line",
		"about blorf, red oak limb 14 in, 22 ft, rotten",
		"the wood is unsound, red oak limb 14 in, 22 ft",
	} {
		if r, _ := answer(t, d, question); r.Status() == bot.Answered || strings.Contains(r.Text(), "1,950") {
			t.Errorf("%q: %s\n%s", question, r.Status(), r.Text())
		}
	}
}
