package parser

import "strings"

// Crews chop words: "pc", "blok", "wif". A line "alias piece" of a word file
// says what they stand for, so that they begin and go on all that the whole word
// does, stops too.

// spelledOut returns the words of a run, the whole word for a chopped one. One
// that begins something known as it is typed stays, and before a tree one that is
// short for a word of trees' names as well: "blk" is black there.
func (lx *lexicon) spelledOut(run []word, t *tongue) []string {
	words := make([]string, len(run))
	for i, w := range run {
		words[i] = w.folded
	}
	for i, w := range words {
		whole := lx.whole(w, t)
		if whole == "" {
			continue
		}
		if _, n := lx.find(words[i:], t); n > 0 {
			continue
		}
		next, _ := lx.find(words[i+1:], t)
		if n := lx.root.after(w); n != nil && n.langs&setOf(trees) != 0 && next != nil && next.tree != nil {
			continue
		}
		words[i] = whole
	}
	return words
}

// whole is the word that a chopped one stands for, "" where it is none: one that is
// not known, and is with the end that is chopped off it, "bendin".
func (lx *lexicon) whole(w string, t *tongue) string {
	if whole := t.aliases[w]; whole != "" {
		return whole
	}
	const fewest = 2 // letters before it: "tyin"
	for _, e := range t.chopped {
		if cut, ok := strings.CutSuffix(w, e.cut); ok && len(cut) >= fewest && lx.knows(cut+e.put, t) && !lx.knows(w, t) {
			return cut + e.put
		}
	}
	return ""
}

// allWhole returns the words of a run with every chopped one whole, nil where none
// is chopped.
func allWhole(words []string, t *tongue) []string {
	var out []string
	for i, w := range words {
		whole := t.aliases[w]
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

// either is the longest spelling that the words begin as they were typed, or with
// every chopped one whole: "pa q no pase de" is no less than "para que no pase de".
func (lx *lexicon) either(words, whole []string, t *tongue) (*term, int) {
	found, n := lx.find(words, t)
	if long, m := lx.find(whole, t); m > max(n, 1) {
		return long, m
	}
	return found, n
}
