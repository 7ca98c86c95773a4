package reader

import (
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lines"
	"heft/parser/reading"
	"heft/parser/senses"
	"heft/parser/stops"
	"heft/parser/turning"
)

// Some words are what they mostly are only where nothing around them says
// otherwise: "the lower limb" lowers nothing, and "instead of lowering" asks
// for what else is named.

// otherwise settles such words before numbers are placed.
func otherwise(rd *reading.Reading) {
	turning.KeepOut(rd)
	turning.GuessTakenBack(rd)
	turning.NobodyPulls(rd)
	turning.WhyNot(rd)
	turning.FewerThan(rd)
	turning.UnitsAnew(rd)
	turning.UnitsAside(rd)
	turning.Percents(rd)
	turning.OffBys(rd)
	turning.Differences(rd)
	stops.Colours(rd)
	senses.Undecided(rd)
	turning.Denials(rd)
	deniedLimits(rd)
	senses.Wanted(rd)
	senses.StandingEnds(rd)
	for i := 0; i < len(rd.Elems); i++ {
		n := len(rd.Elems)
		if !senses.SettleMarked(rd, i) && !senses.SettleInDoubt(rd, i) {
			senses.SettleNamed(rd, i)
		}
		i -= n - len(rd.Elems) // what was taken out stood before
	}
	turning.Asides(rd)
	gear.StemHolds(rd)
	gear.OtherEndings(rd)
	senses.StandingUp(rd)
	bounds.LongerUp(rd)
	unturned(rd)
	turning.Rather(rd)
	senses.ThickOfThin(rd)
	lines.RopeThrough(rd)
	senses.SizesAtHitch(rd)
	senses.UpBetween(rd)
}
