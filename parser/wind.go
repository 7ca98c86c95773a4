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
func (rd *reading) gales() (stops []element) {
	of := func(t dangerToken) bool { return t.is("gusts") || t.is("up-here") }
	if !slices.ContainsFunc(rd.tokens, of) {
		return nil
	}
	for i, t := range rd.tokens {
		digits := strings.TrimRight(t.word, "abcdefghijklmnopqrstuvwxyz")
		v, err := strconv.ParseFloat(strings.ReplaceAll(digits, ",", "."), 64)
		if err != nil {
			continue
		}
		for unit, least := range gale {
			glued := digits != t.word && slices.Contains(rd.in.dangers.kinds[t.word[len(digits):]], unit)
			if v >= least && (glued || i+1 < len(rd.tokens) && rd.tokens[i+1].is(unit)) {
				stops = append(stops, element{start: t.start, end: t.end, term: &term{stop: Storm}})
			}
		}
	}
	return stops
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
