package lexicon

import (
	"heft/parser"
	"heft/parser/scan"
)

// turnings are the ways that a word file can name.
var turnings = []parser.Turning{"", parser.TurnsDenied, parser.TurnsPart, parser.TurnsSum, parser.TurnsCompared, parser.TurnsSeveral, parser.TurnsRadius, parser.TurnsMeasure, parser.TurnsAnchor, parser.TurnsSlack, parser.TurnsLanding, parser.TurnsSuch}

// twistOf is a word that could turn the meaning round, and how.
func twistOf(err *error, how string) func(*scan.Term) {
	v := oneOf(err, how, turnings...)
	return func(t *scan.Term) { t.Ask, t.Turning = parser.Twist, v }
}
