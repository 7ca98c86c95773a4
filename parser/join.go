package parser

import (
	"math"
	"unicode/utf8"

	"github.com/alecthomas/participle/v2/lexer"
)

// joint is what joins two numbers.
type joint int

const (
	hyphen joint = iota // "14-16"
	dash                // "14 - 16"
	to                  // "14 to 16"
	or                  // "14 or 16"
	upTo                // "14 a 16": a word that says much else besides
	slash               // "14/10"
	colon               // "2:1"
)

// jointNamed has the joins that are words, as the word files name them.
var jointNamed = map[string]joint{"to": to, "or": or, "to?": upTo}

// jointOf reads the join of a measure.
func (t *tongue) jointOf(text string, join *lexer.Token) joint {
	at, word := join.Pos.Offset, join.Value
	switch {
	case word == ":":
		return colon
	case word == "/":
		return slash
	}
	if j, ok := t.joins[fold(word)]; ok {
		return j
	}
	before, _ := utf8.DecodeLastRuneInString(text[:at])
	behind, _ := utf8.DecodeRuneInString(text[at+len(word):])
	if blank(before) || blank(behind) {
		return dash
	}
	return hyphen
}

// figures turns a measure of the tree into one figure, or into two where the
// join between them was only a pause.
func (t *tongue) figures(text string, it *item) (a, b *figure, ask *Ask) {
	if it.Second == nil {
		a, ask = t.single(text, it.Number, it.Unit, nil)
		return a, nil, ask
	}
	how := t.jointOf(text, it.Second.Join)
	var borrowed *unitWord
	if it.Second.Unit != nil && how != colon {
		borrowed = t.unit(it.Second.Unit.Value)
	}
	a, ask = t.single(text, it.Number, it.Unit, borrowed)
	b, ask2 := t.single(text, it.Second.Number, it.Second.Unit, nil)
	if ask != nil || ask2 != nil {
		return a, b, firstAsk(ask, ask2)
	}
	if it.Unit == nil && (how == to || how == or) {
		t.shareScale(text, it, a)
	}
	return join(text, how, a, b, it.Unit != nil)
}

// shareScale reads "six to seven hundred pounds" as from six hundred on: who
// says both in words says the hundred once.
func (t *tongue) shareScale(text string, it *item, a *figure) {
	if !letterAt(text, a.start) || !letterAt(text, it.Second.Number.Pos.Offset) {
		return
	}
	from, _ := t.value(it.Number.Value)
	upTo, _ := t.value(it.Second.Number.Value)
	for _, scale := range []float64{100, 1000} {
		if n := upTo / scale; 1 < n && n < 10 && n == math.Trunc(n) && 1 <= from && from < n {
			a.low, a.high = a.low*scale, a.high*scale
			return
		}
	}
}

func firstAsk(asks ...*Ask) *Ask {
	for _, a := range asks {
		if a != nil {
			return a
		}
	}
	return nil
}

// join makes one figure of two, or leaves them apart. It says whether the
// first had a unit of its own.
func join(text string, how joint, a, b *figure, own bool) (*figure, *figure, *Ask) {
	both := *a
	both.end = b.end
	if how == to && a.short() && b.unit == nil && b.low*a.unit.factor >= a.low/steepest {
		b.lent(a.unit) // "16 cm to 6"
	}
	switch {
	case how == colon, (how == to || how == upTo) && a.unit == nil && b.unit == nil && a.low >= 1 && b.low == 1:
		return ratio(text, &both, a, b)
	case a.unit != b.unit && b.unit != nil:
		return unlike(text, how, &both, a, b)
	case a.unit != b.unit && how == dash:
		return a, b, nil // "35 ft - 3 wraps"
	case a.unit != b.unit:
		return a, b, b.ask(NoUnit, text)
	case how == slash:
		both.pair, both.low, both.high = true, b.low, a.high
		if a.low <= b.low || a.dim != dimLength {
			return &both, nil, both.ask(TwoReadings, text)
		}
		return &both, nil, nil
	case b.low > a.low*widest(how, own):
		return &both, nil, both.ask(TwoReadings, text)
	}
	both.low, both.high = math.Min(a.low, b.low), math.Max(a.high, b.high)
	both.falling = a.low > b.low && how != or
	return &both, nil, nil
}

// steepest is how many times its tip the butt of a piece is told to be, at the
// most.
const steepest = 6

// widest is how many times its low end the high end of a range can be. Past
// it, the two are rather two things: "2 - 14 in", "22 ft - 35 ft".
func widest(how joint, own bool) float64 {
	switch {
	case how == to || how == or:
		return 3
	case own:
		return 1.3
	}
	return 2
}

// ratio reads "2:1" and "2 to 1" as two parts of line.
func ratio(text string, both, a, b *figure) (*figure, *figure, *Ask) {
	if a.unit != nil || b.unit != nil || b.low != 1 {
		return both, nil, both.ask(OddNumber, text)
	}
	both.dim = dimRatio
	return both, nil, nil
}

// unlike joins two numbers of different units: 6'-4" is one length, "14 in -
// 22 ft" and "14in/22ft" are two numbers, "50 cm to 1 m" is a range.
func unlike(text string, how joint, both, a, b *figure) (*figure, *figure, *Ask) {
	switch {
	case how == hyphen && feetInches(a, b):
		both.low, both.high = a.low+b.low, a.low+b.low
		return both, nil, nil
	case how == dash, how == hyphen, how == slash && a.unit != nil && a.unit.fine != b.unit.fine:
		return a, b, nil
	case (how == to || how == or) && a.dim == b.dim && a.low < b.low && b.low <= widest(how, true)*a.low:
		both.low, both.high = a.low, b.high
		return both, nil, nil
	}
	return both, nil, both.ask(TwoReadings, text)
}

// feetInches says whether two numbers can be one length in feet and inches.
func feetInches(a, b *figure) bool {
	return a.unit == foot && b.unit == inch && a.low == a.high && b.low == b.high &&
		b.low < 12*inch.factor && b.low > 0 && a.low == math.Trunc(a.low/foot.factor+1e-9)*foot.factor
}
