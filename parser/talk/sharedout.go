package talk

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A crew is told in all, and then shared out: "three of us, me on the rope, one dragging
// brush, one up the tree". Only who is at the rope holds it: counted with the rest, they
// would hold more than they can.

// SharedOut counts those at the rope for the people, where it is told who of how many in
// all is there or elsewhere.
func SharedOut(rd *reading.Reading) {
	whole := wholeCrew(rd)
	if len(whole) == 0 {
		return
	}
	most, grounded := 0.0, false
	for _, i := range whole {
		most, grounded = max(most, rd.Elems[i].Fig.Low), grounded || rd.TypedAfter(i, lexicon.CueGround)
	}
	rope, away, besides := sharesOf(rd, whole)
	if i := alone(rd); i >= 0 {
		rope = share{n: 1}
		whole = append(whole, i)
	}
	hands := float64(rope.n)
	counted := rope.rest || rope.n == 0 && !grounded // who climbs is none of those on the ground
	if counted {
		hands = most - float64(away.n)
	}
	again := away.n == 0 && len(rope.stretches) > 0 && rope.stretches[0].from < rd.Elems[whole[0]].Start
	if besides || again || rope.n+away.n == 0 || hands < 1 || hands >= most {
		return
	}
	for _, s := range append(rope.stretches, away.stretches...) {
		takeUp(rd, s)
	}
	if !counted && !away.rest {
		sayBack(rd, whole, rope.n+away.n)
	}
	for _, i := range whole[1:] {
		rd.Elems[i] = reading.Element{Start: rd.Elems[i].Start, End: rd.Elems[i].End, Term: &scan.Term{Chatter: true}}
	}
	rd.Elems[whole[0]].Fig.Low, rd.Elems[whole[0]].Fig.High = hands, hands
	if !rd.At(whole[0] + 1).Plays(parser.People) { // else the words behind it take it
		places.Claim(rd, whole[0], parser.People)
	}
}

// sayBack names how many there are in all where that is not as many as are told a place:
// nothing comes of it then, and who has none may be at the rope. "The rest" have theirs, however
// many they are.
func sayBack(rd *reading.Reading, whole []int, told int) {
	people := func(e reading.Element) bool { return e.Fig == nil && e.Start < e.End && e.Plays(parser.People) }
	beside := func(from, to int) bool { return from <= to && !strings.ContainsAny(rd.Text[from:to], ",.;:\n") }
	for _, i := range whole {
		e, before, next := rd.Elems[i], rd.At(i-1), rd.At(i+1)
		if e.Fig == nil || e.Fig.Low == 1 || e.Fig.Low == float64(told) { // one: nobody but them
			continue
		}
		from, to := e.Start, e.End
		if people(before) && before.Looks(lexicon.After) && beside(before.End, from) {
			from = before.Start
		}
		if people(next) && beside(to, next.Start) {
			to = next.End
		}
		words := rd.Text[from:to]
		rd.Passed = append(rd.Passed, parser.Said[string]{Value: words, Words: words, Start: from, End: to})
	}
}

// wholeCrew are the numbers that tell how many there are, wherever they work.
func wholeCrew(rd *reading.Reading) (at []int) {
	for i := range rd.Elems {
		fig, next := rd.Elems[i].Fig, rd.At(i+1)
		if !headcount(rd, i) || fig.Low < 2 || posted(rd, rd.Elems[i].End) || rd.TermAt(i+1).Count == 1 { // "just me, Dre and Luis": they are counted already
			continue
		}
		behind := next.Fig == nil && next.Plays(parser.People)
		if behind && (posted(rd, next.Start) || posted(rd, next.End) || endsOnRope(rd, next)) {
			continue
		}
		before := rd.At(i-1).Plays(parser.People) && rd.At(i-1).Looks(lexicon.After)
		if behind || before || rd.TypedBefore(i, lexicon.CueCrew) || rd.TypedAfter(i, lexicon.CueGround) {
			at = append(at, i)
		}
	}
	return at
}

// posted says whether a post stands right behind a place in the text.
func posted(rd *reading.Reading, at int) bool {
	_, to := rd.Span(at, func(e reading.Element) bool { return e.Pause > 0 })
	behind := rd.Text[at:max(at, to)]
	return rd.Begin(lexicon.CueOnRope, behind) || rd.Begin(lexicon.CueElsewhere, behind)
}

// endsOnRope says whether words that count people say in the end that they are at the rope:
// "guys on the rope".
func endsOnRope(rd *reading.Reading, e reading.Element) bool {
	words := scan.SplitWords(rd.Text[e.Start:e.End])
	for n := 1; n < len(words); n++ {
		if rd.In.Cued(strings.Join(words[n:], " "), lexicon.CueOnRope) {
			return true
		}
	}
	return false
}

// alone is where it is told that nobody but one holds the rope, -1 for nowhere. Of "2 of us,
// just me" nobody knows who is meant, and it is asked about.
func alone(rd *reading.Reading) int {
	for i, e := range rd.Elems {
		if e.Fig != nil && e.Fig.Low == 1 && rd.TermAt(i+1).Count == 1 && rd.At(i+1).Plays(parser.People) && saysOnRope(rd, rd.At(i+1)) {
			return i
		}
	}
	return -1
}

// saysOnRope says whether some words say anywhere that somebody is at the rope: "nobody on the
// rope but me".
func saysOnRope(rd *reading.Reading, e reading.Element) bool {
	words := scan.SplitWords(rd.Text[e.Start:e.End])
	for from := range words {
		if rd.Begin(lexicon.CueOnRope, strings.Join(words[from:], " ")) {
			return true
		}
	}
	return false
}

// takeUp leaves no word of a share to be read as anything else. Names are said back.
func takeUp(rd *reading.Reading, s stretch) {
	rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return s.from <= p.Start && p.End <= s.to })
	if s.named {
		words := rd.Text[s.from:s.to]
		rd.Passed = append(rd.Passed, parser.Said[string]{Value: words, Words: words, Start: s.from, End: s.to})
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind == parser.Unknown && s.from <= a.Start && a.End <= s.to })
	for i, e := range rd.Elems {
		if s.from <= e.Start && e.End <= s.to {
			rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Pause: e.Pause, Term: &scan.Term{Chatter: true}}
		}
	}
}

// share is how many stand at one kind of place, the words that told it, and whether they
// are whoever is left.
type share struct {
	n         int
	stretches []stretch
	rest      bool
}

// stretch is where a share stands in the text, and whether somebody is named in it.
type stretch struct {
	from, to int
	named    bool
}

var wordTyped = regexp.MustCompile(`[\pL\pN][\pL\pN'’]*`)

// sharesOf counts who is told to be at the rope, and who elsewhere; besides says that they
// are told on top of those counted in all, "2 guys and me on the rope".
func sharesOf(rd *reading.Reading, whole []int) (rope, away share, besides bool) {
	at := wordTyped.FindAllStringIndex(rd.Text, -1)
	said := func(i, n int) string { return strings.Join(scan.SplitWords(rd.Text[at[i][0]:at[i+n-1][1]]), " ") }
	from := 0 // behind the post before
	for i := 0; i < len(at); i++ {
		for n := min(reading.LongestCue, len(at)-i); n >= 1; n-- {
			words := said(i, n)
			onRope := rd.In.Cued(words, lexicon.CueOnRope)
			if !onRope && !rd.In.Cued(words, lexicon.CueElsewhere) || measured(rd, elementAt(rd, at[i][0])) {
				continue
			}
			to := map[bool]*share{true: &rope, false: &away}[onRope]
			besides = headsOf(rd, at[from:i], whole, at[i+n-1][1], to) || besides
			i += n - 1
			from = i + 1
			break
		}
	}
	return rope, away, besides
}

// headsOf counts who is told right before a post that ends at a place: "me and one", "Tom,
// Ana and Jo". It says whether they are told on top of those counted in all, or not as a
// share of them: "not one", "2 left and one".
func headsOf(rd *reading.Reading, words [][]int, whole []int, end int, to *share) (besides bool) {
	told := stretch{from: -1, to: end}
	n, numbered, joined, adds := 0, false, false, false
	for k := len(words) - 1; k >= 0; k-- {
		w, el := scan.Fold(rd.Text[words[k][0]:words[k][1]]), elementAt(rd, words[k][0])
		apart := n > 0 && strings.ContainsAny(rd.Text[words[k][1]:told.from], ",.;:\n")
		if slices.Contains(whole, el) {
			besides = besides || n > 0 && joined && !apart
			break
		}
		count := headcountOf(rd, w)
		if measured(rd, el) { // "3:1"
			count = 0
		}
		name := count == 0 && (el >= 0 && rd.TermAt(el).Someone || unknownAt(rd, words[k][0]))
		if count > 0 && apart { // "3:1, one climbing"
			break
		}
		switch {
		case n == 0 && rd.In.Cued(w, lexicon.CueEveryOne):
			return besides // "todos jalando": nobody's share
		case count > 0:
			besides = besides || numbered // "2 and one on the rope"
			n, numbered = n+count, true
		case n == 0 && rd.In.Cued(w, lexicon.CueTheRest):
			n++
			to.rest = true
		case name, rd.In.Cued(w, lexicon.CueSelf):
			if n == 0 || strings.TrimSpace(rd.Text[words[k][1]:told.from]) != "" { // "Ana Ruiz" is one
				n++
			}
			told.named = told.named || name
		case idleBeside(rd, w, el):
			adds = rd.In.Cued(w, lexicon.CueAndShort) || rd.In.Cued(w, lexicon.CuePlus)
			joined = joined || adds
			continue
		default:
			besides = besides || n > 0 && !apart && (adds || !talkAt(rd, words[k][0], el) && !leadsToShare(rd, el))
			k = 0
			continue
		}
		told.from, adds = words[k][0], false
	}
	if n > 0 {
		to.n, to.stretches = to.n+n, append(to.stretches, told)
	}
	return besides
}

// measured says whether an element is a number that counts nobody: a pull of 3:1, 45 lb.
func measured(rd *reading.Reading, el int) bool {
	return el >= 0 && rd.Elems[el].Fig != nil && (rd.Elems[el].Fig.Dim != parser.DimCount || rd.Elems[el].Fig.Unit != nil)
}

// leadsToShare says whether a word right before who is counted leaves it told that they are
// there: "just one on the rope", not "not one", "need one".
func leadsToShare(rd *reading.Reading, el int) bool {
	const idle = lexicon.MarkArticle | lexicon.MarkPronoun | lexicon.MarkAdverb | lexicon.MarkIs
	e := rd.At(el)
	if t := rd.TermAt(el); t.Denies || t.Corrects || t.Negative || t.Lacks {
		return false
	}
	return e.Marked(idle) || e.Polite() || rd.TermAt(el).Chatter || rd.Cued(e, lexicon.CueMerely) || rd.Cued(e, lexicon.CueHaving)
}

// talkAt says whether the word there is talk that nothing is made of: no element, and not left
// out as "not one" is.
func talkAt(rd *reading.Reading, at, el int) bool {
	return el < 0 && !slices.ContainsFunc(rd.Passed, func(p parser.Said[string]) bool { return within(p, at) })
}

// idleBeside says whether a word may stand between who is counted and where they are: "of
// them", "guys".
func idleBeside(rd *reading.Reading, w string, el int) bool {
	return rd.In.Cued(w, lexicon.CueAtPost) || rd.In.Cued(w, scan.CuePartOf) || rd.In.Cued(w, lexicon.CuePlus) || rd.In.Cued(w, lexicon.CuePeople) || el >= 0 && rd.Elems[el].Plays(parser.People)
}

// headcountOf is how many people a word or a digit counts, 0 for none.
func headcountOf(rd *reading.Reading, w string) int {
	if n, err := strconv.Atoi(w); err == nil && n <= mostCrew {
		return n
	}
	if v := rd.In.Numbers[w].Value; v >= 1 && v <= mostCrew && v == float64(int(v)) {
		return int(v)
	}
	return 0
}

// elementAt is the element that a place in the text is part of, -1 for none.
func elementAt(rd *reading.Reading, at int) int {
	for i, e := range rd.Elems {
		if e.Start <= at && at < e.End {
			return i
		}
	}
	return -1
}

// unknownAt says whether a word stands there that is not known, and may be a name.
func unknownAt(rd *reading.Reading, at int) bool {
	for _, a := range rd.Asks {
		if a.Kind == parser.Unknown && a.Start <= at && at < a.End {
			return true
		}
	}
	return false
}
