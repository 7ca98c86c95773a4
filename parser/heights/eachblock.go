package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// longestBlock is more than any block of a tackle is long, in metres.
const longestBlock = 1

// eachBlock claims how long the two blocks of a tackle are together where one is told,
// "blocks are 2.1 m apart …, pulleys 300 mm each": so much of the room between them is
// theirs.
func eachBlock(rd *reading.Reading, i int) {
	fig := rd.Elems[i].Fig
	k := i - 1
	for rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkArticle) || rd.TermAt(k).Note == "about" || rd.Cued(rd.At(k), lexicon.CueMeasures) {
		k--
	}
	blocks := rd.TermAt(k).Blocks || rd.Cued(rd.At(k), lexicon.CueBlocks) || gear.Part(rd.At(k)) == lexicon.PartBlock
	first, last, each := i+1, i+1, rd.TermAt(k-1).Each
	if each {
		first, last = k-1, i // "each block is 1 ft"
	} else if places.OnlyPlays(rd.At(last), parser.Length) {
		last++ // "30 cm long each"
	}
	if !each && !rd.TermAt(last).Each {
		return
	}
	last = withSlings(rd, last)
	if !blocks || !rd.EndsBreath(last+1) || fig.High > longestBlock || fig.Pair || !apartTold(rd) && !rd.LiftsOn() {
		return
	}
	fig.Low, fig.High = 2*fig.Low, 2*fig.High
	places.Claim(rd, i, parser.Closed)
	for n := first; n <= last; n++ {
		if rd.Elems[n].Term != nil {
			rd.Elems[n].Term = &scan.Term{}
		}
	}
}

// withSlings is the last element of "each, with the slings" behind the one at i.
func withSlings(rd *reading.Reading, i int) int {
	j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkAnd)
	if j > i+1 && gear.Part(rd.At(j)) == lexicon.PartSling {
		return j
	}
	return i
}

// apartTold says whether it is told how far apart the blocks are, or how far a load comes up.
func apartTold(rd *reading.Reading) bool {
	return rd.AnyAt(func(k int) bool {
		fig := rd.Elems[k].Fig
		return fig != nil && (fig.Told == parser.Apart || fig.Sure == parser.Apart || fig.Told == parser.Rise)
	})
}
