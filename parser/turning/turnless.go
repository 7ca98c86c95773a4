package turning

import (
	"slices"
	"strings"
	"unicode"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Of a clause that is denied from its beginning, each word must be nothing that an answer
// hangs on, but for what is told elsewhere as well.

// forget drops the unknown words of a clause that says what somebody wants or can,
// "no quiere que caiga nada en el agua": all of it is said back.
func forget(rd *reading.Reading, from, to int) {
	if !rd.Cued(rd.At(rd.Past(from+1, +1, lexicon.MarkPronoun|lexicon.MarkArticle)), lexicon.CueWilling) {
		return
	}
	forgetIn(rd, rd.Elems[from].Start, startOf(rd, to))
}

// forgetIn drops the unknown words from one place in the text to another.
func forgetIn(rd *reading.Reading, start, end int) {
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && a.Start >= start && a.End <= end && LikeStop(rd, a) == ""
	})
}

// tagged says whether the word at i only asks whether what stands before it is so:
// "jala menos, no?".
func tagged(rd *reading.Reading, i int) bool {
	return i > 0 && rd.TermAt(i).Corrects && strings.HasPrefix(strings.TrimLeft(rd.Text[rd.Elems[i].End:], " "), "?")
}

// clauseEnd finds where the clause ends that goes on at i: at a pause, or at a word
// that begins another.
func clauseEnd(rd *reading.Reading, i int) int {
	for i < len(rd.Elems) && rd.Elems[i].Pause == 0 && !rd.Elems[i].Marked(lexicon.MarkAnd) && !rd.Cued(rd.Elems[i], lexicon.CueClause) && !tillHour(rd, i) {
		i++
	}
	return i
}

// idleClause says whether what the word at i denies, up to the element at end, is
// told, and nothing of it could turn an answer.
func idleClause(rd *reading.Reading, i, end int) bool {
	first := rd.Past(i+1, +1, lexicon.MarkPronoun|lexicon.MarkArticle)
	other := rd.Cued(rd.At(first), lexicon.CueOther) && first+1 == end // "es la de 10,000 lbs, no la otra"
	if !other && !(rd.TermAt(first).Order != "" && CountedBy(rd, i-1)) && deniesBack(rd, i) {
		return false
	}
	if k := rd.Past(i-1, -1, lexicon.MarkPronoun|lexicon.MarkIs); rd.At(k).Marked(lexicon.MarkPerson) && rd.TermAt(k).Human {
		return false // "el trepador no quiere bajar" may tell how they fare
	}
	told := TalkBehind(rd, i)
	for k := i + 1; k < end; k++ {
		if !turnless(rd, k, i, end) {
			return false
		}
		told = told || !rd.Elems[k].Marked(lexicon.MarkIs|lexicon.MarkPronoun|lexicon.MarkArticle) || TalkBehind(rd, k)
	}
	return told
}

// deniesBack says whether the word at i may deny what stands right before it: a
// number, the piece or gear, "14 in no creo", "el freno no funciona".
func deniesBack(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0; k-- {
		e := rd.Elems[k]
		switch {
		case e.Pause > 0, e.Marked(lexicon.MarkAnd), rd.Cued(e, lexicon.CueClause):
			return false
		case e.Fig != nil, rd.TermAt(k).Tree != nil, CountedBy(rd, k), stops.Kit(rd, k), e.Marked(lexicon.MarkGear | lexicon.MarkStation):
			return true
		case !e.Polite() && !e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkAdjective):
			return len(rd.TermAt(k).Roles) > 0
		}
	}
	return false
}

// turnless says whether the element at k, of a clause from i to end that is denied,
// is nothing that an answer hangs on.
func turnless(rd *reading.Reading, k, i, end int) bool {
	e := rd.Elems[k]
	if e.Term == nil || stops.Kit(rd, k) || rd.Cued(e, lexicon.CueReckons) || e.Term.Ask != "" && e.Term.Ask != parser.Twist && !(e.Term.Order != "" && rd.TermAt(i).Corrects && stops.WrapsTold(rd)) {
		return false
	}
	if in := e.Term.Intent; in != "" && in != parser.AskWeight && !askedOutside(rd, i, end) {
		return false
	}
	if e.Term.Intent == "" && slices.ContainsFunc(e.Term.Roles, func(r scan.Role) bool { return binding(rd, r) }) {
		return false
	}
	t := *e.Term
	if t.Tree == nil && toldOutside(rd, k, i, end) {
		t.Shape, t.Unnamed, t.Marks = "", false, t.Marks&^lexicon.MarkRound
	}
	t.Intent, t.Ask = "", ""
	rd.Elems[k].Term = &t
	idle := Weightless(rd, k)
	rd.Elems[k] = e
	return idle && !t.Unnamed
}

// toldOutside says whether the piece at k, of a clause from i to end, is told or weighed
// elsewhere.
func toldOutside(rd *reading.Reading, k, i, end int) bool {
	lowers := func(n int) bool { return rd.TermAt(n).Intent == parser.AskLower }
	if !stops.WrapsTold(rd) && bounds.AnyWithin(rd, i, end, lowers) {
		return false
	}
	shape := rd.TermAt(k).Shape
	return rd.AnyAt(func(n int) bool {
		return (n < i || n >= end) && (gear.Heavy(rd, n) || shape != "" && rd.TermAt(n).Shape == shape)
	})
}

// placing are the fields whose words behind a number tell where it is, and tell
// nothing where there is none.
var placing = map[parser.Field]bool{parser.Length: true, parser.HitchHeight: true, parser.DropHeight: true, parser.Sideways: true, parser.People: true, parser.BlockHeight: true}

// binding says whether a role tells something even where no number stands by it. A
// winch is only told of with what it pulls.
func binding(rd *reading.Reading, r scan.Role) bool {
	people := func(i int) bool { return rd.Elems[i].Plays(parser.People) }
	switch {
	case r.Field == parser.Weight, r.Side == lexicon.Before && placing[r.Field]:
		return false
	}
	return r.Field != parser.WinchPull || !rd.AnyAt(people)
}

// askedOutside says whether more than a weight is asked for, or told to lift with,
// than stands from one element to another.
func askedOutside(rd *reading.Reading, from, to int) bool {
	return rd.AnyAt(func(k int) bool {
		fig, t := rd.Elems[k].Fig, rd.TermAt(k)
		return (k < from || k >= to) && (fig != nil && fig.Dim == parser.DimRatio || t.Intent != "" && t.Intent != parser.AskWeight && !t.Besides)
	})
}

// TalkBehind says whether words stand right behind the element at k that are no
// element: talk, or what is not known and asked about.
func TalkBehind(rd *reading.Reading, k int) bool {
	return strings.ContainsFunc(rd.Text[rd.Elems[k].End:startOf(rd, k+1)], unicode.IsLetter)
}

// startOf is where the element at i starts, or the text ends.
func startOf(rd *reading.Reading, i int) int {
	if i < len(rd.Elems) {
		return rd.Elems[i].Start
	}
	return len(rd.Text)
}

// LeaveOut passes over the words from one element up to another, with the talk
// between them, and leaves their places to words that say nothing. What is known
// for its talk only is asked about no more.
func LeaveOut(rd *reading.Reading, from, to int) {
	start := rd.Elems[from].Start
	words := strings.TrimRightFunc(rd.Text[start:startOf(rd, to)], func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return p.Start >= start && p.End <= start+len(words) })
	rd.Passed = append(rd.Passed, parser.Said[string]{Value: words, Words: words, Start: start, End: start + len(words)})
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Start >= start && a.End <= start+len(words) && ofTalk(rd, scan.Fold(a.Words))
	})
	for k := from; k < to; k++ {
		rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{Chatter: true}}
	}
}

// WontLeave reads "la vecina no quiere salir del patio": whoever is told of stays
// where a piece comes down.
func WontLeave(rd *reading.Reading, i int) bool {
	who := rd.Past(i-1, -1, lexicon.MarkAdverb|lexicon.MarkIs)
	if !rd.Cued(rd.Elems[i], lexicon.CueDenying) && !rd.Cued(rd.Elems[i], lexicon.CueNot) || !stops.Present(rd, who) || !rd.At(who-1).Marked(lexicon.MarkArticle) && !rd.TermAt(who).Someone {
		return false
	}
	end := i + 1
	for end < len(rd.Elems) && end-i <= stops.Few && rd.Elems[end].Pause == 0 && rd.Elems[end].Fig == nil {
		end++
	}
	words := scan.SplitWords(rd.Text[rd.Elems[i].End:startOf(rd, end)])
	at := slices.IndexFunc(words, func(w string) bool { return rd.In.Cued(w, lexicon.CueLeaves) })
	return at >= 0 && !(at+1 < len(words) && rd.In.Cued(words[at+1], lexicon.CueOurs))
}
