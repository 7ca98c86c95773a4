package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
)

// Crews guess by denying: "it cant be more than 900 lb right", "wont be far off 900 lb".
// Where the sizes tell the weight, and nothing but that is asked for, the first is what
// it is held against and the second what somebody reckons that it weighs.

// Guessed reads such guesses.
func Guessed(rd *reading.Reading) {
	if !tellsPiece(rd) || rd.AnyAt(rd.Is(BesidesWeight)) {
		return
	}
	for i := range rd.Elems {
		n := guessAt(rd, i)
		if n < 0 {
			continue
		}
		words := rd.Text[rd.Elems[i].End:rd.Elems[n].Start]
		switch {
		case rd.At(n - 1).Marked(lexicon.MarkBound):
			places.Claim(rd, n, parser.Limit)
			for k := i; k < n; k++ {
				rd.Elems[k].Term = &scan.Term{}
			}
		case rd.In.Cued(lastWords(words), lexicon.CueFarOff):
			places.Claim(rd, n, parser.Weight)
			LeaveOut(rd, i, n)
			forgetIn(rd, rd.Elems[i].Start, rd.Elems[n].Start)
		case doubtedWeight(rd, i, n):
			places.Claim(rd, n, parser.Weight)
			LeaveOut(rd, i, n)
		}
	}
}

// guessAt finds the one mass behind the denial at i, with nothing but talk between them
// and behind it, -1 for none.
func guessAt(rd *reading.Reading, i int) int {
	before := rd.Past(i-1, -1, lexicon.MarkPronoun|lexicon.MarkAdverb)
	if !sizes.Denial(rd, i) || before >= 0 && rd.At(before).Pause == 0 && rd.At(before).Fig == nil && !rd.Cued(rd.At(before), lexicon.CueClause) {
		return -1
	}
	n := i + 1
	for n-i <= stops.Few && rd.At(n).Pause == 0 && n < len(rd.Elems) && rd.Elems[n].Fig == nil && (rd.At(n).Marked(lexicon.MarkIs) || !rd.Cued(rd.Elems[n], lexicon.CueWilling)) && (rd.At(n).Marked(lexicon.MarkBound|lexicon.MarkIs|lexicon.MarkRelation|lexicon.MarkOffTree) || rd.At(n).Polite() || smallTalk(rd, n)) {
		n++
	}
	if !gear.Heavy(rd, n) || rd.Elems[n].Fig.Claimed != "" {
		return -1
	}
	end := n + 1
	for end < len(rd.Elems) && rd.Elems[end].Pause == 0 {
		if rd.Elems[end].Fig != nil || !smallTalk(rd, end) {
			return -1
		}
		end++
	}
	return n
}

// lastWords are the last two words of a text: "far off".
func lastWords(text string) string {
	words := scan.SplitWords(text)
	if n := len(words); n >= 2 {
		return scan.Fold(words[n-2] + " " + words[n-1])
	}
	return ""
}
