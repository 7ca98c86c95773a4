package sizes

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Whoever says "lowering 250" tells what is lowered, and not how high: no hitch is
// told behind the verb alone, and none is that high. Its unit may still be asked for.

// Hauled makes such a number what the piece weighs.
func Hauled(rd *reading.Reading) {
	for i := range rd.Elems {
		if !hauledBare(rd, i) {
			continue
		}
		fig := rd.Elems[i].Fig
		if u := LoadUnit(rd, i); u != nil && MassTold(rd, i) {
			fig.Lent(u)
		}
		fig.Sure = parser.Weight
		if verb := rd.Back(i - 1); rd.TermAt(verb).Intent == parser.AskLower {
			rd.Alter(verb, func(t *scan.Term) {
				t.Roles = slices.DeleteFunc(slices.Clone(t.Roles), func(r scan.Role) bool { return r.Field == parser.HitchHeight })
			})
		}
	}
}

// hauledBare says whether the number at i stands right behind a verb of lowering or
// lifting, is more than any hitch is told behind one, and counts nothing.
func hauledBare(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Pair || fig.Falling || fig.Sure != "" || fig.Low < stops.LeastTold {
		return false
	}
	verb := rd.Back(i - 1)
	in := rd.TermAt(verb).Intent
	if in != parser.AskLower && in != parser.AskLift || gear.EndsInAt(rd, verb) || rd.At(i-1).Marked(lexicon.MarkAt) || gear.Part(rd.At(verb)) != "" || rd.At(verb).Plays(parser.Wraps) {
		return false // "lowering from 120"
	}
	next := rd.At(i + 1)
	if s, _ := gear.StrengthBeside(rd, i-1, i+1); s != "" || rd.At(i+1).Looks(lexicon.Before) {
		return false
	}
	return rd.EndsBreath(i+1) || next.Marked(lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkAt) || next.Polite()
}
