package parser

import (
	"io"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/alecthomas/participle/v2/lexer"
)

// The kinds of token. White space, symbols that say nothing (emoji) and the
// hyphen inside a word are left out; positions are byte offsets.
const (
	tokNumber lexer.TokenType = -(iota + 2)
	tokOdd                    // digits and marks that make no one number
	tokUnit                   // a unit, only behind a number
	tokWord
	tokMinus  // a dash that makes a number negative
	tokHyphen // a dash that joins a number to what follows
	tokDash   // a dash between spaces
	tokTo
	tokSlash
	tokCross
	tokColon // between two numbers
	tokComma
	tokStop
	tokOther // a character that could mean something
)

var tokenNames = map[string]lexer.TokenType{
	"EOF": lexer.EOF, "Number": tokNumber, "Odd": tokOdd, "Unit": tokUnit, "Word": tokWord,
	"Minus": tokMinus, "Hyphen": tokHyphen, "Dash": tokDash, "To": tokTo, "Slash": tokSlash,
	"Cross": tokCross, "Colon": tokColon, "Comma": tokComma, "Stop": tokStop, "Other": tokOther,
}

// tokens is the lexer definition. It is our own because a regular expression
// for each token would cost more than all the rest of an answer.
type tokens struct{ names map[string]lexer.TokenType }

func (t tokens) Symbols() map[string]lexer.TokenType { return t.names }

func (t tokens) Lex(_ string, r io.Reader) (lexer.Lexer, error) {
	b, err := io.ReadAll(r)
	if err != nil {
		return nil, err
	}
	return t.LexString("", string(b))
}

func (tokens) LexString(_ string, text string) (lexer.Lexer, error) {
	return &scanner{text: text, last: lexer.EOF}, nil
}

// scanner walks one text.
type scanner struct {
	text    string
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
			continue // white space, or a symbol that says nothing
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
		return tokComma, next
	case unicode.IsSpace(r) || unicode.Is(unicode.Cf, r) || unicode.Is(unicode.Mn, r):
		return lexer.EOF, next
	case '0' <= r && r <= '9' || r == '.' && s.digitAt(next) || vulgar[r] > 0:
		return s.number(n)
	case r == '°' || r == 'º':
		return tokUnit, next
	case unicode.IsLetter(r):
		return s.word()
	case strings.ContainsRune(`"”“″'’‘′`, r):
		return s.quote(n)
	case strings.ContainsRune("-‐‑–—−", r):
		return s.dash(r, next), next
	default:
		return s.mark(r, next)
	}
}

func (s *scanner) number(n int) (lexer.TokenType, int) {
	if !isDigit(s.text[s.at]) && s.text[s.at] != '.' {
		return tokNumber, s.at + n // a fraction in one character
	}
	end := numberEnd(s.text, s.at)
	if _, ok := value(s.text[s.at:end]); !ok {
		return tokOdd, end
	}
	return tokNumber, end
}

// word takes a run of letters, with apostrophes inside it.
func (s *scanner) word() (lexer.TokenType, int) {
	end := s.letters(s.at)
	run := s.text[s.at:end]
	low := strings.ToLower(run)
	if s.last == tokNumber || s.last == tokHyphen {
		if kind, cut := s.unit(low, end); kind != lexer.EOF {
			return kind, cut
		}
	}
	switch {
	case low == "x":
		return tokCross, end
	case low == "to":
		return tokTo, end
	}
	if n := s.numberWord(low, end); n > 0 {
		return tokNumber, n
	}
	return tokWord, end
}

// unit decides whether the letters behind a number are its unit: "14 in" is,
// "14 in the tree" is not, and "14inx22ft" holds one.
func (s *scanner) unit(low string, end int) (lexer.TokenType, int) {
	if unitsTyped[low] != nil {
		if low == "in" && s.last == tokNumber && s.nextIsArticle(end) {
			return lexer.EOF, end
		}
		return tokUnit, s.pastFullStop(end)
	}
	cut := strings.TrimSuffix(low, "x")
	if cut != low && s.digitAt(end) && len(cut) > 0 && unitsTyped[cut] != nil {
		return tokUnit, end - 1
	}
	return lexer.EOF, end
}

// pastFullStop takes in the point of an abbreviation ("14 in. red oak").
func (s *scanner) pastFullStop(end int) int {
	if rest := s.text[end:]; len(rest) > 2 && rest[0] == '.' && rest[1] == ' ' {
		if r, _ := utf8.DecodeRuneInString(rest[2:]); unicode.IsLower(r) || unicode.IsDigit(r) {
			return end + 1
		}
	}
	return end
}

func (s *scanner) nextIsArticle(end int) bool {
	word := strings.TrimLeft(s.text[end:], " ")
	word = strings.ToLower(word[:lettersIn(word)])
	switch word {
	case "the", "a", "an", "this", "that", "my", "our", "his", "her", "your", "their":
		return true
	}
	return false
}

// numberWord returns the end of a number typed as words, 0 where there is
// none. "One" is one only before something that is counted.
func (s *scanner) numberWord(low string, end int) int {
	v, ok := numberWords[low]
	if !ok {
		return 0
	}
	rest := strings.TrimLeft(s.text[end:], " -")
	next := strings.ToLower(rest[:lettersIn(rest)])
	if v >= 20 && numberWords[next] > 0 && numberWords[next] < 10 {
		return len(s.text) - len(rest) + len(next)
	}
	if v == 1 && (unitsTyped[next] == nil || next == "in") && !countedAfterOne[next] {
		return 0
	}
	return end
}

// countedAfterOne has what follows "one" when it is a number: "that one" and
// "one more thing" are not.
var countedAfterOne = map[string]bool{
	"wrap": true, "turn": true, "person": true, "man": true, "guy": true, "groundie": true, "groundworker": true,
}

// quote is a foot or inch mark right behind a number, and nothing elsewhere.
func (s *scanner) quote(n int) (lexer.TokenType, int) {
	end := s.at + n
	if s.last != tokNumber || s.lastEnd != s.at {
		return tokComma, end
	}
	mark := s.text[s.at:end]
	if twice := mark + mark; strings.HasPrefix(s.text[s.at:], twice) && unitsTyped[twice] != nil {
		return tokUnit, end + n
	}
	return tokUnit, end
}

// dash tells a minus from a hyphen and from a dash between words.
func (s *scanner) dash(r rune, next int) lexer.TokenType {
	tightLeft := s.at > 0 && s.lastEnd == s.at
	tightRight := next < len(s.text) && !unicode.IsSpace(rune(s.text[next]))
	digit := s.digitAt(next) || strings.HasPrefix(s.text[next:], ".") && s.digitAt(next+1)
	numeric := s.last == tokNumber || s.last == tokUnit
	switch {
	case digit && !tightLeft && r != '—':
		return tokMinus
	case tightLeft && tightRight && numeric:
		return tokHyphen
	case tightLeft && tightRight && !digit:
		return lexer.EOF // inside a word: "douglas-fir"
	}
	return tokDash
}

func (s *scanner) mark(r rune, next int) (lexer.TokenType, int) {
	switch {
	case r == '@' && next < len(s.text) && unicode.IsLetter(rune(s.text[next])):
		return lexer.EOF, s.letters(next) // somebody's name
	case r == ':' && s.last == tokNumber && s.lastEnd == s.at && s.digitAt(next):
		return tokColon, next
	case r == '/' && (s.last == tokNumber || s.last == tokUnit) && s.digitAt(next):
		return tokSlash, next
	case r == '×' || r == '✕' || r == '*' && s.last != tokWord && s.digitAt(next):
		return tokCross, next
	case strings.ContainsRune(".!?…", r):
		return tokStop, next
	case strings.ContainsRune(",;:()[]{}/*_`|•·&", r):
		return tokComma, next
	case r == '@' || r == '=' || r == '~' || r == '≈':
		return lexer.EOF, next
	case unicode.Is(unicode.So, r) || unicode.Is(unicode.Sk, r):
		return lexer.EOF, next
	}
	return tokOther, next
}

func (s *scanner) digitAt(i int) bool { return i < len(s.text) && isDigit(s.text[i]) }

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
		if !unicode.IsLetter(r) && !unicode.Is(unicode.Mn, r) {
			return i
		}
	}
	return len(s)
}
