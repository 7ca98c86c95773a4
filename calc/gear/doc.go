// Package gear works out what a chain of rigging gear may carry: working load
// from break strength, what a knot leaves of it, slings at their angles, and
// the weakest link.
//
// It goes by labels on gear in good order. Used, old or unlabelled gear gets
// no number: somebody qualified has to look at it.
package gear
