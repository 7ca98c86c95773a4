package places

import (
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

// roundWidth is the widest that a round is told to be: what is longer is its
// length, "a round 20 in, 8 ft".
const roundWidth = 1.3
