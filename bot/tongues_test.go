package bot_test

import (
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"heft/bot"
	"heft/parser"
	"heft/parser/language"
)

// byLanguage answers the accepted questions in English and in another
// language.
func byLanguage(t *testing.T, tag string, check func(question string, english, own bot.Reply)) {
	t.Helper()
	d := newDesk(t)
	_, asked := golden(t, "en")
	for _, a := range asked {
		english, _ := answer(t, d.Speaking("en"), a.question)
		own, _ := answer(t, d.Speaking(tag), a.question)
		check(a.question, english, own)
	}
}

var digits = regexp.MustCompile(`[0-9][0-9,.]*[0-9]|[0-9]|½`)

// TestALanguageTakesNothingAway: what is said in another language is as much
// as in English, with the same figures, line by line, and ends in its own
// reminder.
func TestALanguageTakesNothingAway(t *testing.T) {
	for _, l := range translations(t) {
		kinds := map[string]bool{}
		byLanguage(t, l.Tag, func(question string, english, own bot.Reply) {
			e, o := decode(t, english), decode(t, own)
			kinds[o.Status+" "+o.Intent] = true
			if o.Language != l.Tag || e.Language != "en" {
				t.Errorf("%q: languages %q and %q", question, e.Language, o.Language)
			}
			if len(o.Cautions) != len(e.Cautions) || len(o.Problems) != len(e.Problems) || o.Status != e.Status {
				t.Errorf("%q: %d cautions for %d, %d problems for %d", question, len(o.Cautions), len(e.Cautions), len(o.Problems), len(e.Problems))
			}
			is, was := strings.Split(own.Text(), "\n"), strings.Split(english.Text(), "\n")
			if last := is[len(is)-1]; last != l.Sentences[was[len(was)-1]] || !slices.Contains(o.Cautions, last) {
				t.Errorf("%q: no reminder in %q", question, own.Text())
			}
			for i := range min(len(is), len(was)) {
				a, b := digits.FindAllString(was[i], -1), digits.FindAllString(is[i], -1)
				slices.Sort(a)
				slices.Sort(b)
				if !slices.Equal(a, b) {
					t.Errorf("%q: figures %q became %q in %q", question, a, b, is[i])
				}
			}
			if len(is) != len(was) {
				t.Errorf("%q: %d lines for %d", question, len(is), len(was))
			}
		})
		if len(kinds) < 15 {
			t.Errorf("only these kinds of answers: %v", kinds)
		}
	}
}

// The words that no English sentence does without, and no other language has.
var englishWords = regexp.MustCompile(`(?i)(^|[ (])(the|of|to|and|or|is|are|it|its|you|your|at|with|from|not|than|up|on|down|for|by)([ ,.:;)]|$)`)

// TestNoEnglishIsLeft: neither in a reply nor in what stands in its picture;
// the crew's own words are given back between quotation marks.
func TestNoEnglishIsLeft(t *testing.T) {
	quoted := regexp.MustCompile(`“[^”]*”`)
	for _, l := range translations(t) {
		scenes, replies := 0, 0
		check := func(question string, own bot.Reply) {
			replies++
			all := strings.Split(own.Text(), "\n")
			if s := own.Scene(); s != nil {
				scenes++
				all = append(all, s.Labels()...)
			}
			for _, line := range all {
				if w := englishWords.FindString(quoted.ReplaceAllString(line, "")); w != "" {
					t.Errorf("%q: %q in %q", question, w, line)
				}
			}
		}
		byLanguage(t, l.Tag, func(question string, _, own bot.Reply) { check(question, own) })
		d := newDesk(t)
		_, asked := golden(t, l.Tag+"-asked")
		for _, a := range asked {
			if r, _ := answer(t, d, a.question); decode(t, r).Language == l.Tag {
				check(a.question, r)
			}
		}
		if scenes < 5 || replies < 100 {
			t.Errorf("only %d scenes in %d replies", scenes, replies)
		}
	}
}

// TestTheConversationKeepsItsLanguage: a message whose words tell no language
// is answered in the one that was spoken last, and the first in English.
func TestTheConversationKeepsItsLanguage(t *testing.T) {
	d := newDesk(t)
	silent, spanish := d.Speaking(""), d.Speaking("es")
	first, _, _ := silent.Answer(event("600 lb limb"), bot.Turn{})
	if got := decode(t, first).Language; got != "en" {
		t.Errorf("the first message is answered in %q", got)
	}
	for _, opening := range []string{"14 in red oak limb 22 ft", "limb 14 in 22 ft", "hello", "power line", "600 lb limb without brush", "600 lb log; 300 lb log"} {
		_, _, turn := spanish.Answer(event(opening), bot.Turn{})
		for _, text := range []string{"600 lb limb", "what about 16 ft", "power line", "600 lb log; 300 lb log", "help"} {
			var r bot.Reply
			r, _, turn = silent.Answer(event(text), turn)
			if got := decode(t, r).Language; got != "es" || !strings.HasSuffix(r.Text(), "del equipo.") {
				t.Errorf("%q, then %q: %q: %s", opening, text, got, r.Text())
			}
		}
		r, _, _ := d.Speaking("en").Answer(event("600 lb limb"), turn)
		if got := decode(t, r).Language; got != "en" {
			t.Errorf("%q, then English: %q", opening, got)
		}
	}
}

// TestAnUnknownLanguageIsAnsweredInEnglish: never with an empty sentence.
func TestAnUnknownLanguageIsAnsweredInEnglish(t *testing.T) {
	d := newDesk(t)
	want, _ := answer(t, d, "600 lb limb, 1 wrap")
	got, _ := answer(t, d.Speaking("tlh"), "600 lb limb, 1 wrap")
	if got.Text() != want.Text() || decode(t, got).Language != "en" {
		t.Errorf("%s", got.JSON())
	}
}

// TestManyCrewsAtOnce: the desk keeps the languages of many goroutines apart.
func TestManyCrewsAtOnce(t *testing.T) {
	d := newDesk(t)
	const text = "600 lb limb, 1 wrap"
	var crews sync.WaitGroup
	for i := range 16 {
		tag := []string{"en", "es"}[i%2]
		mine := d.Speaking(tag)
		want, _ := answer(t, mine, text)
		crews.Go(func() {
			for range 50 {
				if r, _ := answer(t, mine, text); r.Text() != want.Text() {
					t.Errorf("%s: %s", tag, r.Text())
				}
			}
		})
	}
	crews.Wait()
}

// TestWhatToTypeIsUnderstood: no reply tells a crew to type a word that the
// desk then does not know.
func TestWhatToTypeIsUnderstood(t *testing.T) {
	d := newDesk(t)
	quoted := regexp.MustCompile(`“([^”%]*)”`)
	said := listen(t).sentences
	all, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range all {
		examples := bot.Typed(l.Tag)
		for sentence := range said {
			own := sentence
			if l.Tag != "en" {
				own = l.Sentences[sentence]
			}
			for _, m := range quoted.FindAllStringSubmatch(own, -1) {
				examples = append(examples, m[1])
			}
		}
		if len(examples) < 40 {
			t.Errorf("%s: only %d examples", l.Tag, len(examples))
		}
		for _, e := range examples {
			ask := d.Reads(e)
			if ask != nil && (ask.Final() || slices.Contains([]parser.Kind{parser.Unknown, parser.Twist, parser.Girth, parser.OddNumber}, ask.Kind)) {
				t.Errorf("%s: “%s” is to be typed, and not understood: %v", l.Tag, e, ask)
			}
		}
	}
}
