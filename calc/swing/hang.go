package swing

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// Hang is how high above the ground the low end of a piece is that hangs plumb under
// its block:
//
//	lowest = H − L − l
//
// in m, with H the height of the block, L the line and l what hangs below the tie.
// No part of it is ever further from the block than L + l, so that neither a swing on
// that line nor a tumble brings it lower. It holds within Lines, Hangs and
// rope.Hitches; the error is a *limits.OutOfRange, or a *limits.Contradiction where
// the piece would stand on the ground.
//
// Errors: nothing is taken off for stretch, for a drop, or for line that runs.
//
// Source: geometry.
func Hang(s Setup) (unit.Length, error) {
	if err := Lines.Check(limits.LineLength, s.Line); err != nil {
		return 0, err
	}
	if err := Hangs.Check(limits.Length, s.Hung); err != nil {
		return 0, err
	}
	if err := s.checkHeights(); err != nil {
		return 0, err
	}
	return max(0, s.Hitch-s.Line-s.Hung), nil
}

// MostLine is how much line may be out before a piece that hangs plumb under its block
// touches what is as tall as top:
//
//	most = H − t − l
//
// in m, with H the height of the block, t that of the top and l what hangs below the tie.
// It is nought or less where the piece touches on any line. It holds within Hangs,
// rope.Hitches and ObstacleTops; the error is a *limits.OutOfRange, or a
// *limits.Contradiction where the piece would stand on the ground.
//
// Errors: as Hang.
//
// Source: geometry.
func MostLine(s Setup, top unit.Length) (unit.Length, error) {
	if err := Hangs.Check(limits.Length, s.Hung); err != nil {
		return 0, err
	}
	s.Line = 0
	if err := s.checkHeights(); err != nil {
		return 0, err
	}
	if err := ObstacleTops.Check(limits.ObstacleTop, top); err != nil {
		return 0, err
	}
	return s.Hitch - top - s.Hung, nil
}
