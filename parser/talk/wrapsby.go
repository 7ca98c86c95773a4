package talk

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// changesWraps are the words that ask for more or fewer wraps than before, and by how many.
var changesWraps = []struct {
	cue scan.Cue
	by  float64
}{
	{lexicon.CueHalfMore, 0.5}, {lexicon.CueHalfLess, -0.5}, // "half a wrap less" holds "a wrap less"
	{lexicon.CueWrapMore, 1}, {lexicon.CueWrapsMore, 2}, {lexicon.CueWrapLess, -1},
}

// WrapsBy reads "and with one more wrap" in a talk of lowering: the wraps are those of
// before, and so many more or fewer. A message that tells anything else is read for itself.
func WrapsBy(rd *reading.Reading, before parser.Question) (parser.Question, bool) {
	if before.Intent != parser.AskLower {
		return parser.Question{}, false
	}
	by := 0.0
	for _, c := range changesWraps {
		if !Typed(rd, c.cue) {
			continue
		}
		if by*c.by < 0 {
			return parser.Question{}, false
		}
		if by == 0 {
			by = c.by
		}
	}
	if by == 0 {
		by = fewerThanSaid(rd)
	}
	if by == 0 {
		by = oneMoreOrLess(rd, before)
	}
	if by == 0 || rd.AnyAt(func(i int) bool { return tellsBesideWraps(rd, i) }) {
		return parser.Question{}, false
	}
	return parser.Question{Intent: parser.AskLower, Asks: true, FollowUp: true, Language: rd.Language, WrapsBy: by}, true
}

// oneMoreOrLess is by how many the wraps differ where a message says nothing but one more or
// one less, "so can i drop one", of a talk that counts nobody on the rope: 0 elsewhere.
func oneMoreOrLess(rd *reading.Reading, before parser.Question) float64 {
	words := plainWords(rd)
	at := 0
	for at < len(words) && rd.In.Cued(words[at], lexicon.CueByLead) {
		at++
	}
	for from := 0; from <= at; from++ {
		for n := 1; n <= min(reading.LongestCue, len(words)-from); n++ {
			said, end := strings.Join(words[from:from+n], " "), from+n
			for end < len(words) && rd.In.Cued(words[end], lexicon.CueByLead) {
				end++
			}
			switch {
			case end < len(words) || before.Has(parser.People, parser.Alike):
			case rd.In.Cued(said, lexicon.CueByMore):
				return 1
			case rd.In.Cued(said, lexicon.CueByLess):
				return -1
			}
		}
	}
	return 0
}

// tellsBesideWraps says whether the element at i tells anything but a change of wraps: a number of
// something else, a piece, what is denied, or what is wondered at.
func tellsBesideWraps(rd *reading.Reading, i int) bool {
	const most = 2 // wraps more
	e, t := rd.Elems[i], rd.TermAt(i)
	if e.Fig != nil {
		return e.Fig.Dim != parser.DimCount || e.Fig.Unit != nil || e.Fig.High > most
	}
	return e.Piece() || t.Tree != nil || t.Denies || t.Lacks || t.Explain != "" || t.Stop != "" || rd.Cued(e, lexicon.CueThan) && fewerThanSaid(rd) == 0 || rd.Cued(e, lexicon.CueIf) && !e.Marked(lexicon.MarkFollow)
}

// fewerThanSaid is by how many the wraps differ where only so many more or fewer than we
// said are told, "1 less than you said", and nothing else; 0 elsewhere.
func fewerThanSaid(rd *reading.Reading) float64 {
	words := plainWords(rd)
	for i := range words {
		by := 0.0
		for _, c := range []struct {
			cue scan.Cue
			by  float64
		}{{lexicon.CueOneOf, 1}, {lexicon.CueTwoOf, 2}, {lexicon.CueHalfOf, 0.5}} {
			if rd.In.Cued(words[i], c.cue) {
				by = c.by
			}
		}
		if by == 0 || i+1 == len(words) {
			continue
		}
		switch {
		case rd.In.Cued(words[i+1], lexicon.CueFewer):
			by = -by
		case !rd.In.Cued(words[i+1], lexicon.CueMore):
			continue
		}
		for n := 1; n <= min(reading.LongestCue, len(words)-i-2); n++ {
			if rd.In.Cued(strings.Join(words[i+2:i+2+n], " "), lexicon.CueThanSaid) {
				return by
			}
		}
	}
	return 0
}
