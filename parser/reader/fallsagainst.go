package reader

import (
	"errors"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/talk"
)

// What a fall comes to is asked of two at once, "80 cm above the block vs 40 cm", "between
// a 5 ft piece and a 3 ft piece": each is the message by itself. Where that is not whole,
// one is asked for: never is one of the two taken and the other left.

// against are two lengths of a message, and the words that go with both.
type against struct {
	one, other parser.Said[string] // as they were typed
	head       string              // before both, without what sets them side by side
	shared     string
	end        int // of both
}

// fallsAgainst reads such a message.
func (r *Reader) fallsAgainst(rd *reading.Reading) (parser.Question, *parser.Ask, bool) {
	two, ok := twoFalls(rd)
	if !ok {
		return parser.Question{}, nil, false
	}
	q := parser.Question{Intent: parser.AskTree, Language: rd.Language, InRow: true}
	var first parser.Question
	whole := true
	for _, x := range []parser.Said[string]{two.one, two.other} {
		text := two.head + x.Words + two.shared + rd.Text[two.end:]
		said := r.anyOne(rd, parser.Said[string]{Value: text, Words: x.Words, Start: x.Start, End: x.End})
		single, err := r.Read(said.Value)
		whole = whole && err == nil && len(single.Pieces) == 0 && len(single.Missing()) == 0
		if len(q.Pieces) == 0 {
			if ask, _ := errors.AsType[*parser.Ask](err); ask != nil && ask.Final() {
				return q, nil, false
			}
			first = single
		}
		q.Units, q.Pieces = single.Units, append(q.Pieces, said)
	}
	if whole {
		return q, nil, true
	}
	return first, oneOfFalls(rd, two, first), true
}

// oneOfFalls asks for one of the two.
func oneOfFalls(rd *reading.Reading, two against, first parser.Question) *parser.Ask {
	a := reading.AskAt(parser.TooMuch, rd.Text, two.other.Start, two.other.End-two.other.Start)
	for _, x := range first.Quantities {
		if x.Words == two.one.Words {
			a.Kind, a.Fields = parser.Conflict, []parser.Field{x.Field}
		}
	}
	return a
}

// twoFalls finds the two lengths where a fall is asked about and they are set against each
// other.
func twoFalls(rd *reading.Reading) (against, bool) {
	falls := func(i int) bool {
		e := rd.Elems[i]
		return e.Plays(parser.DropHeight) || e.Fig != nil && e.Fig.Told == parser.DropHeight
	}
	if !gear.AsksFor(rd, parser.AskDrop) && !rd.AnyAt(falls) || len(rd.Stops) > 0 {
		return against{}, false
	}
	differ := talk.Typed(rd, lexicon.CueDifference)
	last := -1
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Dim != parser.DimLength {
			continue
		}
		if two, ok := insideOne(rd, e, differ); ok {
			return two, true
		}
		if last >= 0 {
			if two, ok := betweenTwo(rd, last, i, differ); ok {
				return two, true
			}
		}
		last = i
	}
	return against{}, false
}

// insideOne reads "drop 4 ft vs 2 ft", which is one number from 2 to 4 ft elsewhere.
func insideOne(rd *reading.Reading, e reading.Element, differ bool) (against, bool) {
	words := e.Fig.Words(rd.Text)
	at := e.Fig.Start
	from := 0
	for _, w := range strings.Fields(words) {
		from += strings.Index(words[from:], w)
		join := rd.In.Joins[scan.Fold(w)] == scan.Or
		if !join || !differ && !rd.CuedAs(w, lexicon.CueVersus) {
			from += len(w)
			continue
		}
		left, right := strings.TrimSpace(words[:from]), strings.TrimSpace(words[from+len(w):])
		if rd.In.Units[lastWord(left)] == nil {
			left += right[len(strings.TrimRight(right, unitLetters)):]
		}
		end := at + len(words)
		return against{one: saidAt(left, at), other: saidAt(right, end-len(right)), head: rd.Text[:at], end: end}, true
	}
	return against{}, false
}

// unitLetters are what units are typed with behind a number.
const unitLetters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ \"'”’"

// lastWord is the last word of a text, in the form that units are kept by.
func lastWord(text string) string {
	words := strings.Fields(text)
	if len(words) == 0 {
		return ""
	}
	return scan.Fold(strings.TrimLeft(words[len(words)-1], "0123456789.,/½¼¾"))
}

func saidAt(words string, at int) parser.Said[string] {
	return parser.Said[string]{Value: words, Words: words, Start: at, End: at + len(words)}
}

// headOf is the text before the number at i, without "between" right before it.
func headOf(rd *reading.Reading, i int) string {
	k := rd.Past(i-1, -1, lexicon.MarkArticle)
	if !rd.At(k).Marked(lexicon.MarkBetween) {
		return rd.Text[:rd.Elems[i].Start]
	}
	return strings.TrimSpace(rd.Text[:rd.Elems[k].Start]) + ", " + rd.Text[rd.Elems[k].End:rd.Elems[i].Start]
}

// betweenTwo reads two numbers with "vs" between them, or "and" where it is asked how they
// differ. What is told of the first alone holds for the other.
func betweenTwo(rd *reading.Reading, i, j int, differ bool) (against, bool) {
	const most = 8 // elements between them
	a, b := rd.Elems[i].Fig, rd.Elems[j].Fig
	if j-i > most || a.Unit == nil || b.Unit == nil || a.Unit.Fine != b.Unit.Fine {
		return against{}, false
	}
	for k := i + 1; k < j; k++ {
		e := rd.Elems[k]
		if e.Pause > 0 || e.Fig != nil {
			return against{}, false
		}
		if !rd.Cued(e, lexicon.CueVersus) && !(differ && (e.Marked(lexicon.MarkAnd) || rd.In.Joins[scan.Fold(rd.Text[e.Start:e.End])] == scan.Or)) {
			continue
		}
		shared, behind := strings.TrimSpace(rd.Text[a.End:e.Start]), strings.TrimSpace(rd.Text[b.End:])
		if word, _, _ := strings.Cut(shared, " "); word != "" && strings.HasPrefix(scan.Fold(behind), scan.Fold(word)) {
			shared = ""
		}
		if shared != "" {
			shared = " " + shared
		}
		return against{one: saidAt(a.Words(rd.Text), a.Start), other: saidAt(b.Words(rd.Text), b.Start), head: headOf(rd, i), shared: shared, end: b.End}, true
	}
	return against{}, false
}
