package talk

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// The piece of a talk is cut across into parts of one length: "ok so cut it in half. each
// half?", "la parto en dos". How long it is the talk knows; what a part of it is asked for
// besides is read as of any piece.

// mostCut is how many parts a piece is cut into at the most without their size.
const mostCut = 6

// typedWords are the words of a text, where they stand in it.
var typedWords = regexp.MustCompile(`[\pL\d'’]+`)

// CutUp finds into how many parts the piece of a talk is to be cut, and what else the message
// says; nil where it is cut lengthwise, or any size is told.
func CutUp(rd *reading.Reading) *parser.CutUp {
	if rd.First || Typed(rd, lexicon.CueLengthwise) || rd.AnyAt(func(i int) bool { return rd.TermAt(i).Tree != nil }) {
		return nil
	}
	at := typedWords.FindAllStringIndex(rd.Text, -1)
	word := func(i int) string {
		if i < 0 || i >= len(at) {
			return ""
		}
		return scan.Fold(rd.Text[at[i][0]:at[i][1]])
	}
	for i := range at {
		n, to := cutsInto(rd, word, i)
		if n == 0 {
			continue
		}
		from := i
		for from > 0 && rd.In.Cued(word(from-1), lexicon.CueCutLead) {
			from--
		}
		start, end := at[from][0], at[to-1][1]
		sized := func(k int) bool { f := rd.Elems[k].Fig; return f != nil && (f.Start < start || f.End > end) }
		if rd.AnyAt(sized) {
			return nil
		}
		rest := strings.TrimSpace(rd.Text[:start] + ofOnePart(rd, rd.Text[end:]))
		return &parser.CutUp{Parts: n, Words: rd.Text[at[i][0]:end], Rest: rest}
	}
	return nil
}

// cutsInto is into how many parts the words from i on say that something is cut, and the
// word behind them; 0 where they do not. "In two ft pieces" and "in half a day" say nothing
// of it.
func cutsInto(rd *reading.Reading, word func(int) string, i int) (n, to int) {
	in := rd.In
	if in.Cued(word(i), lexicon.CueHalves) {
		k := past(rd, word, i+1)
		if k == i+1 && word(k) != "" || k > i+1 && in.Cued(word(k-1), lexicon.CueThe) {
			return 0, 0 // "halve the wraps"
		}
		return 2, k
	}
	k := past(rd, word, i+1) // "cut the whole thing in half", but not "cut the wraps in half"
	switch {
	case in.Cued(word(i), lexicon.CueCutsIt):
	case in.Cued(word(i), lexicon.CueInto) && !rd.LiftsOn() && onlyParts(rd, word, i):
		k = i // "and in three?"
	default:
		return 0, 0
	}
	length := in.Cued(word(k), lexicon.CueCutTo)
	if !in.Cued(word(k), lexicon.CueInto) && !length {
		return 0, 0
	}
	for k++; in.Cued(word(k), lexicon.CueThe); k++ {
	}
	switch w := word(k); {
	case in.Cued(w, lexicon.CueHalved):
		n = 2
	case in.Cued(w, lexicon.CueThirds):
		n = 3
	case in.Cued(w, lexicon.CueQuarters):
		n = 4
	default:
		n = wholeNumber(in, w)
	}
	next := word(k + 1)
	if length && (next == "" || !in.Cued(next, lexicon.CueOnePart)) {
		return 0, 0 // "cortarla a 5" is a length, "a 5 pedazos" are parts
	}
	if n < 2 || n > mostCut || in.Units[next] != nil || in.Cued(next, lexicon.CueOfHalf) || wholeNumber(in, next) > 0 {
		return 0, 0
	}
	return n, k + 1
}

// past is the word behind those from i on which name what is cut.
func past(rd *reading.Reading, word func(int) string, i int) int {
	for rd.In.Cued(word(i), lexicon.CueCutThing) {
		i++
	}
	return i
}

// onlyParts says whether a message says no more than into how many parts, from the word at i on.
func onlyParts(rd *reading.Reading, word func(int) string, i int) bool {
	for k := range i {
		if !rd.In.Cued(word(k), lexicon.CueCutLead) {
			return false
		}
	}
	for k := i + 2; word(k) != ""; k++ {
		if !rd.In.Cued(word(k), lexicon.CueOnePart) {
			return false
		}
	}
	return true
}

// wholeNumber is the number that a word tells, 0 for none.
func wholeNumber(in *scan.Tongue, word string) int {
	if n, err := strconv.Atoi(word); err == nil {
		return n
	}
	if v := in.Numbers[word].Value; v == float64(int(v)) {
		return int(v)
	}
	return 0
}

// ofOnePart is a text without the words which say that one of the parts is asked about:
// "each half", "cada pedazo".
func ofOnePart(rd *reading.Reading, text string) string {
	at := typedWords.FindAllStringIndex(text, -1)
	for _, a := range slices.Backward(at) {
		for n := reading.LongestCue; n > 0; n-- {
			rest := typedWords.FindAllStringIndex(text[a[0]:], n)
			if len(rest) < n {
				continue
			}
			end := a[0] + rest[n-1][1]
			if rd.CuedAs(text[a[0]:end], lexicon.CueOnePart) {
				text = text[:a[0]] + text[end:]
				break
			}
		}
	}
	return text
}
