package picture

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/png"
	"math"

	"git.sr.ht/~sbinet/gg"
	"golang.org/x/image/font"
	"golang.org/x/image/math/fixed"

	"heft/bot"
)

// PNG draws a scene. An error is of ours: a scene with nothing in it, or a
// place that is no number.
func PNG(s bot.Scene) ([]byte, error) {
	if err := check(s); err != nil {
		return nil, err
	}
	im, err := paint(layout(&s))
	if err != nil {
		return nil, fmt.Errorf("paint the picture: %w", err)
	}
	var out bytes.Buffer
	if err := png.Encode(&out, few(im)); err != nil {
		return nil, fmt.Errorf("encode the picture: %w", err)
	}
	return out.Bytes(), nil
}

func check(s bot.Scene) error {
	if len(s.Marks) == 0 {
		return errors.New("there is nothing in the picture")
	}
	for _, m := range s.Marks {
		if len(m.Path) < places[m.Kind] || places[m.Kind] == 0 {
			return fmt.Errorf("a %s of the picture has %d places", m.Kind, len(m.Path))
		}
		for _, p := range m.Path {
			if math.IsNaN(p.X+p.Y) || math.IsInf(p.X+p.Y, 0) {
				return fmt.Errorf("a %s of the picture is nowhere", m.Kind)
			}
		}
	}
	return nil
}

// places are how many each kind needs at least.
var places = map[bot.Kind]int{
	bot.Ground: 2, bot.Stem: 3, bot.Wood: 3, bot.Later: 3, bot.Break: 2, bot.Obstacle: 3, bot.Sling: 2,
	bot.Rope: 2, bot.Lately: 2, bot.Sweep: 2, bot.Block: 1, bot.Drum: 1, bot.Balance: 1, bot.Person: 2,
	bot.Window: 2, bot.Gap: 2, bot.Load: 2, bot.Cross: 1,
}

// paint paints a sheet.
func paint(o *sheet) (*image.RGBA, error) {
	im := image.NewRGBA(image.Rect(0, 0, int(width), int(height)))
	dc := gg.NewContextForRGBA(im)
	dc.SetColor(paper)
	dc.Clear()
	dc.SetLineCap(gg.LineCapButt)
	dc.SetLineJoin(gg.LineJoinRound)
	for _, s := range o.shapes {
		stroke(dc, s)
	}
	for _, t := range o.texts {
		face, err := o.faces.get(t.size, t.bold)
		if err != nil {
			return nil, err
		}
		pen := font.Drawer{Dst: im, Src: image.NewUniform(t.ink), Face: face, Dot: fixed.Point26_6{
			X: fixed.Int26_6(math.Round(64 * t.at.x)), Y: fixed.Int26_6(math.Round(64 * t.at.y)),
		}}
		pen.DrawString(t.words)
	}
	return im, nil
}

func stroke(dc *gg.Context, s shape) {
	dc.ClearPath()
	for i, p := range s.pts {
		if i == 0 {
			dc.MoveTo(p.x, p.y)
		} else {
			dc.LineTo(p.x, p.y)
		}
	}
	if s.closed {
		dc.ClosePath()
	}
	if s.fill != nil {
		dc.SetColor(s.fill)
		dc.FillPreserve()
	}
	if s.line != nil {
		dc.SetColor(s.line)
		dc.SetLineWidth(s.width)
		dc.SetDash(s.dash...)
		dc.StrokePreserve()
	}
	dc.ClearPath()
}
