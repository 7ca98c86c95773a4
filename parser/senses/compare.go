package senses

import (
	"slices"
	"strings"
	"unicode/utf8"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// PieceStarts are the places where the first of two pieces may begin: where both are told, or
// behind a comma, with nothing but talk before it, "to chuck over the hedge, an ash …".
func PieceStarts(rd *reading.Reading, both parser.Said[string]) []int {
	out := []int{both.Start}
	for i, e := range rd.Elems {
		switch {
		case e.Start < both.Start:
		case e.Pause == 2:
			return append(out, e.End)
		case !turning.Weightless(rd, i), slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Start >= both.Start && a.Start < e.End }):
			return out
		}
	}
	return out
}

// Versus finds where the words stand that part two pieces: "vs", "heavier than", and
// "or" where it is asked which.
func Versus(rd *reading.Reading, both parser.Said[string], asked bool) (out [][2]int) {
	const most = 3 // words, "weighs more than"
	var starts []int
	var words []string
	for n := both.Start; n < both.End; {
		word, letters := scan.NextWord(rd.Text[n:both.End])
		if word == "" {
			_, size := utf8.DecodeRuneInString(rd.Text[n:])
			n += size
			starts, words = nil, nil
			continue
		}
		starts, words = append(starts, n), append(words, word)
		n += letters
		for k := max(0, len(words)-most); k < len(words); k++ {
			j, join := rd.In.Joins[words[k]]
			if one := asked && k == len(words)-1 && (join && j == scan.Or || rd.In.Cued(words[k], lexicon.CueBothOf)); one || rd.In.Cued(strings.Join(words[k:], " "), lexicon.CueVersus) {
				out = append(out, [2]int{starts[k], n})
				break
			}
		}
	}
	return out
}

// AsShape puts the shape for "one" in a text: "a 12 in one 16 thick".
func AsShape(rd *reading.Reading, text, shape string) string {
	for word := range scan.Lettered(text) {
		if rd.In.Numbers[scan.Fold(word)].Value == 1 {
			return strings.Replace(text, word, shape, 1)
		}
	}
	return text
}

// OneOf leaves out the word that only says that a piece is another: "o uno de chopo
// de 50 cm".
func OneOf(rd *reading.Reading, part parser.Said[string]) parser.Said[string] {
	word, n := scan.NextWord(part.Value)
	of, _ := scan.NextWord(part.Value[n:])
	if rd.In.Numbers[word].Value != 1 || !rd.In.Leads[of] {
		return part
	}
	return Stretch(rd.Text, part.Start+n, part.End)
}

// Stretch is a part of the text without what only parts it from the rest.
func Stretch(text string, start, end int) parser.Said[string] {
	const marks = " ,:?!."
	start += len(text[start:end]) - len(strings.TrimLeft(text[start:end], marks))
	words := strings.TrimRight(text[start:end], marks)
	return parser.Said[string]{Value: words, Words: words, Start: start, End: start + len(words)}
}
