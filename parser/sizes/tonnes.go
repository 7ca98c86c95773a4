package sizes

import (
	"maps"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// A "tonelada" is a tonne where everything else of a Spanish message is metric.
// "Ton" is three masses in any company, as English has it too.

// InTonnes returns the tongue that a message is read in: one that has the tonne
// for its own word of a ton where the message has metric units and no others.
func InTonnes(lx *lexicon.Lexicon, text string, in *scan.Tongue) *scan.Tongue {
	if !in.Comma {
		return in
	}
	unsure, metric := false, false
	for word := range scan.Lettered(text) {
		u := in.Units[scan.Fold(word)]
		switch {
		case u == nil:
		case u.Unsure && lx.English.Units[scan.Fold(word)] == nil:
			unsure = true
		case u.Unsure, u.System == parser.Imperial:
			return in
		case u.System == parser.Metric:
			metric = true
		}
	}
	if !unsure || !metric || hasInchMark(text) {
		return in
	}
	t := *in
	t.Units = maps.Clone(in.Units)
	for word, u := range t.Units {
		if u.Unsure && lx.English.Units[word] == nil {
			t.Units[word] = scan.UnitNamed["tonne"]
		}
	}
	return &t
}

// hasInchMark says whether a message has a mark of feet, inches or pounds.
func hasInchMark(text string) bool {
	for _, r := range text {
		if u := scan.UnitMarks[string(r)]; u != nil && u.System == parser.Imperial {
			return true
		}
	}
	return false
}
