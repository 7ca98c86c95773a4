package bot_test

import (
	"encoding/json"
	"slices"
	"testing"

	"heft/bot"
)

// A question is read back in the language of whoever reads it: trees, parts
// and figures, but for the figures of their own language, which stay as they
// were typed.
func TestAReadingIsInTheLanguageOfItsReader(t *testing.T) {
	d := newDesk(t)
	for _, c := range []struct{ question, english, spanish string }{
		{"rama de roble rojo 14 pulgadas, 22 pies, amarrada a 35 pies",
			"red oak, limb, butt diameter 14 in, length 22 ft, hitch height 35 ft",
			"roble rojo, rama, diámetro en la base 14 pulgadas, largo 22 pies, altura del amarre 35 pies"},
		{"dead white ash log 16 inches by 8 and a half feet",
			"white ash, log, dead, diameter 16 inches, length 8 and a half feet",
			"fresno blanco, troza, madera muerta, diámetro 16 in, largo 8.5 ft"},
		{"red oak 14 in 22 ft", "red oak, diameter 14 in, length 22 ft", "roble rojo, diámetro 14 in, largo 22 ft"},
		{"two people lift a 600 pound limb with a rope that breaks at 16,000 pounds on a 2:1",
			"limb, 2 people, weight 600 pound, rope's strength 16,000 pounds, parts of line 2:1",
			"rama, 2 personas, peso 600 lb, resistencia de la cuerda 16,000 lb, partes de cuerda 2"},
		{"cuánto pesa una rama de aguacate de 30 a 35 centímetros y 3 metros",
			"avocado, limb, butt diameter 30–35 cm, length 3 m", "aguacate, rama, diámetro en la base 30 a 35 centímetros, largo 3 metros"},
	} {
		_, e := answer(t, d, c.question)
		if got := e.Reading(bot.VoiceOf("")); got != c.english {
			t.Errorf("%q in English: %q, want %q", c.question, got, c.english)
		}
		if got := e.Reading(bot.VoiceOf("es")); got != c.spanish {
			t.Errorf("%q in Spanish: %q, want %q", c.question, got, c.spanish)
		}
	}
}

// What a job holds is told in the language of whoever reads it.
func TestAJobIsToldInTheLanguageOfItsReader(t *testing.T) {
	_, e := answer(t, newDesk(t), "trabajo: límite 600 libras, la cuerda rompe a 16,000 libras, métrico")
	for tag, want := range map[string][]string{
		"en": {"limit 600 lb", "rope's strength 16,000 lb", "metric units"},
		"es": {"límite 600 libras", "resistencia de la cuerda 16,000 libras", "unidades métricas"},
	} {
		if _, got := bot.JobOf(e).Told(bot.VoiceOf(tag)); !slices.Equal(got, want) {
			t.Errorf("in %s: %q, want %q", tag, got, want)
		}
	}
}

// The language of a day is that of most of what was typed, whatever its
// buttons say.
func TestTheLanguageOfADay(t *testing.T) {
	d := newDesk(t)
	entry := func(id, text string) bot.Entry {
		_, e := answer(t, d, text)
		e.ID = id
		return e
	}
	english, spanish, silent := entry("1", "how heavy is a red oak limb 14 in 22 ft"), entry("2", "cuánto pesa una rama de roble rojo de 14 in y 22 ft"), entry("3", "600 kg")
	stopped, pressed := entry("4", "hay cables de luz"), entry(bot.PressID("1.1", "U1", "1"), "show the numbers, red oak limb, 14 in at the butt, 22 ft long")
	older, torn := spanish, spanish
	older.Schema, torn.Question, torn.Result = bot.SchemaVersion+1, json.RawMessage("{"), nil
	for name, c := range map[string]struct {
		entries []bot.Entry
		want    string
	}{
		"nothing": {nil, "en"}, "English": {[]bot.Entry{english, english, spanish}, "en"}, "Spanish": {[]bot.Entry{english, spanish, spanish}, "es"},
		"as many": {[]bot.Entry{spanish, english}, "en"}, "none that tells": {[]bot.Entry{silent}, "en"}, "one that tells": {[]bot.Entry{silent, silent, spanish}, "es"},
		"a question that was stopped": {[]bot.Entry{stopped}, "es"}, "buttons": {[]bot.Entry{spanish, pressed, pressed, pressed}, "es"},
		"rows that cannot be read": {[]bot.Entry{older, torn}, "en"},
	} {
		if got := bot.Spoken(c.entries).Tag(); got != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}
