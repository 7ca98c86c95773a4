package parser

import "strings"

// fewestOfHarm is how many letters a word must have that may be a slip of one for
// damaged gear: shorter ones are a slip away from too many.
const fewestOfHarm = 6

// harmNear is the word for damaged gear that a misspelt word is one slip away
// from, "" for none: "quemda" must not become "queda" where it may be "quemada".
func (lx *lexicon) harmNear(word string, t *tongue) string {
	if harm := lx.harmLike(word, t); harm != "" {
		return harm
	}
	for _, e := range t.endings {
		if cut, ok := strings.CutSuffix(word, e.cut); ok && e.put != "" {
			if harm := lx.harmLike(cut+e.put, t); harm != "" {
				return harm
			}
		}
	}
	return ""
}

func (lx *lexicon) harmLike(word string, t *tongue) string {
	s := newSearch(word, fewestOfHarm)
	for n := s.letters - 1; s.slips > 0 && n <= s.letters+1; n++ {
		for _, w := range lx.starts[n] {
			if w.langs&t.langs == 0 || !s.startsLike(w.word) || unshared(word, w.word) > 1 || s.distance(w.word, n) > 2 {
				continue
			}
			if found, _ := lx.find([]string{w.word}, t); found != nil && found.damaged {
				return w.word
			}
		}
	}
	return ""
}
