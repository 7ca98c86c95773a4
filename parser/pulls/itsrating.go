package pulls

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
	"heft/parser/turning"
)

// What "it" is rated for, behind the one thing that is to lift: "can we lift it with the
// capstan? its rated 3500 lb". Wood is rated for nothing.

// itsPull says whether the number at i is the rating of the winch that was named.
func itsPull(rd *reading.Reading, i int) bool {
	return turning.Lifting(rd) && rated(rd, i) && lifter(rd, i, func(k int) bool {
		return rd.At(k).Plays(parser.WinchPull) || rd.TermAt(k).Hauls
	})
}

// rated says whether the mass at i is told by "it's rated", and by no gear's name.
func rated(rd *reading.Reading, i int) bool {
	k := i - 1
	for rd.At(k).Marked(lexicon.MarkBound|lexicon.MarkIs|lexicon.MarkWhere) && !rd.TermAt(k).Rated {
		k--
	}
	it := rd.Past(k-1, -1, lexicon.MarkIs)
	says := rd.Cued(rd.At(it), lexicon.CueItIs) || rd.At(it).Marked(lexicon.MarkPronoun) || rd.At(it).Pause > 0
	return rd.TermAt(k).Rated && says && rd.At(it-1).Fig == nil && gear.Part(rd.At(i+1)) == ""
}

// lifter says whether one thing that is to lift stands before the number at i, nothing
// else that has a rating, and a load besides or the piece.
func lifter(rd *reading.Reading, i int, lifts func(int) bool) bool {
	named := 0
	for k := range rd.Elems {
		switch p := gear.Part(rd.At(k)); {
		case lifts(k) && k < i:
			named++
		case lifts(k), p == lexicon.PartSling, p == lexicon.PartConnector, p == lexicon.PartBlock && !parser.Redirecting(rd.TermAt(k).Block) && k < i:
			return false
		}
	}
	return named == 1
}

// PullInTalk says whether the number at i is what the winch of a follow-up pulls: "what
// about the capstan instead, 750 kg pull it says on it", "put it on the capstan, says 1000
// on the plate". It names no piece, so that it gives that no other weight, and nobody and
// no scale that says it.
func PullInTalk(rd *reading.Reading, i int) bool {
	const leastPull = 100
	fig := rd.Elems[i].Fig
	heavy := gear.Heavy(rd, i) || fig != nil && fig.Unit == nil && fig.Dim == parser.DimCount && fig.Low >= leastPull
	if rd.First || !heavy || fig.Told != "" || rd.AnyAt(rd.Is(saysOther)) {
		return false
	}
	told := rd.TypedAfter(i, lexicon.CuePull) || rd.TypedBefore(i, lexicon.CueStamped)
	return told && lifter(rd, i, func(k int) bool { return rd.At(k).Plays(parser.WinchPull) && rd.At(k).Fig == nil || rd.TermAt(k).Hauls })
}

// saysOther says whether what stands at i may be what a number is told of, or by: a piece,
// somebody, a rope, a load cell.
func saysOther(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	return e.Piece() || t.Unnamed || e.Plays(parser.People) || stops.Person(rd, i) || e.Marked(lexicon.MarkPerson) || turning.Who(rd, i) || gear.Part(e) == lexicon.PartRope || rd.Cued(e, lexicon.CueMeter)
}
