package parser

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// A crew tells several pieces in one breath: "3 logs of black walnut, 15 in x 8 ft,
// 17 x 6 and 20 by 5", "red oak 14 in 6 ft and white pine 12 in 8 ft". What all of
// them share, the tree and the units, is told once.

// crossed pairs of numbers are the sizes of one piece each.
type sizesAt struct{ across, along int }

// crossList reads such a message as a list of pieces. Every number in it must be
// of a piece, or how many they are; nothing else may be asked or in doubt.
func (rd *reading) crossList() (pieces, count []Said[string]) {
	pairs := rd.pairsOfSizes()
	if len(pairs) < 2 || len(pairs) > manyPieces || len(rd.asks) > 0 {
		return nil, nil
	}
	trees := rd.treesOf(pairs)
	across, along := rd.unitsOf(pairs)
	if trees == nil || across == nil || !rd.askedOf(pairs) || !rd.onlyPieces(pairs) {
		return nil, nil
	}
	limit, past := "", 0 // the end of the pair before
	if over := rd.heldTo(pairs); over >= 0 {
		limit = "max " + rd.elems[over].fig.words(rd.text) + ", " // a word of every language
	}
	for k, p := range pairs {
		shape, many := rd.shapeOf(past, p), rd.manyOf(past, p, pairs)
		past = p.along + 1
		a, b := rd.elems[p.across].fig, rd.elems[p.along].fig
		if !a.lendable(across) || !b.lendable(along) || many != "" && shape == "" {
			return nil, nil
		}
		if many != "" {
			shape += "s"
		}
		value := limit + strings.TrimSpace(many+" "+trees[k]+" "+shape+" "+a.as(across, rd)+" x "+b.as(along, rd))
		pieces = append(pieces, Said[string]{Value: value, Words: rd.text[a.start:b.end], Start: a.start, End: b.end})
	}
	return pieces, append(rd.howMany(pairs), rd.passed...)
}

// pairsOfSizes are the pairs of numbers that stand as "15 in x 8 ft" or "15 in 8 ft
// long".
func (rd *reading) pairsOfSizes() (out []sizesAt) {
	for i := 0; i < len(rd.elems); i++ {
		j := i + 1
		switch {
		case rd.at(i).fig == nil:
			continue
		case rd.at(j).cross && rd.at(j+1).fig != nil:
			j++
		default:
			for rd.at(j).pause == 1 || rd.at(j).onlyPlays(Diameter) {
				j++
			}
			if !rd.fineAt(i) || !rd.far(j) || rd.settled(i) || rd.settled(j) {
				continue
			}
		}
		out = append(out, sizesAt{i, j})
		i = j
	}
	return out
}

// settled says whether it is claimed what the number at i is.
func (rd *reading) settled(i int) bool { return rd.elems[i].fig.claimed != "" }

// onlyPlays says whether the words say no more than that a number is of that field.
func (e element) onlyPlays(f Field) bool {
	return e.term != nil && len(e.term.roles) > 0 && !slices.ContainsFunc(e.term.roles, func(r role) bool { return r.field != f })
}

// unitsOf are the units that the pairs without their own share, nil for none. Beside
// feet, a bare thickness is in inches.
func (rd *reading) unitsOf(pairs []sizesAt) (across, along *unitWord) {
	for _, p := range pairs {
		a, b := rd.elems[p.across].fig.unit, rd.elems[p.along].fig.unit
		if across == nil && a != nil && a.dim == dimLength {
			across = a
		}
		if along == nil && b != nil && b.dim == dimLength {
			along = b
		}
	}
	if across == nil && along == foot {
		across = inch
	}
	if along == nil {
		return nil, nil
	}
	return across, along
}

// countsAll says whether the number at i is that of all pieces. Right before the
// first of two, or before one tree of several, it may be how many there are of that
// one.
func (rd *reading) countsAll(i int, pairs []sizesAt) bool {
	ofTree := rd.termAt(i+1).tree != nil && len(rd.treesIn(0, len(rd.elems))) > 1
	if ofTree || i > pairs[0].across && i < pairs[len(pairs)-1].across && rd.at(i+1).piece() {
		return false
	}
	apart := i > pairs[0].across || slices.ContainsFunc(rd.elems[i:pairs[0].across], func(e element) bool { return e.pause > 0 })
	return rd.elems[i].fig.bare(float64(len(pairs))) && (len(pairs) > 2 || apart)
}

// howMany is the number of pieces, where it is told besides.
func (rd *reading) howMany(pairs []sizesAt) (out []Said[string]) {
	for i, e := range rd.elems {
		if e.fig != nil && !inPair(pairs, i) && rd.ofOnePair(i, pairs) == "" && !rd.numbersOne(i, pairs) && !rd.heavy(i) {
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
	held := rd.heldTo(pairs)
	counted, apart := false, slices.ContainsFunc(pairs, func(p sizesAt) bool { return !rd.crossed(p.across, p.along) })
	for i, e := range rd.elems {
		switch t := rd.termAt(i); {
		case inPair(pairs, i), rd.ofOnePair(i, pairs) != "", rd.numbersOne(i, pairs), held >= 0 && i >= held-2 && i <= held:
		case e.fig != nil:
			if counted || !rd.countsAll(i, pairs) {
				return false
			}
			counted = true
		case apart && rd.aboutElse(i):
			return false
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
