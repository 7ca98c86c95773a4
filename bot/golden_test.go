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
// read and accepted. In English the questions are English; every other
// language has the replies to the same questions, as if they had been asked
// in it, and the replies to some questions that are.
func TestReplies(t *testing.T) {
	d := newDesk(t)
	_, english := golden(t, "en")
	compare(t, d, "en", english)
	for _, l := range translations(t) {
		compare(t, d.Speaking(l.Tag), l.Tag, english)
		_, own := golden(t, l.Tag+"-asked")
		compare(t, d, l.Tag+"-asked", own)
	}
}

// compare answers questions and compares the replies with a file, or writes
// it.
func compare(t *testing.T, d *bot.Desk, name string, asked []accepted) {
	t.Helper()
	head, all := golden(t, name)
	if !*update && len(all) != len(asked) {
		t.Errorf("%s: %d replies to %d questions; -update answers them", name, len(all), len(asked))
	}
	before := map[string]string{}
	for _, a := range all {
		before[a.question] = a.reply
	}
	now := head
	for _, a := range asked {
		r, _ := answer(t, d, a.question)
		if got, want := r.Text(), before[a.question]; got != want && !*update {
			t.Errorf("%s: %s\n--- got\n%s\n--- accepted\n%s", name, a.question, got, want)
		}
		now += "### " + a.question + "\n" + r.Text() + "\n\n"
	}
	if *update {
		if err := os.WriteFile(goldenFile(name), []byte(strings.TrimRight(now, "\n")+"\n"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// reminders end every reply, by the tag of its language.
func reminders(t testing.TB) map[string]string {
	const english = "Estimate only. Confirm with the qualified arborist on site; local codes and the gear's labels come first."
	out := map[string]string{"en": english}
	for _, l := range translations(t) {
		out[l.Tag] = l.Sentences[english]
	}
	return out
}

// FuzzAnswer throws any text at the desk, as a first message and as a
// follow-up: it never panics, and every reply is whole.
func FuzzAnswer(f *testing.F) {
	for _, s := range []string{
		"14 in red oak limb 22 ft, hitched at 35 ft", "what about 16 ft", "maple", "2", "1,400 lb", "-14 in", "14-16 in",
		"power line", "mayday", "6'4\"", "½ in", "\x00\xff", "🌳🌳", "wraps wraps wraps 3", "limit 600 lb rope 80 ft",
		"99999999999999999999999 ft", "1/0 in", "0.0000001 in red oak log 1 ft", "NaN kg", "1e309 lb", "what*00",
		"14 in red oak limb 22 ft; 600 lb log, 1 wrap; total?", "600 lb log\nmaple log 10 in 6 ft\n5 t",
	} {
		f.Add(s, s)
	}
	d, ends := newDesk(f), reminders(f)
	f.Fuzz(func(t *testing.T, first, second string) {
		var turn bot.Turn
		for _, text := range []string{first, second} {
			var r bot.Reply
			var e bot.Entry
			r, e, turn = d.Answer(event(text), turn)
			o := decode(t, r)
			last := o.Cautions[len(o.Cautions)-1]
			if last == "" || last != ends[o.Language] || !strings.HasSuffix(r.Text(), "\n"+last) || o.Text != r.Text() || len(r.Text()) > 4000 {
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
