package lines

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What is left of a rope for its knot, the wraps and the hands is its tail: "about 3 m for
// the knot and the drum and some tail", "leave 4 m for tying off".

// TailFor tells the one number of a message that is said to be for these, and takes the
// doubt from the verb that leaves so much. The words beside it name no gear that is asked
// about, and nothing is added up where so much is "added".
func TailFor(rd *reading.Reading) {
	at := rd.Only(func(i int) bool { return ofTail(rd, i) && tailEnd(rd, i) >= 0 })
	if at < 0 {
		return
	}
	end := tailEnd(rd, at)
	if rd.Elems[at].Fig.Unit == nil {
		rd.Elems[at].Fig.Sure = parser.Tail // its unit is the talk's
	} else {
		told := *rd.Elems[at].Fig
		told.Told = parser.Tail
		rd.Elems[at].Fig = &told
	}
	for i, e := range rd.Elems {
		if i > at && e.Start < end && !e.Plays(parser.Tail) || i < at && rd.Cued(e, lexicon.CueTailLeft) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		}
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Start >= rd.Elems[at].End && a.End <= end || a.End <= rd.Elems[at].Start && rd.SaidTo(lexicon.CueTailLeft, a.Start) == a.End
	})
}

// ofTail says whether the element at i is a number that may be how long a tail is; without
// a unit only in a talk of a rope.
func ofTail(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Told != "" || fig.Pair {
		return false
	}
	return gear.Far(rd, i) || rd.Before.Intent == parser.AskRope && fig.Dim == parser.DimCount && fig.Unit == nil
}

// tailEnd is where the words behind the number at i end that say what a tail is for, or that
// it is one; -1 where they say anything else.
func tailEnd(rd *reading.Reading, i int) (end int) {
	if rd.At(i + 1).LooksBack(parser.Tail) {
		return rd.At(i + 1).End
	}
	if end = rd.SaidTo(lexicon.CueTailFor, rd.Elems[i].End); end < 0 {
		return -1
	}
	use := rd.SaidTo(lexicon.CueTailUse, end)
	for use >= 0 {
		end = use
		and := rd.SaidTo(lexicon.CueTailAnd, end)
		if and < 0 {
			return end
		}
		use = rd.SaidTo(lexicon.CueTailUse, and)
	}
	return -1
}
