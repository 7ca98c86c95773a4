package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// A share of people is talk, and no part of a piece: "half the crew says tie it mid",
// "a few of the guys reckon", "third guy went for fuel".

// PeopleShare leaves out the share at i, with those it is of, and says whether it is one
// of people. How many of them hold the rope stays in doubt.
func PeopleShare(rd *reading.Reading, i int) bool {
	if t := TurnedBy(rd, i); t != parser.TurnsPart && t != parser.TurnsSeveral && t != parser.TurnsPeople || rd.At(i-1).Fig != nil {
		return false
	}
	if rd.TermAt(i).Marks&lexicon.MarkHalf != 0 && rd.At(i-1).Plays(parser.Wraps) && rd.At(i-2).Fig != nil {
		return false // "two wraps and a half": likewise, typed in one breath
	}
	if rd.TermAt(i).Marks&lexicon.MarkHalf != 0 && rd.At(i-1).Marked(lexicon.MarkAnd) && (rd.At(i-2).Fig != nil || rd.At(i-2).Plays(parser.Wraps) && rd.At(i-3).Fig != nil) {
		return false // "22 pies y medio, muchachos", "2 vueltas y media muchachos": the half is the number's
	}
	if rd.TermAt(i).Marks&lexicon.MarkHalf != 0 && rd.At(i-1).Plays(parser.Wraps) && rd.At(i-2).Fig != nil {
		return false // "two wraps and a half mate" likewise
	}
	who := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkRelation)
	_, to := clause(rd, i)
	switch folk := ofPeople(rd, i); {
	case folk && opines(rd, who):
	case opines(rd, i) && !sizedBehind(rd, i): // "half says butt"
		who = i
	case restOfThem(rd, i): // "half say yes, half no"
		who = i + 1
	case opines(rd, who) && !sizedBehind(rd, who) && (rd.At(who).Marked(lexicon.MarkPronoun) || rd.At(who).Plays(parser.Alike) || rd.TermAt(who).Chatter):
	case !folk, rd.TermAt(i).Each, peopleBefore(rd, i), atRope(rd, who, to), bounds.AnyWithin(rd, who, to, func(k int) bool { return rd.Elems[k].Fig != nil }):
		return false // "half the guys are on the rope" is how many pull
	}
	LeaveOut(rd, i, who+1)
	return true
}

// ofPeople says whether the word at i is a share, and of people.
func ofPeople(rd *reading.Reading, i int) bool {
	t, who := rd.TermAt(i), rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkRelation)
	share := t.Each || t.Turning == parser.TurnsPart || t.Turning == parser.TurnsSeveral || t.Marks&lexicon.MarkHalf != 0
	return share && who > i && (Who(rd, who) || rd.At(who).Plays(parser.People) && rd.At(who).Fig == nil)
}

// restOfThem says whether the word at i and a yes or no behind it are what others of some
// people say who were left out before.
func restOfThem(rd *reading.Reading, i int) bool {
	said := rd.Word(rd.Elems[i])
	same := func(p parser.Said[string]) bool {
		return p.End <= rd.Elems[i].Start && strings.HasPrefix(scan.Fold(p.Words), said)
	}
	next := rd.TermAt(i + 1)
	return (next.Corrects || next.Denies || next.Chatter) && rd.EndsBreath(i+2) && slices.ContainsFunc(rd.Passed, same)
}

// opines says whether a word of saying or wanting stands right behind the element at i.
func opines(rd *reading.Reading, i int) bool {
	if i >= len(rd.Elems) {
		return false
	}
	word, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	return rd.In.Cued(word, lexicon.CueOpines)
}

// sizedBehind says whether a number stands right behind the word that follows the
// element at i: "half of it say 10 ft".
func sizedBehind(rd *reading.Reading, i int) bool {
	_, n := scan.NextWord(rd.Text[rd.Elems[i].End:])
	end := rd.Elems[i].End + n
	return rd.AnyAt(func(k int) bool {
		return rd.Elems[k].Fig != nil && rd.Elems[k].Start >= end && rd.Elems[k].Start-end < 3
	})
}

// peopleBefore says whether people are counted before i.
func peopleBefore(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool { return k < i && rd.Elems[k].Fig != nil && rd.At(k+1).Plays(parser.People) })
}

// atRope says whether the people at i, or what stands behind them up to another element,
// tell of who holds or pulls: "guys on the rope".
func atRope(rd *reading.Reading, i, to int) bool {
	holds := func(w string) bool { return rd.In.Cued(w, lexicon.CueAtRope) }
	return slices.ContainsFunc(scan.SplitWords(rd.Word(rd.At(i))), holds) || bounds.AnyWithin(rd, i, to, func(k int) bool {
		e, t := rd.Elems[k], rd.TermAt(k)
		return e.Plays(parser.People) || e.Plays(parser.PersonPull) || e.Plays(parser.WinchPull) || holds(rd.Word(e)) || stops.Kit(rd, k) || t.RopeEnd || t.Others || e.Marked(lexicon.MarkGear|lexicon.MarkTug)
	})
}

// PairOf reads "with a couple of wraps" and "a couple guys on the rope" as two, the
// least that it can be: fewer hold less. Of wood, and of what is put on or taken off, it
// stays in doubt.
func PairOf(rd *reading.Reading, i int) {
	of := rd.Past(i+1, +1, lexicon.MarkRelation|lexicon.MarkMade)
	if pairRun(rd, i, of) {
		return
	}
	prev, next := rd.At(rd.Past(i-1, -1, lexicon.MarkArticle)), rd.At(of)
	counts := func(f parser.Field) bool {
		return next.Plays(f) && next.Fig == nil && !rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && rd.At(k+1).Plays(f) })
	}
	had := i == 0 || prev.Pause > 0 || rd.Cued(prev, lexicon.CueHaving) || rd.Cued(prev, lexicon.CueOwns)
	changed := rd.Cued(rd.At(of+1), lexicon.CueFewer) || rd.Cued(rd.At(of+1), lexicon.CueMore)
	words := scan.SplitWords(rd.Word(next))
	spelled := func(w string) bool {
		return rd.In.Cued(w, lexicon.CueLine) || rd.In.Cued(w, lexicon.CuePulling) || rd.In.Cued(w, lexicon.CueHolds)
	}
	held := rd.Cued(prev, lexicon.CueOwns) || atRope(rd, of, clauseEnd(rd, of+1)) || slices.ContainsFunc(words, spelled)
	if counts(parser.Wraps) && had && !changed || counts(parser.People) && held && !rd.In.Cued(words[0], lexicon.CueHands) {
		rd.Join(i, of, &reading.Figure{Low: 2, High: 2, Start: rd.Elems[i].Start, End: rd.Elems[of-1].End})
	}
}

// pairRun reads "if he lets it run a couple of metres" as about two, the least that it can
// be: what runs further is caught softer. Of how far a piece falls it stays in doubt.
func pairRun(rd *reading.Reading, i, of int) bool {
	u := rd.In.Units[scan.Fold(rd.Word(rd.At(of)))]
	runs := rd.TermAt(rd.Past(i-1, -1, lexicon.MarkArticle)).Note == parser.LetRun
	if u == nil || u.Dim != parser.DimLength || !runs || rd.AnyAt(func(k int) bool { return rd.Elems[k].Plays(parser.RunLength) && rd.At(k+1).Fig != nil }) {
		return false
	}
	start, two := rd.Elems[i].Start, 2*u.Factor
	f := &reading.Figure{Low: two, High: two, Unit: u, Dim: u.Dim, Sure: parser.RunLength, Start: start, End: rd.Elems[of].End}
	rd.Elems = slices.Replace(rd.Elems, i, of+1, reading.Element{Start: start, End: start, Term: &scan.Term{Note: "about"}}, reading.Element{Start: f.Start, End: f.End, Fig: f})
	return true
}

// BothAnswers says whether "both" at i, or "each", only asks for two answers: "give me
// both", "what does it see each way".
func BothAnswers(rd *reading.Reading, i int) bool {
	way := rd.Cued(rd.At(i+1), lexicon.CueWays)
	end := i + 1
	if way {
		end++
	}
	prev := rd.At(i - 1)
	if !rd.EndsBreath(end) && !rd.At(end).Polite() || prev.Fig != nil || rd.At(i).Pause > 0 {
		return false
	}
	before := scan.SplitWords(rd.Text[:rd.Elems[i].Start])
	asked := len(before) > 0 && rd.In.Cued(before[len(before)-1], lexicon.CueGivesBoth)
	if !way && (!asked || rd.TermAt(i).Each) || way && (prev.Marked(lexicon.MarkMoving|lexicon.MarkTug|lexicon.MarkCord) || stops.Kit(rd, i-1) || gear.AsksFor(rd, parser.AskSwing)) {
		return false
	}
	LeaveOut(rd, i, end)
	return true
}
