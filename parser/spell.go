package parser

import (
	"unicode/utf8"

	edlib "github.com/hbollon/go-edlib"
)

// mend finds the misspelt word at the start of words that no spelling begins:
// the first, or the second where the first begins one ("red oka").
func (r *Reader) mend(words []string) (at int, as string) {
	if n := r.lex.root.child(words[0]); n != nil {
		if len(words) < 2 || n.child(words[1]) != nil {
			return 0, ""
		}
		var follow []string
		for w := range n.next {
			follow = append(follow, w)
		}
		as, _ = nearest(words[1], follow, 3)
		return 1, as
	}
	as, _ = nearest(words[0], r.lex.vocab, 4)
	return 0, as
}

// nearest returns the one word of the vocabulary that a misspelt word is
// nearest to: one slip of the finger in the shortest letters or more, two in eight or
// more (a slip is a letter left out, put in, changed or swapped with its
// neighbour). A short word, or one with two such neighbours, is asked about.
func nearest(word string, among []string, shortest int) (string, bool) {
	n := utf8.RuneCountInString(word)
	if n < shortest {
		return "", false
	}
	slips := 1
	if n >= 8 {
		slips = 2
	}
	best, ties := "", 0
	for _, w := range among {
		if m := utf8.RuneCountInString(w); m < 3 || m < n-slips || m > n+slips {
			continue
		}
		d := edlib.OSADamerauLevenshteinDistance(word, w)
		switch {
		case d < slips || d == slips && ties == 0:
			best, slips, ties = w, d, 1
		case d == slips:
			ties++
		}
	}
	if ties != 1 {
		return "", false
	}
	return best, true
}
