package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Crews tell how it went, and thank for it: "cheers, we lowered it without a sound",
// "gracias, ya la bajamos sin bronca". That asks for nothing and is answered like any thanks.

// Finished takes a message for such talk where it tells no more than that a piece is down.
func Finished(rd *reading.Reading) {
	if strings.ContainsAny(rd.Text, "?¿") {
		return
	}
	spans, done, over := finishedWords(rd)
	within := func(start, end int) bool {
		return slices.ContainsFunc(spans, func(s [2]int) bool { return s[0] <= start && end <= s[1] })
	}
	more := func(i int) bool {
		e := rd.Elems[i]
		return e.Pause == 0 && !within(e.Start, e.End) && (e.Fig != nil || !idle(e) || rd.TermAt(i).Ask != "")
	}
	doubt := func(a *parser.Ask) bool { return !within(a.Start, a.End) }
	talk := func(p parser.Said[string]) bool { return within(p.Start, p.End) }
	told := func(p parser.Said[string]) bool { return !talk(p) && strings.ContainsAny(p.Words, "0123456789") }
	if !done || !over || rd.AnyAt(more) || slices.ContainsFunc(rd.Asks, doubt) || slices.ContainsFunc(rd.Passed, told) {
		return
	}
	rd.Asks, rd.Passed = nil, slices.DeleteFunc(rd.Passed, talk)
	for i, e := range rd.Elems {
		if e.Pause == 0 {
			rd.Elems[i].Term = &scan.Term{Marks: lexicon.MarkHello}
		}
	}
}

// finishedWords finds the words which tell that a piece is down, where they may be of one
// that is still to come down whether it is said to be over, and those of no trouble with it.
func finishedWords(rd *reading.Reading) (spans [][2]int, done, over bool) {
	for _, e := range rd.Elems {
		if e.Pause > 0 {
			continue
		}
		for _, c := range []scan.Cue{lexicon.CueIsDown, lexicon.CueMayBeDown, lexicon.CueNoTrouble, lexicon.CueFinished} {
			end := rd.SaidTo(c, e.Start)
			if end < 0 {
				continue
			}
			spans = append(spans, [2]int{e.Start, end})
			done = done || c == lexicon.CueIsDown || c == lexicon.CueMayBeDown
			over = over || c != lexicon.CueMayBeDown
		}
	}
	return spans, done, over
}
