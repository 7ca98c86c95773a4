package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A rope is also called by what is no size of it: how it is braided, "2 in 1 rope", and the
// size that it is sold as elsewhere, "16 mm rope, same as 5/8".

// RopesCalled passes over both, which are said back.
func RopesCalled(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		end := twoInOne(rd, i)
		if sameRope(rd, i) {
			unfollow(rd, i)
			end = i + 1
		}
		if end > 0 {
			rd.Pass(i, end)
			i--
		}
	}
}

// unfollow takes from the words between two sizes of a rope that they follow an answer:
// "same" as that rope.
func unfollow(rd *reading.Reading, i int) {
	for k := i - 1; k >= 0 && rd.Elems[k].Fig == nil; k-- {
		if rd.Elems[k].Marked(lexicon.MarkFollow) {
			rd.Elems[k].Term = &scan.Term{}
		}
	}
}

// sameRope says whether the number at i tells in inches how thick the rope is of which that
// is told before in millimetres: "16 mm rope, same as 5/8". Ropes are sold as either.
func sameRope(rd *reading.Reading, i int) bool {
	const within = 0.05
	fig := rd.Elems[i].Fig
	if fig == nil || !rd.Fraction(fig) || fig.Low != fig.High || rd.At(i-1).Cross || rd.At(i+1).Cross {
		return false
	}
	metres := fig.Low * scan.Inch.Factor
	same := func(w string) bool { return rd.In.Cued(w, lexicon.CueSame) }
	return rd.AnyAt(func(k int) bool {
		f := rd.Elems[k].Fig
		near := k < i && f.Short() && f.Unit.System == parser.Metric && f.Low == f.High && (rd.At(k+1).Marked(lexicon.MarkCord) || rd.At(k-2).Marked(lexicon.MarkCord)) && f.Low > metres*(1-within) && f.Low < metres*(1+within)
		return near && slices.ContainsFunc(scan.SplitWords(rd.Text[f.End:fig.Start]), same)
	})
}

// twoInOne is where "2 in 1" ends that stands beside a rope from the element at i on, 0 where
// it does not: how a rope is braided, and across nothing.
func twoInOne(rd *reading.Reading, i int) int {
	one := func(k int) bool {
		f := rd.At(k).Fig
		return f != nil && f.Dim == parser.DimCount && f.Unit == nil && f.Low == 1 && f.High == 1
	}
	two, end := rd.Elems[i].Fig, 0
	switch {
	case two == nil || two.Low != two.High:
		return 0
	case two.Unit == scan.Inch && two.Low == 2*scan.Inch.Factor && one(i+1):
		end = i + 2
	case two.Unit == nil && two.Dim == parser.DimCount && two.Low == 2 && rd.At(i+1).Marked(lexicon.MarkIn) && one(i+2):
		end = i + 3
	default:
		return 0
	}
	if !rd.At(end).Marked(lexicon.MarkCord) && !rd.At(i-1).Marked(lexicon.MarkCord) && Part(rd.At(end)) != lexicon.PartRope {
		return 0
	}
	return end
}
