package picture_test

import (
	"bytes"
	"encoding/json"
	"flag"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"sync"
	"testing"

	"heft/bot"
	"heft/bot/picture"
)

var update = flag.Bool("update", false, "write the pictures as they are now; then look at every one that changed")

// golden are the accepted scenes, by the paths of their files without the
// ending.
func golden(t testing.TB) map[string]bot.Scene {
	t.Helper()
	files, err := filepath.Glob("testdata/*.json")
	if err != nil || len(files) < 10 {
		t.Fatalf("%d scenes, %v", len(files), err)
	}
	out := map[string]bot.Scene{}
	for _, f := range files {
		raw, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		var s bot.Scene
		if err := json.Unmarshal(raw, &s); err != nil {
			t.Fatalf("%s: %v", f, err)
		}
		out[f[:len(f)-len(".json")]] = s
	}
	return out
}

func draw(t testing.TB, s bot.Scene) []byte {
	t.Helper()
	raw, err := picture.PNG(s)
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

func decode(t testing.TB, raw []byte) image.Image {
	t.Helper()
	im, err := png.Decode(bytes.NewReader(raw))
	if err != nil {
		t.Fatal(err)
	}
	return im
}

// TestPictures compares pictures with those that were looked at and accepted.
// Another processor may round an edge otherwise: a few pixels may differ.
func TestPictures(t *testing.T) {
	const most = 800 * 1000 / 1000 // pixels that may differ: one in a thousand
	for name, scene := range golden(t) {
		t.Run(filepath.Base(name), func(t *testing.T) {
			got := draw(t, scene)
			if *update {
				if err := os.WriteFile(name+".png", got, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(name + ".png")
			if err != nil {
				t.Fatal(err)
			}
			if n := differing(decode(t, got), decode(t, want)); n > most {
				t.Errorf("%d pixels are not as accepted", n)
			}
			if len(got) > 60_000 {
				t.Errorf("%d bytes, too many for a phone in the woods", len(got))
			}
			if b := decode(t, got).Bounds(); b.Dx() != 800 || b.Dy() != 1000 {
				t.Errorf("%v: not twice 400 by 500", b)
			}
		})
	}
}

// differing counts the pixels that are not alike to the eye.
func differing(a, b image.Image) int {
	const alike = 0x2000 // of 0xffff in each colour
	if a.Bounds() != b.Bounds() {
		return a.Bounds().Dx() * a.Bounds().Dy()
	}
	off := func(x, y uint32) bool { return max(x, y)-min(x, y) > alike }
	n := 0
	for y := range a.Bounds().Dy() {
		for x := range a.Bounds().Dx() {
			r1, g1, b1, _ := a.At(x, y).RGBA()
			r2, g2, b2, _ := b.At(x, y).RGBA()
			if off(r1, r2) || off(g1, g2) || off(b1, b2) {
				n++
			}
		}
	}
	return n
}

// The comparison itself must see what a person would: one label gone.
func TestComparisonSeesALabelGone(t *testing.T) {
	s := golden(t)["testdata/lower"]
	before := decode(t, draw(t, s))
	for i := range s.Marks {
		if s.Marks[i].Kind == bot.Drum {
			s.Marks[i].Label = ""
		}
	}
	if n := differing(before, decode(t, draw(t, s))); n < 800 {
		t.Errorf("only %d pixels differ", n)
	}
}

// The same scene is the same bytes, drawn again or by many at once.
func TestSameSceneSameBytes(t *testing.T) {
	s := golden(t)["testdata/raise-enough"]
	want := draw(t, s)
	var all sync.WaitGroup
	for range 6 {
		all.Go(func() {
			if got, err := picture.PNG(s); err != nil || !bytes.Equal(got, want) {
				t.Errorf("drawn again it is another picture: %v", err)
			}
		})
	}
	all.Wait()
}

func BenchmarkPNG(b *testing.B) {
	for _, name := range []string{"raise-enough", "lower", "swing"} {
		s := golden(b)["testdata/"+name]
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := picture.PNG(s); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
