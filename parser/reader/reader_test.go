package reader_test

import (
	"sync"
	"testing"

	"heft/parser"
)

// TestManyReadAtOnce reads the corpora from many goroutines; run with -race
// it shows that reading changes nothing in the reader.
func TestManyReadAtOnce(t *testing.T) {
	r := newReader(t)
	all := readCorpora(t)
	want := make([]string, len(all))
	for i, p := range all {
		want[i] = read(r, p.text)
	}
	var wg sync.WaitGroup
	for range 4 {
		wg.Go(func() {
			for i, p := range all {
				if got := read(r, p.text); got != want[i] {
					t.Errorf("%s: %q is read in two ways: %s, %s", p.at, p.text, got, want[i])
				}
			}
		})
	}
	wg.Wait()
}

// TestAskKeepsWhatIsCertain wants an ask to leave the rest of the message in
// the question, so that an answer to it is enough.
func TestAskKeepsWhatIsCertain(t *testing.T) {
	r := newReader(t)
	for text, kept := range map[string]map[parser.Field]float64{
		"14 in oak limb 22 ft hitched at 35 ft":                                        {parser.ButtDiameter: 0.3556, parser.Length: 6.7056, parser.HitchHeight: 10.668},
		"14 in red oak limb 22 ft hitched at 350":                                      {parser.ButtDiameter: 0.3556, parser.Length: 6.7056},
		"14 in red oak limb 22 ft hitched at 35 ft, climber at 40 ft":                  {parser.ButtDiameter: 0.3556, parser.Length: 6.7056, parser.HitchHeight: 10.668},
		"over 14 in red oak limb 22 ft":                                                {parser.Length: 6.7056},
		"14±1 in red oak limb 22 ft":                                                   {parser.Length: 6.7056},
		"red oak limb 14 in, 22 ft long, 25 ft long, hitched at 35 ft, block at 40 ft": {parser.ButtDiameter: 0.3556},
		"dbh 14 in red oak 22 ft":                                                      {parser.Length: 6.7056},
		"red oak limb 14 in, 22 ft long, 25 ft long":                                   {parser.ButtDiameter: 0.3556},
	} {
		q, err := r.Read(text)
		asked(t, err)
		if len(q.Quantities) != len(kept) {
			t.Errorf("%q keeps %s", text, meant(q))
		}
		for f, want := range kept {
			if x, ok := q.Get(f); !ok || x.Low < want-1e-9 || x.High > want+1e-9 {
				t.Errorf("%q keeps %s, want %s %g", text, meant(q), f, want)
			}
		}
	}
}

// TestTonsAreExact compares the choices of "which ton?" with the masses of
// the short ton, the long ton and the tonne (NIST Special Publication 811,
// appendix B: 2,000 lb and 2,240 lb of 0.45359237 kg, and 1,000 kg).
func TestTonsAreExact(t *testing.T) {
	_, err := newReader(t).Read("2 ton log")
	want := []float64{1814.36948, 2032.0938176, 2000}
	choices := asked(t, err).Choices
	if len(choices) != len(want) {
		t.Fatalf("%d choices", len(choices))
	}
	for i, c := range choices {
		if diff := c.Value - want[i]; diff > 1e-6 || diff < -1e-6 {
			t.Errorf("choice %d is %.7f kg, want %.7f", i, c.Value, want[i])
		}
	}
}
