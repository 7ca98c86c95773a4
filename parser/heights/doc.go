// Package heights reads where things are: the hitch, the blocks, the hinge, what a piece
// may strike; above what and how far aside; and by how much the rope turns at each block.
package heights
