package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// TonsOfGear tells the asks about a "ton" that it is of gear: no "3 ton
// shackle" is a piece of three tons.
func TonsOfGear(rd *reading.Reading, used map[int]bool) {
	for _, a := range rd.Asks {
		if a.Kind != parser.WhichTon {
			continue
		}
		right := 0 // the element behind the ton
		for right < len(rd.Elems) && rd.Elems[right].Start < a.Start {
			right++
		}
		if f := MassBeside(rd, right-1, right); f != "" {
			a.Fields = []parser.Field{f}
			continue
		}
		s, at := gear.StrengthBeside(rd, right-1, right)
		p, _ := gear.PartOf(rd, right-1, right, used)
		switch {
		case s != "" && p == "":
			continue
		case s != "":
			rd.Elems[at].Spent = true
			a.Fields = []parser.Field{gear.Field(p, s)}
		case gear.PartBeside(rd, right-1, right) != "":
			a.Fields = gear.Both(gear.PartBeside(rd, right-1, right))
		}
	}
}

// MassBeside is the limit or the payload that a ton was told of, "" for
// neither: "limit 2 tons", "8 ton truck".
func MassBeside(rd *reading.Reading, left, right int) parser.Field {
	for _, f := range []parser.Field{parser.Limit, parser.Payload} {
		if rd.At(rd.Past(left, -1, lexicon.MarkIs)).Plays(f) || rd.At(right).Plays(f) {
			return f
		}
	}
	if truck(rd, right) {
		return parser.Payload
	}
	return ""
}

// truck says whether an element is what the wood goes away on.
func truck(rd *reading.Reading, i int) bool {
	return rd.At(i).Term != nil && rd.Cued(rd.At(i), lexicon.CueTruck)
}
