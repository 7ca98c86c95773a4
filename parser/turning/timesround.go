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
// goes on to the drum, or to what is wrapped, with no number of its own; "wrap it round the
// drum 3 times" tells them. What is done with the rope up to there is "wind" and "round":
// neither is the weather, nor wood.
func TimesRound(rd *reading.Reading, i int) bool {
	const far = 8
	if timesTold(rd, i) {
		return true
	}
	if !rd.Cued(rd.Elems[i], lexicon.CueRepeats) || !rd.TypedBefore(i, lexicon.CueHowMany) {
		return false
	}
	wraps := false
	for k := i + 1; k < len(rd.Elems) && k-i <= far && rd.At(k).Pause == 0 && rd.At(k).Fig == nil && rd.TermAt(k).Stop == ""; k++ {
		if drumAt(rd, k) {
			asks := reading.Element{Start: rd.Elems[i].Start, End: rd.Elems[k-1].End, Term: &scan.Term{Intent: parser.AskLower}}
			rd.Elems = slices.Replace(rd.Elems, i, k, asks)
			return true
		}
		wraps = wraps || rd.TermAt(k).Intent == parser.AskLower && rd.At(k).Plays(parser.Wraps)
	}
	if wraps {
		rd.Elems[i].Term = &scan.Term{} // "how many times should i wrap it"
	}
	return wraps
}

// drumAt says whether what the rope goes round stands at k.
func drumAt(rd *reading.Reading, k int) bool {
	return gear.Part(rd.At(k)) == lexicon.PartDrum || rd.Cued(rd.At(k), lexicon.CueDrumPost)
}

// timesTold makes wraps of the number before the word at i, where it is told in that breath
// how often the rope goes round: "wrap it around the drum 3 times", "wrap it
// around like 2 times". What else it goes round is no drum.
func timesTold(rd *reading.Reading, i int) bool {
	const most = 9
	fig := rd.At(i - 1).Fig
	if !rd.Cued(rd.Elems[i], lexicon.CueRepeats) || fig == nil || !fig.Between(1, most) || !rd.EndsBreath(i+1) {
		return false
	}
	wound, drum, thing := -1, false, false
	for k := i - 2; k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k-- {
		if wound < 0 {
			drum, thing = drum || drumAt(rd, k), thing || rd.At(k).Piece() || rd.At(k).Marked(lexicon.MarkPlace)
		}
		if rd.TermAt(k).Intent == parser.AskLower && rd.At(k).Plays(parser.Wraps) || rd.Cued(rd.Elems[k], lexicon.CueGoesRound) {
			wound = k
		}
	}
	if wound < 0 || !drum && thing {
		return false
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && a.Start < rd.Elems[i].Start && rd.CuedAs(a.Words, lexicon.CueGoesRound)
	})
	for k := wound; k < i; k++ {
		if rd.Elems[k].Fig == nil {
			rd.Elems[k].Term = &scan.Term{}
		}
	}
	rd.Elems[i].Term = &scan.Term{Intent: parser.AskLower, Roles: []scan.Role{{Field: parser.Wraps, Side: lexicon.Before}}}
	return true
}
