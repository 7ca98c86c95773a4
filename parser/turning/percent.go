package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A percentage is a figure where it says of what: "sheaves 90 percent efficient", "i lose
// 10% at every block", "10 percent of break". Of anything else it stays in doubt.

// mostOfBreak is the largest share of a breaking strength that is taken for how a crew
// plans: what we plan on ourselves.
const mostOfBreak = 10

// Percents reads such figures as how much of the pull passes a block, and as the design
// factor of a rope.
func Percents(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		fig := rd.Elems[i-1].Fig
		if !rd.TermAt(i).Percent || fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Pair || fig.Low <= 0 || fig.High >= 100 {
			continue
		}
		switch lost, broken := lostAt(rd, i), ofBreak(rd, i+1); {
		case efficient(rd, i):
			percentIs(rd, i, i+1, parser.Efficiency, fig.Low/100, fig.High/100)
		case lost > 0:
			percentIs(rd, i, lost, parser.Efficiency, 1-fig.High/100, 1-fig.Low/100)
		case underShare(rd, i) >= 0 && fig.High <= mostOfBreak:
			at := underShare(rd, i)
			fig.Dim = parser.DimRatio
			percentIs(rd, i, max(broken, i+1), parser.DesignFactor, 100/fig.High, 100/fig.Low)
			rd.Elems[at].Term = &scan.Term{}
		case broken > 0 && fig.High <= mostOfBreak: // more of it may be what a load comes to
			fig.Dim = parser.DimRatio
			percentIs(rd, i, broken, parser.DesignFactor, 100/fig.High, 100/fig.Low)
		}
	}
}

// percentIs makes the number before the word at i that quantity, with the words that say
// what it is of, up to another element.
func percentIs(rd *reading.Reading, i, to int, f parser.Field, low, high float64) {
	fig := rd.Elems[i-1].Fig
	fig.Low, fig.High, fig.End = low, high, rd.Elems[to-1].End
	places.Claim(rd, i-1, f)
	for k := i; k < to; k++ {
		rd.Elems[k].Term = &scan.Term{}
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return f == parser.Efficiency && a.Kind == parser.Unknown && a.End <= fig.End && rd.CuedAs(a.Words, lexicon.CueLoses)
	})
}

// efficient says whether the percentage at i is that of blocks: "90% efficient",
// "efficiency is 90 percent".
func efficient(rd *reading.Reading, i int) bool {
	next, before := rd.At(i+1), rd.At(rd.Back(i-2))
	return next.Plays(parser.Efficiency) && rd.At(i+2).Fig == nil || before.Plays(parser.Efficiency) || rd.Cued(next, lexicon.CueEfficient)
}

// lostAt finds the end of "at each block" behind the percentage at i where that much is
// lost there, 0 where it is not. What is lost in all tells nothing of one block.
func lostAt(rd *reading.Reading, i int) int {
	before := scan.SplitWords(rd.Text[:rd.Elems[i-1].Start])
	behind, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	loses := func(w string) bool { return rd.In.Cued(w, lexicon.CueLoses) }
	k := i + 1
	if loses(rd.Word(rd.At(k))) {
		k++
	}
	k = rd.Past(k, +1, lexicon.MarkAt|lexicon.MarkIn|lexicon.MarkWhere|lexicon.MarkRelation)
	if lost := slices.ContainsFunc(before[max(0, len(before)-2):], loses) || loses(behind); !lost || !rd.Cued(rd.At(k), lexicon.CueEachOne) && !rd.Cued(rd.At(k), lexicon.CuePer) && !rd.TermAt(k).Each && !rd.Cued(rd.At(k), lexicon.CueEvery) {
		return 0
	}
	if rd.Cued(rd.At(k), lexicon.CueEachOne) {
		return k + 1 // "each block"
	}
	if rd.Cued(rd.At(k+1), lexicon.CueSheave) {
		return k + 2
	}
	return 0
}

// ofBreak finds the end of "of break" at i, 0 where it is not of that. "That is 20% of
// break" tells what a load comes to, and sets nothing.
func ofBreak(rd *reading.Reading, i int) int {
	if before := rd.At(i - 3); !rd.At(i).Marked(lexicon.MarkRelation) || before.Marked(lexicon.MarkIs) && !before.Marked(lexicon.MarkAt) || rd.Cued(before, lexicon.CueItIs) {
		return 0
	}
	k := rd.Past(i+1, +1, lexicon.MarkArticle)
	if gear.Part(rd.At(k)) == lexicon.PartRope && gear.Strength(rd.At(k+1)) != "" {
		k++ // "the rope's break"
	}
	if gear.Strength(rd.At(k)) != lexicon.Breaking || rd.At(k+1).Fig != nil {
		return 0
	}
	return k + 1
}

// underShare finds the bound of "rope stays under 10%" before the percentage at i, where a
// rope and nothing else could be kept under it, -1 for none: gear is loaded to a share of
// what it breaks at.
func underShare(rd *reading.Reading, i int) int {
	at := i - 2
	if !rd.At(at).Marked(lexicon.MarkBound) && !rd.At(at).LeadsTo(parser.Limit) || rd.At(i+1).Fig != nil || rd.At(i+1).Marked(lexicon.MarkRelation) && ofBreak(rd, i+1) == 0 {
		return -1
	}
	if ofBreak(rd, i+1) > 0 {
		return at
	}
	for k := at - 1; k >= 0 && at-k <= reading.WordsApart/2 && rd.Elems[k].Fig == nil; k-- {
		if gear.Part(rd.Elems[k]) == lexicon.PartRope {
			return at
		}
	}
	return -1
}
