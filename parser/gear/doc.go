// Package gear reads which words and numbers are of ropes, blocks, slings, anchors and
// the wood that holds them, and which are of what only stands around: roofs, people, the
// thickness of a rope.
package gear
