package parser

import "slices"

// Where the words of a line `danger` stand together, all arithmetic ends, whatever
// else they may mean. What is denied is none, nor what somebody was in weeks ago.

// dangerAt is a stretch of the message that a line matches.
type dangerAt struct {
	line       *dangerLine
	start, end int
}

// dangers finds the stops that several words tell together, and the stretches that
// only look like one.
func (rd *reading) dangers() (stops []element, none []dangerAt) {
	var found []dangerAt
	tokens := rd.tokens
	for i := range tokens {
		for _, line := range rd.in.dangers.lines {
			end := line.matches(tokens, i)
			if end <= i {
				continue
			}
			at := dangerAt{line, tokens[i].start, tokens[end-1].end}
			switch {
			case line.none:
				none = append(none, at)
			case !deniedAt(tokens, i) && !(line.kind.ofPeople() && longAgo(tokens, i)):
				found = append(found, at)
			}
		}
	}
	for _, at := range found {
		if !slices.ContainsFunc(none, at.within) {
			stops = append(stops, element{start: at.start, end: at.end, term: &term{stop: at.line.kind, danger: at.line.name}})
		}
	}
	return stops, none
}

// within says whether a danger stands in what is told to be none.
func (at dangerAt) within(none dangerAt) bool {
	return none.line.spares(at.line) && (none.line.far || none.start < at.end && at.start < none.end)
}

// What a line "none" may hold besides: it spares only where no wood is told of.
const woodless = "woodless"

// spares says whether what a line tells is none of another's dangers.
func (l *dangerLine) spares(danger *dangerLine) bool {
	return l.kind == danger.kind && (l.name == danger.name || l.name == woodless)
}

// ofPeople says whether a stop is about somebody who is in danger now. What gear and
// wood once met they keep.
func (k Kind) ofPeople() bool {
	return k == Emergency || k == Below || k == Runaway || k == Storm || k == Never
}

// harmless says whether a word that stops by itself stands within words that are
// none: "a utility pole looking stem". Who is told of may be hurt all the same, and
// wood be cracked.
func (rd *reading) harmless(kind Kind, e element, none []dangerAt) bool {
	return slices.ContainsFunc(none, func(at dangerAt) bool {
		switch {
		case at.line.kind != kind || e.start < at.start || at.end < e.end:
			return false
		case kind == Emergency:
			return !rd.anyAt(func(i int) bool { return rd.present(i) && !rd.elems[i].marked(markArticle) }) // "el" is no "él"
		case at.line.name == woodless:
			return !rd.anyAt(func(i int) bool { return rd.wooden(i) || rd.termAt(i).tree != nil })
		}
		return true
	})
}

// matches returns the token behind the words of a line that begin at i, -1 where they
// do not.
func (l *dangerLine) matches(tokens []dangerToken, i int) int {
	here := []int{i}
	for n, slot := range l.slots {
		over := n > 0 && (slot.over || l.slots[n-1].over)
		next := slot.step(tokens, here, n == 0, over)
		if len(next) == 0 {
			return -1
		}
		here = next
	}
	return slices.Max(here)
}

// step returns where a part of a line may end that begins at any of the tokens given.
func (s dangerSlot) step(tokens []dangerToken, from []int, first, over bool) (ends []int) {
	if s.least == 0 {
		ends = append(ends, from...)
	}
	for n := 1; n <= s.most && len(from) > 0; n++ {
		var behind []int
		for _, i := range from {
			if s.kind == "end" && (i >= len(tokens) || tokens[i].pause > 0) {
				behind = append(behind, i)
				continue
			}
			if i >= len(tokens) || !first && (tokens[i].pause > 2 || tokens[i].pause > 0 && !over) {
				continue
			}
			for _, end := range s.at(tokens, i) {
				if !slices.Contains(behind, end) {
					behind = append(behind, end)
				}
			}
		}
		if n >= s.least {
			ends = append(ends, behind...)
		}
		from = behind
	}
	return ends
}

// at returns where a part of a line ends that begins at a token.
func (s dangerSlot) at(tokens []dangerToken, i int) (ends []int) {
	if s.kind == "" && !tokens[i].is("denial") || s.kind == "="+tokens[i].word {
		return []int{i + 1}
	}
	for _, k := range tokens[i].kinds {
		if k.kind == s.kind {
			ends = append(ends, k.end)
		}
	}
	return ends
}

// is says whether a kind of words begins at the token.
func (t dangerToken) is(kind string) bool {
	return slices.ContainsFunc(t.kinds, func(s seen) bool { return s.kind == kind })
}

// deniedAt says whether what begins at a token is denied right before it: "no fungus",
// "never put a hand in the drum". "No his hand is in it" denies nothing.
func deniedAt(tokens []dangerToken, i int) bool {
	k := i - 1
	if k >= 0 && tokens[i].pause == 0 && tokens[k].is("puts") {
		i, k = k, k-1
	}
	return k >= 0 && tokens[i].pause == 0 && !tokens[i].owned && tokens[k].is("denial")
}

// wasHurt says whether the harm that the word at i tells of is over: "got stung last
// week".
func (rd *reading) wasHurt(i int) bool {
	k := slices.IndexFunc(rd.tokens, func(t dangerToken) bool { return t.end > rd.elems[i].start })
	return k >= 0 && longAgo(rd.tokens, k)
}

// longAgo says whether the sentence of a token tells of what is over: "last week".
func longAgo(tokens []dangerToken, i int) bool {
	from, to := i, i+1
	for from > 0 && tokens[from].pause < 4 {
		from--
	}
	for to < len(tokens) && tokens[to].pause < 4 {
		to++
	}
	return slices.ContainsFunc(tokens[from:to], func(t dangerToken) bool { return t.is("past") })
}
