package pulls

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What a tackle gives for a pull is asked in words that say much else besides: "we're on a
// 5:1, what's it really give me pulling 150 lb". It is how much that lifts.

// TackleGives makes such words ask for it, where parts of line are told and somebody pulls
// the one mass of the message.
func TackleGives(rd *reading.Reading) {
	at := rd.Only(rd.Is(gear.Heavy))
	if at < 0 || rd.At(at+1).Piece() || !partsSaid(rd) || peopleCounted(rd) || !somebodyPulls(rd, at) {
		return
	}
	for i, e := range rd.Elems {
		if rd.Cued(e, lexicon.CueTackleGives) && e.Fig == nil && whatBefore(rd, i) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Note: parser.MostWanted, Intent: parser.AskLift} })
			return
		}
	}
}

// whatBefore says whether it is asked what or how much, in the breath before the word at i.
func whatBefore(rd *reading.Reading, i int) bool {
	const most = 5
	for k := i - 1; k >= 0 && i-k <= most && rd.At(k).Pause == 0; k-- {
		if rd.TermAt(k).HowMuch || rd.Cued(rd.At(k), lexicon.CueWhat) || rd.Cued(rd.At(k), lexicon.CueHowMuch) {
			return true
		}
	}
	return false
}
