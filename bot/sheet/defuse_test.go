package sheet

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"
	"time"
	"unicode"
	"unicode/utf8"

	"heft/bot"
)

func TestCellsThatASpreadsheetCouldRun(t *testing.T) {
	// The signs are those of the OWASP page "CSV Injection", from memory.
	for said, want := range map[string]string{
		"":                        "",
		"14 in red oak":           "14 in red oak",
		"22 ft = 6.7 m, -2 °C":    "22 ft = 6.7 m, -2 °C",
		"crew@ridge":              "crew@ridge",
		"=1+1":                    "'=1+1",
		"+49 30":                  "'+49 30",
		"-2+3":                    "'-2+3",
		"@SUM(A1)":                "'@SUM(A1)",
		"\t=1":                    "' =1",
		"\tplain":                 "' plain",
		"\r=1":                    "' =1",
		"\n=1":                    "'\n'=1",
		"\r\n=1":                  "'\n'=1",
		"  =1":                    "'  =1",
		"\u00a0=1":                "' =1",
		"＝1":                      "'＝1",
		"＋1":                      "'＋1",
		"－1":                      "'－1",
		"＠A":                      "'＠A",
		"﹦1":                      "'﹦1",
		"two lines\n=1":           "two lines\n'=1",
		"for a semicolon;=1":      "for a semicolon;'=1",
		"for a semicolon;  -1; x": "for a semicolon;'  -1; x",
		"\x00=1":                  "\ufffd=1",
		"'=1":                     "'=1",
		"\x1b[31m":                "\ufffd[31m",
	} {
		if got := cell(said); got != want {
			t.Errorf("%q: %q, want %q", said, got, want)
		}
	}
}

func TestTextIsPlain(t *testing.T) {
	for said, want := range map[string]string{
		"zwölf Zoll Ahorn 🌳 12′":      "zwölf Zoll Ahorn 🌳 12′",
		"\x1b[2J\x07\x7f":             "\ufffd[2J\ufffd\ufffd",
		"\u009b2J\u202ekao\u2066":     "\ufffd2J\ufffdkao\ufffd",
		"a\tb\vc\u00a0d\u2028e\u3000": "a b c d e ",
		"a\r\nb\nc\rd":                "a\nb\nc d",
		"\xffhalf\xc3":                "\ufffdhalf\ufffd",
	} {
		if got := plain(said); got != want {
			t.Errorf("%q: %q, want %q", said, got, want)
		}
	}
}

func TestLongTextsAreCutWhole(t *testing.T) {
	for _, c := range []struct {
		said string
		most int
		want string
	}{
		{"ash log", 7, "ash log"},
		{"ash logs", 7, "ash lo…"},
		{"an ash log", 7, "an ash…"},
		{"ähs löger", 7, "ähs lö…"},
		{"  two\n lines ", 20, "two lines"},
		{"", 7, ""},
	} {
		if got := short(c.said, c.most); got != c.want {
			t.Errorf("%q in %d: %q, want %q", c.said, c.most, got, c.want)
		}
	}
}

// mischief seeds the fuzzers.
var mischief = []string{
	"14 in red oak limb 22 ft", "=1+1", "\t=1", "\r\n@x", "a;=1", "a\n-1", "＝1", "\ufeff=1", "\"=1", "'=1", "a\",=1",
	"\x1b[31m", "\u009b2J", "\u202e", "a\x00b", "\xff\xfe", "</td><script>", "{{.}}", "\u2028=1", "  +", ";;=", "\n\n\n", "🌳",
}

// spoilt is an entry that says the same in every field.
func spoilt(said string) bot.Entry {
	return bot.Entry{
		ID: said, Asked: time.Unix(1795608000, 0), Workspace: said, Channel: said, Thread: said, User: said,
		Words: said, Status: bot.Status(said), Intent: said, Question: json.RawMessage(said),
		Result: json.RawMessage(said), Reply: said, PlanKg: 12, Calc: said, Failure: said,
	}
}

// showable says whether nothing in a text could be obeyed by a terminal.
func showable(s string) bool {
	return utf8.ValidString(s) && !strings.ContainsFunc(s, func(r rune) bool {
		return r != '\n' && r != utf8.RuneError && !unicode.IsPrint(r)
	})
}

func FuzzNoCellRuns(f *testing.F) {
	for _, said := range mischief {
		f.Add(said)
	}
	day := mustDay(f, "2026-11-25", "UTC")
	f.Fuzz(func(t *testing.T, said string) {
		out := render(t, CSV, day, []bot.Entry{spoilt(said)})
		if !showable(out) {
			t.Errorf("control characters in %q", out)
		}
		records, err := csv.NewReader(strings.NewReader(out)).ReadAll()
		if err != nil || len(records) != 2 || len(records[1]) != len(header) {
			t.Fatalf("%d records, error %v: %q", len(records), err, out)
		}
		for i, text := range records[1] {
			for _, part := range strings.FieldsFunc(text, func(r rune) bool { return r == ';' || r == '\n' }) {
				if strings.ContainsAny(firstRune(strings.TrimLeft(part, " ")), "=+-@＝＋－＠") {
					t.Errorf("%s would run: %q", header[i], text)
				}
			}
			if strings.ContainsAny(firstRune(text), "\t\r\n") {
				t.Errorf("%s begins with a break: %q", header[i], text)
			}
		}
	})
}

func firstRune(s string) string {
	for _, r := range s {
		return string(r)
	}
	return ""
}

func FuzzNoLineIsObeyed(f *testing.F) {
	for _, said := range mischief {
		f.Add(said)
	}
	day := mustDay(f, "2026-11-25", "UTC")
	f.Fuzz(func(t *testing.T, said string) {
		out := render(t, Table, day, []bot.Entry{spoilt(said), spoilt("12 in ash")})
		if !showable(out) {
			t.Errorf("control characters in %q", out)
		}
		// A title, a heading, two entries, the totals, two empty lines.
		if n := strings.Count(out, "\n"); n != 7 {
			t.Errorf("%d lines: %q", n, out)
		}
	})
}

func FuzzJSONStaysJSON(f *testing.F) {
	for _, said := range mischief {
		f.Add(said)
	}
	day := mustDay(f, "2026-11-25", "UTC")
	f.Fuzz(func(t *testing.T, said string) {
		out := render(t, JSON, day, []bot.Entry{spoilt(said)})
		if !showable(out) {
			t.Errorf("control characters in %q", out)
		}
		var back []struct{ Words string }
		if err := json.Unmarshal([]byte(out), &back); err != nil {
			t.Fatalf("%v: %q", err, out)
		}
		if want := strings.ToValidUTF8(said, "\ufffd"); utf8.ValidString(said) && back[0].Words != want {
			t.Errorf("words %q, want %q", back[0].Words, want)
		}
	})
}

func FuzzThePageShowsMarkup(f *testing.F) {
	for _, said := range mischief {
		f.Add(said)
	}
	day := mustDay(f, "2026-11-25", "UTC")
	empty := bytes.Count([]byte(render(f, HTML, day, []bot.Entry{spoilt("x")})), []byte("<"))
	f.Fuzz(func(t *testing.T, said string) {
		if said == "" {
			return // a failure without words has no line
		}
		out := render(t, HTML, day, []bot.Entry{spoilt(said)})
		if !showable(out) {
			t.Errorf("control characters in %q", out)
		}
		if n := strings.Count(out, "<"); n != empty {
			t.Errorf("%d tags, want %d: %q", n, empty, out)
		}
	})
}
