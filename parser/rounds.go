package parser

// A round is wider than long, "two foot red oak round", so that its thickness is told
// in inches too: "1,10 m de ancho, rodajas de 30 cm".

// beforeRound says whether the number names a round by its width: "two foot
// red oak round".
func (rd *reading) beforeRound(i int) bool {
	for rd.at(i+1).piece() && rd.at(i+1).term.shape == "" {
		i++
	}
	return rd.at(i + 1).marked(markRound)
}

// behindRound says whether the number stands right behind a round: "rodajas de 30 cm".
func (rd *reading) behindRound(i int) bool {
	fig := rd.elems[i].fig
	return !fig.pair && !fig.falling && rd.at(rd.past(i-1, -1, markMade|markRelation|markAt)).marked(markRound) && rd.endsBreath(i+1)
}

// roundThick says whether a bare number is how thick a round is: "25 de alto", "rodajas
// de 30".
func (rd *reading) roundThick(i int) bool {
	return rd.has(markRound) && (rd.at(i+1).marked(markHigh) || rd.behindRound(i))
}

// roundWidth is the widest that a round is told to be: what is longer is its
// length, "a round 20 in, 8 ft".
const roundWidth = 1.3
