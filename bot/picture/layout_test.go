package picture

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"heft/bot"
)

type failer interface {
	Helper()
	Fatalf(string, ...any)
}

// inFrame checks that all that is drawn lies on the picture, and what belongs
// to the view within the view.
func inFrame(t failer, s *bot.Scene, what string) *sheet {
	t.Helper()
	o := layout(s)
	frame := rect{pt{-1e-6, -1e-6}, pt{width + 1e-6, height + 1e-6}}
	for _, shape := range o.shapes {
		if r := shape.reach(); !r.within(frame) {
			t.Fatalf("%s: a shape reaches %v", what, r)
		}
	}
	for _, text := range o.texts {
		r := rect{text.at.minus(pt{0, text.size}), text.at.plus(pt{o.faces.width(text.words, text.size, text.bold), text.size / 3})}
		if !r.within(frame) {
			t.Fatalf("%s: %q reaches %v", what, text.words, r)
		}
	}
	return o
}

// Any scene at all, however long its words and odd its places.
func TestEverythingLiesInTheFrame(t *testing.T) {
	kinds := make([]bot.Kind, 0, len(places))
	for k := range places {
		kinds = append(kinds, k)
	}
	words := rapid.StringMatching(`[A-Za-z0-9,.½°–× \n]{0,40}`)
	rapid.Check(t, func(t *rapid.T) {
		size := rapid.SampledFrom([]float64{0, 0.5, 10, 60, 1000}).Draw(t, "size")
		point := rapid.Custom(func(t *rapid.T) bot.Point {
			return bot.Point{X: rapid.Float64Range(-size, size).Draw(t, "x"), Y: rapid.Float64Range(-size, size).Draw(t, "y")}
		})
		mark := rapid.Custom(func(t *rapid.T) bot.Mark {
			m := bot.Mark{Kind: rapid.SampledFrom(kinds).Draw(t, "kind"), Label: words.Draw(t, "label"),
				Share: rapid.Float64Range(-1, 2).Draw(t, "share"), Lines: rapid.IntRange(0, 6).Draw(t, "lines")}
			n := places[m.Kind]
			m.Path = rapid.SliceOfN(point, n, n+2).Draw(t, "path")
			return m
		})
		s := &bot.Scene{
			Title: rapid.StringN(0, 300, -1).Draw(t, "title"), Plan: words.Draw(t, "plan"), Verdict: rapid.SampledFrom([]string{"", "MORE POWER", "DO NOT"}).Draw(t, "verdict"),
			Notes: rapid.SliceOfN(words, 0, 5).Draw(t, "notes"), Marks: rapid.SliceOfN(mark, 1, 25).Draw(t, "marks"),
			Bar: bot.Bar{Length: rapid.Float64Range(0, size).Draw(t, "bar"), Label: "5 ft"},
		}
		if err := check(*s); err != nil {
			t.Fatal(err)
		}
		inFrame(t, s, "any scene")
	})
}

// asked puts a question to the desk and returns the scene of its answer.
func asked(t failer, d *bot.Desk, question string) *bot.Scene {
	t.Helper()
	reply, _, _ := d.Answer(bot.Event{ID: "1", Text: question, At: time.Unix(0, 0)}, bot.Turn{})
	return reply.Scene()
}

// Set-ups as crews ask for them, drawn at random: all in the frame, and no
// two labels on each other.
func TestAnswersLieInTheFrame(t *testing.T) {
	d, err := bot.NewDesk()
	if err != nil {
		t.Fatal(err)
	}
	seen := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		n := func(low, high int, name string) int { return rapid.IntRange(low, high).Draw(t, name) }
		kind := rapid.SampledFrom([]string{"lift", "raise", "lower"}).Draw(t, "kind")
		var question string
		switch kind {
		case "lift":
			question = fmt.Sprintf("%d lb piece %d ft long on %d:1, %d people, hitched at %d ft, can we lift it?",
				n(20, 3000, "weight"), n(2, 40, "length"), n(1, 5, "parts"), n(1, 6, "people"), n(10, 120, "hitch"))
		case "raise":
			length := n(8, 40, "length")
			question = fmt.Sprintf("red oak limb %d in %d ft, stand it up on a %d:1, tied %d ft from the cut, block %d ft above the cut, %d° above horizontal",
				n(6, 20, "across"), length, n(1, 4, "parts"), n(2, length, "tie"), n(5, 40, "height"), n(0, 70, "angle"))
		case "lower":
			question = fmt.Sprintf("%d in red oak limb %d ft, hitched at %d ft", n(4, 24, "across"), n(3, 40, "length"), n(8, 120, "hitch"))
		}
		s := asked(t, d, question)
		if s == nil {
			return // refused: too heavy, too long
		}
		seen[kind]++
		apart(t, inFrame(t, s, question), question)
	})
	for _, kind := range []string{"lift", "raise", "lower"} {
		if seen[kind] == 0 {
			t.Errorf("no picture of a %s was drawn", kind)
		}
	}
}

// apart checks that no label lies on another, nor on an arrow.
func apart(t failer, o *sheet, what string) {
	t.Helper()
	for i, l := range o.labels {
		for _, other := range o.labels[:i] {
			if l.box.meets(other.box) {
				t.Fatalf("%s: %q lies on %q", what, l.lines, other.lines)
			}
		}
	}
}

// The accepted scenes: labels apart, none on an arrow, each near what it
// speaks of or with a line to it.
func TestLabelsOfAcceptedScenes(t *testing.T) {
	files, _ := filepath.Glob("testdata/*.json")
	for _, f := range files {
		raw, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		var s bot.Scene
		if err := json.Unmarshal(raw, &s); err != nil {
			t.Fatal(err)
		}
		o := inFrame(t, &s, f)
		apart(t, o, f)
		wanted := 0
		for _, m := range s.Marks {
			if m.Label != "" {
				wanted++
			}
		}
		if len(o.labels) != wanted || wanted < 1 {
			t.Errorf("%s: %d labels of %d", f, len(o.labels), wanted)
		}
		for _, l := range o.labels {
			for _, shape := range o.shapes {
				if shape.guard == onForce && shape.crosses(l.box) {
					t.Errorf("%s: %q lies on an arrow", f, l.lines)
				}
			}
		}
	}
}

// The reminder stands on every picture, whole.
func TestReminderStandsOnThePicture(t *testing.T) {
	s := &bot.Scene{Notes: []string{strings.Repeat("note ", 60), "two", "three", "four", "five"},
		Marks: []bot.Mark{{Kind: bot.Block, Path: []bot.Point{{}}}}}
	var words []string
	for _, text := range layout(s).texts {
		if text.size == small {
			words = append(words, text.words)
		}
	}
	if got := strings.Join(words, " "); !strings.Contains(got, s.Reminder()) || s.Reminder() == "" {
		t.Errorf("it reads %q", got)
	}
}
