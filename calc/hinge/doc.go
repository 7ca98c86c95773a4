// Package hinge works out how a limb is stood up about its hinge: a block is
// fixed above, another moves with the limb, and the line between them turns
// the limb from where it lies to upright, where the hinge parts and the whole
// weight hangs on the line.
//
// Distances along the limb are from the hinge, heights above it; angles are
// above the horizontal. The top block stands straight above the hinge or, by
// its offset, behind it, on the side away from the limb.
package hinge
