package reader

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/pulls"
	"heft/parser/reading"
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
		s, at := gear.StrengthBeside(rd, i-1, i+1)
		if s == "" {
			if p, word := gear.RatedAs(rd, i); p != "" {
				gear.Rate(rd, i, p, word)
				any = true
				continue
			}
			if pulls.HeldByHand(rd, i) {
				e.Fig.Sure = parser.Weight
				continue
			}
			unsaidStrength(rd, i, used)
			continue
		}
		rd.Elems[at].Spent = true
		any = true
		p, k := gear.PartOf(rd, i-1, i+1, used)
		if p == "" {
			p = gear.RatedBefore(rd, i-1, s)
		}
		if p == "" && s == lexicon.Working {
			a := e.Fig.Ask(parser.WhichGear, rd.Text)
			a.Fields = []parser.Field{parser.RopeWorking, parser.BlockWorking, parser.SlingWorking, parser.ConnectorWorking}
			rd.Asks = append(rd.Asks, a)
			e.Fig.Elsewhere = true
			continue
		}
		if p == "" {
			p = lexicon.PartRope // what a break strength by itself is told of
		}
		if k >= 0 {
			used[k] = true
		}
		e.Fig.Sure = gear.Field(p, s)
	}
	sizes.TonsOfGear(rd, used)
	if any {
		gear.Factors(rd)
	}
}
