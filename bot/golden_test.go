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

const goldenFile = "../testdata/replies/en.golden"

// TestReplies compares whole replies, word for word, with those that were
// read and accepted. The file is questions, each behind "### ", and replies.
func TestReplies(t *testing.T) {
	raw, err := os.ReadFile(goldenFile)
	if err != nil {
		t.Fatal(err)
	}
	head, body, _ := strings.Cut(string(raw), "### ")
	d := newDesk(t)
	var now strings.Builder
	now.WriteString(head)
	n := 0
	for part := range strings.SplitSeq(body, "\n### ") {
		question, want, _ := strings.Cut(strings.TrimPrefix(part, "### "), "\n")
		r, _ := answer(t, d, question)
		got := r.Text()
		if want = strings.TrimRight(want, "\n"); got != want && !*update {
			t.Errorf("%s\n--- got\n%s\n--- accepted\n%s", question, got, want)
		}
		now.WriteString("### " + question + "\n" + got + "\n\n")
		n++
	}
	if n < 30 {
		t.Errorf("only %d replies in %s", n, goldenFile)
	}
	if *update {
		if err := os.WriteFile(goldenFile, []byte(strings.TrimRight(now.String(), "\n")+"\n"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
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
			if !strings.HasSuffix(r.Text(), "come first.") || o.Text != r.Text() || len(r.Text()) > 4000 {
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
