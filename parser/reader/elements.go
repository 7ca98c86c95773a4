package reader

import (
	"slices"
	"strings"

	"github.com/alecthomas/participle/v2/lexer"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
	"heft/parser/turning"
)

// elements flattens the tree: figures, terms (the longest spelling that
// fits), pauses. What has no place among them becomes an ask.
func (r *Reader) elements(text string, in *scan.Tongue, m *scan.Message, before parser.Question) *reading.Reading {
	out := &reading.Reading{Text: text, In: in, First: before.Intent == "", Before: before, Elems: make([]reading.Element, 0, len(text)/4+4)}
	run := make([]lexicon.Word, 0, 8) // words not yet looked up
	for _, it := range m.Items {
		if it.Words != nil {
			run = r.appendWords(text, run, it.Words)
			continue
		}
		r.terms(out, run)
		run = run[:0]
		switch {
		case it.Break != nil:
			out.Pause(it.Break)
		case it.Stray != nil && it.Stray.Type == scan.TokJoin:
			out.Pause(it.Stray)
		case it.Stray != nil:
			out.Asks = append(out.Asks, reading.AskAt(parser.Unknown, text, it.Stray.Pos.Offset, len(it.Stray.Value)))
		default:
			a, b, ask := reading.Figures(in, text, it)
			out.AddFigures(a, b, ask)
		}
	}
	r.terms(out, run)
	halts(out)
	r.figureEights(out)
	inOrder(out, &r.lex.Layout)
	return out
}

// appendWords splits a run. A symbol that is not in the vocabulary says
// nothing, nor does the "s" behind the number of several: "two 200s".
func (r *Reader) appendWords(all string, run []lexicon.Word, t *lexer.Token) []lexicon.Word {
	text, base := t.Value, t.Pos.Offset
	glued := base > 0 && scan.IsDigit(all[base-1])
	for at := 0; at < len(text); {
		n := strings.IndexFunc(text[at:], scan.Gap)
		if n < 0 {
			n = len(text) - at
		}
		if n > 0 {
			w := lexicon.Word{Folded: scan.Fold(text[at : at+n]), Start: base + at, End: base + at + n}
			if severalOf := w.Folded == "s" && glued; !severalOf && (!reading.Symbol(w.Folded) || r.lex.Root.After(w.Folded) != nil) {
				run = append(run, w)
			}
		}
		glued = false
		at += n + len(text[at+n:]) - len(strings.TrimLeftFunc(text[at+n:], scan.Gap))
	}
	return run
}

// terms looks up a run of words.
func (r *Reader) terms(rd *reading.Reading, run []lexicon.Word) {
	run = r.apart(rd, run)
	words := r.lex.SpelledOut(run, rd.In)
	whole := lexicon.AllWhole(words, rd.In)
	for i := 0; i < len(run); {
		t, n := r.lex.Either(words[i:], whole[min(i, len(whole)):], rd.In)
		if one, m := r.lex.Find(words[i:i+1], rd.In); n > 1 && lexicon.Says(t, lexicon.MarkUnsure) && m == 1 && one.Tree != nil {
			t, n = one, 1 // "pedazo de tipa de 40"
		}
		if turning.Thither(r.lex, words[i:], n, rd.In) {
			i++
			continue
		}
		if n > 0 && t.Tree != nil && r.namesOn(rd, words[i:], run[i:], n) {
			continue
		}
		if n == 0 {
			if at, as := r.lex.Mend(words[i:], rd.In); as != "" && len(rd.Asks)+len(rd.Fixes) < reading.ManySlips && !r.halting(rd, words[i:], at, as) {
				rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[run[i+at].Start:run[i+at].End], As: as})
				words[i+at] = as
				if i+at == 0 && rd.MendUnit(as, run[0].End) {
					i++
				}
				i = r.fromBefore(rd, words, run, i)
				continue
			}
			a, n := r.eitherTree(rd, words[i:], run[i:])
			rd.Asks = append(rd.Asks, a)
			i += n
			continue
		}
		rd.AddTerm(t, run[i].Start, run[i+n-1].End)
		r.between(rd, t, words[i:i+n], run[i:i+n])
		r.shadowed(rd, t, words, run, i, n)
		i += n
	}
}

// fromBefore is where to look again now that the word at i is mended: at one of the few
// before it where a spelling begins that the word goes on, "at the buttt". What was
// read of those before is dropped.
func (r *Reader) fromBefore(rd *reading.Reading, words []string, run []lexicon.Word, i int) int {
	const few = 3
	for j := max(0, i-few); j < i; j++ {
		from := run[j].Start
		at := slices.IndexFunc(rd.Elems, func(e reading.Element) bool { return e.Start == from })
		if _, n := r.lex.Find(words[j:], rd.In); at < 0 || j+n <= i || slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Start >= from }) {
			continue
		}
		rd.Elems = rd.Elems[:at]
		return j
	}
	return i
}

// namesOn mends the word behind the n of a tree's name where the name goes on by
// the word that it is a slip of.
func (r *Reader) namesOn(rd *reading.Reading, words []string, run []lexicon.Word, n int) bool {
	as := r.lex.GoesOnAs(words, n, rd.In)
	if as == "" || len(rd.Asks)+len(rd.Fixes) >= reading.ManySlips || r.halting(rd, words, n, as) {
		return false
	}
	rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[run[n].Start:run[n].End], As: as})
	words[n] = as
	return true
}

// shadowed finds a stop that starts inside words just looked up and goes on
// beyond them: "on my phone" says nothing, "on my phone line" does, nor does "otro
// que" of what "no se le lee". What says something may only hide damaged gear.
func (r *Reader) shadowed(rd *reading.Reading, over *scan.Term, words []string, run []lexicon.Word, i, n int) {
	for j := i + 1; j < i+n; j++ {
		t, m := r.lex.Find(words[j:], rd.In)
		if t != nil && (t.Stop == parser.Damaged || t.Stop != "" && lexicon.Says(over, lexicon.MarkHello)) && j+m > i+n {
			rd.Stops = append(rd.Stops, reading.Element{Start: run[j].Start, End: run[j+m-1].End, Term: t})
		}
	}
}

// halting says whether mending a word would make a stop, and keeps in mind that
// one may stand there: such a word is asked about, and never left out.
func (r *Reader) halting(rd *reading.Reading, words []string, at int, as string) bool {
	if slices.ContainsFunc(rd.Dire, func(f parser.Fix) bool { return f.Words == words[at] }) {
		return true
	}
	mended := slices.Clone(words)
	mended[at] = as
	t, _ := r.lex.Find(mended, rd.In)
	if t == nil || t.Stop == "" {
		if harm := stops.HarmNear(r.lex, words[at], rd.In); harm != "" && (t == nil || !t.Damaged) {
			rd.Dire = append(rd.Dire, parser.Fix{Words: words[at], As: harm})
			return true
		}
		return false
	}
	rd.Dire = append(rd.Dire, parser.Fix{Words: words[at], As: as})
	return true
}

// figureEights takes the number in "figure eight" for the knot that it names, also where the
// word behind it could be its unit: "has a figure-eight in it".
func (r *Reader) figureEights(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		fig, before := rd.Elems[i].Fig, i-1
		if fig == nil || scan.IsDigit(rd.Text[fig.Start]) {
			continue // digits are asked about: none of them is ever passed over
		}
		number, behind, _ := strings.Cut(scan.Fold(rd.Text[fig.Start:fig.End]), " ")
		unit := rd.In.Units[behind]
		if behind != "" && (unit == nil || !unit.Fine) || behind == "" && fig.Dim != parser.DimCount || rd.In.Numbers[number].Value != 8 {
			continue
		}
		if e := rd.At(before); e.Marked(lexicon.MarkIs|lexicon.MarkIn) || e.Pause > 0 && rd.Text[e.Start:e.End] == "-" {
			before-- // "figure of eight", "figure-eight", "nudo en ocho"
		}
		e := rd.At(before)
		if t, n := r.lex.Find([]string{rd.Word(e), number}, rd.In); n == 2 && t.Note == "figure-eight" {
			rd.Elems[before] = reading.Element{Start: e.Start, End: fig.Start + len(number), Term: t}
			rd.Elems = append(rd.Elems[:before+1], rd.Elems[i+1:]...)
		}
	}
}

// apart returns the run with glued words taken apart. A unit goes to the number
// right before the run: "2 metrosde largo".
func (r *Reader) apart(rd *reading.Reading, run []lexicon.Word) []lexicon.Word {
	for i := 0; i < len(run); i++ {
		parts := r.lex.Unglued(run[i].Folded, i == 0 && rd.BehindNumber(run[0].Start), rd.In)
		if parts == nil {
			if stop := r.lex.HoldsStop(run[i].Folded, rd.In); stop != "" {
				rd.Dire = append(rd.Dire, parser.Fix{Words: run[i].Folded, As: stop})
			}
			continue
		}
		if len(rd.Asks)+len(rd.Fixes) >= reading.ManySlips {
			continue
		}
		rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[run[i].Start:run[i].End], As: strings.Join(parts, " ")})
		words := run[i].Cut(rd.Text, parts)
		if i == 0 && rd.MendUnit(parts[0], words[0].End) {
			words = words[1:]
		}
		run = slices.Concat(run[:i], words, run[i+1:])
	}
	return run
}

// between says back the words of talk that stand inside a spelling, where they
// could bear on it: "how awkward long".
func (r *Reader) between(rd *reading.Reading, t *scan.Term, words []string, run []lexicon.Word) {
	for i := 1; i < len(run)-1; i++ {
		if said := rd.In.Talk(words[i]); said == nil || !said.Overlook {
			continue
		}
		if x, n := r.lex.Spelled(slices.Delete(slices.Clone(words), i, i+1), rd.In); x == t && n == len(words)-1 {
			typed := rd.Text[run[i].Start:run[i].End]
			rd.Passed = append(rd.Passed, parser.Said[string]{Value: typed, Words: typed, Start: run[i].Start, End: run[i].End})
		}
	}
}
