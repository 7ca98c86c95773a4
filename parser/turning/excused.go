package turning

import (
	"heft/parser/bounds"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Who excuses himself takes nothing back: "sorry thought you had it". Nor does who says at
// the end what he means: "how you got there, the numbers i mean".

// excused leaves out the words at i where they are no more than that, and says whether it
// did. A number, wood or gear behind them may be what is put right.
func excused(rd *reading.Reading, i int) bool {
	if glossed(rd, i) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true} })
		return true
	}
	if !rd.TermAt(i).Apology {
		return false
	}
	end := i + 1
	for end < len(rd.Elems) && rd.Elems[end].Pause == 0 {
		end++
	}
	weighs := func(k int) bool { return k != i && !Weightless(rd, k) }
	if bounds.AnyWithin(rd, i, end, weighs) || !anyWord(rd, rd.Elems[i].End, startOf(rd, end), lexicon.CueExcuse) {
		return false
	}
	end = beforeCourtesy(rd, i, end)
	forgetIn(rd, rd.Elems[i].Start, startOf(rd, end))
	LeaveOut(rd, i, end)
	return true
}

// glossed says whether the words at i end a sentence, and in its last breath no number and
// no tree is told: what stands before them is what is meant.
func glossed(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.Elems[i], lexicon.CueGloss) || i == 0 || rd.At(i-1).Pause > 0 || !rd.SaidOut(i+1) {
		return false
	}
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause < 4; k++ {
		if rd.Elems[k].Fig != nil || rd.Elems[k].Piece() {
			return false // "25 at the top, i mean, 35 at the top"
		}
	}
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		if rd.Elems[k].Fig != nil || rd.Elems[k].Piece() {
			return false
		}
	}
	return true
}

// beforeCourtesy is where the words from one element up to another end without what is only
// courtesy behind them: "sorry, thought i told you please".
func beforeCourtesy(rd *reading.Reading, from, to int) int {
	for to > from+1 && rd.Elems[to-1].Polite() {
		to--
	}
	return to
}
