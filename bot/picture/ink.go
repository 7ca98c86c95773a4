package picture

import "image/color"

// colour of paint.
type colour = color.Color

func rgb(hex uint32) color.RGBA {
	return color.RGBA{uint8(hex >> 16), uint8(hex >> 8), uint8(hex), 0xff}
}

// The colours. The lines stand out from every ground that they lie on by at
// least 3 to 1, the words by 7 to 1 (W3C, WCAG 2.2, 1.4.11 and 1.4.6).
var (
	paper  = rgb(0xFBF8F1)
	ink    = rgb(0x17171B)
	timber = rgb(0xE6CFA6) // fill of the piece
	bark   = rgb(0xC7C1B7) // fill of what stays
	pen    = rgb(0x33261A) // outlines of wood
	ghost  = rgb(0x55555F) // what will be
	cord   = rgb(0x0D3D8A) // rope
	force  = rgb(0xA8121C) // loads, and what goes wrong
	good   = rgb(0x0F5A33) // where a tie is good
	chalk  = rgb(0xFFFFFF) // words on the dark head
)

// Dashes, in pixels.
var (
	dashed = []float64{16, 11}
	dotted = []float64{4, 11}
)

// Widths of lines, in pixels.
const (
	thin   = 3.0
	medium = 4.5
	thick  = 6.0
)

// Sizes of type, in pixels at twice the screen's resolution.
const (
	small = 22.0
	plain = 29.0
	label = 30.0
	large = 58.0
)
