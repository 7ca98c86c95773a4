package scan

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/alecthomas/participle/v2/lexer"
)

// scanner walks one text.
type scanner struct {
	text    string
	tongue  *Tongue
	at      int             // where the next token may start
	last    lexer.TokenType // of the token before
	lastEnd int             // where it ended
}

// Next returns the next token; it never fails.
func (s *scanner) Next() (lexer.Token, error) {
	for s.at < len(s.text) {
		start := s.at
		kind, end := s.scan()
		s.at = end
		if kind == lexer.EOF {
			continue // white space and the like
		}
		s.last, s.lastEnd = kind, end
		return lexer.Token{Type: kind, Value: s.text[start:end], Pos: lexer.Position{Offset: start}}, nil
	}
	return lexer.EOFToken(lexer.Position{Offset: len(s.text)}), nil
}

// scan returns the kind and the end of the token at s.at; lexer.EOF is the
// kind of what is passed over.
func (s *scanner) scan() (lexer.TokenType, int) {
	r, n := utf8.DecodeRuneInString(s.text[s.at:])
	next := s.at + n
	switch {
	case r == '\n':
		return tokBreak, next
	case Blank(r):
		return lexer.EOF, next
	case numeral(s.text[s.at:]) && !s.pointBehindWord():
		return s.number(n)
	case (r == '°' || r == 'º') && s.last == tokNumber:
		return tokUnit, next
	case unicode.IsLetter(r):
		return s.letter()
	case strings.ContainsRune(`"”“″'’‘′`, r):
		return s.quote(n)
	case strings.ContainsRune(Dashes, r):
		return s.dash(r, next)
	default:
		return s.mark(r, next)
	}
}

const Dashes = "-‐‑–—−"

// Blank says whether a character is white space, or one that no reader sees.
func Blank(r rune) bool {
	if r < utf8.RuneSelf {
		return r == ' ' || r == '\t' || r == '\n' || r == '\r' || r == '\v' || r == '\f'
	}
	return unicode.IsSpace(r) || unicode.Is(unicode.Cf, r) || unicode.Is(unicode.Mn, r)
}

// numeral says whether a number in figures starts the text.
func numeral(text string) bool {
	switch {
	case text == "":
		return false
	case text[0] == '.':
		return len(text) > 1 && IsDigit(text[1])
	case text[0] < utf8.RuneSelf:
		return IsDigit(text[0])
	}
	return vulgarAt(text) > 0
}

// pointBehindWord says whether a point right behind a word or another point
// ends that, rather than starting a number: "14 in.22 ft", "14 in...22 ft".
func (s *scanner) pointBehindWord() bool {
	if s.text[s.at] != '.' || s.at == 0 {
		return false
	}
	r, _ := utf8.DecodeLastRuneInString(s.text[:s.at])
	return r == '.' || unicode.IsLetter(r)
}

func (s *scanner) number(n int) (lexer.TokenType, int) {
	if !IsDigit(s.text[s.at]) && s.text[s.at] != '.' {
		return tokNumber, s.at + n // a fraction in one character
	}
	end := numberEnd(s.text, s.at)
	if s.enumerates(end) {
		return tokBreak, end + 1
	}
	if n := s.tongue.thousandsBehind(s.text[s.at:end], s.text[end:]); n > 0 && s.last != TokJoin {
		return tokNumber, end + n
	}
	if _, n := s.tongue.SpokenDecimals(s.text[end:], true); n > 0 && Digits(s.text[s.at:end]) {
		return tokNumber, end + n
	}
	_, part := s.tongue.AndPart(s.text[end:])
	return tokNumber, end + part
}

// behindNumber says whether the last token was a number or its unit, so that
// a join can follow.
func (s *scanner) behindNumber() bool { return s.last == tokNumber || s.last == tokUnit }

// numberAhead says whether a number follows after i, white space passed over.
func (s *scanner) numberAhead(i int) bool {
	rest := strings.TrimLeft(s.text[i:], " \t")
	if numeral(rest) {
		return true
	}
	if r, n := utf8.DecodeRuneInString(rest); strings.ContainsRune(Dashes, r) && r != '—' {
		return numeral(rest[n:]) && vulgarAt(rest[n:]) == 0
	}
	return s.tongue.numberWordsIn(rest) > 0
}

// quote is a foot or inch mark right behind a number, and a pause elsewhere.
func (s *scanner) quote(n int) (lexer.TokenType, int) {
	end := s.at + n
	if s.last != tokNumber || s.lastEnd != s.at {
		return tokBreak, end
	}
	mark := s.text[s.at:end]
	if twice := mark + mark; strings.HasPrefix(s.text[s.at:], twice) && UnitMarks[twice] != nil {
		return tokUnit, end + n
	}
	return tokUnit, end
}

// dash tells a minus from a join and from a dash between words.
func (s *scanner) dash(r rune, next int) (lexer.TokenType, int) {
	tightLeft := s.at > 0 && s.lastEnd == s.at
	tightRight := next < len(s.text) && !unicode.IsSpace(rune(s.text[next]))
	digit := numeral(s.text[next:]) && vulgarAt(s.text[next:]) == 0
	switch {
	case digit && !tightLeft && r != '—':
		return tokNumber, numberEnd(s.text, next)
	case s.behindNumber() && s.numberAhead(next):
		return TokJoin, next
	case tightLeft && tightRight && !digit:
		return lexer.EOF, next // before a unit: "14-in"
	}
	return tokBreak, next
}

func (s *scanner) mark(r rune, next int) (lexer.TokenType, int) {
	behind := s.last == tokNumber && s.lastEnd == s.at
	switch {
	case r == '@' && next < len(s.text) && unicode.IsLetter(rune(s.text[next])):
		return lexer.EOF, s.letters(next) // somebody's name
	case r == '#' && behind:
		return tokUnit, next // "600#"
	case r == '#' && !s.writtenAt(next), r == '+' && s.standsAlone(next):
		return tokWords, next // "#?" asks for pounds, "weight + wraps" for both
	case r == '%' && s.behindNumber():
		return tokWords, next
	case r == ':' && behind && s.digitAt(next), r == '/' && s.behindNumber() && s.digitAt(next):
		return TokJoin, next
	case r == '*' && s.behindNumber() && s.digitAt(next):
		return tokBreak, next
	case strings.ContainsRune(".!?…,;:()[]{}/*_`|•·×✕", r):
		return tokBreak, next
	case strings.ContainsRune("@&~≈", r), unicode.Is(unicode.So, r) || unicode.Is(unicode.Sk, r):
		return tokWords, next
	case r == '=', r == '¿', r == '¡':
		return lexer.EOF, next
	}
	return tokOther, next
}

// writtenAt says whether a letter or a digit starts at i, so that a mark before it is a
// part of that.
func (s *scanner) writtenAt(i int) bool { return s.digitAt(i) || LetterAt(s.text, i) }

// standsAlone says whether no letter, digit or other sign stands right beside the mark at
// hand: "+/-" and "14+" are none.
func (s *scanner) standsAlone(next int) bool {
	before, n := utf8.DecodeLastRuneInString(s.text[:s.at])
	after, m := utf8.DecodeRuneInString(s.text[next:])
	parts := func(r rune, size int) bool { return size == 0 || Blank(r) || strings.ContainsRune(",.;:?!", r) }
	return parts(before, n) && parts(after, m)
}

func (s *scanner) digitAt(i int) bool { return i < len(s.text) && IsDigit(s.text[i]) }
