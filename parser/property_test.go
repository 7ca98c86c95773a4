package parser_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"heft/parser"
)

// read is a phrasing's meaning as text, or the ask that stands in its way.
// What a fix was typed as is left out: it changes with the typing.
func read(r *parser.Reader, text string) string {
	q, err := r.Read(text)
	if err != nil {
		return "asked back: " + err.Error()
	}
	m := meant(q)
	if i := strings.LastIndex(m.facts["fix"], ">"); i >= 0 {
		m.facts["fix"] = m.facts["fix"][i:]
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
		"curly quotes":  strings.NewReplacer("'", "’", `"`, "”").Replace,
	}
	for _, p := range readCorpora(t) {
		if p.want.intentOnly || p.want.facts["intent"] == string(parser.AskHelp) {
			continue
		}
		want := read(r, p.text)
		for name, dress := range dresses {
			if got := read(r, dress(p.text)); got != want {
				t.Errorf("%s: with %s, %q\n  got  %s\n  want %s", p.at, name, dress(p.text), got, want)
			}
		}
	}
}

// phrases each say one thing by themselves.
var phrases = []string{
	"red oak limb", "14 in at the butt", "6 in at the tip", "22 ft long", "hitched at 35 ft", "3 wraps", "2 guys on the rope",
	"120 ft of rope", "30 degrees between the legs", "wet rope", "limit 900 lb",
}

// TestOrderChangesNothing says the same phrases in any order and with any
// pause between them.
func TestOrderChangesNothing(t *testing.T) {
	r := newReader(t)
	rapid.Check(t, func(t *rapid.T) {
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
	rapid.Check(t, func(t *rapid.T) {
		order := rapid.Permutation([]string{"red oak limb", "14 in", "22 ft", "hitched at 35 ft"}).Draw(t, "order")
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
		"red oak log 14# 8 ft long":          {" in", "in", " inch", " inches", "-inch", `"`, "”", "″", "''", " IN", " in."},
		"red oak log 14 in, # long":          {"8 ft", "8ft", "8 foot", "8 feet", "8-foot", "8'", "8’", "8′", "8 FT", "8 ft.", "96 in", "eight feet"},
		"european beech log # dia, 7 m long": {"35 cm", "35cm", "350 mm", "350mm", "0.35 m", "35 centimetres", "350 millimeters", ".35 m"},
		"european beech log 35 cm, # long":   {"7 m", "7m", "7 metres", "7 meters", "700 cm", "7 mtr"},
		"limb weighs #":                      {"600 lb", "600lb", "600 lbs", "600 pounds", "600#", "six hundred pounds", "600 LBS", "600 lb."},
		"log weighs #":                       {"1200 kg", "1,200 kg", "1.2 t", "1.2t", "1.2 tonnes", "1200 kilos", "1200kgs"},
		"500 lb, # between the legs":         {"30 degrees", "30°", "30 deg", "30 degs", "30º"},
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
var ways = []struct {
	fact string
	said []string
}{
	{"", []string{"red oak limb", "limb red oak", "a red oak limb"}},
	{"butt_diameter_m=0.3556 imperial", []string{"14 in", "14 in butt", "butt 14 in", "14 in at the cut", "14 in thick", "diameter 14 in"}},
	{"tip_diameter_m=0.1524 imperial", []string{"6 in tip", "tip 6 in", "6 in at the tip", "6 in small end"}},
	{"length_m=6.7056 imperial", []string{"22 ft", "22 ft long", "length 22 ft"}},
	{"hitch_height_m=10.668 imperial", []string{"hitched at 35 ft", "35 ft up", "hitch 35 ft", "35 ft hitch", "block at 35 ft", "tied off at 35 ft", "lower from 35 ft"}},
	{"wraps=3", []string{"3 wraps", "with 3 wraps", "3 wraps on the drum"}},
	{"people=2", []string{"2 guys", "2 guys on the rope", "two of us"}},
	{"rope_m=36.576 imperial", []string{"120 ft of rope", "120 ft rope", "rope 120 ft"}},
	{"limit_kg=408.233 imperial", []string{"limit 900 lb", "900 lb max", "under 900 lb"}},
}

// TestRunTogetherNothingIsMisread runs facts into one another with and
// without pauses, in any order: what comes out must be what was said, or an
// ask.
func TestRunTogetherNothingIsMisread(t *testing.T) {
	r := newReader(t)
	rapid.Check(t, func(t *rapid.T) {
		some := rapid.Permutation(ways).Draw(t, "order")[:rapid.IntRange(2, len(ways)).Draw(t, "n")]
		var b strings.Builder
		said := map[string]bool{}
		for _, w := range some {
			b.WriteString(rapid.SampledFrom(w.said).Draw(t, "said"))
			b.WriteString(rapid.SampledFrom([]string{" ", " ", ", ", " and ", ". "}).Draw(t, "pause"))
			said[strings.TrimPrefix(w.fact, "butt_")] = true
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
