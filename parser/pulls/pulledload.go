package pulls

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/reading"
	"heft/parser/turning"
)

// "We pull 100 lb" may be what hands do to a rope. Right behind the verb, beside counted
// people and no other mass, it is what they are to get up where it is asked what tackle
// that takes, or where no hands pull so much: "tengo que jalar 400 kilos, somos tres".

// mostAHand is more than anybody pulls by hand, in kilograms.
const mostAHand = 60

// pulledLoad says whether the number at i is such a load.
func pulledLoad(rd *reading.Reading, i int) bool {
	verb, behind := rd.TermAt(rd.Back(i-1)), rd.TermAt(i+1)
	if verb.Intent != parser.AskLift || !verb.Lifts || behind.Each || behind.Roles != nil || !turning.Lifting(rd) || otherPull(rd) || mostAsked(rd) {
		return false
	}
	if rd.AnyAt(func(k int) bool {
		return k != i && gear.Heavy(rd, k) || rd.Elems[k].Plays(parser.WinchPull) && rd.TermAt(k).Intent == "" && rd.At(k+1).Fig != nil
	}) {
		return false
	}
	wanted := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Note == parser.PartsWanted })
	people := handsTold(rd)
	return people > 0 && (wanted || rd.Elems[i].Fig.Low > mostAHand*people)
}

// handsTold is how many people are counted, 0 where none are.
func handsTold(rd *reading.Reading) float64 {
	for k, e := range rd.Elems {
		if !e.Plays(parser.People) && rd.TermAt(k).Count == 0 {
			continue
		}
		for _, beside := range []reading.Element{rd.At(k - 1), rd.At(k + 1)} {
			if f := beside.Fig; f != nil && f.Dim == parser.DimCount && f.Unit == nil {
				return f.High
			}
		}
	}
	return 0
}
