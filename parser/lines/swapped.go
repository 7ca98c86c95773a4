package lines

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
)

// Swapped reads "we swapped the half inch for the 14 mm, it's 60 m long": the second rope is
// rigged, how thick it is and how long, and the first is passed over.
func Swapped(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.Cued(rd.Elems[i], lexicon.CueSwapped) {
			continue
		}
		was := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkMade)
		end := was + 1
		for gear.Part(rd.At(end)) == lexicon.PartRope {
			end++
		}
		is := rd.Past(end+1, +1, lexicon.MarkArticle|lexicon.MarkMade)
		if !ropeThick(rd, was) || !rd.Cued(rd.At(end), lexicon.CueSwappedFor) || !ropeThick(rd, is) {
			continue
		}
		places.Claim(rd, is, parser.RopeDiameter)
		swappedLong(rd, is)
		rd.Pass(was, end)
		return
	}
}

// ropeThick says whether the number at i is how thick a rope may be.
func ropeThick(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && !fig.Pair && (rd.Fraction(fig) || fig.Short() && fig.High < reading.ThickestRope)
}

// swappedLong claims how long such a rope is, told behind the number at i of no piece.
func swappedLong(rd *reading.Reading, i int) {
	if rd.AnyAt(func(k int) bool { return rd.Elems[k].Piece() || rd.TermAt(k).Unnamed }) {
		return
	}
	k := rd.Only(func(k int) bool { return k > i && gear.Far(rd, k) && rd.Elems[k].Fig.Low >= shortestHand })
	if k > i && (longWord(rd, k+1) || longWord(rd, rd.Back(k-1)) || rd.EndsBreath(k+1)) {
		places.Claim(rd, k, parser.RopeLength)
		forgetLong(rd, k)
	}
}
