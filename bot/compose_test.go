package bot

import (
	"testing"

	"heft/calc"
)

// BenchmarkCompose is the wording and encoding of an answer, what was read
// and worked out being there.
func BenchmarkCompose(b *testing.B) {
	d, err := NewDesk()
	if err != nil {
		b.Fatal(err)
	}
	q, err := d.reader.Read("14 in red oak limb 22 ft, hitched at 35 ft")
	if err != nil {
		b.Fatal(err)
	}
	res, err := calc.Work(jobOf(q))
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		a := answer{question: q, result: &res, status: Answered}
		a.tell()
		a.reply()
	}
}
