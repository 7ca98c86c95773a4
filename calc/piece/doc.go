// Package piece weighs a piece of a tree: the volume its sizes allow, times
// the density its wood may have. The answer is always a range, and rigging
// is planned on its heavy end.
//
// The heavy end takes the thickest and longest of what was said, the fullest
// form the shape allows, the heaviest published density and, on top, how far
// one tree and one pair of eyes may be off. The light end takes the reverse.
package piece
