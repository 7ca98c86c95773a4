package lexicon

import (
	"strings"
	"unicode/utf8"

	edlib "github.com/hbollon/go-edlib"

	"heft/parser/scan"
)

// Mend finds the misspelt word at the start of words that no spelling begins:
// the first, or the second where the first begins one ("red oka"). The word
// it returns does begin or continue a spelling.
func (lx *Lexicon) Mend(words []string, t *scan.Tongue) (at int, as string) {
	n := lx.Root.child(words[0], t)
	if n == nil {
		if as := lx.nearestStart(words[0], t, t.Leading); as != "" || t.Langs == t.Leading {
			return 0, as
		}
		return 0, lx.nearestStart(words[0], t, t.Langs)
	}
	if len(words) < 2 || n.child(words[1], t) != nil {
		return 0, ""
	}
	s := NewSearch(words[1], 3)
	for _, c := range n.next {
		if c.langs&t.Langs != 0 {
			s.try(c.word)
		}
	}
	return 1, s.found()
}

// GoesOnAs is the word that a tree's name goes on by where the word behind it is
// not known, and is a slip of that one or sounds like it: "pino carasco".
func (lx *Lexicon) GoesOnAs(words []string, n int, t *scan.Tongue) string {
	if n >= len(words) || lx.knows(words[n], t) {
		return ""
	}
	at := lx.Root
	for _, w := range words[:n] {
		if at = at.child(w, t); at == nil {
			return ""
		}
	}
	s, heard := NewSearch(words[n], 4), ""
	for _, c := range at.next {
		if c.langs&t.Langs == 0 {
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
func (lx *Lexicon) nearestStart(word string, t *scan.Tongue, langs scan.LangSet) string {
	if as := lx.soundsLike(word, t, langs); as != "" {
		return as
	}
	s := NewSearch(word, 4)
	for n, last := s.Letters-s.Slips, s.Letters+s.Slips; n <= last; n++ {
		for _, w := range lx.Starts[n] {
			if w.Langs&langs != 0 {
				s.try(w.Word)
			}
		}
	}
	if one, plural := strings.CutSuffix(word, "s"); plural && s.best == "" && len(one) > 3 {
		return lx.nearestStart(one, t, langs)
	}
	for _, e := range t.Endings {
		if cut, ok := strings.CutSuffix(word, e.Cut); ok && e.Put != "" && s.best == "" {
			return lx.nearestStart(cut+e.Put, t, langs)
		}
	}
	return s.found()
}

// Search is for the one word that a misspelt word is nearest to. A slip is a
// letter left out, put in, changed, or swapped with its neighbour; the first
// letter is right, or swapped. Short words are near too many others, so that
// the slip must be the likelier the shorter the word is: a swap in four
// letters, one left out or put in in five, one changed in six, and two slips
// in nine. Where two words are as near, the word is asked about.
type Search struct {
	word    string
	Letters int
	Slips   int // the most allowed
	cost    int // of the best found
	best    string
	ties    int
}

// NewSearch starts a search for the spelling nearest to a word; shorter ones are not mended.
func NewSearch(word string, shortest int) *Search {
	s := &Search{word: word, Letters: utf8.RuneCountInString(word), Slips: 1}
	switch {
	case s.Letters < shortest:
		s.Slips = -1
	case s.Letters >= 9:
		s.Slips = 2
	}
	return s
}

func (s *Search) try(w string) {
	n := utf8.RuneCountInString(w)
	if s.Slips < 0 || n < 3 || n < s.Letters-s.Slips || n > s.Letters+s.Slips || !s.StartsLike(w) || Unshared(s.word, w) > s.Slips {
		return
	}
	switch d := min(s.Distance(w, n), s.thumbed(w, n)); {
	case d > 2*s.Slips || s.ties > 0 && d > s.cost:
	case s.ties > 0 && d == s.cost:
		s.ties++
	default:
		s.best, s.cost, s.ties = w, d, 1
	}
}

// Distance counts two for a slip, and one for a swap, the likeliest.
func (s *Search) Distance(w string, n int) int {
	d := 2 * edlib.OSADamerauLevenshteinDistance(s.word, w)
	switch {
	case d != 2:
	case n == s.Letters && Unshared(w, s.word) == 0:
		d = 1
	case n == s.Letters && n < 6, max(n, s.Letters) < 6:
		d = 2*s.Slips + 1
	}
	return d
}

// Unshared counts the letters that one word has and the other has not: no fewer
// slips make one of the other. It is far cheaper than counting the slips.
func Unshared(a, b string) int {
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

// StartsLike says whether a word begins as the one searched for does.
func (s *Search) StartsLike(w string) bool {
	return w[0] == s.word[0] || w[0] == s.word[1] && w[1] == s.word[0]
}

func (s *Search) found() string {
	if s.ties != 1 {
		return ""
	}
	return s.best
}
