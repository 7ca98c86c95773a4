package turning

import (
	"strings"

	"heft/parser/lexicon"
	"heft/parser/reading"
)

// "Weight plus block load" asks for two things, and "plus its raining" tells one more:
// nothing is added to a number there.

// plusAsk says whether the word at i stands between two things that are asked for, with
// no number beside it, or before a word that asks, "a 10 ft log + how many wraps".
func plusAsk(rd *reading.Reading, i int) bool {
	next := rd.Past(i+1, +1, lexicon.MarkArticle)
	if word, _, _ := strings.Cut(rd.Word(rd.At(next)), " "); rd.In.Cued(word, lexicon.CueAsks) && rd.At(next).Fig == nil && !rd.TermAt(next).Another {
		return true
	}
	return rd.TermAt(i-1).Intent != "" && rd.TermAt(next).Intent != "" && rd.At(i-1).Fig == nil && rd.At(next).Fig == nil && rd.At(next+1).Fig == nil
}

// plusTold says whether the word at i begins the message, and leads to what somebody or
// something does, with no number up to the next pause: "plus we are in a hurry, …".
func plusTold(rd *reading.Reading, i int) bool {
	if i > 0 || !rd.At(i+1).Marked(lexicon.MarkPronoun) && !rd.Cued(rd.At(i+1), lexicon.CueUs) {
		return false
	}
	for k := i + 1; !rd.EndsBreath(k); k++ {
		if rd.Elems[k].Fig != nil {
			return false
		}
	}
	return true
}
