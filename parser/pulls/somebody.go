package pulls

import (
	"heft/calc/unit"
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// SomebodyPulls reads "mi compa jala 40 lb" and "the groundie pulls 40 lb max": what
// one person pulls with is never what the piece weighs. What no hand pulls stays open.
func SomebodyPulls(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !gear.Heavy(rd, i) || e.Fig.Told != "" || rd.At(i+1).Piece() || newtons(e.Fig) > mostByHand {
			continue
		}
		at := rd.Back(i - 1)
		if rd.Cued(rd.At(at), lexicon.CueHandPulls) && rd.At(at).Pause == 0 && onePerson(rd, at-1) {
			e.Fig.Told = parser.PersonPull
			rd.Elems[at].Term = &scan.Term{}
		}
	}
}

// newtons is the most that a mass or a force comes to.
func newtons(fig *reading.Figure) float64 {
	if fig.Dim == parser.DimMass {
		return float64(unit.Mass(fig.High).Weight())
	}
	return fig.High
}

// onePerson says whether the element at i, past talk, is somebody that no number counts.
func onePerson(rd *reading.Reading, i int) bool {
	for rd.At(i).Polite() && !stops.Present(rd, i) && rd.At(i).Pause == 0 {
		i--
	}
	return stops.Present(rd, i) && rd.At(i-1).Fig == nil
}

// pulledWith reads "jalamos con 150 lb" and "pulling with 150 lb": the pull on a tackle,
// where no other number tells of the load.
func pulledWith(rd *reading.Reading, i int) bool {
	tackle := rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimRatio })
	turned := rd.AnyAt(func(k int) bool { return parser.Redirecting(rd.TermAt(k).Block) })
	return tackle && !turned && rd.Cued(rd.At(rd.Back(i-1)), lexicon.CuePullWith) && !rd.ShapedOrNamed()
}
