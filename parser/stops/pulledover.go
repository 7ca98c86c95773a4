package stops

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// A stem that still stands is pulled over by a line that is set in it below its top,
// whoever says no more than that they pull. A piece that hangs on a rope is never tied
// higher above the ground than it is long, unless it is lifted or lowered.

// PulledOver says whether the number at i is how high such a line is set: "poplar stem,
// 9 m. line set at 8 m, two of us pulling".
func PulledOver(rd *reading.Reading, i int) bool {
	const least = 2.4 // metres: a line set lower is rather a tie along a piece
	at, lead := rd.Elems[i].Fig, rd.At(rd.Past(i-1, -1, lexicon.MarkAt|lexicon.MarkIs))
	if !at.Far() || at.Low < least || !lead.LeadsTo(parser.HitchHeight) || !rd.AnyAt(rd.Is(standingStem)) {
		return false
	}
	taller := rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig.Far() && rd.Elems[k].Fig.High >= at.Low })
	return taller && rd.AnyAt(rd.Is(onlyPulls)) && !rd.AnyAt(rd.Is(movesPiece))
}

// standingStem says whether the element at i is a stem, and not called a piece of one.
func standingStem(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Marked(lexicon.MarkStanding) && rd.TermAt(i).Shape == parser.Log
}

// onlyPulls says whether the word at i says no more than that somebody pulls.
func onlyPulls(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return t.Lifts && t.Intent == parser.AskLift && t.Besides
}

// movesPiece says whether the word at i lifts or lowers, or names what has come off.
func movesPiece(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	moved := t.Intent == parser.AskLift && !t.Besides || t.Intent == parser.AskLower || t.Intent == parser.AskDrop || t.Intent == parser.AskRaise || t.Intent == parser.AskSwing
	return moved || t.Unnamed || t.Shape == parser.Limb || t.Shape == parser.Log && !rd.Elems[i].Marked(lexicon.MarkStanding)
}
