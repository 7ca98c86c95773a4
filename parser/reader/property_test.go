package reader_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"heft/parser"
	"heft/parser/reader"
)

// read is a phrasing's meaning as text, or the ask that stands in its way.
// What a fix was typed as is left out: it changes with the typing.
func read(r *reader.Reader, text string) string {
	q, err := r.Read(text)
	if err != nil {
		return "asked back: " + err.Error()
	}
	m := meant(q)
	if i := strings.LastIndex(m.facts["fix"], ">"); i >= 0 {
		m.facts["fix"] = strings.ToLower(strings.Join(strings.Fields(m.facts["fix"][i:]), " ")) // it repeats what was typed
	}
	for _, fact := range []string{"passed", "left"} { // what is said back keeps a courtesy behind it
		if said, ok := m.facts[fact]; ok {
			m.facts[fact] = strings.TrimSuffix(said, " please")
		}
	}
	return m.String() + " units=" + m.units
}

// TestDressChangesNothing dresses every phrasing up: capitals, spaces, marks
// at the end, courtesy around it.
func TestDressChangesNothing(t *testing.T) {
	r := newReader(t)
	dresses := map[string]func(string) string{
		"capitals":      strings.ToUpper,
		"double spaces": func(s string) string { return strings.ReplaceAll(s, " ", "  ") },
		"a full stop":   func(s string) string { return s + "." },
		"question mark": func(s string) string { return s + "??" },
		"exclamations":  func(s string) string { return s + " !!!" },
		"please":        func(s string) string { return s + " please" },
		"greeting":      func(s string) string { return "ok so, " + s },
		"emoji":         func(s string) string { return "🌲 " + s + " 🙏" },
		"a new line":    func(s string) string { return "\n" + s + "\n" },
		"upside down":   func(s string) string { return "¿" + s + "?" },
		"no accents":    unaccented.Replace,
		"curly quotes":  strings.NewReplacer("'", "’", `"`, "”").Replace,
	}
	for _, p := range readCorpora(t) {
		if p.want.intentOnly || p.want.facts["intent"] == string(parser.AskHelp) {
			continue
		}
		want := read(r, p.text)
		for name, dress := range dresses {
			if asks[name] && tellsDay(p) {
				continue
			}
			if got := read(r, dress(p.text)); got != want {
				t.Errorf("%s: with %s, %q\n  got  %s\n  want %s", p.at, name, dress(p.text), got, want)
			}
		}
	}
}

// asks are the dresses that make a question of what is told.
var asks = map[string]bool{"question mark": true, "upside down": true}

// tellsDay says whether a phrasing tells what holds today without saying that it is of the
// job: with a question mark behind, it tells nothing.
func tellsDay(p phrasing) bool {
	text := strings.ToLower(p.text)
	return p.want.facts["intent"] == string(parser.AskJob) && !strings.Contains(text, "job") && !strings.Contains(text, "trabajo") && len(p.want.facts) > 1
}

// phrases each say one thing by themselves.
var phrases = map[string][]string{
	"en": {
		"red oak limb", "14 in at the butt", "6 in at the tip", "22 ft long", "hitched at 35 ft", "3 wraps", "2 guys on the rope",
		"120 ft of rope", "30 degrees between the legs", "wet rope", "limit 900 lb",
	},
	"es": {
		"rama de roble rojo", "14 pulgadas en la base", "6 pulgadas en la punta", "22 pies de largo", "amarrada a 35 pies", "3 vueltas",
		"dos hombres en la cuerda", "120 pies de cuerda", "30 grados entre las cuerdas", "cuerda mojada", "límite 900 libras",
	},
}

// TestOrderChangesNothing says the same phrases in any order and with any
// pause between them.
func TestOrderChangesNothing(t *testing.T) {
	r := newReader(t)
	rapid.Check(t, func(t *rapid.T) {
		phrases := phrases[rapid.SampledFrom(tongues).Draw(t, "language")]
		n := rapid.IntRange(2, len(phrases)).Draw(t, "n")
		some := rapid.Permutation(phrases).Draw(t, "phrases")[:n]
		other := rapid.Permutation(some).Draw(t, "order")
		pause := rapid.SampledFrom([]string{", ", ". ", "; ", "\n", " / "}).Draw(t, "pause")
		a, b := strings.Join(some, ", "), strings.Join(other, pause)
		if got, want := read(r, b), read(r, a); got != want || strings.HasPrefix(got, "asked") {
			t.Fatalf("%q\n  got  %s\n%q\n  got  %s", a, want, b, got)
		}
	})
}

// TestBareSizesInAnyOrder leaves the words of the sizes out.
func TestBareSizesInAnyOrder(t *testing.T) {
	r := newReader(t)
	said := map[string][]string{
		"en": {"red oak limb", "14 in", "22 ft", "hitched at 35 ft"},
		"es": {"rama de roble rojo", "14 pulgadas", "22 pies", "amarrada a 35 pies"},
	}
	rapid.Check(t, func(t *rapid.T) {
		order := rapid.Permutation(said[rapid.SampledFrom(tongues).Draw(t, "language")]).Draw(t, "order")
		const want = "butt_diameter_m=0.3556 imperial hitch_height_m=10.668 imperial intent=lower length_m=6.7056 imperial shape=limb species=Quercus rubra units=imperial"
		if got := read(r, strings.Join(order, ", ")); got != want {
			t.Fatalf("%q\n  got  %s\n  want %s", order, got, want)
		}
	})
}

// TestSpellingsOfAUnitAreOne writes one length, weight and angle in every
// spelling of its unit.
func TestSpellingsOfAUnitAreOne(t *testing.T) {
	r := newReader(t)
	for frame, units := range map[string][]string{
		"red oak log 14# 8 ft long":                    {" in", "in", " inch", " inches", "-inch", `"`, "”", "″", "''", " IN", " in."},
		"red oak log 14 in, # long":                    {"8 ft", "8ft", "8 foot", "8 feet", "8-foot", "8'", "8’", "8′", "8 FT", "8 ft.", "96 in", "eight feet"},
		"european beech log # dia, 7 m long":           {"35 cm", "35cm", "350 mm", "350mm", "0.35 m", "35 centimetres", "350 millimeters", ".35 m"},
		"european beech log 35 cm, # long":             {"7 m", "7m", "7 metres", "7 meters", "700 cm", "7 mtr"},
		"limb weighs #":                                {"600 lb", "600lb", "600 lbs", "600 pounds", "600#", "six hundred pounds", "600 LBS", "600 lb."},
		"log weighs #":                                 {"1200 kg", "1,200 kg", "1.2 t", "1.2t", "1.2 tonnes", "1200 kilos", "1200kgs"},
		"tronco de roble rojo de # de grueso y 8 pies": {"14 pulgadas", "14 pulg", "14 PULGADAS", `14"`, "14 in", "14in", "catorce pulgadas", "14,0 pulgadas", "14.0 pulgadas"},
		"tronco de roble rojo de 22 pulgadas y # de largo": {
			"35 pies", "35 ft", "35'", "35pies", "treinta y cinco pies", "treinta y cinco PIES", "35.0 pies"},
		"tronco de haya europea de # de grueso y 7 m": {"35 cm", "35cm", "350 mm", "0.35 m", "0,35 m", ".35 m", "35 centímetros", "35 centimetros", "treinta y cinco centímetros"},
		"la rama pesa #":             {"600 libras", "600 lb", "600 lbs", "600#", "seiscientas libras", "600 LIBRAS"},
		"el tronco pesa #":           {"1200 kilos", "1,200 kg", "1200 kilogramos", "1.2 t", "1,2 t", "mil doscientos kilos", "mil doscientos kg"},
		"500 lb, # between the legs": {"30 degrees", "30°", "30 deg", "30 degs", "30º"},
	} {
		want := read(r, strings.Replace(frame, "#", units[0], 1))
		for _, u := range units {
			text := strings.Replace(frame, "#", u, 1)
			if got := read(r, text); got != want || strings.HasPrefix(got, "asked") {
				t.Errorf("%q\n  got  %s\n  want %s", text, got, want)
			}
		}
	}
}

// ways are the ways to say one fact, which a corpus would write as given.
type ways struct {
	fact string
	said []string
}

// waysIn has them by language, in one order.
var waysIn = map[string][]ways{
	"en": {
		{"", []string{"red oak limb", "limb red oak", "a red oak limb"}},
		{"butt_diameter_m=0.3556 imperial", []string{"14 in", "14 in butt", "butt 14 in", "14 in at the cut", "14 in thick", "diameter 14 in"}},
		{"tip_diameter_m=0.1524 imperial", []string{"6 in tip", "tip 6 in", "6 in at the tip", "6 in small end"}},
		{"length_m=6.7056 imperial", []string{"22 ft", "22 ft long", "length 22 ft"}},
		{"hitch_height_m=10.668 imperial", []string{"hitched at 35 ft", "35 ft up", "hitch 35 ft", "35 ft hitch", "block at 35 ft", "tied off at 35 ft", "lower from 35 ft"}},
		{"wraps=3", []string{"3 wraps", "with 3 wraps", "3 wraps on the drum"}},
		{"people=2", []string{"2 guys", "2 guys on the rope", "two of us"}},
		{"rope_m=36.576 imperial", []string{"120 ft of rope", "120 ft rope", "rope 120 ft"}},
		{"limit_kg=408.233 imperial", []string{"limit 900 lb", "900 lb max", "under 900 lb"}},
	},
	"es": {
		{"", []string{"rama de roble rojo", "roble rojo rama", "una rama de roble rojo"}},
		{"butt_diameter_m=0.3556 imperial", []string{"14 pulgadas", "14 pulgadas en la base", "base 14 pulgadas", "14 pulgadas en el corte", "14 pulgadas de grueso", "de 14 pulgadas", "diámetro de 14 pulgadas"}},
		{"tip_diameter_m=0.1524 imperial", []string{"6 pulgadas en la punta", "punta 6 pulgadas", "6 pulgadas de punta", "6 pulgadas en la parte delgada"}},
		{"length_m=6.7056 imperial", []string{"22 pies", "22 pies de largo", "de 22 pies", "largo de 22 pies"}},
		{"hitch_height_m=10.668 imperial", []string{"amarrada a 35 pies", "enganchada a 35 pies", "polea a 35 pies", "a 35 pies de altura", "35 pies arriba", "bajar desde 35 pies", "amarre a 35 pies", "desde 35 pies"}},
		{"wraps=3", []string{"3 vueltas", "con tres vueltas", "3 vueltas en el tambor"}},
		{"people=2", []string{"2 hombres", "somos dos", "dos en la cuerda", "con dos personas"}},
		{"rope_m=36.576 imperial", []string{"120 pies de cuerda", "cuerda de 120 pies", "cuerda 120 pies", "soga de 120 pies"}},
		{"limit_kg=408.233 imperial", []string{"límite 900 libras", "900 libras máximo", "menos de 900 libras", "límite de 900 libras"}},
	},
}

// ands join two facts in a language.
var ands = map[string]string{"en": " and ", "es": " y "}

// saysAnother tells whether facts run together say another one outright.
func saysAnother(text string) bool {
	for _, said := range []string{
		"en el tambor de 14 pulgadas", // how wide the drum is
		"en la cuerda de 22 pies",     // how long the rope is
	} {
		if strings.Contains(text, said) {
			return true
		}
	}
	// A "punta" of which no limb is told is a top, and 6 in its butt.
	return strings.Contains(text, "punta") && !strings.Contains(text, "rama") && !strings.Contains(text, "limb")
}

// TestRunTogetherNothingIsMisread runs facts into one another with and
// without pauses, in any order, and in either language by turns: what comes
// out must be what was said, or an ask.
func TestRunTogetherNothingIsMisread(t *testing.T) {
	r := newReader(t)
	rapid.Check(t, func(t *rapid.T) {
		language := rapid.SampledFrom(tongues).Draw(t, "language")
		mixed := rapid.IntRange(0, 3).Draw(t, "mixed") == 0
		all := waysIn[language]
		var b strings.Builder
		said := map[string]bool{}
		order := rapid.Permutation(indexes(len(all))).Draw(t, "order")[:rapid.IntRange(2, len(all)).Draw(t, "n")]
		for _, i := range order {
			w := all[i]
			if mixed {
				w = waysIn[rapid.SampledFrom(tongues).Draw(t, "tongue")][i]
			}
			b.WriteString(rapid.SampledFrom(w.said).Draw(t, "said"))
			b.WriteString(rapid.SampledFrom([]string{" ", " ", ", ", ands[language], ". "}).Draw(t, "pause"))
			said[strings.TrimPrefix(w.fact, "butt_")] = true
		}
		if saysAnother(b.String()) {
			return
		}
		q, err := r.Read(b.String())
		if err != nil {
			return
		}
		for k, v := range meant(q).facts {
			fact := strings.TrimPrefix(k+"="+v, "butt_")
			if _, number := q.Get(parser.Field(k)); number && !said[fact] {
				t.Fatalf("%q is read with %s: %s", b.String(), fact, meant(q))
			}
		}
	})
}

func indexes(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return out
}
