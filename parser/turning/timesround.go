package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "How many times do I wind the rope round the drum" asks for wraps in the words of who
// has no word for them: "times" multiplies nothing there.

// TimesRound makes the word at i ask for wraps where how many times is asked, and the breath
// goes on to the drum with no number of its own. What is done with the rope up to there is
// "wind" and "round": neither is the weather, nor wood.
func TimesRound(rd *reading.Reading, i int) bool {
	const far = 8
	if !rd.Cued(rd.Elems[i], lexicon.CueRepeats) || !rd.TypedBefore(i, lexicon.CueHowMany) {
		return false
	}
	for k := i + 1; k < len(rd.Elems) && k-i <= far && rd.At(k).Pause == 0 && rd.At(k).Fig == nil && rd.TermAt(k).Stop == ""; k++ {
		if gear.Part(rd.At(k)) == lexicon.PartDrum {
			asks := reading.Element{Start: rd.Elems[i].Start, End: rd.Elems[k-1].End, Term: &scan.Term{Intent: parser.AskLower}}
			rd.Elems = slices.Replace(rd.Elems, i, k, asks)
			return true
		}
	}
	return false
}
