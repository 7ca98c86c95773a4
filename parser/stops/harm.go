package stops

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// fewestOfHarm is how many letters a word must have that may be a slip of one for
// damaged gear: shorter ones are a slip away from too many.
const fewestOfHarm = 6

// HarmNear is the word for damaged gear that a misspelt word is one slip away
// from, "" for none: "quemda" must not become "queda" where it may be "quemada".
func HarmNear(lx *lexicon.Lexicon, word string, t *scan.Tongue) string {
	if harm := harmLike(lx, word, t); harm != "" {
		return harm
	}
	for _, e := range t.Endings {
		if cut, ok := strings.CutSuffix(word, e.Cut); ok && e.Put != "" {
			if harm := harmLike(lx, cut+e.Put, t); harm != "" {
				return harm
			}
		}
	}
	return ""
}

func harmLike(lx *lexicon.Lexicon, word string, t *scan.Tongue) string {
	s := lexicon.NewSearch(word, fewestOfHarm)
	for n := s.Letters - 1; s.Slips > 0 && n <= s.Letters+1; n++ {
		for _, w := range lx.Starts[n] {
			if w.Langs&t.Langs == 0 || !s.StartsLike(w.Word) || lexicon.Unshared(word, w.Word) > 1 || s.Distance(w.Word, n) > 2 {
				continue
			}
			if found, _ := lx.Find([]string{w.Word}, t); found != nil && found.Damaged {
				return w.Word
			}
		}
	}
	return ""
}

// NoteWorn is the note of gear that no figure holds for.
const NoteWorn = parser.Worn
