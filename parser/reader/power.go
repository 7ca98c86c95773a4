package reader

import (
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/senses"
)

// What a lift has to pull with, told beside other numbers.

// powers reads the blocks and the winch of a lift.
func powers(rd *reading.Reading) {
	pulls.OrWinch(rd)
	senses.EachAsked(rd)
	pulls.RopeLeaves(rd)
	senses.DoubleAtBlock(rd)
	pulls.SheavesTold(rd)
	pulls.OneBlock(rd)
	senses.StraightLift(rd)
	senses.LiftedMass(rd)
	pulls.BlockCounts(rd)
	pulls.EachLegRoved(rd)
	pulls.TackleGives(rd)
	pulls.SomebodyPulls(rd)
	pulls.PullOfAll(rd)
	pulls.PullsTold(rd)
	pulls.PullGiven(rd)
	pulls.WinchLifts(rd)
}
