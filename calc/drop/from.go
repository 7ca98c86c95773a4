package drop

import "heft/calc/unit"

// FromBlock is the most that the balance point of a piece falls before its line
// is tight, where its block hangs below the cut:
//
//	h = l + 2·b
//
// in m, with l the length of the piece and b how far the block is below the cut,
// both at their longest. The line is tight once its tie is as far below the block
// as it was above, and the piece has turned over: its balance point was up to l/2
// above the cut, and hangs as far below that. It holds for a piece tied below its
// balance point, no nearer to its tip than to its butt, on a line without slack:
// whatever slack there is comes on top.
//
// Errors: a top balances nearer to its butt, and falls less.
//
// Source: geometry.
func FromBlock(long, below unit.Length) unit.Length { return long + 2*below }

// OfMiddle is the most that the balance point of a piece falls before its line is tight,
// where it is so far above the block below it:
//
//	h = 2·d
//
// in m, with d how far the balance point is above the block: FromBlock with l/2 + b in the
// place of d, and held as it is.
//
// Source: geometry.
func OfMiddle(above unit.Length) unit.Length { return 2 * above }

// OfHitch is the most that the hitch of a piece falls before its line is tight, where
// its block hangs below it:
//
//	h = 2·d
//
// in m, with d how far the block is below the hitch: the line between them is as long
// below the block as it was above. It holds for a line without slack; the balance point
// of the piece falls further, see FromBlock.
//
// Source: geometry.
func OfHitch(above unit.Length) unit.Length { return 2 * above }
