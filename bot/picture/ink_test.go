package picture

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"testing"

	"heft/bot"
)

// ratio is the contrast of two colours, and so of their greys (W3C, WCAG 2.2,
// definitions of contrast ratio and relative luminance).
func ratio(a, b color.RGBA) float64 {
	luminance := func(c color.RGBA) float64 {
		linear := func(v uint8) float64 {
			s := float64(v) / 255
			if s <= 0.04045 {
				return s / 12.92
			}
			return math.Pow((s+0.055)/1.055, 2.4)
		}
		return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
	}
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// Black on white is 21 to 1, #777777 on white 4.48 (W3C, Understanding
// success criterion 1.4.3).
func TestRatio(t *testing.T) {
	if got := ratio(rgb(0), rgb(0xffffff)); math.Abs(got-21) > 1e-9 {
		t.Errorf("black on white %v", got)
	}
	if got := ratio(rgb(0x777777), rgb(0xffffff)); math.Abs(got-4.48) > 0.01 {
		t.Errorf("grey on white %v", got)
	}
}

// Words stand out by 7 to 1, lines by 3 to 1 from everything that they lie on
// (W3C, WCAG 2.2, 1.4.6 and 1.4.11). Luminance is what a grey picture keeps.
func TestContrast(t *testing.T) {
	for name, c := range map[string]struct {
		line  color.RGBA
		on    []color.RGBA
		least float64
	}{
		"words":             {ink, []color.RGBA{paper, chalk}, 7},
		"words of the head": {chalk, []color.RGBA{ink}, 7},
		"a bad verdict":     {force, []color.RGBA{chalk}, 7},
		"outlines":          {pen, []color.RGBA{paper, timber, bark}, 3},
		"gear":              {ink, []color.RGBA{paper, timber, bark}, 3},
		"what will be":      {ghost, []color.RGBA{paper, timber, bark}, 3},
		"rope":              {cord, []color.RGBA{paper, timber, bark}, 3},
		"loads":             {force, []color.RGBA{paper, timber, bark}, 3},
		"the tie window":    {good, []color.RGBA{paper, timber, bark}, 3},
	} {
		for _, ground := range c.on {
			if got := ratio(c.line, ground); got < c.least {
				t.Errorf("%s on #%02x%02x%02x: %.1f to 1, want %v", name, ground.R, ground.G, ground.B, got, c.least)
			}
		}
	}
}

// What was computed from the colours holds for the pixels of a picture made
// grey: those of words and lines are dark, those of the paper are light.
func TestContrastOfPixels(t *testing.T) {
	raw, err := os.ReadFile("testdata/raise-enough.png")
	if err != nil {
		t.Fatal(err)
	}
	im, err := png.Decode(bytes.NewReader(raw))
	if err != nil {
		t.Fatal(err)
	}
	grey := image.NewGray(im.Bounds())
	count := map[color.RGBA]int{}
	for y := range im.Bounds().Dy() {
		for x := range im.Bounds().Dx() {
			r, g, b, _ := im.At(x, y).RGBA()
			count[color.RGBA{uint8(r >> 8), uint8(g >> 8), uint8(b >> 8), 0xff}]++
			grey.Set(x, y, im.At(x, y))
		}
	}
	for name, c := range map[string]color.RGBA{"paper": paper, "ink": ink, "cord": cord, "force": force, "good": good, "timber": timber, "bark": bark} {
		if count[c] < 500 {
			t.Errorf("%s: %d pixels of the very colour", name, count[c])
		}
	}
	dark, light := 0, 0
	for _, v := range grey.Pix {
		switch g := rgb(uint32(v) * 0x010101); {
		case ratio(g, paper) >= 3:
			dark++
		case ratio(g, paper) < 1.9:
			light++
		}
	}
	if between := len(grey.Pix) - dark - light; between > len(grey.Pix)/50 || dark < len(grey.Pix)/20 {
		t.Errorf("%d dark, %d light, %d between", dark, light, between)
	}
}

// Without their colours the kinds still look different: by fill, width, dash
// or by how many strokes they are made of.
func TestKindsDifferWithoutColour(t *testing.T) {
	told := map[string]bot.Kind{}
	for kind := range places {
		v := view{fit: fit{scale: 10}}
		path := []bot.Point{{X: 0, Y: 0}, {X: 9, Y: 0}, {X: 9, Y: 5}, {X: 0, Y: 5}}
		v.mark(bot.Mark{Kind: kind, Path: path[:max(2, places[kind])], Share: 1})
		look := ""
		for _, s := range v.shapes {
			grey := func(c colour) string {
				if c == nil {
					return "-"
				}
				return fmt.Sprint(color.GrayModel.Convert(c).(color.Gray).Y / 32)
			}
			look += fmt.Sprint(s.closed, len(s.pts), grey(s.fill), s.width, s.dash, ";")
		}
		if other, taken := told[look]; taken {
			t.Errorf("%s looks like %s", kind, other)
		}
		told[look] = kind
	}
}

// Every accepted picture uses the palette alone, and no scene was forgotten.
func TestPicturesAreOfTheAcceptedScenes(t *testing.T) {
	scenes, _ := filepath.Glob("testdata/*.json")
	pictures, _ := filepath.Glob("testdata/*.png")
	if len(scenes) != len(pictures) || len(scenes) == 0 {
		t.Errorf("%d scenes, %d pictures", len(scenes), len(pictures))
	}
	if len(palette) > 256 {
		t.Errorf("a palette of %d", len(palette))
	}
}
