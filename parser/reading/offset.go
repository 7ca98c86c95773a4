package reading

import (
	"strings"

	"heft/parser/scan"
)

// word is an element as it was typed, and what that says of a number beside it. It is
// asked for again and again, so it is kept by where the element begins.
type word struct {
	end    int // of the element
	folded string
	cues   scan.CueSet
}

// Word is an element as it was typed, folded; "" where it is no word.
func (rd *Reading) Word(e Element) string {
	if e.Term == nil {
		return ""
	}
	return rd.wordOf(e).folded
}

// wordOf is the word of an element of letters, or of none: what is understood without
// being typed has no width.
func (rd *Reading) wordOf(e Element) *word {
	if rd.words == nil {
		rd.words = make([]word, len(rd.Text)+1)
	}
	w := &rd.words[e.Start]
	if w.end == e.End && e.End > e.Start {
		return w
	}
	typed := scan.Fold(rd.Text[e.Start:e.End])
	if strings.IndexFunc(typed, scan.Gap) >= 0 {
		typed = strings.Join(scan.SplitWords(typed), " ")
	}
	*w = word{end: e.End, folded: typed, cues: rd.In.Cues[typed]}
	return w
}
