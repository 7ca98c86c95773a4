package turning

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// A "no" before other words of taking back, or before what tells anew, denies nothing of
// what stands behind it: "no scratch that, 18 ft", "no make it 4 ft", "no top is 12".

// onlyBegins says whether the word at i only begins other words of taking back, "no scratch
// that", or answers what was asked in the middle of what is told: "and no, we can run it".
func onlyBegins(rd *reading.Reading, i int) bool {
	t, next := rd.TermAt(i), rd.At(i+1)
	if !t.Lacks && !t.Denies {
		return false
	}
	other := next.Pause == 0 && rd.TermAt(i+1).Corrects && !rd.TermAt(i+1).Lacks && !rd.TermAt(i+1).Denies
	answers := rd.At(i-1).Marked(lexicon.MarkAnd) && next.Pause == 2 && Who(rd, i+2)
	return other || answers
}

// tellsBehind says whether what stands behind the "no" at i is told, and lacks nothing: words
// that tell anew, or a thing in a talk whose number stands behind "is".
func tellsBehind(rd *reading.Reading, i int) bool {
	t, next := rd.TermAt(i), rd.At(i+1)
	if !t.Lacks && !t.Denies || next.Fig != nil || next.Pause > 0 {
		return false
	}
	if rd.Cued(next, lexicon.CueNewly) && len(rd.TermAt(i+1).Roles) == 0 {
		return true
	}
	k := rd.Past(i+1, +1, lexicon.MarkArticle) + 1
	return !rd.First && begins(rd, i) && !t.Denies && rd.At(k).Marked(lexicon.MarkIs) && rd.At(k+1).Fig != nil
}
