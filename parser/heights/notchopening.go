package heights

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How wide a notch is cut is what the answer tells; by itself it says nothing of how the
// limb lies: "notch of 70 degrees, enough?", "la boca la hago de 70 grados".

// NotchOpening passes over it, so that how the limb lies is asked.
func NotchOpening(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.Elems[i].Fig == nil || rd.Elems[i].Fig.Dim != parser.DimAngle || limbsAngle(rd, i+1) {
			continue
		}
		if notchBefore(rd, i) || notch(rd, rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkRelation)) {
			rd.Pass(i, i+1, reading.Element{Start: rd.Elems[i].Start, End: rd.Elems[i].End, Term: &scan.Term{}})
			return
		}
	}
}

// notch says whether the element at i names one.
func notch(rd *reading.Reading, i int) bool {
	return rd.At(i).Pause == 0 && rd.TermAt(i).Intent == parser.AskNotch && !rd.TermAt(i).Besides && !rd.Cued(rd.At(i), lexicon.CueHinge)
}

// notchBefore says whether a notch is named before the number at i, with no other thing
// between that it could be the angle of.
func notchBefore(rd *reading.Reading, i int) bool {
	const most = 4 // words: "the notch, I cut it at"
	for k, n := i-1, 0; k >= 0 && n < most; k, n = k-1, n+1 {
		e, t := rd.Elems[k], rd.TermAt(k)
		if notch(rd, k) {
			return true
		}
		if e.Fig != nil || e.Pause > 0 || t.Shape != "" || t.Tree != nil || t.Unnamed || t.Block != "" || t.Part != "" || rd.Cued(e, lexicon.CueFor) {
			return false
		}
	}
	return false
}

// limbsAngle says whether the words at i tell what a limb's angle is seen from: "above
// level".
func limbsAngle(rd *reading.Reading, i int) bool {
	at := rd.Past(i, +1, lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAt)
	t := rd.TermAt(at)
	return rd.At(at).Plays(parser.LimbAngle) || t.Level || t.Shape != "" || rd.Cued(rd.At(at), lexicon.CueAbove) || rd.Cued(rd.At(at), lexicon.CueBelow)
}
