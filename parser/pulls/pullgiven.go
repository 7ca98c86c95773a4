package pulls

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Where the parts of line are told and one force, and it is asked what they lift or what
// the anchor sees, the force is the pull: "we pull 150 lb on a 3:1, what does the anchor
// see".

// PullGiven takes such a force for what is pulled with.
func PullGiven(rd *reading.Reading) {
	at := rd.Only(rd.Is(gear.Heavy))
	if at < 0 || rd.Elems[at].Fig.Told != "" || rd.At(at+1).Piece() || !partsSaid(rd) || peopleCounted(rd) || !mostAsked(rd) && !AnchorAsked(rd) {
		return
	}
	if somebodyPulls(rd, at) || pullNamed(rd, at) {
		rd.Elems[at].Fig.Told, rd.Elems[at].Fig.Elsewhere = parser.WinchPull, false
	}
}

// pullNamed reads "800 lb pull" and "800 lb of pull" by themselves.
func pullNamed(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkMade)
	return (rd.Cued(rd.At(j), lexicon.CuePull) || rd.Cued(rd.At(j), lexicon.CueOfPull)) && rd.EndsBreath(j+1)
}

// somebodyPulls says whether the words right before the number at i say that somebody
// pulls so much: "we pull about 150 lb".
func somebodyPulls(rd *reading.Reading, i int) bool {
	k := rd.Back(i - 1)
	e := rd.At(k)
	if rd.Cued(e, lexicon.CuePulling) {
		return true
	}
	if !rd.Cued(e, lexicon.CueHaulsWith) {
		return false
	}
	const words = 2 // "i can pull"
	for j := k - 1; j >= 0 && k-j <= words; j-- {
		who := rd.At(j)
		if rd.Cued(who, lexicon.CueUs) || rd.Cued(who, lexicon.CueWho) || rd.TermAt(j).Someone || who.Plays(parser.WinchPull) {
			return true
		}
		if !who.Polite() {
			return false
		}
	}
	return false
}

// AnchorAsked says whether it is asked what an anchor bears.
func AnchorAsked(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		if t.Intent == parser.AskBlockLoad || t.Intent == parser.AskAnchor {
			return true
		}
		if !rd.Cued(rd.Elems[i], lexicon.CueAnchorPoint) {
			return false
		}
		return bearsNear(rd, i, +1) || bearsNear(rd, i, -1)
	})
}

// OnAnchor makes a lift of a pull that is told, where it is asked what the anchor bears and
// nothing is told of a piece.
func OnAnchor(rd *reading.Reading, q *parser.Question) {
	pulled := q.Has(parser.WinchPull) || q.Has(parser.People) && q.Has(parser.PersonPull)
	if !pulled || !q.Has(parser.Parts) || !q.Pieceless() || q.Noted(parser.MostWanted) || !AnchorAsked(rd) {
		return
	}
	q.Intent, q.Notes = parser.AskLift, append(slices.Clone(q.Notes), parser.AnchorLoad)
}

// bearsNear says whether a word of bearing a load stands near the element at i, in the
// same sentence, that way.
func bearsNear(rd *reading.Reading, i, step int) bool {
	const words = 7
	for k := i + step; k >= 0 && k < len(rd.Elems) && (k-i)*step <= words && rd.Elems[k].Pause < 4 && rd.Elems[k].Fig == nil; k += step {
		if rd.Cued(rd.Elems[k], lexicon.CueCarries) && step > 0 || rd.Cued(rd.Elems[k], lexicon.CueTakesLoad) {
			return true
		}
	}
	return false
}
