// Measure compares Heft with a do-nothing echo bot on the same library, and
// prints one table of ratios:
//
//	go run ./cmd/measure
//
// It builds Heft, opens a stand-in workspace on a loopback address for each
// bot, and drives the two in turns over several rounds. A row's figure is the
// median of the rounds' ratios; absolute times say little on a small and
// noisy machine. A second echo bot is the control: where echo against itself
// leaves 0.95–1.05, the run says nothing about that row.
package main
