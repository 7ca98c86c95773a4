package talk

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/lines"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/turning"
)

// Who is here is told in all, and how many of them are on the ground: "crew is 5
// today, three on the ground". Those on the ground hold and haul.

// mostCrew is how many a crew counts at the most: more of them are rather a size.
const mostCrew = 12

// Crews claims the numbers of a crew that no role can tell from a size, and
// passes over how many there are in all where those on the ground are counted.
func Crews(rd *reading.Reading) {
	if rd.AnyAt(rd.Is(lines.Sized)) {
		return
	}
	total, ground := -1, -1
	for i := range rd.Elems {
		switch {
		case !crewCount(rd, i):
		case rd.TypedAfter(i, lexicon.CueGround):
			ground = i
		case rd.TypedBefore(i, lexicon.CueCrew), rd.TypedAfter(i, lexicon.CueCrew):
			total = i
		}
	}
	for _, i := range []int{total, ground} {
		if i >= 0 && !rd.At(i+1).Plays(parser.People) { // else the words behind it take it
			places.Claim(rd, i, parser.People)
		}
	}
	if total >= 0 && ground >= 0 && rd.Elems[total].Fig.Low >= rd.Elems[ground].Fig.Low {
		turning.Blank(rd, total, total+1)
	}
}

// GearCounts passes over how many of a kind of gear there are, "two 1.5 tonne
// slings", where the message is to be kept: what one of them bears is what counts.
func GearCounts(rd *reading.Reading) {
	if !keeps(rd) && !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Day }) {
		return
	}
	const most = 6
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Unit != nil || fig.Dim != parser.DimCount || fig.Pair || fig.Low != float64(int(fig.Low)) || fig.Low < 2 || fig.Low > most {
			continue
		}
		if next := rd.At(i + 1); gear.Part(next) != "" && gear.Part(next) != lexicon.PartRope || gear.Heavy(rd, i+1) && gear.Part(rd.At(i+2)) != "" {
			turning.Blank(rd, i, i+1)
		}
	}
}

// crewCount says whether the number at i can be how many people there are, and
// counts nothing else.
func crewCount(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Pair || fig.Low != float64(int(fig.Low)) || fig.Low < 1 || fig.Low > mostCrew {
		return false
	}
	return rd.EndsBreath(i+1) || rd.TermAt(i+1).Day || rd.TypedAfter(i, lexicon.CueGround) || rd.TypedAfter(i, lexicon.CueCrew) || rd.TypedAfter(i, lexicon.CueReason) || rd.At(i+1).Plays(parser.People)
}
