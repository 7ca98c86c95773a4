package turning

import (
	"slices"
	"strconv"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// A gale, force 8 on the Beaufort scale: 39 mph, 62 km/h, 17.2 m/s, 34 knots. Twigs
// break off trees, and walking is hard; nobody rigs in it.
var gale = map[string]float64{"speed-mph": 39, "speed-kph": 62, "speed-ms": 17.2, "speed-knots": 34}

// Gales says where a wind is told that is a gale: "gusts of 45 mph", "50 mph up here".
func Gales(rd *reading.Reading) (found []reading.Element) {
	of := func(t reading.DangerToken) bool { return stops.Is(t, "gusts") || stops.Is(t, "up-here") }
	if !slices.ContainsFunc(rd.Tokens, of) {
		return nil
	}
	imperial := Units(rd) == parser.Imperial
	for i, t := range rd.Tokens {
		digits := strings.TrimRight(t.Word, "abcdefghijklmnopqrstuvwxyz")
		v, err := strconv.ParseFloat(strings.ReplaceAll(digits, ",", "."), 64)
		if err != nil {
			continue
		}
		for unit, least := range gale {
			bare := imperial && unit == "speed-mph" && digits == t.Word && blows(rd, i)
			glued := digits != t.Word && slices.Contains(rd.In.Dangers.Kinds[t.Word[len(digits):]], unit)
			if v >= least && (bare || glued || i+1 < len(rd.Tokens) && stops.Is(rd.Tokens[i+1], unit)) {
				found = append(found, reading.Element{Start: t.Start, End: t.End, Term: &scan.Term{Stop: parser.Storm}})
			}
		}
	}
	return found
}

// blows says whether the number of the token at i, with nothing that it counts behind
// it, is how fast it blows: "gusting to 45". Where feet are told, that is in miles an hour.
func blows(rd *reading.Reading, i int) bool {
	const few = 2
	if i+1 < len(rd.Tokens) && rd.Tokens[i+1].Pause == 0 && !stops.Is(rd.Tokens[i+1], "up-here") {
		return false
	}
	for k := i - 1; k >= 0 && i-k <= few && rd.Tokens[k+1].Pause == 0; k-- {
		if stops.Is(rd.Tokens[k], "gusts") {
			return true
		}
	}
	return false
}

// Winds passes over how fast it blows, "gusting to 30" and "gusts of 45 mph": no
// method here has wind in it, and the words themselves are noted.
func Winds(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		i = fast(rd, i)
		if !rd.TermAt(i).Weather {
			continue
		}
		if fig := rd.At(i - 1).Fig; fig != nil && fig.Unit == nil && fig.Dim == parser.DimCount && rd.Cued(rd.Elems[i], lexicon.CueSpeed) {
			rd.Pass(i-1, i) // "25 mph winds"
			i--
			continue
		}
		j := rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkBound|lexicon.MarkAdverb|lexicon.MarkMade|lexicon.MarkIs)
		if k := blownFrom(rd, j); k > j {
			j = k
		}
		fig := rd.At(j).Fig
		if fig == nil || fig.Unit != nil || fig.Dim != parser.DimCount {
			continue
		}
		k := j + 1
		if rd.TermAt(k).Weather {
			k++ // "30 mph"
		}
		rd.Pass(i+1, k)
	}
}

// blownFrom goes on from the words at i over where the wind comes from, "out of the west
// maybe", to how fast it blows: more than ever pull a rope, so that "15 pulling" behind it
// counts nobody. It is i where no such number follows in the breath.
func blownFrom(rd *reading.Reading, i int) int {
	const most, least = 6, 8
	for k := i; k <= i+most && rd.At(k).Pause == 0; k++ {
		e := rd.At(k)
		if f := e.Fig; f != nil {
			if f.Unit == nil && f.Dim == parser.DimCount && f.Low >= least {
				return k
			}
			return i
		}
		if k >= len(rd.Elems) || e.Piece() || e.Plays(parser.People) || len(rd.TermAt(k).Roles) > 0 || stops.Kit(rd, k) {
			return i
		}
	}
	return i
}

// fast reads "wind 25 mph" and "wind maybe 15": by itself the word is how a rope goes round a
// drum as well. It is where to go on from: at the wind, where it was told.
func fast(rd *reading.Reading, i int) (from int) {
	const least = 8 // fewer may be wraps that are wound
	fig, unit := rd.Elems[i].Fig, rd.At(i+1)
	if fig == nil || fig.Unit != nil || fig.Dim != parser.DimCount || !rd.Cued(unit, lexicon.CueSpeed) && fig.Low < least {
		return i
	}
	k := slices.IndexFunc(rd.Tokens, func(t reading.DangerToken) bool { return t.Start >= fig.Start }) - 1
	at := i // where the word for the wind belongs
	for n := i - 1; k > 0 && n >= 0 && rd.Elems[n].Start == rd.Tokens[k].Start && (rd.TermAt(n).Note == "about" || rd.At(n).Marked(lexicon.MarkIs|lexicon.MarkAt)); n-- {
		k, at = k-1, n
	}
	if k < 0 || !stops.Is(rd.Tokens[k], "gusts") {
		return i
	}
	wind := rd.Tokens[k]
	before := len(rd.Asks)
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && a.Start == wind.Start && a.End == wind.End
	})
	if len(rd.Asks) < before {
		blows := reading.Element{Start: wind.Start, End: wind.End, Term: &scan.Term{Note: "gusty", Weather: true}}
		rd.Elems = slices.Insert(rd.Elems, at, blows)
		return at
	}
	return i
}
