package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
)

// A word that turns a meaning round turns what stands in its own clause. That
// begins with who does what is turned, and ends at a pause, at "because" and the
// like, and where another begins: "and i", "how many".

// clause returns where the clause of the word at i begins, and what stands behind
// its end.
func clause(rd *reading.Reading, i int) (from, to int) {
	for from = i; from > 0 && subject(rd, from-1); {
		from--
	}
	for to = i + 1; to < len(rd.Elems) && !(to > i+1 && (parts(rd, to) || tillHour(rd, to))) && rd.Elems[to].Pause == 0; {
		to++
	}
	return from, to
}

// tillHour says whether it is told from i on till when something is so: "isnt here til 1".
func tillHour(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Marked(lexicon.MarkClockBefore) && hour(rd.At(i+1).Fig)
}

// TurnedClause is the place in the text of the clause that the words asked about turn:
// none where it holds a number or a way of rigging, or says how wood or gear is.
func TurnedClause(rd *reading.Reading, a *parser.Ask) (place [2]int) {
	i := slices.IndexFunc(rd.Elems, func(e reading.Element) bool { return e.Start >= a.Start && e.End <= a.End })
	if a.Kind != parser.Twist || i < 0 || rd.TermAt(i).Damaged {
		return place // "it has a nick in it" is left out by nobody
	}
	from, to := clause(rd, i)
	before := rd.At(from - 1)
	begins := from == 0 || before.Pause > 0 || before.Marked(lexicon.MarkAnd) || rd.Cued(before, lexicon.CueClause)
	if !begins || strings.TrimSpace(rd.Text[before.End:rd.Elems[from].Start]) != "" {
		return place // "the rope is not new", "it does not run": it is told of something
	}
	for k := from; k < to; k++ {
		if k != i && (stops.Wooden(rd, k) || rd.TermAt(k).Tree == nil && !Weightless(rd, k)) {
			return place // "dont like the look of that union" is a doubt, no talk
		}
	}
	return [2]int{rd.Elems[from].Start, rd.Elems[to-1].End}
}

// DeniedClause is the place in the text of the clause that a denial turns: what stands
// outside it is told all the same. None where a number stands in it, which it may take back.
func DeniedClause(rd *reading.Reading, a *parser.Ask) (place [2]int) {
	i := slices.IndexFunc(rd.Elems, func(e reading.Element) bool { return e.Start >= a.Start && e.End <= a.End })
	if a.Kind != parser.Twist || a.Turning != parser.TurnsDenied || i < 0 {
		return place
	}
	from, to := clause(rd, i)
	for k := from; k < to; k++ {
		if rd.Elems[k].Fig != nil {
			return place
		}
	}
	return [2]int{rd.Elems[from].Start, rd.Elems[to-1].End}
}

// parts says whether another clause begins at i.
func parts(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	first, _, _ := strings.Cut(rd.Word(e), " ")
	switch {
	case e.Pause > 0, rd.Cued(e, lexicon.CueClause), rd.In.Cued(first, lexicon.CueAsks):
		return true
	case e.Marked(lexicon.MarkAnd):
		next, _, _ := strings.Cut(rd.Word(rd.At(i+1)), " ")
		return Who(rd, i+1) || rd.In.Cued(next, lexicon.CueAsks)
	}
	return false
}

// subject says whether the element at i can stand between the beginning of a
// clause and the word that turns it.
func subject(rd *reading.Reading, i int) bool {
	const small = lexicon.MarkHello | lexicon.MarkPronoun | lexicon.MarkPlace | lexicon.MarkPerson | lexicon.MarkIs | lexicon.MarkArticle | lexicon.MarkAdverb | lexicon.MarkAdjective
	return !parts(rd, i) && rd.Elems[i].Fig == nil && !rd.Elems[i].Marked(lexicon.MarkAnd) && (Who(rd, i) || lexicon.Says(rd.TermAt(i), small) && Weightless(rd, i))
}

// Who says whether the element at i is somebody who does things.
func Who(rd *reading.Reading, i int) bool {
	return stops.Person(rd, i) || rd.Cued(rd.At(i), lexicon.CueWho)
}

// Weightless says whether nothing that is told, asked or used stands at i: what is
// said of it can only be talk.
func Weightless(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	const kit = lexicon.MarkGear | lexicon.MarkLoaded | lexicon.MarkStation | lexicon.MarkCord | lexicon.MarkDeflects | lexicon.MarkUnit | lexicon.MarkOverhead | lexicon.MarkTaper | lexicon.MarkContrast
	switch {
	case e.Term == nil, e.Piece(), e.Marked(kit), e.Marked(lexicon.MarkPart) && !rd.Cued(e, lexicon.CueDown), gear.Part(e) != "", gear.Strength(e) != "":
		return false
	case t.Ask != "" && !idleWord(rd, i), t.Stop != "", t.Intent != "", t.Block != "", t.Units != "", t.Condition != "", t.Note != "" && t.Note != "about":
		return false
	case t.Damaged, t.Frail, t.Harms, t.MayHarm, t.LetFall, t.Falls, t.Slips, t.Count > 0, t.Turned > 0:
		return false
	}
	return true
}

// idleWord says whether the word at i is known only for what it says behind a
// denial.
func idleWord(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return e.Term.Own && ofTalk(rd, rd.Word(e))
}
