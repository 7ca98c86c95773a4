package parser

import "slices"

// NotePerVolume is the note of the word files for what a cubic foot or metre weighs.
const NotePerVolume = "per-volume"

// OfVolume says whether it is asked what a tree's wood weighs by its volume: no piece is
// told, and no size is missing.
func (q Question) OfVolume() bool {
	return q.Intent == AskWeight && slices.Contains(q.Notes, NotePerVolume) && !q.Has(Length, Diameter, ButtDiameter, Weight)
}
