// Package calc puts a rigging job together: the weight of the piece, the
// wraps that lower it, the load on the block and the rope it takes.
//
// It is pure arithmetic: the same job always has the same result. What it
// had to assume comes back as data, for others to word.
package calc
