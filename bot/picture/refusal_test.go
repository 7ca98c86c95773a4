package picture_test

import (
	"math"
	"testing"

	"heft/bot"
	"heft/bot/picture"
)

// What cannot be drawn is an error, never a panic and never half a picture.
func TestWhatCannotBeDrawn(t *testing.T) {
	at := bot.Point{X: 1, Y: 1}
	mark := func(k bot.Kind, path ...bot.Point) bot.Scene {
		return bot.Scene{Marks: []bot.Mark{{Kind: k, Path: path}}}
	}
	for name, s := range map[string]bot.Scene{
		"nothing at all":   {},
		"words alone":      {Title: "Red oak limb", Plan: "Plan on 1,350 lb"},
		"no place":         mark(bot.Block),
		"half a rope":      mark(bot.Rope, at),
		"a load nowhere":   mark(bot.Load, at),
		"no number":        mark(bot.Block, bot.Point{X: math.NaN()}),
		"beyond the world": mark(bot.Gap, at, bot.Point{Y: math.Inf(1)}),
		"both infinities":  mark(bot.Gap, bot.Point{X: math.Inf(-1)}, bot.Point{X: math.Inf(1)}),
		"an unknown kind":  mark("cloud", at, at, at),
	} {
		if raw, err := picture.PNG(s); err == nil || raw != nil {
			t.Errorf("%s: %d bytes, %v", name, len(raw), err)
		}
	}
}
