// Package swing works out a piece cut free on a line from a block that stands
// off to its side: how hard it pulls at the bottom of its swing, how far it
// comes, how low, and what it clears.
//
// Nothing is taken off for air, for friction or for the crew that lets the
// line run: the piece comes as far out on the other side as it started.
package swing
