package picture

import (
	"errors"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/opentype"
)

// parsed are the two weights of the Go fonts, read once.
var parsed = sync.OnceValues(func() (both [2]*opentype.Font, err error) {
	regular, err1 := opentype.Parse(goregular.TTF)
	bold, err2 := opentype.Parse(gobold.TTF)
	return [2]*opentype.Font{regular, bold}, errors.Join(err1, err2)
})

// kind of type.
type kind struct {
	size float64
	bold bool
}

// faces are the sizes of one picture: a face serves one goroutine only.
type faces map[kind]font.Face

func (f faces) get(size float64, bold bool) (font.Face, error) {
	k := kind{size, bold}
	if face := f[k]; face != nil {
		return face, nil
	}
	fonts, err := parsed()
	if err != nil {
		return nil, err
	}
	of := fonts[0]
	if bold {
		of = fonts[1]
	}
	face, err := opentype.NewFace(of, &opentype.FaceOptions{Size: size, DPI: 72, Hinting: font.HintingNone})
	if err != nil {
		return nil, err
	}
	f[k] = face
	return face, nil
}

// width of words in pixels. The fonts are part of the program: where they
// cannot be read, painting says so.
func (f faces) width(words string, size float64, bold bool) float64 {
	face, err := f.get(size, bold)
	if err != nil {
		return 0
	}
	return float64(font.MeasureString(face, words)) / 64
}

// wrap breaks words into lines no wider than a width, at most so many; what
// does not fit is cut off with an ellipsis.
func (f faces) wrap(words string, size float64, bold bool, width float64, most int) []string {
	var lines []string
	line := ""
	for _, word := range fields(words) {
		longer := word
		if line != "" {
			longer = line + " " + word
		}
		if line == "" || f.width(longer, size, bold) <= width {
			line = longer
			continue
		}
		lines, line = append(lines, line), word
	}
	if line != "" {
		lines = append(lines, line)
	}
	if len(lines) > most {
		lines = append(lines[:most-1:most-1], lines[most-1]+"…")
	}
	for i, l := range lines {
		lines[i] = f.cut(l, size, bold, width)
	}
	return lines
}

// cut shortens words to a width.
func (f faces) cut(words string, size float64, bold bool, width float64) string {
	runes := []rune(words)
	for n := len(runes); n > 1 && f.width(words, size, bold) > width; {
		n--
		words = string(runes[:n]) + "…"
	}
	return words
}
