package lexicon

import (
	"strings"

	"heft/parser/scan"
)

// Crews chop words: "pc", "blok", "wif". A line "alias piece" of a word file
// says what they stand for, so that they begin and go on all that the whole word
// does, stops too.

// SpelledOut returns the words of a run, the whole word for a chopped one. One
// that begins something known as it is typed stays, and before a tree one that is
// short for a word of trees' names as well: "blk" is black there.
func (lx *Lexicon) SpelledOut(run []Word, t *scan.Tongue) []string {
	words := make([]string, len(run))
	for i, w := range run {
		words[i] = w.Folded
	}
	for i, w := range words {
		whole := lx.whole(w, t)
		if whole == "" {
			continue
		}
		if _, n := lx.Find(words[i:], t); n > 0 {
			continue
		}
		next, _ := lx.Find(words[i+1:], t)
		if n := lx.Root.After(w); n != nil && n.langs&setOf(trees) != 0 && next != nil && next.Tree != nil {
			continue
		}
		words[i] = whole
	}
	return words
}

// whole is the word that a chopped one stands for, "" where it is none: one that is
// not known, and is with the end that is chopped off it, "bendin".
func (lx *Lexicon) whole(w string, t *scan.Tongue) string {
	if whole := t.Aliases[w]; whole != "" {
		return whole
	}
	const fewest = 2 // letters before it: "tyin"
	for _, e := range t.Chopped {
		if cut, ok := strings.CutSuffix(w, e.Cut); ok && len(cut) >= fewest && lx.knows(cut+e.Put, t) && !lx.knows(w, t) {
			return cut + e.Put
		}
	}
	return ""
}

// AllWhole returns the words of a run with every chopped one whole, nil where none
// is chopped.
func AllWhole(words []string, t *scan.Tongue) []string {
	var out []string
	for i, w := range words {
		whole := t.Aliases[w]
		if whole == "" {
			continue
		}
		if out == nil {
			out = append(out, words...)
		}
		out[i] = whole
	}
	return out
}

// Either is the longest spelling that the words begin as they were typed, or with
// every chopped one whole: "pa q no pase de" is no less than "para que no pase de".
func (lx *Lexicon) Either(words, whole []string, t *scan.Tongue) (*scan.Term, int) {
	found, n := lx.Find(words, t)
	if long, m := lx.Find(whole, t); m > max(n, 1) {
		return long, m
	}
	return found, n
}
