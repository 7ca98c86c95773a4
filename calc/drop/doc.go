// Package drop works out a piece that falls before its line takes it, as in
// negative rigging, where the block hangs below the cut: what the line and
// the block may see, and how far the piece has to run to spare them.
//
// Every answer is a range. Hardly any force has been published that was
// measured in a tree; what has agrees that the mass of the piece is the best
// predictor of the peak, that letting it run lowers the peak, and that
// peaks beyond ten times the weight happen. The surest way to less is a
// smaller piece.
package drop
