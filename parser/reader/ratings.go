package reader

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// ratings finds the numbers that are strengths of gear, "block wll 4,000 lb",
// before any other words can claim them.
func ratings(rd *reading.Reading) {
	used := map[int]bool{}
	any := false
	for i, e := range rd.Elems {
		if e.Fig == nil || !gear.Rates(e.Fig) || e.Fig.Told == parser.WinchPull || e.Fig.Sure != "" {
			continue
		}
		if e.Fig.Dim != parser.DimCount && sizes.MassBeside(rd, i-1, i+1) == parser.Payload {
			e.Fig.Sure = parser.Payload
			continue
		}
		if s, at := gear.StrengthBeside(rd, i-1, i+1); s != "" {
			any = true
			rd.Elems[at].Spent = true
			rateTold(rd, i, s, used)
			continue
		}
		any = rateOtherwise(rd, i, used) || any
	}
	sizes.TonsOfGear(rd, used)
	gear.SettleThin(rd)
	if any {
		gear.Factors(rd)
	}
}

// rateTold gives the number at i to the gear that it is the strength of, in words beside it.
func rateTold(rd *reading.Reading, i int, s scan.Strength, used map[int]bool) {
	fig := rd.Elems[i].Fig
	p, k := gear.PartOf(rd, i-1, i+1, used)
	if p == "" {
		p = gear.RatedBefore(rd, i-1, s)
	}
	if p == "" {
		p = gear.OnlyRated(rd, i, s)
	}
	if p == "" {
		p = gear.BlockAlone(rd, i)
	}
	if p == "" {
		p = gear.PartSeen(rd)
	}
	if p == "" && s == lexicon.Working {
		a := fig.Ask(parser.WhichGear, rd.Text)
		a.Fields = []parser.Field{parser.RopeWorking, parser.BlockWorking, parser.SlingWorking, parser.ConnectorWorking}
		rd.Asks = append(rd.Asks, a)
		fig.Elsewhere = true
		return
	}
	if p == "" {
		p = lexicon.PartRope // what a break strength by itself is told of
	}
	if k >= 0 {
		used[k] = true
	}
	fig.Sure = gear.Field(p, s)
	alsoOf(rd, fig, k, s)
}

// rateOtherwise places the number at i by the gear around it, where no word beside it says
// that it is a strength; false where it tells none.
func rateOtherwise(rd *reading.Reading, i int, used map[int]bool) bool {
	fig := rd.Elems[i].Fig
	if gear.RatedBesideWorking(rd, i) != "" {
		return true
	}
	if p, word := gear.RatedAs(rd, i); p != "" {
		gear.Rate(rd, i, p, word)
		alsoOf(rd, fig, gear.PartAt(rd, min(i, word), p), lexicon.Working)
		return true
	}
	if p, s, k := gear.RunsOn(rd, i); p != "" {
		gear.InUnitOf(rd, i, k)
		fig.Sure, used[k] = gear.Field(p, s), true
		return true
	}
	if pulls.HeldByHand(rd, i) {
		fig.Sure = parser.Weight
		return false
	}
	unsaidStrength(rd, i, used)
	return false
}

// alsoOf gives a strength to the other gear of a list that ends at k.
func alsoOf(rd *reading.Reading, fig *reading.Figure, k int, s scan.Strength) {
	for _, p := range gear.Listed(rd, k) {
		fig.Also = append(fig.Also, gear.Field(p, s))
	}
}
