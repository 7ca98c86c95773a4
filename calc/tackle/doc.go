// Package tackle works out a lift with parts of line: what the blocks give
// after friction, what the hands or the winch must pull, what the tree
// carries, and what would help where the pull is not enough.
//
// Raising and holding differ: friction works against the haul and helps the
// hold.
package tackle
