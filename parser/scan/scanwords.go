package scan

import (
	"iter"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/alecthomas/participle/v2/lexer"
)

// letter scans what starts with a letter: a unit, a join, a number typed as
// words, or a run of words.
func (s *scanner) letter() (lexer.TokenType, int) {
	end := s.letters(s.at)
	if s.last == tokNumber {
		if cut := s.unit(end); cut > 0 {
			return tokUnit, cut
		}
	}
	if kind, end := s.special(s.at, end); kind != tokWords {
		return kind, end
	}
	return tokWords, s.words(end)
}

// special is the kind of one word at i that is not to be looked up.
func (s *scanner) special(i, end int) (lexer.TokenType, int) {
	switch run := s.text[i:end]; {
	case strings.EqualFold(run, "x"):
		if i == s.at && s.behindNumber() || s.numberAhead(end) {
			return tokBreak, end
		}
	case i == s.at && s.behindNumber() && s.joins(run) && (s.numberAhead(end) || s.toOne(run, end)):
		return TokJoin, end
	}
	if n := s.tongue.numberWordsIn(s.text[i:]); n > 0 && !s.blocksMeet(i, n) && !s.countless(i, n) {
		return tokNumber, i + n
	}
	if n := s.tongue.oneUnit(s.text[i:]); n > 0 && !(i == s.at && s.behindNumber()) { // "$5 a foot"
		return tokNumber, i + n
	}
	if s.last == TokJoin && i == s.at && s.tongue.Numbers[Fold(s.text[i:end])].Value == 1 {
		return tokNumber, end // "tres a uno"
	}
	return tokWords, end
}

// blocksMeet says whether the number at i is no count but what blocks do: "before
// it two blocks".
func (s *scanner) blocksMeet(i, n int) bool {
	const verb = "block"
	next, _ := NextWord(s.text[i+n:])
	if Fold(s.text[i:i+n]) != "two" || !strings.HasPrefix(next, verb) {
		return false
	}
	before := strings.Fields(s.text[:i])
	return len(before) > 0 && slices.Contains([]string{"it", "they", "we", "i", "not", "dont", "don't", "no", "to", "will", "gonna", "might"}, Fold(before[len(before)-1]))
}

// toOne says whether "to one" follows a number without a unit: "three to one"
// is a ratio, "three to one guy" is not.
func (s *scanner) toOne(word string, i int) bool {
	j := s.tongue.Joins[Fold(word)]
	one, n := NextWord(s.text[i:])
	if s.last != tokNumber || j != To && j != UpTo || s.tongue.Numbers[one].Value != 1 || s.tongue.Optional[one] {
		return false
	}
	next, _ := NextWord(s.text[i+n:])
	return s.tongue.Units[next] == nil && !s.tongue.Counted[next]
}

// joins says whether the word joins the number before it to another. A word
// that says much else does so only where the number has no unit: "22 pies a 35
// pies" is no range.
func (s *scanner) joins(word string) bool {
	j, ok := s.tongue.Joins[Fold(word)]
	return ok && (j != UpTo || s.last == tokNumber)
}

// words extends a run of words from the end of its first. Spaces, hyphens
// and the slash of "w/" and "w/o" belong to it.
func (s *scanner) words(end int) int {
	for {
		end = s.pastSlash(end)
		i := s.pastGap(end)
		next := s.letters(i)
		if i == end || next == i || !LetterAt(s.text, i) {
			return end
		}
		if kind, _ := s.special(i, next); kind != tokWords {
			return end
		}
		end = next
	}
}

// pastGap passes over the blanks, or the hyphen, between two words.
func (s *scanner) pastGap(i int) int {
	r, n := utf8.DecodeRuneInString(s.text[i:])
	if strings.ContainsRune(Dashes, r) {
		return i + n
	}
	for n > 0 && Blank(r) && r != '\n' {
		i += n
		r, n = utf8.DecodeRuneInString(s.text[i:])
	}
	return i
}

// pastSlash takes in the slash of "w/" and "w/o".
func (s *scanner) pastSlash(end int) int {
	if end == len(s.text) || s.text[end] != '/' || !strings.EqualFold(s.text[end-1:end], "w") {
		return end
	}
	if end >= 2 && LetterBefore(s.text, end-1) {
		return end
	}
	if o := s.letters(end + 1); strings.EqualFold(s.text[end+1:o], "o") || strings.EqualFold(s.text[end+1:o], "out") {
		return o
	}
	return end + 1
}

// unit returns the end of the unit that the letters up to end are or begin
// with, 0 where they are none: "14 in" is one, "14 in the tree" is not, and
// "14inx22ft" holds one.
func (s *scanner) unit(end int) int {
	low := Fold(s.text[s.at:end])
	if u := s.tongue.Units[low]; u != nil {
		switch {
		case low == "in" && (s.tongue.nextIsArticle(s.text[end:]) || endsInIt(s.text[end:])):
			return 0
		case low == "n" && s.at > s.lastEnd && !s.everyOne(end):
			return 0 // "14 n 16": "and"
		}
		return end
	}
	cut := strings.TrimSuffix(low, "x")
	if cut != low && s.digitAt(end) && s.tongue.Units[cut] != nil {
		return end - 1
	}
	return 0
}

// everyOne says whether the word after i is that of what every one pulls: "200
// N each".
func (s *scanner) everyOne(i int) bool {
	rest := strings.TrimLeft(s.text[i:], " ")
	switch Lower(rest[:lettersIn(rest)]) {
	case "each", "apiece", "per", "pull":
		return true
	}
	return false
}

// nextIsArticle reads "in the": "its" follows an inch as well.
func (t *Tongue) nextIsArticle(rest string) bool {
	word := strings.TrimLeft(rest, " ")
	word = Fold(word[:lettersIn(word)])
	return word != "its" && t.Optional[word]
}

// endsInIt reads "the line has 300 in it" where the breath ends there: "14 in it is" goes on.
func endsInIt(rest string) bool {
	word := strings.TrimLeft(rest, " ")
	n := lettersIn(word)
	next, _ := utf8.DecodeRuneInString(strings.TrimLeft(word[n:], " "))
	return Fold(word[:n]) == "it" && !unicode.IsLetter(next) && !unicode.IsDigit(next)
}

// letters returns the end of a run of letters, apostrophes inside it taken in.
func (s *scanner) letters(i int) int {
	for {
		i += lettersIn(s.text[i:])
		r, n := utf8.DecodeRuneInString(s.text[i:])
		if r != '\'' && r != '’' || lettersIn(s.text[i+n:]) == 0 {
			return i
		}
		i += n
	}
}

func lettersIn(s string) int {
	for i, r := range s {
		if r < utf8.RuneSelf {
			if !isLetterByte(byte(r)) {
				return i
			}
		} else if !unicode.IsLetter(r) && !unicode.Is(unicode.Mn, r) {
			return i
		}
	}
	return len(s)
}

// Lettered goes through the runs of letters of a text.
func Lettered(text string) iter.Seq[string] {
	return func(yield func(string) bool) {
		for text != "" {
			n := lettersIn(text)
			if n > 0 && !yield(text[:n]) {
				return
			}
			_, past := utf8.DecodeRuneInString(text[n:])
			text = text[n+past:]
		}
	}
}

// LetterAt says whether a letter starts at i.
func LetterAt(s string, i int) bool {
	r, _ := utf8.DecodeRuneInString(s[i:])
	return unicode.IsLetter(r)
}

// LetterBefore says whether a letter ends at i.
func LetterBefore(s string, i int) bool {
	r, _ := utf8.DecodeLastRuneInString(s[:i])
	return unicode.IsLetter(r)
}

// Lower is strings.ToLower that is free of cost for lower case.
func Lower(s string) string {
	for i := 0; i < len(s); i++ {
		if 'A' <= s[i] && s[i] <= 'Z' || s[i] >= utf8.RuneSelf {
			return strings.ToLower(s)
		}
	}
	return s
}
