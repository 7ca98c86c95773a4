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

// inOrder settles the elements of a message before the roles bind its numbers.
func inOrder(rd *reading.Reading, l *lexicon.Layout) {
	orderNumbers(rd)
	orderPlaces(rd, l)
}

// orderNumbers settles which words are none of the question, and how large each
// number is.
func orderNumbers(rd *reading.Reading) {
	sizes.SingleUnits(rd)
	senses.Slips(rd)
	otherwise(rd)
	places.Already(rd)
	turning.Winds(rd)
	turning.Times(rd)
	senses.BothEnds(rd)
	asking.SpokenHundreds(rd)
	gear.ToldRanges(rd)
	senses.OnePiece(rd)
	senses.Tried(rd)
	rd.GluedKilos()
	rd.SpacedCentimetres()
	rd.AnswerUnits()
	stops.Bodies(rd)
	rd.Halves()
	gear.AsksSmall(rd)
	sizes.Hauled(rd)
	sizes.Lifted(rd)
	turning.CountedThings(rd)
	turning.TellersHeight(rd)
	lend(rd)
	senses.Wagers(rd)
	turning.Supposed(rd)
	senses.HeldAgainst(rd)
	turning.FreshPieces(rd)
	turning.NeedMore(rd)
	asking.Girths(rd)
	rd.Drooping()
	rd.Compounds()
	bounds.Betweens(rd)
	if rd.Has(lexicon.MarkTaper) {
		rd.Tapers()
	}
	sizes.Fallings(rd)
}

// orderPlaces settles whose each number is that a role must not take.
func orderPlaces(rd *reading.Reading, l *lexicon.Layout) {
	gear.LoadsAsked(rd)
	sizes.BelowCut(rd)
	sizes.CutAt(rd)
	sizes.BalancedAt(rd)
	sizes.FactorTold(rd)
	heights.HitchBeforeRope(rd)
	sizes.DropTold(rd)
	gear.GearSizes(rd)
	turning.RopeLegs(rd)
	powers(rd)
	pulls.LedOver(rd)
	heights.BareAngles(rd)
	heights.WordedTurns(rd)
	heights.TurnRanges(rd)
	heights.Turns(rd)
	heights.EachTurn(rd)
	pulls.EachPulls(rd)
	pulls.HandPulls(rd)
	heights.Laid(rd, l)
	lines.Reaching(rd, l)
	heights.MovingBlock(rd)
	heights.Offsets(rd)
	heights.BlockOffsets(rd)
	heights.BlockOver(rd)
	heights.Swinging(rd)
	heights.Hanging(rd)
	gear.LoadsTold(rd)
	pulls.Tensions(rd)
	sizes.Stamped(rd)
	sizes.Metered(rd)
	ratings(rd)
	gear.SlingAngles(rd)
	gear.OnAnchor(rd)
	asking.Surroundings(rd)
}
