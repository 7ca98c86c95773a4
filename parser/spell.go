package parser

import (
	"strings"
	"unicode/utf8"

	edlib "github.com/hbollon/go-edlib"
)

// mend finds the misspelt word at the start of words that no spelling begins:
// the first, or the second where the first begins one ("red oka"). The word
// it returns does begin or continue a spelling.
func (lx *lexicon) mend(words []string, t *tongue) (at int, as string) {
	n := lx.root.child(words[0], t)
	if n == nil {
		if as := lx.nearestStart(words[0], t, t.leading); as != "" || t.langs == t.leading {
			return 0, as
		}
		return 0, lx.nearestStart(words[0], t, t.langs)
	}
	if len(words) < 2 || n.child(words[1], t) != nil {
		return 0, ""
	}
	s := newSearch(words[1], 3)
	for _, c := range n.next {
		if c.langs&t.langs != 0 {
			s.try(c.word)
		}
	}
	return 1, s.found()
}

// goesOnAs is the word that a tree's name goes on by where the word behind it is
// not known, and is a slip of that one or sounds like it: "pino carasco".
func (lx *lexicon) goesOnAs(words []string, n int, t *tongue) string {
	if n >= len(words) || lx.knows(words[n], t) {
		return ""
	}
	at := lx.root
	for _, w := range words[:n] {
		if at = at.child(w, t); at == nil {
			return ""
		}
	}
	s, heard := newSearch(words[n], 4), ""
	for _, c := range at.next {
		if c.langs&t.langs == 0 {
			continue
		}
		if s.try(c.word); lx.alike(c.word, words[n], t) {
			heard = c.word
		}
	}
	if heard != "" {
		return heard
	}
	return s.found()
}

// nearestStart looks among the words that begin a spelling, for the word
// itself, for a plain plural of it and for its other gender.
func (lx *lexicon) nearestStart(word string, t *tongue, langs langSet) string {
	if as := lx.soundsLike(word, t, langs); as != "" {
		return as
	}
	s := newSearch(word, 4)
	for n, last := s.letters-s.slips, s.letters+s.slips; n <= last; n++ {
		for _, w := range lx.starts[n] {
			if w.langs&langs != 0 {
				s.try(w.word)
			}
		}
	}
	if one, plural := strings.CutSuffix(word, "s"); plural && s.best == "" && len(one) > 3 {
		return lx.nearestStart(one, t, langs)
	}
	for _, e := range t.endings {
		if cut, ok := strings.CutSuffix(word, e.cut); ok && e.put != "" && s.best == "" {
			return lx.nearestStart(cut+e.put, t, langs)
		}
	}
	return s.found()
}

// search is for the one word that a misspelt word is nearest to. A slip is a
// letter left out, put in, changed, or swapped with its neighbour; the first
// letter is right, or swapped. Short words are near too many others, so that
// the slip must be the likelier the shorter the word is: a swap in four
// letters, one left out or put in in five, one changed in six, and two slips
// in nine. Where two words are as near, the word is asked about.
type search struct {
	word    string
	letters int
	slips   int // the most allowed
	cost    int // of the best found
	best    string
	ties    int
}

func newSearch(word string, shortest int) *search {
	s := &search{word: word, letters: utf8.RuneCountInString(word), slips: 1}
	switch {
	case s.letters < shortest:
		s.slips = -1
	case s.letters >= 9:
		s.slips = 2
	}
	return s
}

func (s *search) try(w string) {
	n := utf8.RuneCountInString(w)
	if s.slips < 0 || n < 3 || n < s.letters-s.slips || n > s.letters+s.slips || !s.startsLike(w) || unshared(s.word, w) > s.slips {
		return
	}
	switch d := s.distance(w, n); {
	case d > 2*s.slips || s.ties > 0 && d > s.cost:
	case s.ties > 0 && d == s.cost:
		s.ties++
	default:
		s.best, s.cost, s.ties = w, d, 1
	}
}

// distance counts two for a slip, and one for a swap, the likeliest.
func (s *search) distance(w string, n int) int {
	d := 2 * edlib.OSADamerauLevenshteinDistance(s.word, w)
	switch {
	case d != 2:
	case n == s.letters && unshared(w, s.word) == 0:
		d = 1
	case n == s.letters && n < 6, max(n, s.letters) < 6:
		d = 2*s.slips + 1
	}
	return d
}

// unshared counts the letters that one word has and the other has not: no fewer
// slips make one of the other. It is far cheaper than counting the slips.
func unshared(a, b string) int {
	var n [256]int8
	for i := range len(a) {
		n[a[i]]++
	}
	for i := range len(b) {
		n[b[i]]--
	}
	more, less := 0, 0
	for i := range n {
		more, less = more+int(max(n[i], 0)), less-int(min(n[i], 0))
	}
	return max(more, less)
}

func (s *search) startsLike(w string) bool {
	return w[0] == s.word[0] || w[0] == s.word[1] && w[1] == s.word[0]
}

func (s *search) found() string {
	if s.ties != 1 {
		return ""
	}
	return s.best
}
