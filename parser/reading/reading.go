package reading

import (
	"slices"

	"github.com/alecthomas/participle/v2/lexer"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// DangerToken is one word of a message as dangers are read: articles and whose it is
// are left out, and their pause goes to the word behind them.
type DangerToken struct {
	Word       string
	Start, End int
	Pause      int    // before it: 2 for a comma, 4 where a sentence ends
	Owned      bool   // an article or an owner was left out before it
	Kinds      []Seen // that begin at it
}

// Seen is a kind of words, and the token behind them.
type Seen struct {
	Kind string
	End  int
}

// Reading is a message on its way from tree to question.
type Reading struct {
	Text     string
	In       *scan.Tongue
	Language string // its tag, "" where no word tells
	Elems    []Element
	Asks     []*parser.Ask // what must be asked back, in the order of the text
	Fixes    []parser.Fix
	Passed   []parser.Said[string]
	NotSo    []parser.Said[string] // of what is passed over: what is denied
	Guessed  []parser.Said[string] // likewise: what was only a guess
	Tokens   []DangerToken
	Stops    []Element       // words that end all arithmetic, before anything else is made of them
	Dire     []parser.Fix    // words that are one slip away from such a word, and what it is
	Each     bool            // what is told of several pieces is told of each
	Talked   bool            // words of talk were left out
	First    bool            // nothing was spoken of before
	Before   parser.Question // what its talk stands at
	PutRight bool            // what was said before is put right: "no wait, 7 ft"
	Heavier  bool            // of two trees, nobody can tell which it is
	Changed  bool            // it is told what holds from now on, and what did before
	Share    *Share          // says at what part of its length a limb is tied

	Obstacle *parser.Said[parser.Obstacle] // what a swing may strike
	Struck   bool                          // it is asked whether it does

	Plain *PlainText     // its words as they were typed, once somebody has asked for them
	words []word         // likewise of its elements, by where they begin
	said  map[int][]said // and of the words of cues behind a place
}

// LiftsOn says whether its talk stands at a lift, or at a raise of which nothing is told that
// a straight lift has not: a piece is on a tackle, and its length was told before.
func (rd *Reading) LiftsOn() bool {
	q := rd.Before
	return q.Intent == parser.AskLift || q.Intent == parser.AskRaise && !q.Has(parser.Tie, parser.BlockHeight, parser.LimbAngle, parser.BlockBehind, parser.BlockOut)
}

// WordsBefore finds the words that lead to the number at i: "butt about 14", "hitch
// is 35".
func (rd *Reading) WordsBefore(i int) int {
	at := i - 1
	for (rd.At(at).Marked(lexicon.MarkIs|lexicon.MarkBound) || rd.TermAt(at).Note == "about" && len(rd.TermAt(at).Roles) == 0) && !rd.At(at).Plays(parser.Weight) {
		at-- // "weighs" links, and is a weight's own word
	}
	return at
}

// Forth passes over what only links a thing to the number behind it.
func (rd *Reading) Forth(i int) int {
	for rd.At(i).Marked(lexicon.MarkIs|lexicon.MarkTrailing) || rd.TermAt(i).Note == "about" || rd.Colon(i) {
		i++
	}
	return i
}

// Cued says whether an element is one of the words of a cue.
func (rd *Reading) Cued(e Element, c scan.Cue) bool { return e.Term != nil && rd.wordOf(e).cues.Has(c) }

// AddFigures appends one figure or two, or what must be asked about them.
func (rd *Reading) AddFigures(a, b *Figure, ask *parser.Ask) {
	if ask != nil {
		rd.Asks = append(rd.Asks, ask)
		return
	}
	rd.Elems = append(rd.Elems, Element{Start: a.Start, End: a.End, Fig: a})
	if b != nil {
		rd.Elems = append(rd.Elems, Element{Start: b.Start, End: b.End, Fig: b})
	}
}

// Pause appends what a reader would stop at.
func (rd *Reading) Pause(t *lexer.Token) {
	e := Element{Start: t.Pos.Offset, End: t.Pos.Offset + len(t.Value), Pause: 2}
	switch t.Value {
	case ".":
		if n := len(rd.Elems); n == 0 || rd.Elems[n-1].Fig == nil || rd.Elems[n-1].End < e.Start {
			e.Pause = 4 // else it may only shorten the unit: "14 in. red oak"
		}
	case "!", "?", "…":
		e.Pause = 4
	case "x", "X", "×", "✕", "*":
		e.Pause, e.Cross = 0, true
	}
	rd.Elems = append(rd.Elems, e)
}

// AddTerm appends a term, and before it the number that the words hold. "A
// ton" is asked about as "1 ton" is.
func (rd *Reading) AddTerm(t *scan.Term, start, end int) {
	if t.Tons > 0 {
		rd.Asks = append(rd.Asks, whichTon(&Figure{Start: start, End: end}, rd.Text, t.Tons))
		return
	}
	if n := len(rd.Elems); t.Idle && (n == 0 || rd.Elems[n-1].Fig == nil || rd.Elems[n-1].Fig.Unit != nil) {
		rd.Talked = true
		return // what stands around it belongs together; behind a bare number it could be what that counts
	}
	if t.Count > 0 {
		f := &Figure{Low: t.Count, High: t.Count, Sure: parser.People, Start: start, End: end} // never what stands behind: "just me, wraps?"
		rd.Elems = append(rd.Elems, Element{Start: start, End: end, Fig: f})
	}
	rd.Elems = append(rd.Elems, Element{Start: start, End: end, Term: t, Cross: t.Marks&lexicon.MarkBy != 0})
}

// Has says whether any term carries the mark.
func (rd *Reading) Has(m scan.Mark) bool {
	for _, e := range rd.Elems {
		if e.Marked(m) {
			return true
		}
	}
	return false
}

// At returns an element, and an empty one past the ends.
func (rd *Reading) At(i int) Element {
	if i < 0 || i >= len(rd.Elems) {
		return Element{}
	}
	return rd.Elems[i]
}

// Alter gives the element at i a changed copy of its term: the term itself is
// every message's. A number and a pause have none, and stay as they are.
func (rd *Reading) Alter(i int, change func(*scan.Term)) {
	if rd.Elems[i].Term == nil {
		return
	}
	t := *rd.Elems[i].Term
	change(&t)
	rd.Elems[i].Term = &t
}

// AnyAt says whether something holds for an element.
func (rd *Reading) AnyAt(holds func(i int) bool) bool {
	for i := range rd.Elems {
		if holds(i) {
			return true
		}
	}
	return false
}

// Only finds the one element for which something holds, -1 where it holds for none or
// for several: which of them is meant, nobody could say then.
func (rd *Reading) Only(holds func(i int) bool) int {
	at := -1
	for i := range rd.Elems {
		switch {
		case !holds(i):
		case at >= 0:
			return -1
		default:
			at = i
		}
	}
	return at
}

// Worded says whether the message has words for a field.
func (rd *Reading) Worded(f parser.Field) bool {
	return rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(f) })
}

// Crossed says whether two numbers stand as "14 in x 96 in".
func (rd *Reading) Crossed(i, j int) bool {
	if i > j {
		i, j = j, i
	}
	return j == i+2 && rd.At(i+1).Cross
}

// Colon says whether the element at i is a colon.
func (rd *Reading) Colon(i int) bool {
	e := rd.At(i)
	return e.Pause > 0 && rd.Text[e.Start:e.End] == ":"
}

// Past returns the first element from i on, in steps, that carries none of
// the marks; at most four are passed over.
func (rd *Reading) Past(i, step int, m scan.Mark) int {
	for n := 0; n < 4 && rd.At(i).Marked(m); n++ {
		i += step
	}
	return i
}

// TermAt returns the term of an element, and an empty one where it has none.
func (rd *Reading) TermAt(i int) *scan.Term {
	if t := rd.At(i).Term; t != nil {
		return t
	}
	return &scan.Term{}
}

// Back passes over what only links a thing to its number: "has about".
func (rd *Reading) Back(i int) int {
	for rd.At(i).Marked(lexicon.MarkIs|lexicon.MarkTrailing) || rd.TermAt(i).Note == "about" || rd.Colon(i) {
		i--
	}
	return i
}

// Instead puts one element in the place of all that stand between two places of the text,
// and nothing of what is typed there is asked about any more.
func (rd *Reading) Instead(start, end int, term *scan.Term) {
	within := func(from, to int) bool { return from < end && start < to }
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return within(a.Start, a.End) })
	from := 0
	for from < len(rd.Elems) && rd.Elems[from].End <= start {
		from++
	}
	to := from
	for to < len(rd.Elems) && within(rd.Elems[to].Start, rd.Elems[to].End) {
		to++
	}
	rd.Elems = slices.Replace(rd.Elems, from, to, Element{Start: start, End: end, Term: term})
}

// Pass takes elements out, with something else in their place or nothing. Their
// words are said back.
func (rd *Reading) Pass(from, to int, instead ...Element) {
	start, end := rd.Elems[from].Start, rd.Elems[to-1].End
	words := rd.Text[start:end]
	rd.Passed = slices.DeleteFunc(slices.Clip(rd.Passed), func(s parser.Said[string]) bool { return start <= s.Start && s.End <= end })
	rd.Passed = append(rd.Passed, parser.Said[string]{Value: words, Words: words, Start: start, End: end})
	rd.Elems = slices.Replace(rd.Elems, from, to, instead...)
}

// EndsBreath says whether nothing goes on at an element that could be what a
// number before it counts. Courtesy at the end is nothing.
func (rd *Reading) EndsBreath(i int) bool {
	for k := i; rd.At(k).Polite() && rd.At(k).Pause == 0; k++ {
		if k == len(rd.Elems)-1 {
			return true
		}
	}
	e := rd.At(i)
	return i >= len(rd.Elems) || e.Pause > 0 || e.Marked(lexicon.MarkAnd)
}

// Is ties a test of one element to the message that it is in: what AnyAt asks of each.
func (rd *Reading) Is(test func(rd *Reading, i int) bool) func(i int) bool {
	return func(i int) bool { return test(rd, i) }
}

// Bare says whether a message is one number with nothing but courtesy, "what about",
// "it's", "about" and "at" beside it.
func (rd *Reading) Bare() bool {
	numbers := 0
	for _, e := range rd.Elems {
		const small = lexicon.MarkHello | lexicon.MarkFollow | lexicon.MarkAnd | lexicon.MarkIs | lexicon.MarkMade
		switch {
		case e.Fig != nil:
			numbers++
		case rd.Cued(e, lexicon.CueItIs): // "its 60 ft" without its apostrophe
		case e.Pause == 0 && !e.Marked(lexicon.MarkAt|lexicon.MarkAnd) && !(e.Term != nil && e.Term.Note == "about") && !(e.Term != nil && lexicon.Says(e.Term, small)):
			return false
		}
	}
	return numbers == 1
}
