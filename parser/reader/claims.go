package reader

import (
	"heft/parser/bounds"
	"heft/parser/heights"
	"heft/parser/lines"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/senses"
	"heft/parser/sizes"
	"heft/parser/talk"
	"heft/parser/turning"
)

// Some numbers belong to words that no role can tell from others: they are
// claimed before the rest is bound.

// claims makes all of them but those of an obstacle.
func claims(rd *reading.Reading) {
	senses.LogOfWood(rd)
	senses.DryGear(rd)
	heights.Raised(rd)
	heights.ClosedTackle(rd)
	talk.ClimberCounted(rd)
	talk.NotHere(rd)
	talk.FormerLimit(rd)
	talk.LaterLimit(rd)
	talk.TwoLimits(rd)
	talk.OverSaid(rd)
	talk.BlockLimit(rd)
	talk.CrewsNamed(rd)
	talk.SharedOut(rd)
	talk.Crews(rd)
	talk.ShortHanded(rd)
	talk.GearCounts(rd)
	alikePieces(rd)
	places.SideBranches(rd)
	heights.TwoLines(rd)
	heights.Twins(rd)
	places.EndLines(rd)
	senses.ToTip(rd)
	places.RopeKinds(rd)
	places.BothSizes(rd)
	places.ThickBehindLong(rd)
	lines.LongThin(rd)
	lines.NamedLong(rd)
	lines.WithRope(rd)
	places.LineOn(rd)
	turning.CutFor(rd)
	sizes.AtBlock(rd)
	turning.Such(rd)
	bounds.VehicleTakes(rd)
	bounds.LongestTold(rd)
	bounds.TooMuch(rd)
	sizes.TruckTakes(rd)
	sizes.NeverOver(rd)
	sizes.PiecesUnder(rd)
	bounds.EachCut(rd)
	bounds.CutInto(rd)
	bounds.FromTop(rd)
	heights.IntoLogs(rd)
	heights.LongPieces(rd)
	heights.Tall(rd)
	heights.Heights(rd)
	senses.AnchorLimbs(rd)
	turning.BrushOut(rd)
	turning.FormerWork(rd)
	talk.MassAlone(rd)
}
