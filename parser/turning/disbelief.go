package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Crews doubt a figure by denying it: "that cant be right can it", "800 lb cant be right",
// "eso no puede ser". Whose figure it is, is told besides, and the answer judges it. Of wood
// and gear nobody says so idly: "that union cant be right".

// disbelieved finds where the words end that doubt a figure by the denial at i; 0 elsewhere.
func disbelieved(rd *reading.Reading, i int) int {
	before := rd.Past(i-1, -1, lexicon.MarkPronoun|lexicon.MarkAdverb|lexicon.MarkArticle)
	if before >= 0 && Who(rd, before) {
		before-- // "im not buying that"
	}
	figure := before >= 0 && gear.Heavy(rd, before) && tellsPiece(rd) && (before == 0 || rd.At(before-1).Pause > 0)
	if !figure && before >= 0 && rd.At(before).Pause == 0 && !rd.At(before).Marked(lexicon.MarkAnd) && !rd.Cued(rd.At(before), lexicon.CueClause) {
		return 0
	}
	if before >= 0 && !figure && TalkBehind(rd, before) {
		return 0
	}
	end := i + 1
	for end < len(rd.Elems) && rd.Elems[end].Pause == 0 {
		end++
	}
	believes := func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueDisbelief) || !rd.Elems[k].Polite() }
	for end > i+2 && !believes(end-1) {
		end-- // courtesy behind it is none of it
	}
	if TalkBehind(rd, end-1) {
		return 0
	}
	words := scan.SplitWords(rd.Text[rd.Elems[i].End:rd.Elems[end-1].End])
	for n, w := range words {
		c := lexicon.CueDisbelief
		if n == 0 {
			c = lexicon.CueDisbeliefVerb
		}
		if !rd.CuedAs(w, c) {
			return 0
		}
	}
	if len(words) == 0 {
		return 0
	}
	if figure {
		rd.Elems[before].Fig.Told = parser.Weight
	}
	return end
}

// doubtedWeight reads a weight that is said to be too much for a piece whose sizes are told, "it
// cant weigh 800 lb can it", as what somebody says that it weighs.
func doubtedWeight(rd *reading.Reading, i, n int) bool {
	weighs := only(rd, i+1, n, func(k int) bool { return rd.TermAt(k).Intent == parser.AskWeight || rd.Elems[k].Plays(parser.Weight) })
	return sizes.Denial(rd, i) && weighs
}
