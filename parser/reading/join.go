package reading

import (
	"math"
	"strings"
	"unicode/utf8"

	"github.com/alecthomas/participle/v2/lexer"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// jointOf reads the join of a measure.
func jointOf(t *scan.Tongue, text string, join *lexer.Token) scan.Joint {
	at, word := join.Pos.Offset, join.Value
	switch {
	case word == ":":
		return scan.Colon
	case word == "/":
		return scan.Slash
	}
	if j, ok := t.Joins[scan.Fold(word)]; ok {
		return j
	}
	before, _ := utf8.DecodeLastRuneInString(text[:at])
	behind, _ := utf8.DecodeRuneInString(text[at+len(word):])
	if scan.Blank(before) || scan.Blank(behind) {
		return scan.Dash
	}
	return scan.Hyphen
}

// Figures turns a measure of the tree into one figure, or into two where the
// join between them was only a pause.
func Figures(t *scan.Tongue, text string, it *scan.Item) (a, b *Figure, ask *parser.Ask) {
	if it.Second == nil {
		a, ask = single(t, text, it.Number, it.Unit, nil)
		return a, nil, ask
	}
	how := jointOf(t, text, it.Second.Join)
	var borrowed *scan.UnitWord
	if it.Second.Unit != nil && how != scan.Colon {
		borrowed = lexicon.Unit(t, it.Second.Unit.Value)
	}
	if borrowed != nil && borrowed.Dim != parser.DimLength && strings.Contains(it.Number.Value, "/") {
		borrowed = nil // "5/8 a 16,500 lb"
	}
	a, ask = single(t, text, it.Number, it.Unit, borrowed)
	b, ask2 := single(t, text, it.Second.Number, it.Second.Unit, nil)
	if ask != nil || ask2 != nil {
		return a, b, FirstAsk(ask, ask2)
	}
	if it.Unit == nil && (how == scan.To || how == scan.Or) {
		shareScale(t, text, it, a)
	}
	return join(text, how, a, b, it.Unit != nil)
}

// shareScale reads "six to seven hundred pounds" as from six hundred on: who
// says both in words says the hundred once.
func shareScale(t *scan.Tongue, text string, it *scan.Item, a *Figure) {
	if !scan.LetterAt(text, a.Start) || !scan.LetterAt(text, it.Second.Number.Pos.Offset) {
		return
	}
	from, _ := value(t, it.Number.Value)
	upTo, _ := value(t, it.Second.Number.Value)
	for _, scale := range []float64{100, 1000} {
		if n := upTo / scale; 1 < n && n < 10 && n == math.Trunc(n) && 1 <= from && from < n {
			a.Low, a.High = a.Low*scale, a.High*scale
			return
		}
	}
}

// FirstAsk is the first of the asks that is one, nil where none is.
func FirstAsk(asks ...*parser.Ask) *parser.Ask {
	for _, a := range asks {
		if a != nil {
			return a
		}
	}
	return nil
}

// thickRated reads "5/8 a 16,500" as how thick a rope is and what it breaks at: nothing
// goes from a part of one to thousands.
func thickRated(how scan.Joint, a, b *Figure) bool {
	const least = 1000
	heavy := b.Unit == nil && b.Low >= least || b.Unit != nil && b.Unit.Dim != parser.DimLength
	return (how == scan.To || how == scan.UpTo) && a.Unit == nil && a.Low < 1 && a.Low == a.High && heavy
}

// join makes one figure of two, or leaves them apart. It says whether the
// first had a unit of its own.
func join(text string, how scan.Joint, a, b *Figure, own bool) (*Figure, *Figure, *parser.Ask) {
	both := *a
	both.End = b.End
	if how == scan.To && a.Short() && b.Unit == nil && b.Low*a.Unit.Factor >= a.Low/steepest {
		b.Lent(a.Unit) // "16 cm to 6"
	}
	if how == scan.Or && a.Short() && a.High <= ThickestRope && b.Unit == nil && b.Low < 2 && strings.Contains(b.Words(text), "/") {
		b.Lent(a.Unit) // "half inch vs 5/8"
	}
	switch {
	case thickRated(how, a, b):
		return a, b, nil
	case how == scan.Colon, (how == scan.To || how == scan.UpTo) && a.Unit == nil && b.Unit == nil && a.Low >= 1 && b.Low == 1:
		return ratio(text, &both, a, b)
	case a.Unit != b.Unit && b.Unit != nil:
		return unlike(text, how, &both, a, b)
	case a.Unit != b.Unit && how == scan.Dash:
		return a, b, nil // "35 ft - 3 wraps"
	case a.Unit != b.Unit:
		return a, b, b.Ask(parser.NoUnit, text)
	case how == scan.Slash:
		both.Pair, both.Low, both.High = true, b.Low, a.High
		if a.Low <= b.Low || a.Dim != parser.DimLength {
			return &both, nil, both.Ask(parser.TwoReadings, text)
		}
		return &both, nil, nil
	case b.Low > a.Low*widest(how, own):
		return &both, nil, both.Ask(parser.TwoReadings, text)
	}
	both.Low, both.High = math.Min(a.Low, b.Low), math.Max(a.High, b.High)
	both.Falling = a.Low > b.Low && how != scan.Or
	return &both, nil, nil
}

// steepest is how many times its tip the butt of a piece is told to be, at the
// most.
const steepest = 6

// widest is how many times its low end the high end of a range can be. Past
// it, the two are rather two things: "2 - 14 in", "22 ft - 35 ft".
func widest(how scan.Joint, own bool) float64 {
	switch {
	case how == scan.To || how == scan.Or:
		return 3
	case own:
		return 1.3
	}
	return 2
}

// ratio reads "2:1" and "2 to 1" as two parts of line.
func ratio(text string, both, a, b *Figure) (*Figure, *Figure, *parser.Ask) {
	if a.Unit != nil || b.Unit != nil || b.Low != 1 {
		return both, nil, both.Ask(parser.OddNumber, text)
	}
	both.Dim = parser.DimRatio
	return both, nil, nil
}

// unlike joins two numbers of different units: 6'-4" is one length, "14 in -
// 22 ft" and "14in/22ft" are two numbers, "50 cm to 1 m" is a range.
func unlike(text string, how scan.Joint, both, a, b *Figure) (*Figure, *Figure, *parser.Ask) {
	switch {
	case how == scan.Hyphen && FeetInches(a, b):
		both.Low, both.High = a.Low+b.Low, a.Low+b.Low
		return both, nil, nil
	case how == scan.Dash, how == scan.Hyphen, how == scan.Slash && a.Unit != nil && a.Unit.Fine != b.Unit.Fine:
		return a, b, nil
	case (how == scan.To || how == scan.Or) && a.Dim == b.Dim && a.Low < b.Low && b.Low <= widest(how, true)*a.Low:
		both.Low, both.High = a.Low, b.High
		return both, nil, nil
	}
	return both, nil, both.Ask(parser.TwoReadings, text)
}

// FeetInches says whether two numbers can be one length in feet and inches.
func FeetInches(a, b *Figure) bool {
	return a.Unit == scan.Foot && b.Unit == scan.Inch && a.Low == a.High && b.Low == b.High &&
		b.Low < 12*scan.Inch.Factor && b.Low > 0 && a.Low == math.Trunc(a.Low/scan.Foot.Factor+1e-9)*scan.Foot.Factor
}
