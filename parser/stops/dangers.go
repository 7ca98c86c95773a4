package stops

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Where the words of a line `danger` stand together, all arithmetic ends, whatever
// else they may mean. What is denied is none, nor what somebody was in weeks ago.

// dangerAt is a stretch of the message that a line matches.
type dangerAt struct {
	line       *scan.DangerLine
	start, end int
}

// Dangers finds the stops that several words tell together, and the stretches that
// only look like one.
func Dangers(rd *reading.Reading) (stops []reading.Element, none []dangerAt) {
	var found []dangerAt
	tokens := rd.Tokens
	for i := range tokens {
		for _, n := range BeginsAt(rd.In.Dangers.Begins, tokens[i]) {
			line := rd.In.Dangers.Lines[n]
			end := Matches(line.Slots, tokens, i)
			if end <= i {
				continue
			}
			at := dangerAt{line, tokens[i].Start, tokens[end-1].End}
			switch {
			case line.None:
				none = append(none, at)
			case !deniedAt(tokens, i) && !(ofPeople(line.Kind) && longAgo(tokens, i)):
				found = append(found, at)
			}
		}
	}
	for _, at := range found {
		if !slices.ContainsFunc(none, at.within) {
			stops = append(stops, reading.Element{Start: at.start, End: at.end, Term: &scan.Term{Stop: at.line.Kind, Danger: at.line.Name}})
		}
	}
	return stops, none
}

// BeginsAt are the lines that may begin at a token, in their order.
func BeginsAt(begins map[string][]int, t reading.DangerToken) (lines []int) {
	kinds := 0
	for _, k := range t.Kinds {
		of := begins[k.Kind]
		if len(of) == 0 {
			continue
		}
		if kinds++; kinds == 1 {
			lines = of // the lines of one kind are in order as they stand
		} else {
			lines = append(slices.Clip(lines), of...)
		}
	}
	if kinds < 2 {
		return lines
	}
	slices.Sort(lines)
	return slices.Compact(lines)
}

// within says whether a danger stands in what is told to be none.
func (at dangerAt) within(none dangerAt) bool {
	return spares(none.line, at.line) && (none.line.Far || none.start < at.end && at.start < none.end)
}

// What a line "none" may hold besides: it spares only where no wood is told of.
const woodless = "woodless"

// ofWhoever names the lines of what is no hurt whoever is told of beside it: an old one,
// told as why fewer hands pull, one that is to be avoided, where somebody means to go, the
// foot of a tree, and what only sounds like a hurt.
var ofWhoever = []string{"reason", avoided, "means", "foot", "idiom"}

// avoided names the lines of what is done so that nobody comes to harm: talk.
const avoided = "avoided"

// spanned names the lines of what a line carries that is a speed line's where one is told.
const spanned = "span"

// spares says whether what a line tells is none of another's dangers.
func spares(l *scan.DangerLine, danger *scan.DangerLine) bool {
	return l.Kind == danger.Kind && (l.Name == danger.Name || l.Name == woodless)
}

// ofPeople says whether a stop is about somebody who is in danger now. What gear and
// wood once met they keep.
func ofPeople(k parser.Kind) bool {
	return k == parser.Emergency || k == parser.Below || k == parser.Runaway || k == parser.Storm || k == parser.Never
}

// Harmless says whether a word that stops by itself stands within words that are
// none: "a utility pole looking stem". Who is told of may be hurt all the same, and
// wood be cracked.
func Harmless(rd *reading.Reading, kind parser.Kind, e reading.Element, none []dangerAt) bool {
	return slices.ContainsFunc(none, func(at dangerAt) bool {
		switch {
		case at.line.Kind != kind || e.Start < at.start || at.end < e.End || !names(at.line, rd.Tokens, e):
			return false
		case kind == parser.Emergency && !slices.Contains(ofWhoever, at.line.Name):
			return !rd.AnyAt(func(i int) bool { return Present(rd, i) && !rd.Elems[i].Marked(lexicon.MarkArticle) }) // "el" is no "él"
		case at.line.Name == spanned:
			return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Stop == parser.SpanLine })
		case at.line.Name == woodless:
			return !rd.AnyAt(func(i int) bool { return Wooden(rd, i) || rd.TermAt(i).Tree != nil })
		}
		return true
	})
}

// PassAvoided makes talk of what is said to be avoided: "without anyone getting hurt".
func PassAvoided(rd *reading.Reading, none []dangerAt) {
	within := func(start, end int) bool {
		return slices.ContainsFunc(none, func(at dangerAt) bool {
			return at.line.Name == avoided && at.start < end && start < at.end
		})
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && within(a.Start, a.End)
	})
	for i, e := range rd.Elems {
		if e.Fig == nil && within(e.Start, e.End) {
			rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Pause: e.Pause, Term: &scan.Term{Chatter: true}}
		}
	}
}

// AskPole makes a pole that may be the stem which is left of a tree, "poste de pino", a word
// to be asked about: wires hang on the other kind.
func AskPole(rd *reading.Reading, i int, none []dangerAt) {
	e := rd.Elems[i]
	if slices.ContainsFunc(none, func(at dangerAt) bool {
		return at.line.Kind == parser.PowerLine && at.line.Name == "spar" && at.start <= e.Start && e.End <= at.end
	}) {
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Pause: e.Pause, Term: &scan.Term{Ask: parser.Twist, Turning: parser.TurnsPole}}
	}
}

// names says whether a line speaks of a word that stops: what only stands in one of its
// gaps is not spared by it, "rotten" in "half a rotten log split down the middle".
func names(l *scan.DangerLine, tokens []reading.DangerToken, e reading.Element) bool {
	named := func(kind string) bool {
		return slices.ContainsFunc(l.Slots, func(s scan.DangerSlot) bool { return s.Kind == kind })
	}
	for _, t := range tokens {
		for _, k := range t.Kinds {
			if t.Start < e.End && e.Start < tokens[k.End-1].End && named(k.Kind) {
				return true
			}
		}
	}
	return false
}

// Matches returns the token behind the words of a line that begin at i, the furthest of
// them where there are several, -1 where they do not.
func Matches(slots []scan.DangerSlot, tokens []reading.DangerToken, i int) int {
	return furthest(slots, tokens, 0, i)
}

// furthest is how far the parts of a line from one on reach that begin at a token.
func furthest(slots []scan.DangerSlot, tokens []reading.DangerToken, part, i int) int {
	if part == len(slots) {
		return i
	}
	best := -1
	if slots[part].Least == 0 {
		best = furthest(slots, tokens, part+1, i)
	}
	return max(best, again(slots, tokens, part, i, 1))
}

// again is the same where a part is there once more, for a time given.
func again(slots []scan.DangerSlot, tokens []reading.DangerToken, part, i, times int) int {
	s := slots[part]
	if s.Kind == "end" && (i >= len(tokens) || tokens[i].Pause > 0) {
		return furthest(slots, tokens, part+1, i)
	}
	over := part > 0 && (s.Over || slots[part-1].Over)
	if i >= len(tokens) || part > 0 && (tokens[i].Pause > 2 || tokens[i].Pause > 0 && !over) {
		return -1
	}
	best := -1
	on := func(end int) {
		if times >= s.Least {
			best = max(best, furthest(slots, tokens, part+1, end))
		}
		if times < s.Most {
			best = max(best, again(slots, tokens, part, end, times+1))
		}
	}
	if s.Kind == "" && !Is(tokens[i], "denial") {
		on(i + 1)
	}
	for _, k := range tokens[i].Kinds {
		if k.Kind == s.Kind {
			on(k.End)
		}
	}
	return best
}

// Is says whether a kind of words begins at the token.
func Is(t reading.DangerToken, kind string) bool {
	return slices.ContainsFunc(t.Kinds, func(s reading.Seen) bool { return s.Kind == kind })
}

// deniedAt says whether what begins at a token is denied right before it: "no fungus",
// "never put a hand in the drum". "No his hand is in it" denies nothing.
func deniedAt(tokens []reading.DangerToken, i int) bool {
	k := i - 1
	if k >= 0 && tokens[i].Pause == 0 && Is(tokens[k], "puts") {
		i, k = k, k-1
	}
	return k >= 0 && tokens[i].Pause == 0 && !tokens[i].Owned && Is(tokens[k], "denial")
}

// WasHurt says whether the harm that the word at i tells of is over: "got stung last
// week".
func WasHurt(rd *reading.Reading, i int) bool {
	k := slices.IndexFunc(rd.Tokens, func(t reading.DangerToken) bool { return t.End > rd.Elems[i].Start })
	return k >= 0 && longAgo(rd.Tokens, k)
}

// longAgo says whether the sentence of a token tells of what is over: "last week".
func longAgo(tokens []reading.DangerToken, i int) bool {
	from, to := i, i+1
	for from > 0 && tokens[from].Pause < 4 {
		from--
	}
	for to < len(tokens) && tokens[to].Pause < 4 {
		to++
	}
	return slices.ContainsFunc(tokens[from:to], func(t reading.DangerToken) bool { return Is(t, "past") })
}
