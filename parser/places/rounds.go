package places

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// A round is wider than long, "two foot red oak round", so that its thickness is told
// in inches too: "1,10 m de ancho, rodajas de 30 cm".

// beforeRound says whether the number names a round by its width: "two foot
// red oak round".
func beforeRound(rd *reading.Reading, i int) bool {
	for rd.At(i+1).Piece() && rd.At(i+1).Term.Shape == "" {
		i++
	}
	return rd.At(i + 1).Marked(lexicon.MarkRound)
}

// BehindRound says whether the number stands right behind a round: "rodajas de 30 cm".
func BehindRound(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return !fig.Pair && !fig.Falling && rd.At(rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkAt)).Marked(lexicon.MarkRound) && rd.EndsBreath(i+1)
}

// roundNext says whether the number stands by itself between a thickness that is told as
// one and a round: "60 cm dia, 45 cm rounds", "60 cm dia, 45 cm. rounds".
func roundNext(rd *reading.Reading, i int) bool {
	fig, j := rd.Elems[i].Fig, i+1
	if rd.At(j).Pause > 0 {
		j++
	}
	before := rd.At(i-1).Pause > 0 && rd.At(i-2).Plays(parser.Diameter) && rd.At(i-3).Fig != nil
	return !fig.Pair && !fig.Falling && fig.High > reading.ThickestRope && before && rd.At(j).Marked(lexicon.MarkRound)
}

// roundWidth is the widest that a round is told to be: what is longer is its
// length, "a round 20 in, 8 ft".
const roundWidth = 1.3
