package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// StemOfCrown takes the trunk that a crown ends in for no second piece, where nothing but
// how thick it is is told of it: "copa de 6 m, el tronco tiene 30 cm". The piece keeps its
// branches.
func StemOfCrown(rd *reading.Reading) {
	const most = 2 // how long the crown is, and how thick its stem
	lengths, crown := 0, -1
	for i, e := range rd.Elems {
		switch {
		case e.Cross:
			return
		case e.Fig != nil && e.Fig.Dim == parser.DimLength:
			lengths++
		case crown < 0 && rd.TermAt(i).Shape == parser.Limb && rd.Cued(e, lexicon.CueCrown):
			crown = i
		}
	}
	if crown < 0 || lengths > most {
		return
	}
	for i := crown + 1; i < len(rd.Elems); i++ {
		if rd.TermAt(i).Shape == parser.Log && rd.Cued(rd.Elems[i], lexicon.CueTheTrunk) && thickBeside(rd, i) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		}
	}
}

// thickBeside says whether a thickness is told right before or behind the word at i: "de
// ancho tendrá medio metro el tronco", "trunk half a meter wide".
func thickBeside(rd *reading.Reading, i int) bool {
	const farthest = 3
	thick := func(k int) bool {
		fig := rd.At(k).Fig
		if fig == nil || fig.Dim != parser.DimLength {
			return false
		}
		across := rd.At(k + 1).Plays(parser.Diameter)
		for b := k - 1; b >= max(0, k-farthest) && rd.At(b).Pause == 0; b-- {
			across = across || rd.At(b).Plays(parser.Diameter)
		}
		return fig.Short() || across
	}
	for step := -1; step <= 1; step += 2 {
		for k := i + step; k >= 0 && (k-i)*step <= farthest && rd.At(k).Pause == 0; k += step {
			if rd.At(k).Fig != nil {
				return thick(k)
			}
		}
	}
	return false
}
