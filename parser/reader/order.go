package reader

import (
	"heft/parser/asking"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/lines"
	"heft/parser/places"
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/senses"
	"heft/parser/sizes"
	"heft/parser/stops"
	"heft/parser/turning"
)

// What stands around words and numbers settles what they are, one thing after the
// other: each step finds what the steps before it have left.

// step settles one thing of a message.
type step = func(*reading.Reading)

// inOrder settles the elements of a message before the roles bind its numbers.
func inOrder(rd *reading.Reading, l *lexicon.Layout) {
	settle(rd, numberSteps)
	settle(rd, placeSteps)
	heights.Laid(rd, l)
	sizes.RopeToDrum(rd)
	lines.Reaching(rd, l)
	settle(rd, gearSteps)
}

func settle(rd *reading.Reading, steps []step) {
	for _, s := range steps {
		s(rd)
	}
}

// numberSteps settle which words are none of the question, and how large each number is.
var numberSteps = []step{
	sizes.SingleUnits,
	places.SoundsTwo,
	asking.SpokenHundreds,
	asking.SpokenRanges,
	turning.ChangedFrom,
	(*reading.Reading).SpokenInches,
	(*reading.Reading).FeetInches,
	gear.HalfInches,
	lines.TailFor,
	sizes.BetweenBlocks,
	gear.PlaitedStrands,
	gear.RopesBent,
	gear.SameOrMore,
	gear.DrumWeighs,
	gear.Picks,
	lines.ThickByLong,
	lines.RopeUp,
	senses.SlingLegs,
	pulls.LedOffDown,
	senses.Slips,
	(*reading.Reading).HalfCounts,
	turning.MeAndOthers,
	turning.MeAndNamed,
	turning.MoreIf,
	pulls.LiftedByHand,
	turning.Joins,
	turning.PartsMade,
	turning.CutInParts,
	(*reading.Reading).TapersTo,
	otherwise,
	lines.Swapped,
	turning.MeasuredAnew,
	senses.Loading,
	senses.StemOfCrown,
	senses.CutOffTrunk,
	bounds.ThickWanted,
	bounds.LengthAsked,
	senses.BareStem,
	senses.ExtraBlocks,
	senses.BlockTrees,
	senses.BlockFalls,
	places.Already,
	turning.PerVolume,
	turning.PerLength,
	senses.Exactly,
	senses.DrumTrees,
	turning.Winds,
	turning.Times,
	turning.Rainfall,
	turning.OurAnswer,
	senses.BothEnds,
	gear.ToldRanges,
	senses.WrapsAsked,
	senses.WrapsOn,
	turning.WrapLists,
	senses.OnePiece,
	senses.Tried,
	(*reading.Reading).GluedKilos,
	(*reading.Reading).SpacedCentimetres,
	(*reading.Reading).AnswerUnits,
	stops.Bodies,
	(*reading.Reading).Halves,
	gear.AsksSmall,
	sizes.DropsInto,
	sizes.RunABit,
	sizes.Hauled,
	sizes.BlocksApart,
	sizes.RopeHauled,
	sizes.TreesTall,
	heights.TreesSizes,
	heights.Leans,
	sizes.MachineRated,
	sizes.Lifted,
	sizes.BlockOverLoad,
	sizes.BeforeClear,
	sizes.BeforeSwung,
	turning.CountedThings,
	turning.GripKnots,
	turning.TellersHeight,
	turning.TellersPlace,
	heights.RedirectTurns,
	heights.BareBends,
	sizes.EndsAtHeights,
	heights.TiedAlong,
	heights.CutPlaces,
	heights.DownTrunk,
	heights.TreeTold,
	heights.StemTall,
	heights.TopTall,
	(*reading.Reading).BareTapers,
	bounds.APiece,
	heights.OwnLong,
	lend,
	senses.Wagers,
	senses.BiggestTold,
	senses.TopsLowered,
	senses.MadeIt,
	turning.Supposed,
	senses.HeldAgainst,
	turning.Guessed,
	turning.FreshPieces,
	turning.NeedMore,
	turning.AddsWraps,
	sizes.LongRound,
	sizes.ShortPieces,
	sizes.AboutMiddle,
	asking.Girths,
	(*reading.Reading).Drooping,
	(*reading.Reading).Compounds,
	bounds.Betweens,
	bounds.Stays,
	tapers,
	sizes.Fallings,
}

// placeSteps settle whose each number is that a role must not take.
var placeSteps = []step{
	heights.BlockAnew,
	heights.DrumUp,
	heights.DrumToFoot,
	heights.LowOnAnother,
	heights.StraightOver,
	heights.OverTieAlone,
	heights.Margins,
	heights.AboveAlone,
	heights.HangAsked,
	heights.NotchOpening,
	sizes.CrossedLength,
	turning.MovedGear,
	gear.BlockOf,
	gear.ToldGearHolds,
	gear.GearHolds,
	gear.HangsOff,
	gear.LoadsAsked,
	gear.DrumHeld,
	gear.LineCarries,
	sizes.LongDropped,
	sizes.WoodFell,
	sizes.RunOrSnub,
	senses.RunVersus,
	senses.SlowNotRun,
	sizes.RunTold,
	sizes.RunOrFall,
	sizes.Negative,
	sizes.MiddleUp,
	sizes.TiedNear,
	sizes.ToBlock,
	sizes.AboveBlock,
	sizes.BelowCut,
	sizes.CutAt,
	sizes.CutLong,
	sizes.CutterAt,
	sizes.BalancedAt,
	sizes.FactorTold,
	heights.HitchBeforeRope,
	sizes.DropNamed,
	sizes.DropTold,
	sizes.SlackFalls,
	sizes.LandsLower,
	sizes.DroppedOn,
	sizes.Weighed,
	gear.RopesCalled,
	gear.GearSizes,
	gear.DrumSizes,
	turning.RopeLegs,
	sizes.MachineAsked,
	powers,
	pulls.LedOver,
	heights.BareAngles,
	heights.WordedTurns,
	heights.TurnRanges,
	heights.Turns,
	heights.EachTurn,
	pulls.EachPulls,
	pulls.HandPulls,
}

// gearSteps settle the same where ropes are laid: how high and how strong gear is.
var gearSteps = []step{
	heights.MovingBlock,
	heights.Offsets,
	heights.BlockOffsets,
	heights.TiePointHigh,
	heights.BlockOver,
	heights.OverTrunk,
	heights.Swinging,
	heights.Hanging,
	heights.LoadHeights,
	heights.LiftBlock,
	sizes.ToClear,
	gear.FactorGives,
	gear.MostOnGear,
	gear.LimitOnBlock,
	gear.LoadsSeen,
	gear.LoadsTold,
	gear.PeakTold,
	pulls.Tensions,
	sizes.Stamped,
	sizes.Metered,
	gear.Aged,
	ratings,
	gear.LabelAlone,
	gear.RatedBaskets,
	gear.SlingAngles,
	gear.OnAnchor,
	asking.Surroundings,
}

// tapers settles the two ends of a piece, where a message tells both.
func tapers(rd *reading.Reading) {
	if rd.Has(lexicon.MarkTaper) {
		rd.Tapers()
		rd.TapersTo()
	}
}
