package sizes

import (
	"heft/parser"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Eleven inches around the middle" is a tape round it, or so thick about there. Round a
// stem of 11 in it is 3.5 in across: beside a butt of 14 in it can only be its thickness.

// leastOfButt is how thick the middle of a piece is at the least, as a part of its butt: a
// piece that tapers to nothing has half of it.
const leastOfButt = 0.5

// AboutMiddle makes a number before "around the middle" the thickness there, where the butt
// is told by its word and a girth of that number would be far too thin beside it.
func AboutMiddle(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.TermAt(i).GirthMiddle || !fits(rd, i-1) || rd.Elems[i-1].Fig.High >= leastAround {
			continue
		}
		fig := rd.Elems[i-1].Fig
		if butt := buttTold(rd, i-1); butt == nil || fig.High > butt.High || fig.Low < leastOfButt*butt.High {
			continue
		}
		fig.Sure = parser.MidDiameter
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
	}
}

// buttTold is the thickness that is told right beside the word for a butt, nil where there
// is none.
func buttTold(rd *reading.Reading, but int) *reading.Figure {
	for i := range rd.Elems {
		if !rd.Elems[i].Plays(parser.ButtDiameter) {
			continue
		}
		if j := toGirth(rd, i); j != but && rd.At(j).Fig.Short() {
			return rd.At(j).Fig
		}
		if j := i - 1; j != but && rd.At(j).Fig.Short() {
			return rd.At(j).Fig
		}
	}
	return nil
}
