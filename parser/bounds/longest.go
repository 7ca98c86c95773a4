package bounds

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// How long a piece of a cut may be is told as what none of them is, "no log longer than
// 2 m", "ninguno de más de 3 m": the truck or the room below sets it, whatever it weighs.
// Read as how long the wood is, it would change the whole plan.

// LongestTold claims such a length where it is asked how wood is cut.
func LongestTold(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskCutPlan) && !rd.Worded(parser.Limit) {
		return
	}
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Dim != parser.DimLength || fig.Unit == nil || fig.Pair || fig.Claimed != "" || fig.Rope {
			continue
		}
		from, longer := noneFrom(rd, i)
		if from < 0 && stemTold(rd, i) && toMost(rd, i) {
			from, longer = rd.Past(i-1, -1, lexicon.MarkBound)+1, true
		}
		if from < 0 || !endsThere(rd, i) || !longer && (fig.Unit.Fine || !boundAt(rd, i-1) || thereIsNone(rd, from)) {
			continue
		}
		noLonger(rd, from, i)
	}
}

// noneFrom finds what none of the pieces is from, in the breath of the number at i, and
// whether it is said that it is about how long they are; -1 where it is said of no piece.
func noneFrom(rd *reading.Reading, i int) (from int, longer bool) {
	from = i
	for from > 0 && i-from <= stops.Few && rd.At(from-1).Pause == 0 && rd.At(from-1).Fig == nil {
		from--
		if !ofPieces(rd, from) {
			return -1, false
		}
		if e := rd.Elems[from]; e.Marked(lexicon.MarkAnd) || rd.Cued(e, lexicon.CueNoneOf) {
			break
		}
	}
	words := scan.SplitWords(rd.Text[reachBack(rd, from):rd.Elems[i].Start])
	cued := func(c scan.Cue) int {
		return slices.IndexFunc(words, func(w string) bool { return rd.CuedAs(w, c) })
	}
	none, more := cued(lexicon.CueNoneOf), cued(lexicon.CueLongerOne)
	if none < 0 {
		return -1, false
	}
	return from, more > none
}

// ofPieces says whether the word at i can stand where it is told how long pieces may be:
// it is of no gear and nobody, and tells of no other length, "dont run it more than 6 ft".
func ofPieces(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	other := func(r scan.Role) bool { return r.Field != parser.Limit && r.Field != parser.Length }
	asks := t.Intent != "" && t.Intent != parser.AskCutPlan
	return !stops.Kit(rd, i) && !t.Human && !t.Someone && t.Tree == nil && t.Note == "" && t.Stop == "" && !asks && !slices.ContainsFunc(t.Roles, other)
}

// reachBack is where the words before the element at i begin, that may be unknown and no
// element at all: "nothing".
func reachBack(rd *reading.Reading, i int) int {
	if i == 0 {
		return 0
	}
	return rd.Elems[i-1].End
}

// stemTold says whether another length than that at i tells how long the wood is.
func stemTold(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool {
		return k != i && gear.Far(rd, k) && rd.Elems[k].Fig.Claimed == "" && !rd.At(k-1).Plays(parser.Limit)
	})
}

// boundAt says whether the word at i leads to the most that something may be.
func boundAt(rd *reading.Reading, i int) bool {
	return rd.At(i).Plays(parser.Limit) || rd.At(i).Marked(lexicon.MarkBound)
}

// endsThere says whether the number at i is of nothing that stands behind it, "no more than
// 30 ft of rope": that it is a length, or each piece's, may be said.
func endsThere(rd *reading.Reading, i int) bool {
	k := i + 1
	if rd.At(k).Fig == nil && (rd.At(k).Plays(parser.Length) || boundAt(rd, k)) {
		k++
	}
	if rd.TermAt(k).Each {
		k++
	}
	end := len(rd.Text)
	if k < len(rd.Elems) {
		end = rd.Elems[k].Start
	}
	unknown := slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Start >= rd.Elems[i].End && a.End <= end })
	return (rd.EndsBreath(k) || rd.Cued(rd.At(k), lexicon.CueClause)) && !unknown
}

// thereIsNone says whether the words at i say that there is no more of something, "no hay
// más de 2 m": that is room, and no piece.
func thereIsNone(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Turning == parser.TurnsDenied && !rd.At(i).Plays(parser.Limit) && strings.Contains(rd.Word(rd.At(i)), " ")
}

// toMost reads "6 ft max" and "at most 6 ft" by itself.
func toMost(rd *reading.Reading, i int) bool {
	most := func(k int) bool {
		e := rd.At(k)
		return e.Fig == nil && e.Plays(parser.Limit) && e.Marked(lexicon.MarkBound)
	}
	begins := func(k int) bool { return k == 0 || rd.At(k-1).Pause > 0 || rd.At(k-1).Marked(lexicon.MarkAnd) }
	return begins(i) && most(i+1) && rd.EndsBreath(i+2) || i > 0 && most(i-1) && begins(i-1) && rd.EndsBreath(i+1)
}

// noLonger makes the number at i the longest that a piece may be, and takes the doubt from
// the words that lead to it.
func noLonger(rd *reading.Reading, from, i int) {
	start, end := reachBack(rd, from), rd.Elems[i].Start
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && a.Start >= start && a.End <= end && rd.CuedAs(a.Words, lexicon.CueNoneOf)
	})
	rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool {
		leads := func(w string) bool { return rd.In.Cued(w, lexicon.CueNoneOf) || rd.In.Cued(w, lexicon.CueLongerOne) }
		return p.Start >= start && p.End <= end && slices.ContainsFunc(scan.SplitWords(scan.Fold(p.Words)), leads)
	})
	for k := from; k < i; k++ {
		rd.Elems[k].Term = &scan.Term{}
	}
	for k := i + 1; rd.At(k).Fig == nil && (rd.At(k).Plays(parser.Length) || boundAt(rd, k) || rd.TermAt(k).Each); k++ {
		rd.Elems[k].Term = &scan.Term{}
	}
	if !gear.AsksFor(rd, parser.AskCutPlan) && from < i {
		rd.Elems[from].Term = &scan.Term{Intent: parser.AskCutPlan, Besides: true}
	}
	places.Claim(rd, i, parser.LongestPiece)
}
