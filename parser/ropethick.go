package parser

import "math"

// Where metres are the custom a rope is told by its millimetres: "soga de 14",
// "cuerda de 16".

// ropeMillimetres says whether the bare number at i, right behind a rope, is how
// thick it is. Where it is asked how far the rope reaches, or a block has its
// height, it could be how long the rope is.
func (rd *reading) ropeMillimetres(i int) bool {
	const thinnest, thickest = 8, 24
	fig, made := rd.elems[i].fig, rd.at(i-1)
	if !rd.in.comma || fig.low < thinnest || fig.high > thickest || fig.low != math.Trunc(fig.low) || !made.marked(markMade) || !rd.at(i-2).marked(markCord) {
		return false
	}
	if next := rd.at(i + 1); !rd.endsBreath(i+1) && !next.marked(markWhere) && rd.termAt(i+1).strength == "" {
		return false
	}
	far := func(k int) bool {
		e := rd.elems[k]
		return e.term != nil && (e.term.intent == AskRope || e.term.reaches || e.plays(HitchHeight) || e.plays(RopeLength) && rd.far(k-1)) || rd.imperialLength(k)
	}
	return !rd.anyAt(far) && (rd.asksFor(AskGear) || rd.worded(Wraps) || rd.massTold(i) || rd.anyAt(rd.bearsAt))
}

// bearsAt says whether the words at i ask what something holds, or tell it.
func (rd *reading) bearsAt(i int) bool { return rd.elems[i].marked(markRating) || rd.termAt(i).bears }
