// Package anchor screens what a limb or a spar is asked to carry: how much of
// its bending strength at the base a load takes up.
//
// It is a screening figure and never an approval. It knows nothing of decay,
// cracks, included bark, roots or lean, and 1 is where branches in published
// tests broke. Whether to rig on it is for the qualified arborist to say.
package anchor
