package parser

import (
	"github.com/alecthomas/participle/v2/lexer"
)

// element is one meaningful stretch of a message.
type element struct {
	start, end int
	term       *term   // a spelling that is known
	fig        *figure // a number
	pause      int     // what a reader would stop at: 1 for a comma, 3 for a full stop
	cross      bool    // "by", between two sizes
}

// reading is a message on its way from tree to question.
type reading struct {
	text  string
	elems []element
	asks  []*Ask // what must be asked back, in the order of the text
	fixes []Fix
}

// elements flattens the tree: figures, terms (the longest spelling that
// fits), pauses. What has no place among them becomes an ask.
func (r *Reader) elements(text string, m *message) *reading {
	out := &reading{text: text}
	var run []lexer.Token // words not yet looked up
	flush := func() {
		r.terms(out, run)
		run = run[:0]
	}
	for _, it := range m.Items {
		switch {
		case it.Word != nil:
			run = append(run, *it.Word)
		case it.Break != nil && it.Break.Type == tokTo:
			run = append(run, *it.Break)
		case it.Break != nil:
			flush()
			out.pause(it.Break)
		case it.Stray != nil:
			flush()
			out.asks = append(out.asks, askAt(Unknown, text, it.Stray.Pos.Offset, len(it.Stray.Value)))
		default:
			flush()
			figs, ask := figures(text, it.Measure)
			out.addFigures(figs, ask)
		}
	}
	flush()
	out.compounds()
	out.betweens()
	if out.has("taper") {
		out.tapers()
	}
	return out
}

func askAt(k Kind, text string, start, n int) *Ask {
	return &Ask{Kind: k, Words: text[start : start+n], Start: start, End: start + n}
}

func (rd *reading) addFigures(figs []*figure, ask *Ask) {
	if ask != nil {
		rd.asks = append(rd.asks, ask)
		return
	}
	for _, f := range figs {
		rd.elems = append(rd.elems, element{start: f.start, end: f.end, fig: f})
	}
}

func (rd *reading) pause(t *lexer.Token) {
	e := element{start: t.Pos.Offset, end: t.Pos.Offset + len(t.Value), pause: 1}
	switch t.Type {
	case tokStop:
		e.pause = 3
	case tokCross:
		e.pause, e.cross = 0, true
	}
	rd.elems = append(rd.elems, e)
}

// manyAsks is where a message is past mending word by word.
const manyAsks = 4

// terms looks up a run of words.
func (r *Reader) terms(rd *reading, run []lexer.Token) {
	words := make([]string, len(run))
	for i, t := range run {
		words[i] = fold(t.Value)
	}
	for i := 0; i < len(run); {
		t, n := r.lex.find(words[i:])
		if n == 0 {
			if at, as := r.mend(words[i:]); as != "" && len(rd.asks) < manyAsks {
				rd.fixes = append(rd.fixes, Fix{Words: run[i+at].Value, As: as})
				words[i+at] = as
				continue
			}
			rd.asks = append(rd.asks, askAt(Unknown, rd.text, run[i].Pos.Offset, len(run[i].Value)))
			i++
			continue
		}
		last := run[i+n-1]
		rd.elems = append(rd.elems, element{
			start: run[i].Pos.Offset, end: last.Pos.Offset + len(last.Value), term: t, cross: t.mark == "by",
		})
		i += n
	}
}

// compounds joins feet and inches that stand apart: 6'4", 6 ft 4 in. With a
// space between them they are one length only where the message has another
// thickness: "22 ft 10 in red oak" could be 22'10" or 22 ft of 10 in.
func (rd *reading) compounds() {
	for i := 0; i+1 < len(rd.elems); i++ {
		a, b := rd.elems[i].fig, rd.elems[i+1].fig
		if a == nil || b == nil {
			continue
		}
		tight := a.end == b.start
		inches := *b
		if tight && b.unit == nil && b.low >= 0 {
			inches.unit = unitsTyped["in"]
			inches.low, inches.high = b.low*inches.unit.factor, b.low*inches.unit.factor
		}
		if !feetInches(a, &inches) {
			continue
		}
		whole := *a
		whole.low, whole.high, whole.end = a.low+inches.low, a.low+inches.low, b.end
		if !tight && !rd.thicknessBeside(b) {
			ask := whole.ask(TwoReadings, rd.text)
			ask.Fields = []Field{Length}
			rd.asks = append(rd.asks, ask)
		}
		rd.elems[i] = element{start: whole.start, end: whole.end, fig: &whole}
		rd.elems = append(rd.elems[:i+1], rd.elems[i+2:]...)
	}
}

// thicknessBeside says whether the message has a number in inches or the like
// besides f.
func (rd *reading) thicknessBeside(f *figure) bool {
	for _, e := range rd.elems {
		if e.fig != nil && e.fig != f && e.fig.unit != nil && e.fig.unit.fine {
			return true
		}
	}
	return false
}

// betweens reads "between 14 and 16 in" as one range.
func (rd *reading) betweens() {
	for i := 0; i+3 < len(rd.elems); i++ {
		e := rd.elems[i : i+4]
		if !e[0].marked("between") || e[1].fig == nil || !e[2].marked("and") || e[3].fig == nil {
			continue
		}
		a, b := *e[1].fig, *e[3].fig
		if a.unit == nil && b.unit != nil {
			a.unit, a.dim = b.unit, b.dim
			a.low, a.high = a.low*b.unit.factor, a.high*b.unit.factor
		}
		if a.unit != b.unit || a.low > b.low {
			continue
		}
		a.high, a.end = b.high, b.end
		e[0] = element{start: a.start, end: a.end, fig: &a}
		rd.elems = append(rd.elems[:i+1], rd.elems[i+4:]...)
	}
}

// tapers reads a falling pair, "14 in to 10 in", as butt and tip.
func (rd *reading) tapers() {
	for _, e := range rd.elems {
		if e.fig != nil && e.fig.falling && e.fig.dim == dimLength {
			e.fig.pair, e.fig.falling = true, false
		}
	}
}

func (e element) marked(mark string) bool { return e.term != nil && e.term.mark == mark }

// has says whether any term carries the mark.
func (rd *reading) has(mark string) bool {
	for _, e := range rd.elems {
		if e.marked(mark) {
			return true
		}
	}
	return false
}
