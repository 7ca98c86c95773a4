// Package block works out what a block in the tree carries: the pull of both
// legs of the rope through it.
package block
