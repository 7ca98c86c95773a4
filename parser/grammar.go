package parser

import (
	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// message is the tree of a text: measures, and whatever stands between them.
// Every token has a place in it; which of them mean something is decided
// afterwards, where a refusal can name its place.
type message struct {
	Items []*item `parser:"@@*"`
}

type item struct {
	Measure *measure     `parser:"  @@"`
	Word    *lexer.Token `parser:"| @Word"`
	Break   *lexer.Token `parser:"| @(Comma | Stop | Dash | Hyphen | Slash | Colon | Cross | To | Minus)"`
	Stray   *lexer.Token `parser:"| @(Unit | Other)"`
}

// measure is one quantity, or two joined: "14 in", "14-16 in", "14/10 in",
// "6'4", "2:1".
type measure struct {
	First  *quantity    `parser:"@@"`
	Join   *lexer.Token `parser:"( @(Hyphen | Dash | To | Slash | Colon)"`
	Second *quantity    `parser:"  @@ )?"`
}

type quantity struct {
	Minus  *lexer.Token `parser:"@Minus?"`
	Number *lexer.Token `parser:"@(Number | Odd)"`
	Unit   *lexer.Token `parser:"( Hyphen? @Unit )?"`
}

// lookahead is the longest run of tokens that decides between two readings of
// the grammar: a join, a minus and a number.
const lookahead = 4

var grammar = participle.MustBuild[message](
	participle.Lexer(tokens{tokenNames}),
	participle.UseLookahead(lookahead),
)
