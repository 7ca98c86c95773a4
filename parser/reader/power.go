package reader

import (
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/senses"
)

// What a lift has to pull with, told beside other numbers.

// powers reads the blocks and the winch of a lift.
func powers(rd *reading.Reading) {
	senses.StraightLift(rd)
	senses.LiftedMass(rd)
	pulls.BlockCounts(rd)
	pulls.EachLegRoved(rd)
	pulls.PullsTold(rd)
	pulls.WinchLifts(rd)
}
