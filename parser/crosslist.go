package parser

import (
	"slices"
	"unicode"
	"unicode/utf8"
)

// A crew tells several pieces of one tree in one breath: "3 logs of black walnut,
// 15 in x 8 ft, 17 x 6 and 20 by 5". The tree is told once, and so are the units.

// crossed pairs of numbers are the sizes of one piece each.
type sizesAt struct{ across, along int }

// crossList reads such a message as a list of pieces. Every number in it must be
// of a piece, or how many they are; nothing else may be asked or in doubt.
func (rd *reading) crossList() (pieces, count []Said[string]) {
	pairs := rd.crossedSizes()
	tree := rd.treeTold()
	if len(pairs) < 2 || len(pairs) > manyPieces || tree == "" || len(rd.asks) > 0 || !rd.onlyPieces(pairs) {
		return nil, nil
	}
	first := pairs[0]
	across, along := rd.elems[first.across].fig.unit, rd.elems[first.along].fig.unit
	if across == nil || along == nil || across.dim != dimLength || along.dim != dimLength {
		return nil, nil
	}
	past := 0 // the pair before
	for _, p := range pairs {
		shape := rd.shapeOf(past, p)
		past = p.along + 1
		a, b := rd.elems[p.across].fig, rd.elems[p.along].fig
		if !a.lendable(across) || !b.lendable(along) {
			return nil, nil
		}
		start, end := a.start, b.end
		value := tree + " " + shape + " " + a.as(across, rd) + " x " + b.as(along, rd)
		pieces = append(pieces, Said[string]{Value: value, Words: rd.text[start:end], Start: start, End: end})
	}
	return pieces, rd.howMany(pairs)
}

// crossedSizes are the pairs of numbers that stand as "15 in x 8 ft".
func (rd *reading) crossedSizes() (out []sizesAt) {
	for i := 0; i < len(rd.elems); i++ {
		if rd.at(i).fig != nil && rd.at(i+1).cross && rd.at(i+2).fig != nil {
			out = append(out, sizesAt{i, i + 2})
			i += 2
		}
	}
	return out
}

// countsAll says whether the number at i is that of all pieces. Right before the
// first of two it may be how many there are of that one.
func (rd *reading) countsAll(i int, pairs []sizesAt) bool {
	apart := i > pairs[0].across || slices.ContainsFunc(rd.elems[i:pairs[0].across], func(e element) bool { return e.pause > 0 })
	return rd.elems[i].fig.bare(float64(len(pairs))) && (len(pairs) > 2 || apart)
}

// howMany is the number of pieces, where it is told besides.
func (rd *reading) howMany(pairs []sizesAt) (out []Said[string]) {
	for i, e := range rd.elems {
		if e.fig != nil && !inPair(pairs, i) {
			words := e.fig.words(rd.text)
			out = append(out, Said[string]{Value: words, Words: words, Start: e.start, End: e.end})
		}
	}
	return out
}

// inPair says whether the element at i is a number of one of the pairs.
func inPair(pairs []sizesAt, i int) bool {
	return slices.ContainsFunc(pairs, func(p sizesAt) bool { return p.across == i || p.along == i })
}

// onlyPieces says whether nothing is told or asked but the pieces, how many they
// are, and what they weigh.
func (rd *reading) onlyPieces(pairs []sizesAt) bool {
	counted := false
	for i, e := range rd.elems {
		switch t := rd.termAt(i); {
		case e.fig != nil:
			if !inPair(pairs, i) && (counted || !rd.countsAll(i, pairs)) {
				return false
			}
			counted = counted || !inPair(pairs, i)
		case t.ask != "" && !t.each && !t.atOnce, t.stop != "", t.note != "" && t.note != bare, !rd.aboutWeights(t.intent):
			return false
		case e.marked(markBound), e.plays(HitchHeight) && !rd.onlySoft(i):
			return false
		}
	}
	return true
}

// aboutWeights says whether what is asked for is what pieces weigh. "Bajando
// trozos" asks for no more where their weights are asked for.
func (rd *reading) aboutWeights(in Intent) bool {
	switch in {
	case "", AskWeight, AskTree:
		return true
	}
	return in == AskLower && (rd.asksFor(AskWeight) || rd.asksFor(AskTree)) && !rd.worded(Wraps)
}

// onlySoft says whether all roles of the term at i say much else besides.
func (rd *reading) onlySoft(i int) bool {
	return !slices.ContainsFunc(rd.termAt(i).roles, func(r role) bool { return !r.soft })
}

// treeTold is the one tree of a message as it was typed, "" for none or several.
func (rd *reading) treeTold() (words string) {
	for _, e := range rd.elems {
		switch {
		case e.term == nil || e.term.tree == nil:
		case words != "":
			return ""
		default:
			words = rd.text[e.start:e.end]
		}
	}
	return words
}

// shapeOf is the shape of a pair: the last that is told between the pair before
// and it, or else the one shape of the message; "" for none.
func (rd *reading) shapeOf(from int, p sizesAt) (shape string) {
	for _, e := range rd.elems[from:p.across] {
		if e.term != nil && e.term.shape != "" {
			shape = string(e.term.shape)
		}
	}
	limb, log := rd.shapedFrom(0, Limb), rd.shapedFrom(0, Log)
	switch {
	case shape != "" || limb == log:
		return shape
	case limb:
		return string(Limb)
	}
	return string(Log)
}

// lendable says whether the number has that unit, or none of its own.
func (f *figure) lendable(u *unitWord) bool {
	return f.unit == u || f.unit == nil && f.dim == dimCount && f.low > 0
}

// as is the number as it was typed, with the unit where it was typed without.
func (f *figure) as(u *unitWord, rd *reading) string {
	words := f.words(rd.text)
	if last, _ := utf8.DecodeLastRuneInString(words); !unicode.IsNumber(last) && f.unit != nil {
		return words
	}
	return words + " " + map[*unitWord]string{inch: "in", foot: "ft", centimetre: "cm", millimetre: "mm", metre: "m"}[u]
}
