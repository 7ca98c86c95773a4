package picture

import (
	"image"
	"image/color"
)

// few reduces a picture to a palette of 256 colours: a phone in the woods
// loads a third of the bytes. The palette is fixed: every two of the colours
// that meet, and steps between them.
func few(rgba *image.RGBA) *image.Paletted {
	out := image.NewPaletted(rgba.Bounds(), palette)
	var known [1 << 15]int16 // by the upper five bits of each, one more than the index
	for i := range out.Pix {
		p := rgba.Pix[4*i : 4*i+4]
		key := int(p[0]>>3)<<10 | int(p[1]>>3)<<5 | int(p[2]>>3)
		if known[key] == 0 {
			known[key] = int16(palette.Index(color.RGBA{p[0], p[1], p[2], 0xff})) + 1
		}
		out.Pix[i] = uint8(known[key] - 1)
	}
	return out
}

// palette has the colours themselves first.
var palette = func() color.Palette {
	p := color.Palette{paper, ink, timber, bark, pen, ghost, cord, force, good, chalk}
	pairs := [][2]color.RGBA{
		{ink, paper}, {ink, chalk}, {ink, timber}, {ink, bark}, {pen, paper}, {pen, timber}, {pen, bark},
		{ghost, paper}, {ghost, timber}, {ghost, bark}, {cord, paper}, {cord, timber}, {cord, bark},
		{force, paper}, {force, chalk}, {force, timber}, {force, bark}, {good, paper}, {good, timber}, {good, bark},
		{cord, chalk}, {force, cord}, {timber, paper}, {bark, paper},
	}
	const steps = 10
	for _, pair := range pairs {
		for i := 1; i <= steps; i++ {
			p = append(p, between(pair[0], pair[1], float64(i)/(steps+1)))
		}
	}
	return p
}()

func between(a, b color.RGBA, f float64) color.RGBA {
	mix := func(x, y uint8) uint8 { return uint8(float64(x) + f*(float64(y)-float64(x)) + 0.5) }
	return color.RGBA{mix(a.R, b.R), mix(a.G, b.G), mix(a.B, b.B), 0xff}
}
