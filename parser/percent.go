package parser

import "slices"

// A percentage is a figure where it says of what: "sheaves 90 percent efficient", "i lose
// 10% at every block", "10 percent of break". Of anything else it stays in doubt.

// mostOfBreak is the largest share of a breaking strength that is taken for how a crew
// plans: what we plan on ourselves.
const mostOfBreak = 10

// percents reads such figures as how much of the pull passes a block, and as the design
// factor of a rope.
func (rd *reading) percents() {
	for i := 1; i < len(rd.elems); i++ {
		fig := rd.elems[i-1].fig
		if !rd.termAt(i).percent || fig == nil || fig.dim != dimCount || fig.unit != nil || fig.pair || fig.low <= 0 || fig.high >= 100 {
			continue
		}
		switch lost, broken := rd.lostAt(i), rd.ofBreak(i+1); {
		case rd.efficient(i):
			rd.percentIs(i, i+1, Efficiency, fig.low/100, fig.high/100)
		case lost > 0:
			rd.percentIs(i, lost, Efficiency, 1-fig.high/100, 1-fig.low/100)
		case broken > 0 && fig.high <= mostOfBreak: // more of it may be what a load comes to
			fig.dim = dimRatio
			rd.percentIs(i, broken, DesignFactor, 100/fig.high, 100/fig.low)
		}
	}
}

// percentIs makes the number before the word at i that quantity, with the words that say
// what it is of, up to another element.
func (rd *reading) percentIs(i, to int, f Field, low, high float64) {
	fig := rd.elems[i-1].fig
	fig.low, fig.high, fig.end = low, high, rd.elems[to-1].end
	rd.claim(i-1, f)
	for k := i; k < to; k++ {
		rd.elems[k].term = &term{}
	}
	rd.asks = slices.DeleteFunc(rd.asks, func(a *Ask) bool {
		return f == Efficiency && a.Kind == Unknown && a.End <= fig.end && rd.in.cues[cueLoses][fold(a.Words)]
	})
}

// efficient says whether the percentage at i is that of blocks: "90% efficient",
// "efficiency is 90 percent".
func (rd *reading) efficient(i int) bool {
	next, before := rd.at(i+1), rd.at(rd.back(i-2))
	return next.plays(Efficiency) && rd.at(i+2).fig == nil || before.plays(Efficiency) || rd.cued(next, cueEfficient)
}

// lostAt finds the end of "at each block" behind the percentage at i where that much is
// lost there, 0 where it is not. What is lost in all tells nothing of one block.
func (rd *reading) lostAt(i int) int {
	before := splitWords(rd.text[:rd.elems[i-1].start])
	behind, _ := nextWord(rd.text[rd.elems[i].end:])
	loses := func(w string) bool { return rd.in.cues[cueLoses][w] }
	k := i + 1
	if loses(rd.word(rd.at(k))) {
		k++
	}
	k = rd.past(k, +1, markAt|markIn|markWhere|markRelation)
	if lost := slices.ContainsFunc(before[max(0, len(before)-2):], loses) || loses(behind); !lost || !rd.cued(rd.at(k), cueEachOne) && !rd.cued(rd.at(k), cuePer) && !rd.termAt(k).each && !rd.cued(rd.at(k), cueEvery) {
		return 0
	}
	if rd.cued(rd.at(k), cueEachOne) {
		return k + 1 // "each block"
	}
	if rd.cued(rd.at(k+1), cueSheave) {
		return k + 2
	}
	return 0
}

// ofBreak finds the end of "of break" at i, 0 where it is not of that. "That is 20% of
// break" tells what a load comes to, and sets nothing.
func (rd *reading) ofBreak(i int) int {
	if before := rd.at(i - 3); !rd.at(i).marked(markRelation) || before.marked(markIs) && !before.marked(markAt) || rd.cued(before, cueItIs) {
		return 0
	}
	k := rd.past(i+1, +1, markArticle)
	if rd.at(k).part() == partRope && rd.at(k+1).strength() != "" {
		k++ // "the rope's break"
	}
	if rd.at(k).strength() != breaking || rd.at(k+1).fig != nil {
		return 0
	}
	return k + 1
}
