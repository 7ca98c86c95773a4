package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "How high is it gonna end up hanging" and "how far down does it end up if I let it run"
// ask where the low end of the piece comes to: that follows from the block, the line and
// the length, and nobody need measure it.

// HangAsked takes such words for that question, where no block is asked about.
func HangAsked(rd *reading.Reading) {
	if gear.AsksFor(rd, parser.AskRaise) || gear.AsksFor(rd, parser.AskCutPlan) {
		return
	}
	for i := range rd.Elems {
		if rd.Elems[i].Term == nil || !TypedAt(rd, i, lexicon.CueHowHigh) && !TypedAt(rd, i, lexicon.CueHowLow) {
			continue
		}
		if endsUp(rd, i) {
			rd.Elems[i].Term = &scan.Term{Intent: parser.AskSwing, Note: parser.HangWanted}
			onlyRuns(rd)
			notchBeside(rd)
			return
		}
	}
}

// endsUp says whether what is asked from the element at i on is where a piece ends up.
func endsUp(rd *reading.Reading, i int) bool {
	const within = 10
	ends := false
	for k := i + 1; k-i <= within && rd.At(k).Pause == 0 && k < len(rd.Elems); k++ {
		if gear.BlockNoun(rd, k) || rd.At(k).Marked(lexicon.MarkStation) {
			return false // "how high does the block end up"
		}
		ends = ends || rd.TermAt(k).Hung || TypedAt(rd, k, lexicon.CueEndsUp)
	}
	return ends
}

// notchBeside passes over "which way does the notch face", which is asked in the same
// breath and not worked out, and says it back.
func notchBeside(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if rd.TermAt(i).Intent == parser.AskNotch {
			rd.Pass(i, i+1)
			i--
		}
	}
}

// onlyRuns passes over "if I let it run" with no length behind it: how the piece comes
// down, and no fall onto its line.
func onlyRuns(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Note == parser.LetRun && !gear.Far(rd, i+1) && !gear.Far(rd, i-1) {
			rd.Elems[i].Term = &scan.Term{}
		}
	}
}
