package scan

import (
	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// Message is the tree of a text: measures, and whatever stands between them.
// Every token has a place in it; which of them mean something is decided
// afterwards, where a refusal can name its place.
type Message struct {
	Items []*Item `parser:"@@*"`
}

// Item is a run of words, a measure, a break or a stray. A measure is one
// quantity, or two joined: "14 in", "14-16 in", "14/10 in", "6'-4", "2:1". It
// is written flat because every node of the tree costs as much as all the
// reading of its words.
type Item struct {
	Words  *lexer.Token `parser:"  @Words"`
	Number *lexer.Token `parser:"| @Number"`
	Unit   *lexer.Token `parser:"  @Unit?"`
	Second *joined      `parser:"  @@?"`
	Break  *lexer.Token `parser:"| @Break"`
	Stray  *lexer.Token `parser:"| @(Join | Unit | Other)"`
}

type joined struct {
	Join   *lexer.Token `parser:"@Join"`
	Number *lexer.Token `parser:"@Number"`
	Unit   *lexer.Token `parser:"@Unit?"`
}

var grammar = participle.MustBuild[Message](participle.Lexer(tokens{tokenNames}))
