package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A sling or a shackle is called by its size: "eslinga de 2 pulgadas", "3/4 shackle".
// What it carries stands on its label, so that the size is left out and said back.

// GearSizes leaves out such sizes, which no piece has.
func GearSizes(rd *reading.Reading) {
	const widest = 4 * 0.0254
	for i := 0; i < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		small := fig != nil && !fig.Pair && (fig.Unit == nil && rd.Fraction(fig) || fig.Dim == parser.DimLength && fig.Unit.Fine && fig.High <= widest)
		if (small && (sizesGear(rd, i) || thinHardware(rd, i)) || slingLong(rd, i)) && fig.Told == "" && fig.Claimed == "" {
			rd.Pass(i, i+1)
			i--
		}
	}
}

// thinHardware says whether the number at i is how thick gear is that goes by its label,
// or the rope that a block is made for.
func thinHardware(rd *reading.Reading, i int) bool {
	switch ThinPart(rd, i) {
	case lexicon.PartSling, lexicon.PartConnector, lexicon.PartBlock:
		return true
	}
	return false
}

// slingLong reads "the 3 m dead eye" and "on a 3 ft sling": how long a sling is, behind
// its article. "10 ft, sling 5000 lb" is the length of a piece.
func slingLong(rd *reading.Reading, i int) bool {
	const longest = 8
	rated := func(k int) bool { return Strength(rd.Elems[k]) != "" || rd.TermAt(k).Note == parser.FactorWanted }
	return rd.AnyAt(rated) && Far(rd, i) && rd.Elems[i].Fig.High <= longest && rd.At(i-1).Marked(lexicon.MarkArticle) && Part(rd.At(i+1)) == lexicon.PartSling
}

// sizesGear says whether the number at i stands right before a sling or a connector, or
// right behind it, where it ends or its strength follows. The size of a piece has no
// gear beside it: "3 in limb, sling WLL 3200 lb".
func sizesGear(rd *reading.Reading, i int) bool {
	gear := func(k int) bool {
		part := Part(rd.At(k))
		return (part == lexicon.PartSling || part == lexicon.PartConnector) && rd.At(k).Fig == nil
	}
	if rd.At(i-1).Cross || rd.At(i+1).Cross {
		return false
	}
	behind := gear(rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkArticle|lexicon.MarkIs)) && (rd.EndsBreath(i+1) || Strength(rd.At(i+1)) != "" || Heavy(rd, i+1) || rd.At(i+1).Marked(lexicon.MarkWhere))
	apart := rd.At(i-1).Pause == 2 && gear(i-2) && rd.Fraction(rd.Elems[i].Fig) && rd.At(i+1).Pause > 0 // "an eye sling, 5/8, 14,000"
	return behind || apart || gear(i+1)
}

// SizedThenRated is the gear whose size was told right before the number at i and left out,
// where so much is no size of anything: the "14,000" of "sling 5/8, 14,000".
func SizedThenRated(rd *reading.Reading, i int) scan.Part {
	const least = 1000
	k := i - 1
	for rd.At(k).Pause == 2 {
		k--
	}
	fig, p := rd.Elems[i].Fig, Part(rd.At(k))
	if p == "" || p == lexicon.PartRope || fig.Dim != parser.DimCount || fig.Low < least || !sizePassed(rd, k, i) {
		return ""
	}
	return p
}
