package parser

import (
	"slices"
	"strings"
)

// What held before is told beside what holds from now on: "bump the limit to 650,
// we had 500", "one guy went home so we're 3 on the rope". Only the new figure
// counts: the old one is passed over, and said back.

// The cues of what held before, and of what is told of a crew or a limit besides.
const (
	cueAtBlock  cue = "at-block" // behind what a block may carry
	cueClimber  cue = "climber"  // behind how many climb
	cueCounted  cue = "counted"  // behind how many there are, that the climber is one of them
	cueFormerly cue = "formerly" // before what held until now
	cueGone     cue = "gone"     // behind who is not there any more
	cueLeading  cue = "leading"  // between what a piece may weigh and what the block may carry
	cueNewly    cue = "newly"    // before what holds from now on

	cueUncounted cue = "uncounted" // behind how many there are, that the climber is none of them
)

// formerLimit passes over what the limit was where it is told what it is now, and
// nothing of a piece: "limit was 500, make it 650 lb".
func (rd *reading) formerLimit() {
	now, was := -1, -1
	for i := range rd.elems {
		switch {
		case rd.elems[i].fig == nil:
		case !rd.mass(i):
			return
		case rd.typedBefore(i, cueFormerly):
			if was >= 0 {
				return
			}
			was = i
		case now >= 0, !rd.typedBefore(i, cueNewly):
			return
		default:
			now = i
		}
	}
	limit := rd.anyAt(func(i int) bool { return rd.elems[i].plays(Limit) })
	if now < 0 || was < 0 || !limit || strings.ContainsAny(rd.text, "?¿") || rd.asksOrTells() {
		return
	}
	rd.changed = true
	rd.limited(now)
	rd.blank(was, was+1)
}

// asksOrTells says whether a message asks for something, or tells of a piece.
func (rd *reading) asksOrTells() bool {
	asked, _, _ := rd.intents()
	return len(asked) > 0 || rd.anyAt(func(i int) bool { return rd.elems[i].piece() || rd.termAt(i).unnamed || rd.termAt(i).tree != nil })
}

// blockLimit claims what the block may carry where it stands right behind what a
// piece may weigh: "limit 400 lb on the piece, 900 lb at the block".
func (rd *reading) blockLimit() {
	asked, _, _ := rd.intents()
	if len(asked) > 0 || rd.anyAt(func(i int) bool { return rd.termAt(i).tree != nil || rd.elems[i].fig.far() }) {
		return
	}
	for i := range rd.elems {
		if !rd.loadTold(i) || !rd.typedAfter(i, cueAtBlock) {
			continue
		}
		k := i - 1
		for k >= 0 && rd.elems[k].fig == nil {
			k--
		}
		if k > 0 && rd.loadTold(k) && rd.at(k-1).plays(Limit) && rd.besideLimit(k, i) {
			if !rd.heavy(i) || !rd.heavy(k) {
				rd.alter(i+1, func(t *term) { *t = term{roles: []role{{BlockWorking, before, false}}} }) // their units are asked about
				continue
			}
			rd.claim(i, BlockWorking)
			rd.claim(k, Limit)
		}
	}
}

// loadTold says whether the number at i is a mass or a force, or is without its unit and
// more than any angle.
func (rd *reading) loadTold(i int) bool {
	const half = 180
	fig := rd.elems[i].fig
	return rd.heavy(i) || fig.manyBare() && fig.low > half
}

// besideLimit says whether nothing stands between two numbers but that the first is of a
// piece.
func (rd *reading) besideLimit(a, b int) bool {
	between := newPlainText(rd.text[rd.elems[a].end:rd.elems[b].start]).text
	return between == "" || rd.in.cues[cueLeading][between]
}

// notHere passes over how many of the crew have gone or climb, where it is told how
// many are on the rope as well.
func (rd *reading) notHere() {
	for i := len(rd.elems) - 1; i >= 0; i-- {
		if !rd.headcount(i) {
			continue
		}
		end := i + 1
		if rd.at(end).plays(People) && rd.at(end).fig == nil {
			end++
		}
		gone, climb := rd.saidTo(cueGone, rd.elems[end-1].end), rd.saidTo(cueClimber, rd.elems[i].end)
		if gone >= 0 && end > i+1 {
			climb = rd.elems[end-1].end
		}
		if climb < 0 || !rd.anyAt(func(k int) bool {
			return (k < i || k >= end) && rd.elems[k].plays(People) && (rd.headcount(k-1) || rd.headcount(k+1))
		}) {
			continue
		}
		for rd.at(end).fig == nil && rd.at(end).term != nil && rd.at(end).end <= climb {
			end++
		}
		rd.blank(i, end)
	}
}

// headcount says whether the number at i can be how many people there are.
func (rd *reading) headcount(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && fig.dim == dimCount && fig.unit == nil && !fig.pair && fig.low == fig.high && fig.low >= 1 && fig.high <= mostCrew
}

// climberCounted takes the climber off how many there are with them, "5 of us
// counting the climber": who climbs does not haul. Where they are told apart, "plus
// the climber", the number stands.
func (rd *reading) climberCounted() {
	for i := range rd.elems {
		behind := i
		if rd.at(i + 1).plays(People) {
			behind++
		}
		if !rd.headcount(i) || behind == i && !rd.at(i-1).plays(People) {
			continue
		}
		from := rd.elems[behind].end
		with, apart := rd.saidTo(cueCounted, from), rd.saidTo(cueUncounted, from)
		switch fig := rd.elems[i].fig; {
		case with >= 0 && fig.low >= 2:
			fig.low, fig.high = fig.low-1, fig.high-1
			rd.unsay(from, with)
		case apart >= 0:
			rd.unsay(from, apart)
		}
	}
}

// saidTo is where the words of a cue end that stand right behind a place in the
// text, -1 where none do.
func (rd *reading) saidTo(c cue, from int) int {
	found, words := -1, 0
	for end := from; end <= len(rd.text) && words <= longestCue; end++ {
		if end < len(rd.text) && !strings.ContainsRune(" ,.;:!?\n/", rune(rd.text[end])) {
			continue
		}
		said := strings.TrimSpace(rd.text[from:end])
		if strings.ContainsAny(said, ",.;:!?\n") {
			break
		}
		words = len(strings.Fields(said))
		if rd.in.cues[c][fold(said)] {
			found = end
		}
	}
	return found
}

// unsay takes the meaning, and the doubt, from the words of a stretch of the text.
func (rd *reading) unsay(from, to int) {
	rd.asks = slices.DeleteFunc(rd.asks, func(a *Ask) bool { return a.Start >= from && a.End <= to })
	for k, e := range rd.elems {
		if e.start >= from && e.end <= to && e.fig == nil && e.pause == 0 {
			rd.elems[k].term = &term{}
		}
	}
}
