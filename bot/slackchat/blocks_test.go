package slackchat_test

import (
	"bufio"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"heft/bot"
	"heft/bot/standin"
)

// corpora are the messages of the question files: what has been typed and
// what must be asked back or refused.
func corpora(t *testing.T) []string {
	t.Helper()
	var out []string
	for _, pattern := range []string{"*.corpus", "*.refusals"} {
		files, err := filepath.Glob("../../testdata/questions/" + pattern)
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range files {
			f, err := os.Open(name)
			if err != nil {
				t.Fatal(err)
			}
			defer f.Close()
			for s := bufio.NewScanner(f); s.Scan(); {
				text, typed := strings.CutPrefix(s.Text(), "  ")
				if strings.HasSuffix(pattern, ".refusals") && !strings.HasPrefix(s.Text(), "#") {
					_, text, typed = strings.Cut(s.Text(), ": ")
				}
				if typed {
					out = append(out, strings.ReplaceAll(text, `\n`, "\n"))
				}
			}
		}
	}
	if len(out) < 400 {
		t.Fatalf("only %d questions were found", len(out))
	}
	return out
}

// buttons are those under a message, in their order.
func buttons(m standin.Message) []standin.Element {
	var out []standin.Element
	for _, b := range m.Blocks {
		if b.Type == "actions" {
			out = append(out, b.Elements...)
		}
	}
	return out
}

// read is all that the blocks of a message show, their buttons aside.
func read(m standin.Message) string {
	var lines []string
	for _, b := range m.Blocks {
		if b.Text != nil {
			lines = append(lines, strings.TrimSuffix(strings.TrimPrefix(b.Text.Shown(), "*"), "*"))
		}
		for _, e := range b.Elements {
			if b.Type == "context" {
				lines = append(lines, e.Text.Shown())
			}
		}
	}
	return strings.Join(lines, "\n")
}

// Every kind of answer, in both languages, is taken by a workspace that
// refuses what breaks a limit of blocks; the blocks say what the text says,
// and markup is read in none but the bold first line, which has no signs.
func TestEveryAnswerFitsIntoBlocks(t *testing.T) {
	r := prepare(t, standin.Options{})
	desk, err := bot.NewDesk()
	if err != nil {
		t.Fatal(err)
	}
	pressed, rows := 0, map[string]bool{}
	for _, hello := range []string{"help", "ayuda"} {
		_, _, turn := desk.Answer(bot.Event{Text: hello}, bot.Turn{})
		for _, text := range append(corpora(t), "*14* _in_ `oak` ~x~ :tree: <!channel> 22 ft", strings.Repeat("14 in ", 1500), "") {
			top := r.Say(standin.Yard, crew, "what now")
			ev := bot.Event{ID: top.TS, Channel: standin.Yard, Thread: top.TS, Text: text, At: time.Unix(1795608000, 0)}
			reply, _, _ := desk.Answer(ev, turn)
			if !answered(t, r, ev, reply) {
				t.Fatalf("%q was not taken: %+v", text, r.Calls("chat.postMessage")[len(r.Calls("chat.postMessage"))-1])
			}
			m := r.own(top)[0]
			if m.Shown() != reply.Text() || read(m) != reply.Text() {
				t.Errorf("%q: the text is\n%s\nand the blocks say\n%s", text, m.Shown(), read(m))
			}
			for i, b := range m.Blocks {
				if b.Text != nil && !b.Text.Plain() && (i > 0 || strings.ContainsAny(strings.Trim(b.Text.Text, "*"), "*_~`")) {
					t.Errorf("%q: markup is read in %q", text, b.Text.Text)
				}
				rows[b.Type] = true
			}
			for _, e := range buttons(m) {
				if pressed++; !slices.Contains([]string{"choices", "actions", "confirm"}, strings.Split(e.ActionID, "/")[0]) {
					t.Errorf("%q: a button %q", text, e.ActionID)
				}
			}
		}
	}
	if pressed < 1000 || !rows["section"] || !rows["context"] || !rows["actions"] {
		t.Errorf("only %d buttons, in %v", pressed, rows)
	}
}
