package parser

import "maps"

// A "tonelada" is a tonne where everything else of a Spanish message is metric.
// "Ton" is three masses in any company, as English has it too.

// inTonnes returns the tongue that a message is read in: one that has the tonne
// for its own word of a ton where the message has metric units and no others.
func (lx *lexicon) inTonnes(text string, in *tongue) *tongue {
	if !in.comma {
		return in
	}
	unsure, metric := false, false
	for word := range lettered(text) {
		u := in.units[fold(word)]
		switch {
		case u == nil:
		case u.unsure && lx.english.units[fold(word)] == nil:
			unsure = true
		case u.unsure, u.system == Imperial:
			return in
		case u.system == Metric:
			metric = true
		}
	}
	if !unsure || !metric || hasInchMark(text) {
		return in
	}
	t := *in
	t.units = maps.Clone(in.units)
	for word, u := range t.units {
		if u.unsure && lx.english.units[word] == nil {
			t.units[word] = unitNamed["tonne"]
		}
	}
	return &t
}

// hasInchMark says whether a message has a mark of feet, inches or pounds.
func hasInchMark(text string) bool {
	for _, r := range text {
		if u := unitMarks[string(r)]; u != nil && u.system == Imperial {
			return true
		}
	}
	return false
}
