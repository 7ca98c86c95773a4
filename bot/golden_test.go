package bot_test

import (
	"flag"
	"os"
	"strings"
	"testing"
	"time"

	"heft/bot"
)

var update = flag.Bool("update", false, "write the replies as they are now; then read every one that changed")

// accepted is one reply as it was read and accepted.
type accepted struct{ question, reply string }

func goldenFile(tag string) string { return "../testdata/replies/" + tag + ".golden" }

// golden reads the accepted replies of a language, and what stands above
// them. The file is questions, each behind "### ", and replies.
func golden(t testing.TB, tag string) (head string, all []accepted) {
	t.Helper()
	raw, err := os.ReadFile(goldenFile(tag))
	if err != nil {
		t.Fatal(err)
	}
	head, body, _ := strings.Cut(string(raw), "### ")
	for part := range strings.SplitSeq(body, "\n### ") {
		question, reply, _ := strings.Cut(strings.TrimPrefix(part, "### "), "\n")
		all = append(all, accepted{question, strings.TrimRight(reply, "\n")})
	}
	if len(all) < 30 {
		t.Fatalf("only %d replies in %s", len(all), goldenFile(tag))
	}
	return head, all
}

// TestReplies compares whole replies, word for word, with those that were
// read and accepted: the questions of the English file, in every language.
func TestReplies(t *testing.T) {
	_, asked := golden(t, "en")
	for tag := range spokenIn {
		d := newDesk(t).Speaking(tag)
		head, all := golden(t, tag)
		if !*update && len(all) != len(asked) {
			t.Errorf("%s: %d replies to %d questions; -update answers them", tag, len(all), len(asked))
		}
		before := map[string]string{}
		for _, a := range all {
			before[a.question] = a.reply
		}
		now := head
		for _, a := range asked {
			r, _ := answer(t, d, a.question)
			if got, want := r.Text(), before[a.question]; got != want && !*update {
				t.Errorf("%s: %s\n--- got\n%s\n--- accepted\n%s", tag, a.question, got, want)
			}
			now += "### " + a.question + "\n" + r.Text() + "\n\n"
		}
		if *update {
			if err := os.WriteFile(goldenFile(tag), []byte(strings.TrimRight(now, "\n")+"\n"), 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
}

// spokenIn are the languages whose replies were read, and the reminder that
// ends each.
var spokenIn = map[string]string{
	"en": "Estimate only. Confirm with the qualified arborist on site; local codes and the gear's labels come first.",
	"es": "Solo es un estimado. Confírmelo con el arborista calificado en el sitio; mandan las normas locales y las etiquetas del equipo.",
}

// FuzzAnswer throws any text at the desk, as a first message and as a
// follow-up: it never panics, and every reply is whole.
func FuzzAnswer(f *testing.F) {
	for _, s := range []string{
		"14 in red oak limb 22 ft, hitched at 35 ft", "what about 16 ft", "maple", "2", "1,400 lb", "-14 in", "14-16 in",
		"power line", "mayday", "6'4\"", "½ in", "\x00\xff", "🌳🌳", "wraps wraps wraps 3", "limit 600 lb rope 80 ft",
		"99999999999999999999999 ft", "1/0 in", "0.0000001 in red oak log 1 ft", "NaN kg", "1e309 lb",
		"14 in red oak limb 22 ft; 600 lb log, 1 wrap; total?", "600 lb log\nmaple log 10 in 6 ft\n5 t",
	} {
		f.Add(s, s)
	}
	d := newDesk(f)
	f.Fuzz(func(t *testing.T, first, second string) {
		var turn bot.Turn
		for _, text := range []string{first, second} {
			var r bot.Reply
			var e bot.Entry
			r, e, turn = d.Answer(event(text), turn)
			o := decode(t, r)
			last := o.Cautions[len(o.Cautions)-1]
			if last != spokenIn[o.Language] || !strings.HasSuffix(r.Text(), "\n"+last) || o.Text != r.Text() || len(r.Text()) > 4000 {
				t.Errorf("%q: %d bytes: %q", text, len(r.Text()), r.Text())
			}
			if w := o.Weight; w != nil && !(0 < w.Low && w.Low <= w.Likely && w.Likely <= w.High) {
				t.Errorf("%q: weight %+v", text, *w)
			}
			if r.Status() != bot.Answered && len(o.Also) == 0 && (o.Weight != nil || o.Lower != nil || o.Rope != nil) {
				t.Errorf("%q: %s with figures: %s", text, r.Status(), r.JSON())
			}
			if e.Words != text || !e.Asked.Equal(asked) || e.Status != r.Status() {
				t.Errorf("%q: entry %+v", text, e)
			}
		}
	})
}

// BenchmarkAnswer is the whole desk: read, work out, word and encode.
func BenchmarkAnswer(b *testing.B) {
	d := newDesk(b)
	for name, text := range map[string]string{
		"lower": "14 in red oak limb 22 ft, hitched at 35 ft", "weight": "how heavy is a 20 in white ash log 8 ft",
		"asked-back": "maple limb 12 in 15 ft", "refused": "14 in red oak limb 900 ft",
	} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			ev := bot.Event{ID: "e", Text: text, At: time.Unix(0, 0)}
			for b.Loop() {
				d.Answer(ev, bot.Turn{})
			}
		})
	}
}
