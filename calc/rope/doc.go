// Package rope works out a simple lower: how many wraps on the lowering drum
// hold the piece by hand, what the hand feels, and how much rope it takes.
//
// The drum's diameter is in none of it: friction of a wrapped rope goes by
// the angle alone.
package rope
