package bot_test

import (
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"heft/bot"
)

// BenchmarkMutated answers questions with a word dropped, doubled, moved or
// put in from another, each time another: run it a million times, with the
// race detector, and nothing may panic or grow past what a message holds:
//
//	go test -race ./bot -run '^$' -bench Mutated -benchtime 1000000x
func BenchmarkMutated(b *testing.B) {
	d := newDesk(b)
	seeds := phrasings(b)
	b.RunParallel(func(pb *testing.PB) {
		dice := rand.New(rand.NewPCG(rand.Uint64(), rand.Uint64()))
		var turn bot.Turn
		for pb.Next() {
			text := mutated(dice, seeds)
			var r bot.Reply
			var e bot.Entry
			if r, e, turn = d.Answer(event(text), turn); len(r.Text()) > 8000 || len(r.Headline()) == 0 || e.Words != text {
				b.Errorf("%q: %d bytes, %q", text, len(r.Text()), r.Headline())
			}
			if dice.IntN(8) == 0 {
				turn = bot.Turn{}
			}
		}
	})
}

// mutated is a phrasing with some of its words changed.
func mutated(dice *rand.Rand, seeds []string) string {
	words := strings.Fields(seeds[dice.IntN(len(seeds))])
	for range 1 + dice.IntN(3) {
		at := dice.IntN(len(words) + 1)
		switch from := strings.Fields(seeds[dice.IntN(len(seeds))]); dice.IntN(4) {
		case 0:
			if len(words) > 1 && at < len(words) {
				words = append(words[:at:at], words[at+1:]...)
			}
		case 1:
			if at < len(words) {
				words = append(words[:at:at], append([]string{words[at]}, words[at:]...)...)
			}
		case 2:
			words = append(words[:at:at], append([]string{from[dice.IntN(len(from))]}, words[at:]...)...)
		default:
			dice.Shuffle(len(words), func(i, j int) { words[i], words[j] = words[j], words[i] })
		}
	}
	return strings.Join(words, " ")
}

// phrasings are those of all corpora, in every language.
func phrasings(t testing.TB) []string {
	t.Helper()
	var out []string
	for _, pattern := range []string{"*.corpus", "*/*.corpus"} {
		files, err := filepath.Glob(filepath.Join("..", "testdata", "questions", pattern))
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range files {
			text, err := os.ReadFile(f)
			if err != nil {
				t.Fatal(err)
			}
			for line := range strings.Lines(string(text)) {
				if words, ok := strings.CutPrefix(line, "  "); ok && strings.TrimSpace(words) != "" {
					out = append(out, strings.ReplaceAll(strings.TrimSpace(words), `\n`, "\n"))
				}
			}
		}
	}
	if len(out) < 1500 {
		t.Fatalf("only %d phrasings", len(out))
	}
	return out
}
