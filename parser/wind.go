package parser

import (
	"slices"
	"strconv"
	"strings"
)

// A gale, force 8 on the Beaufort scale: 39 mph, 62 km/h, 17.2 m/s, 34 knots. Twigs
// break off trees, and walking is hard; nobody rigs in it.
var gale = map[string]float64{"speed-mph": 39, "speed-kph": 62, "speed-ms": 17.2, "speed-knots": 34}

// gales says where a wind is told that is a gale: "gusts of 45 mph", "50 mph up here".
func (rd *reading) gales() (found []element) {
	of := func(t dangerToken) bool { return t.is("gusts") || t.is("up-here") }
	if !slices.ContainsFunc(rd.tokens, of) {
		return nil
	}
	imperial := rd.units() == Imperial
	for i, t := range rd.tokens {
		digits := strings.TrimRight(t.word, "abcdefghijklmnopqrstuvwxyz")
		v, err := strconv.ParseFloat(strings.ReplaceAll(digits, ",", "."), 64)
		if err != nil {
			continue
		}
		for unit, least := range gale {
			bare := imperial && unit == "speed-mph" && digits == t.word && rd.blows(i)
			glued := digits != t.word && slices.Contains(rd.in.dangers.kinds[t.word[len(digits):]], unit)
			if v >= least && (bare || glued || i+1 < len(rd.tokens) && rd.tokens[i+1].is(unit)) {
				found = append(found, element{start: t.start, end: t.end, term: &term{stop: Storm}})
			}
		}
	}
	return found
}

// blows says whether the number of the token at i, with nothing that it counts behind
// it, is how fast it blows: "gusting to 45". Where feet are told, that is in miles an hour.
func (rd *reading) blows(i int) bool {
	const few = 2
	if i+1 < len(rd.tokens) && rd.tokens[i+1].pause == 0 && !rd.tokens[i+1].is("up-here") {
		return false
	}
	for k := i - 1; k >= 0 && i-k <= few && rd.tokens[k+1].pause == 0; k-- {
		if rd.tokens[k].is("gusts") {
			return true
		}
	}
	return false
}

// winds passes over how fast it blows, "gusting to 30" and "gusts of 45 mph": no
// method here has wind in it, and the words themselves are noted.
func (rd *reading) winds() {
	for i := 0; i < len(rd.elems); i++ {
		if !rd.termAt(i).weather {
			continue
		}
		if fig := rd.at(i - 1).fig; fig != nil && fig.unit == nil && fig.dim == dimCount && rd.cued(rd.elems[i], cueSpeed) {
			rd.pass(i-1, i) // "25 mph winds"
			i--
			continue
		}
		j := rd.past(i+1, +1, markAt|markBound|markAdverb|markMade|markIs)
		fig := rd.at(j).fig
		if fig == nil || fig.unit != nil || fig.dim != dimCount {
			continue
		}
		k := j + 1
		if rd.termAt(k).weather {
			k++ // "30 mph"
		}
		rd.pass(i+1, k)
	}
}
