package pulls

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// LedOffDown reads "the lead to the drum comes off at 60 degrees instead of straight down"
// as the angle between the legs at the block: the load's leg hangs straight down.
func LedOffDown(rd *reading.Reading) {
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Dim != parser.DimAngle || fig.Pair || fig.Told != "" || !leadBefore(rd, i) {
			continue
		}
		end := straightDown(rd, i+1)
		if end < 0 {
			continue
		}
		fig.Told = parser.BlockAngle
		for k := range end + 1 {
			if k > i || rd.Cued(rd.Elems[k], lexicon.CueLead) {
				rd.Elems[k].Term = &scan.Term{} // no limb is a "lead" here
			}
		}
	}
}

// straightDown is where "off straight down" or "instead of straight down" ends that begins
// at i, -1 where no such words stand there.
func straightDown(rd *reading.Reading, i int) int {
	switch {
	case rd.At(i).LooksBack(parser.StartAngle), rd.Cued(rd.At(i), lexicon.CuePlumb), rd.TermAt(i).OffPlumb:
		return i // "from vertical"
	case !rd.Cued(rd.At(i), lexicon.CueOffFrom):
		return -1
	}
	j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkMade)
	if rd.Cued(rd.At(j), lexicon.CueStraightDown) {
		return j
	}
	if !rd.Cued(rd.At(j), lexicon.CueStraight) {
		return -1
	}
	for k := j + 1; k <= j+2; k++ {
		if rd.Cued(rd.At(k), lexicon.CueDown) || rd.Cued(rd.At(k), lexicon.CueGoesDown) {
			return k
		}
	}
	return -1
}

// leadBefore says whether the leg of a rope to what holds it stands before the number at i,
// in the same breath.
func leadBefore(rd *reading.Reading, i int) bool {
	const near = 10
	led, held := false, false
	for k := i - 1; k >= 0 && i-k <= near && rd.Elems[k].Pause == 0; k-- {
		e := rd.Elems[k]
		led = led || rd.Cued(e, lexicon.CueLeg) || rd.Cued(e, lexicon.CueLead)
		held = held || gear.Part(e) == lexicon.PartDrum || e.Plays(parser.WinchPull) || rd.Cued(e, lexicon.CueLead)
	}
	return led && held
}
