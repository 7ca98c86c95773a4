package reader_test

import (
	"strconv"
	"strings"
	"testing"

	"heft/parser/reader"
)

// BenchmarkRead reads seven questions as crews type them, in both languages, and the longest text
// that is read at all.
func BenchmarkRead(b *testing.B) {
	r := newReader(b)
	for _, q := range []struct{ name, text string }{
		{"weight", "how heavy is a 16 in sugar maple log 8 ft long"},
		{"lower", "14 in red oak limb 22 ft, hitched at 35 ft"},
		{"curly", "14” red oak limb, 22’, hitched at 35’"},
		{"metric", "35 cm beech limb 7 m, 3 wraps, 2 guys on the rope"},
		{"slips", "14 in red oak lmib 22 ft, hiched at 35 ft"},
		{"spanish", "rama de roble rojo de 14 pulgadas y 22 pies, amarrada a 35 pies"},
		{"mixed", "14 in red oak limb de 22 pies, amarrada a 35 ft"},
		{"longest", strings.Repeat("14 in red oak limb 22 ft, hitched at 35 ft. ", 28)[:1200]},
	} {
		b.Run(q.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				r.Read(q.text)
			}
		})
	}
}

// BenchmarkNew reads the word files and the names.
func BenchmarkNew(b *testing.B) {
	known := knownTrees(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := reader.New(known); err != nil {
			b.Fatal(err)
		}
	}
}

// A long paste costs no more than its length: the figures are per byte.
func BenchmarkPaste(b *testing.B) {
	r := newReader(b)
	piece := "14 in red oak limb 22 ft over the garage roof, hitched at 35 ft, two guys on the rope, "
	for _, n := range []int{500, 1000, 2000, 4000} {
		text := strings.Repeat(piece, n/len(piece)+1)[:n]
		b.Run(strconv.Itoa(n), func(b *testing.B) {
			b.SetBytes(int64(n))
			for b.Loop() {
				_, _ = r.Read(text)
			}
		})
	}
}
