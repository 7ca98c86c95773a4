package reader

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// The thicknesses of several pieces are told in a row and their length once: "52 cm, 48
// and 45, 1.3 m each, white ash", "forked, 25 cm and 20 cm, both about 5 m".

// sharedLength divides such a message into its pieces, with the numbers that only count
// them; nil where it tells or asks for anything else.
func (r *Reader) sharedLength(rd *reading.Reading) (pieces, passed []parser.Said[string]) {
	row := run(rd, func(i int) bool { return thickInRow(rd, i) && (rd.Elems[i].Fig.Unit != nil || rd.EndsBreath(i+1)) })
	along := rd.Only(rd.Is(gear.Far))
	trees := places.TreesIn(rd, 0, len(rd.Elems))
	if len(row.at) < 2 || len(row.at) > manyPieces || row.unit == "" || along < 0 || len(trees) != 1 || !forkedAtMost(rd) || !ofAll(rd, along, len(row.at)) {
		return nil, nil
	}
	limit, over := places.HeldBehind(rd, along)
	shape, ok := oneShape(rd)
	if !ok {
		return nil, nil
	}
	for i, e := range rd.Elems {
		switch {
		case i == along || slices.Contains(row.at, i) || over > 0 && i >= over-2 && i <= over:
		case e.Fig != nil && places.Bare(e.Fig, float64(len(row.at))):
			words := e.Fig.Words(rd.Text)
			passed = append(passed, parser.Said[string]{Value: words, Words: words, Start: e.Start, End: e.End})
		case e.Fig != nil, !onlyOfPieces(rd, i):
			return nil, nil
		}
	}
	for _, a := range rd.Asks {
		passed = append(passed, parser.Said[string]{Value: a.Words, Words: a.Words, Start: a.Start, End: a.End}) // "forked"
	}
	for _, i := range row.at {
		e := rd.Elems[i]
		value := limit + strings.TrimSpace(trees[0]+" "+shape) + " " + numberOf(rd, i) + row.unitBehind() + " x " + rd.Elems[along].Fig.Words(rd.Text)
		said := parser.Said[string]{Value: value, Words: rd.Text[e.Start:e.End], Start: e.Start, End: e.End}
		pieces = append(pieces, r.anyOne(rd, said))
	}
	return pieces, passed
}

// ofAll says whether words beside the length at i tell that it is that of all pieces:
// "1.3 m each", "both about 5 m", "all 4 ft".
func ofAll(rd *reading.Reading, i, many int) bool {
	every := func(k int) bool {
		return rd.Cued(rd.At(k), lexicon.CueEveryOne) || rd.Cued(rd.At(k), lexicon.CueTwosome)
	}
	if k := i + 1; rd.TermAt(k).Each || every(k) || rd.At(k).Plays(parser.Length) && (rd.TermAt(k+1).Each || every(k+1)) {
		return true
	}
	k := i - 1
	for rd.TermAt(k).Note == "about" || rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkArticle) {
		k--
	}
	allOf := places.Bare(rd.At(k).Fig, float64(many)) && scan.LetterAt(rd.Text, rd.At(k).Start) // "las dos de 5 m"
	return rd.TermAt(k).Each || every(k) || allOf
}

// forkedAtMost says whether no word of a message is unknown but that a limb is forked:
// its legs are the pieces.
func forkedAtMost(rd *reading.Reading) bool {
	return !slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind != parser.Unknown || !rd.CuedAs(a.Words, lexicon.CueForked)
	})
}

// oneShape is the one shape that a message names, "" for none; false where it names both.
func oneShape(rd *reading.Reading) (shape string, ok bool) {
	limb, log := gear.ShapedFrom(rd, 0, parser.Limb), gear.ShapedFrom(rd, 0, parser.Log)
	switch {
	case limb && log:
		return "", false
	case limb:
		shape = string(parser.Limb)
	case log:
		shape = string(parser.Log)
	}
	return shape, true
}

// onlyOfPieces says whether the words at i tell or ask for nothing but what pieces are
// and weigh.
func onlyOfPieces(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	every := t.Each || t.AtOnce || rd.Cued(e, lexicon.CueTwosome) || rd.Cued(e, lexicon.CueEveryOne)
	const other = lexicon.MarkGear | lexicon.MarkCord | lexicon.MarkStation | lexicon.MarkTaper | lexicon.MarkSide | lexicon.MarkPlace | lexicon.MarkBound
	role := func(f parser.Field) bool {
		return slices.Contains([]parser.Field{parser.Diameter, parser.Length, parser.Weight, parser.Alike}, f)
	}
	for _, x := range t.Roles {
		if !x.Soft && !role(x.Field) {
			return false
		}
	}
	switch {
	case t.Stop != "", t.Ask != "" && !every, t.Condition != "", e.Marked(other):
		return false
	case t.Note != "" && t.Note != "about" && t.Note != parser.Bare:
		return false
	}
	return t.Intent == "" || t.Intent == parser.AskWeight || t.Intent == parser.AskTree
}
