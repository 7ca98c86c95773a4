package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "1 less than you said" and "20 lb más que tú" tell by how much something differs, and no
// size and no weight: what it comes to, nobody but the crew can say.

// Differences asks about such a number, together with the words behind it.
func Differences(rd *reading.Reading) {
	for i := 0; i+1 < len(rd.Elems); i++ {
		fig, by := rd.Elems[i].Fig, rd.Elems[i+1]
		if fig == nil || fig.Pair || by.Pause > 0 || !differs(rd, i+1) {
			continue
		}
		_, n := scan.NextWord(rd.Text[by.Start:])
		rd.Elems[i] = reading.Element{Start: fig.Start, End: by.Start + n, Term: &scan.Term{Ask: parser.Twist, Turning: parser.TurnsSum}}
		rd.Elems = append(rd.Elems[:i+1], rd.Elems[i+2:]...)
	}
}

// differs says whether the words at i begin with "more" or "less", hold what stands before
// them against somebody's figure, and lead to no number of their own: "3 less than 5".
func differs(rd *reading.Reading, i int) bool {
	word, n := scan.NextWord(rd.Text[rd.Elems[i].Start:])
	than, m := scan.NextWord(rd.Text[rd.Elems[i].Start+n:])
	if whose, _ := scan.NextWord(rd.Text[rd.Elems[i].Start+n+m:]); whose == "" {
		return false // "800 lb less than, red oak 18 in"
	}
	if !rd.In.Cued(word, lexicon.CueMore) && !rd.In.Cued(word, lexicon.CueFewer) || !rd.In.Cued(than, lexicon.CueThan) {
		return false
	}
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause == 0; k++ {
		if rd.Elems[k].Fig != nil {
			return false
		}
	}
	return true
}
