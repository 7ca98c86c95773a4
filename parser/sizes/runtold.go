package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
)

// RunTold reads "he can let it run, maybe 8 ft" behind a piece whose length is told: what is
// guessed right behind the words for a run is how far.
func RunTold(rd *reading.Reading) {
	for i, e := range rd.Elems {
		n := i + 2
		if !e.LeadsTo(parser.RunLength) || e.Fig != nil || rd.At(i+1).Pause != 2 {
			continue
		}
		for rd.TermAt(n).Note == "about" || rd.At(n).Marked(lexicon.MarkArticle) {
			n++
		}
		longTold := rd.Before.Has(parser.Length) || rd.AnyAt(func(k int) bool { return k != n && places.LengthAt(rd, k) && gear.Far(rd, k) })
		if n > i+2 && places.LengthAt(rd, n) && gear.Far(rd, n) && rd.EndsBreath(n+1) && longTold {
			rd.Elems[n].Fig.Told = parser.RunLength
		}
	}
}

// RunOrFall asks of "let it go 6 ft" behind a piece that falls whether it is let run so far or
// falls so far before the rope takes it.
func RunOrFall(rd *reading.Reading) {
	falls := gear.AsksFor(rd, parser.AskDrop) || rd.Before.Intent == parser.AskDrop
	for i, e := range rd.Elems {
		if falls && places.LengthAt(rd, i) && e.Fig.Told == "" && rd.TypedBefore(i, lexicon.CueLetsGo) {
			eitherOf(rd, i, parser.RunLength, parser.DropHeight)
		}
	}
}
