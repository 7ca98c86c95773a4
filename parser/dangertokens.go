package parser

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// dangerToken is one word of a message as dangers are read: articles and whose it is
// are left out, and their pause goes to the word behind them.
type dangerToken struct {
	word       string
	start, end int
	pause      int    // before it: 2 for a comma, 4 where a sentence ends
	owned      bool   // an article or an owner was left out before it
	kinds      []seen // that begin at it
}

// seen is a kind of words, and the token behind them.
type seen struct {
	kind string
	end  int
}

// dangerTokens are the words of the message, each with the kinds that begin at it.
func (rd *reading) dangerTokens() []dangerToken {
	var out []dangerToken
	pause, owned := 0, false
	for at := 0; at < len(rd.text); {
		n := dangerWord(rd.text[at:])
		if n == 0 {
			r, size := utf8.DecodeRuneInString(rd.text[at:])
			pause = max(pause, pauseOf(r))
			at += size
			continue
		}
		word := strings.ReplaceAll(fold(rd.text[at:at+n]), "'", "")
		if rd.in.optional[word] {
			owned = true
		} else {
			out = append(out, dangerToken{word: word, start: at, end: at + n, pause: pause, owned: owned})
			pause, owned = 0, false
		}
		at += n
	}
	for i := range out {
		rd.dangerKinds(out, i)
	}
	return out
}

// dangerWord is how long the word or number at the beginning of a text is.
func dangerWord(text string) int {
	n := 0
	for n < len(text) {
		r, size := utf8.DecodeRuneInString(text[n:])
		inside := n > 0 && strings.ContainsRune("'’.,", r) && lettersAt(text[n+size:])
		point := r == '.' || r == ','
		switch {
		case unicode.IsLetter(r), unicode.IsDigit(r), unicode.Is(unicode.Mn, r):
		case inside && (!point || unicode.IsDigit(rune(text[n-1])) && unicode.IsDigit(rune(text[n+size]))):
		default:
			return n
		}
		n += size
	}
	return n
}

// lettersAt says whether a text begins with a letter or a digit.
func lettersAt(text string) bool {
	r, _ := utf8.DecodeRuneInString(text)
	return unicode.IsLetter(r) || unicode.IsDigit(r)
}

// pauseOf is how far what stands between two words parts them.
func pauseOf(r rune) int {
	switch r {
	case '.', '!', '?', ';', '…', '\n':
		return 4
	case ',', ':', '(', ')', '—', '–':
		return 2
	}
	return 0
}

// dangerKinds finds the kinds that begin at the token at i.
func (rd *reading) dangerKinds(tokens []dangerToken, i int) {
	const longest = 4
	t := &tokens[i]
	if t.word[0] >= '0' && t.word[0] <= '9' {
		t.kinds = append(t.kinds, seen{"number", i + 1})
	}
	phrase := t.word
	for n := 1; ; n++ {
		for _, kind := range rd.in.dangers.kinds[phrase] {
			t.kinds = append(t.kinds, seen{kind, i + n})
		}
		if n == longest || i+n == len(tokens) || tokens[i+n].pause > 0 {
			break
		}
		phrase += " " + tokens[i+n].word
	}
	for k, e := range rd.elems {
		if e.end <= t.start || e.start > t.start || e.term == nil {
			continue // an element may begin with an article
		}
		end := i + 1
		for end < len(tokens) && tokens[end].start < e.end {
			end++
		}
		for _, kind := range rd.knownAs(k) {
			t.kinds = append(t.kinds, seen{kind, end})
		}
	}
}

// knownAs are the kinds that the element at i is of by the other lines of the word
// files.
func (rd *reading) knownAs(i int) (kinds []string) {
	t := rd.termAt(i)
	if t.tree != nil {
		kinds = append(kinds, "tree")
	}
	if rd.elems[i].piece() || t.unnamed {
		kinds = append(kinds, "piece")
	}
	if rd.kit(i) {
		kinds = append(kinds, "gear")
	}
	if rd.person(i) || rd.elems[i].marked(markPerson) {
		kinds = append(kinds, "somebody")
	}
	return kinds
}
