package parser

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/alecthomas/participle/v2/lexer"
)

// element is one meaningful stretch of a message.
type element struct {
	start, end int
	term       *term   // a spelling that is known
	fig        *figure // a number
	pause      int     // what a reader would stop at: 2 for a comma, 4 for a full stop
	cross      bool    // "by", between two sizes
	spent      bool    // it told what a number is, and asks for nothing
}

// reading is a message on its way from tree to question.
type reading struct {
	text     string
	in       *tongue
	language string // its tag, "" where no word tells
	elems    []element
	asks     []*Ask // what must be asked back, in the order of the text
	fixes    []Fix
	passed   []Said[string]
	tokens   []dangerToken
	stops    []element // words that end all arithmetic, before anything else is made of them
	dire     []Fix     // words that are one slip away from such a word, and what it is
	each     bool      // what is told of several pieces is told of each
	talked   bool      // words of talk were left out
	first    bool      // nothing was spoken of before
	heavier  bool      // of two trees, nobody can tell which it is
	changed  bool      // it is told what holds from now on, and what did before
	share    *share    // says at what part of its length a limb is tied

	obstacle *Said[Obstacle] // what a swing may strike
	struck   bool            // it is asked whether it does

	plain   *plainText        // its words as they were typed, once somebody has asked for them
	spelled map[[2]int]string // likewise of elements of several words, by their places
}

// word is one word of a message, folded, and where it stands.
type word struct {
	folded     string
	start, end int
}

// elements flattens the tree: figures, terms (the longest spelling that
// fits), pauses. What has no place among them becomes an ask.
func (r *Reader) elements(text string, in *tongue, m *message, first bool) *reading {
	out := &reading{text: text, in: in, first: first, elems: make([]element, 0, len(text)/4+4)}
	run := make([]word, 0, 8) // words not yet looked up
	for _, it := range m.Items {
		if it.Words != nil {
			run = r.appendWords(run, it.Words)
			continue
		}
		r.terms(out, run)
		run = run[:0]
		switch {
		case it.Break != nil:
			out.pause(it.Break)
		case it.Stray != nil && it.Stray.Type == tokJoin:
			out.pause(it.Stray)
		case it.Stray != nil:
			out.asks = append(out.asks, askAt(Unknown, text, it.Stray.Pos.Offset, len(it.Stray.Value)))
		default:
			a, b, ask := in.figures(text, it)
			out.addFigures(a, b, ask)
		}
	}
	r.terms(out, run)
	out.halts()
	r.figureEights(out)
	out.inOrder(&r.lex.layout)
	return out
}

func askAt(k Kind, text string, start, n int) *Ask {
	return &Ask{Kind: k, Words: text[start : start+n], Start: start, End: start + n}
}

// appendWords splits a run. A symbol that is not in the vocabulary says
// nothing.
func (r *Reader) appendWords(run []word, t *lexer.Token) []word {
	text, base := t.Value, t.Pos.Offset
	for at := 0; at < len(text); {
		n := strings.IndexFunc(text[at:], gap)
		if n < 0 {
			n = len(text) - at
		}
		if n > 0 {
			w := word{folded: fold(text[at : at+n]), start: base + at, end: base + at + n}
			if !symbol(w.folded) || r.lex.root.after(w.folded) != nil {
				run = append(run, w)
			}
		}
		at += n + len(text[at+n:]) - len(strings.TrimLeftFunc(text[at+n:], gap))
	}
	return run
}

// symbol says whether a word is an emoji or the like.
func symbol(w string) bool {
	r, _ := utf8.DecodeRuneInString(w)
	return r >= utf8.RuneSelf && (unicode.Is(unicode.So, r) || unicode.Is(unicode.Sk, r))
}

func (rd *reading) addFigures(a, b *figure, ask *Ask) {
	if ask != nil {
		rd.asks = append(rd.asks, ask)
		return
	}
	rd.elems = append(rd.elems, element{start: a.start, end: a.end, fig: a})
	if b != nil {
		rd.elems = append(rd.elems, element{start: b.start, end: b.end, fig: b})
	}
}

func (rd *reading) pause(t *lexer.Token) {
	e := element{start: t.Pos.Offset, end: t.Pos.Offset + len(t.Value), pause: 2}
	switch t.Value {
	case ".":
		if n := len(rd.elems); n == 0 || rd.elems[n-1].fig == nil || rd.elems[n-1].end < e.start {
			e.pause = 4 // else it may only shorten the unit: "14 in. red oak"
		}
	case "!", "?", "…":
		e.pause = 4
	case "x", "X", "×", "✕", "*":
		e.pause, e.cross = 0, true
	}
	rd.elems = append(rd.elems, e)
}

// manySlips is where a message is past mending word by word.
const manySlips = 4

// terms looks up a run of words.
func (r *Reader) terms(rd *reading, run []word) {
	run = r.apart(rd, run)
	words := r.lex.spelledOut(run, rd.in)
	whole := allWhole(words, rd.in)
	for i := 0; i < len(run); {
		t, n := r.lex.either(words[i:], whole[min(i, len(whole)):], rd.in)
		if one, m := r.lex.find(words[i:i+1], rd.in); n > 1 && t.says(markUnsure) && m == 1 && one.tree != nil {
			t, n = one, 1 // "pedazo de tipa de 40"
		}
		if r.lex.thither(words[i:], n, rd.in) {
			i++
			continue
		}
		if n > 0 && t.tree != nil && r.namesOn(rd, words[i:], run[i:], n) {
			continue
		}
		if n == 0 {
			if at, as := r.lex.mend(words[i:], rd.in); as != "" && len(rd.asks)+len(rd.fixes) < manySlips && !r.halting(rd, words[i:], at, as) {
				rd.fixes = append(rd.fixes, Fix{Words: rd.text[run[i+at].start:run[i+at].end], As: as})
				words[i+at] = as
				if i+at == 0 && rd.mendUnit(as, run[0].end) {
					i++
				}
				continue
			}
			a, n := r.eitherTree(rd, words[i:], run[i:])
			rd.asks = append(rd.asks, a)
			i += n
			continue
		}
		rd.addTerm(t, run[i].start, run[i+n-1].end)
		r.between(rd, t, words[i:i+n], run[i:i+n])
		r.shadowed(rd, t, words, run, i, n)
		i += n
	}
}

// namesOn mends the word behind the n of a tree's name where the name goes on by
// the word that it is a slip of.
func (r *Reader) namesOn(rd *reading, words []string, run []word, n int) bool {
	as := r.lex.goesOnAs(words, n, rd.in)
	if as == "" || len(rd.asks)+len(rd.fixes) >= manySlips || r.halting(rd, words, n, as) {
		return false
	}
	rd.fixes = append(rd.fixes, Fix{Words: rd.text[run[n].start:run[n].end], As: as})
	words[n] = as
	return true
}

// shadowed finds a stop that starts inside words just looked up and goes on
// beyond them: "on my phone" says nothing, "on my phone line" does, nor does "otro
// que" of what "no se le lee". What says something may only hide damaged gear.
func (r *Reader) shadowed(rd *reading, over *term, words []string, run []word, i, n int) {
	for j := i + 1; j < i+n; j++ {
		t, m := r.lex.find(words[j:], rd.in)
		if t != nil && (t.stop == Damaged || t.stop != "" && over.says(markHello)) && j+m > i+n {
			rd.stops = append(rd.stops, element{start: run[j].start, end: run[j+m-1].end, term: t})
		}
	}
}

// halting says whether mending a word would make a stop, and keeps in mind that
// one may stand there: such a word is asked about, and never left out.
func (r *Reader) halting(rd *reading, words []string, at int, as string) bool {
	mended := slices.Clone(words)
	mended[at] = as
	t, _ := r.lex.find(mended, rd.in)
	if t == nil || t.stop == "" {
		if harm := r.lex.harmNear(words[at], rd.in); harm != "" && (t == nil || !t.damaged) {
			rd.dire = append(rd.dire, Fix{Words: words[at], As: harm})
			return true
		}
		return false
	}
	rd.dire = append(rd.dire, Fix{Words: words[at], As: as})
	return true
}

// mendUnit gives the number right before a run of words the unit that its first
// was mended to: "14 pulgdas".
func (rd *reading) mendUnit(word string, end int) bool {
	u, last := rd.in.units[word], len(rd.elems)-1
	if u == nil || u.unsure || last < 0 || rd.elems[last].fig == nil || rd.elems[last].fig.unit != nil || rd.elems[last].fig.dim != dimCount {
		return false
	}
	f := rd.elems[last].fig
	f.unit, f.dim, f.low, f.high, f.end = u, u.dim, f.low*u.factor, f.high*u.factor, end
	rd.elems[last].end = end
	return true
}

// addTerm appends a term, and before it the number that the words hold. "A
// ton" is asked about as "1 ton" is.
func (rd *reading) addTerm(t *term, start, end int) {
	if t.tons > 0 {
		rd.asks = append(rd.asks, whichTon(&figure{start: start, end: end}, rd.text, t.tons))
		return
	}
	if n := len(rd.elems); t.idle && (n == 0 || rd.elems[n-1].fig == nil || rd.elems[n-1].fig.unit != nil) {
		rd.talked = true
		return // what stands around it belongs together; behind a bare number it could be what that counts
	}
	if t.count > 0 {
		f := &figure{low: t.count, high: t.count, start: start, end: end}
		rd.elems = append(rd.elems, element{start: start, end: end, fig: f})
	}
	rd.elems = append(rd.elems, element{start: start, end: end, term: t, cross: t.marks&markBy != 0})
}

func (e element) marked(m mark) bool { return e.term != nil && e.term.marks&m != 0 }

// has says whether any term carries the mark.
func (rd *reading) has(m mark) bool {
	for _, e := range rd.elems {
		if e.marked(m) {
			return true
		}
	}
	return false
}

// at returns an element, and an empty one past the ends.
func (rd *reading) at(i int) element {
	if i < 0 || i >= len(rd.elems) {
		return element{}
	}
	return rd.elems[i]
}
