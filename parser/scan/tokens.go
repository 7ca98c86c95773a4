package scan

import (
	"io"

	"github.com/alecthomas/participle/v2/lexer"
)

// The kinds of token; positions are byte offsets. White space and what says
// nothing by itself are left out. A join stands only between two numbers and
// a unit only behind one, so that one token decides every branch of the
// grammar.
const (
	tokWords  lexer.TokenType = -(iota + 2) // a run of words, or an emoji
	tokNumber                               // digits and marks, or words, that should make a number
	tokUnit
	TokJoin  // "14-16", "14 to 16", "14/10", "2:1"
	tokBreak // what a reader pauses or stops at, or "by" between two sizes
	tokOther // a character that could mean something
)

var tokenNames = map[string]lexer.TokenType{
	"EOF": lexer.EOF, "Words": tokWords, "Number": tokNumber, "Unit": tokUnit, "Join": TokJoin, "Break": tokBreak, "Other": tokOther,
}

// tokens is the lexer definition: the kinds alone, since the scanner must know
// the tongue of its text. It is our own because a regular expression for each
// token would cost more than all the rest of an answer.
type tokens struct{ names map[string]lexer.TokenType }

func (t tokens) Symbols() map[string]lexer.TokenType { return t.names }

// Lex scans a text of no known tongue.
func (t tokens) Lex(_ string, r io.Reader) (lexer.Lexer, error) {
	b, err := io.ReadAll(r)
	if err != nil {
		return nil, err
	}
	return scan(string(b), &Tongue{}), nil
}

func scan(text string, t *Tongue) *scanner {
	return &scanner{text: text, tongue: t, last: lexer.EOF}
}

// Parse makes the tree of a text.
func Parse(text string, t *Tongue) (*Message, error) {
	lex, err := lexer.Upgrade(scan(text, t))
	if err != nil {
		return nil, err
	}
	return grammar.ParseFromLexer(lex)
}
