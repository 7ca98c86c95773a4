package talk

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/turning"
)

// A yard calls its crews by numbers: "job for crew 2, three people", "crews 2 and 3, seven
// of us". Such a number counts nobody.

// CrewsNamed passes over them where several crews are named, where the job is for one, or
// where how many people there are is told besides.
func CrewsNamed(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.Cued(rd.At(i), lexicon.CueCrewNamed) || !called(rd, i+1) || rd.TypedBefore(i+1, lexicon.CueCrew) && !counts(rd, i) {
			continue
		}
		if !rd.TermAt(i-1).Serves && !counts(rd, i) {
			continue
		}
		turning.Blank(rd, i+1, i+2)
		for k := i + 2; rd.At(k).Marked(lexicon.MarkAnd) && called(rd, k+1) && !rd.At(k+2).Plays(parser.People); k += 2 {
			turning.Blank(rd, k+1, k+2)
		}
	}
}

// called says whether the number at i may be what a crew is called by.
func called(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && !fig.Pair && fig.Low == fig.High && fig.Low == float64(int(fig.Low)) && fig.Low <= mostCrew
}

// counts says whether another number than the one behind the crew at i counts people.
func counts(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool { return k > i+1 && called(rd, k) && rd.At(k+1).Plays(parser.People) })
}
