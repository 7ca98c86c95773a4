package turning

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Who speaks is named last: "memo y yo" are two, "2 compas y yo" three, and "entre el
// tambor y yo" is a place.

// SelfToo reads the words at i.
func SelfToo(rd *reading.Reading, i int) {
	prev, next := rd.At(i-1), rd.At(i+1)
	goesOn := next.Term != nil && !next.Marked(lexicon.MarkAnd) && !next.Marked(lexicon.MarkPlace) && !next.Term.HighEnd && !rd.TermAt(i+1).RopeEnd && next.Fig == nil
	switch {
	case stops.Kit(rd, i-1), goesOn && speaks(rd, i+1):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkAnd} })
	case rd.TermAt(i-1).Someone && aloft(rd, i):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
	case rd.TermAt(i - 1).Someone:
		countNames(rd, i)
	case prev.Plays(parser.People) && (next.Plays(parser.People) || OnTackle(rd, i+1)) && rd.At(i-2).Fig.Several() && !rd.At(i-3).Plays(parser.People):
		fig := rd.At(i - 2).Fig
		fig.Low, fig.High = fig.Low+1, fig.High+1
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
	}
}

// speaks says whether what stands at i is what the speaker is or does: "y yo soy".
func speaks(rd *reading.Reading, i int) bool {
	return rd.At(i).Marked(lexicon.MarkIs|lexicon.MarkPlace) || rd.At(i).Polite() && rd.At(i).Pause == 0
}

// aloft says whether those named around the words at i are told to be up the tree.
func aloft(rd *reading.Reading, i int) bool {
	k := i - 1
	for rd.TermAt(k).Someone || rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkArticle) {
		k--
	}
	up := func(n int) bool { return rd.TermAt(n).HighEnd || rd.At(n).Marked(lexicon.MarkUpward|lexicon.MarkErect) }
	return up(k) || up(i+1)
}

// countNames counts the names before the words at i, and who speaks.
func countNames(rd *reading.Reading, i int) {
	n, k := 1.0, i-1
	for rd.TermAt(k).Someone || n > 1 && rd.At(k).Pause == 2 && rd.TermAt(k-1).Someone {
		if rd.TermAt(k).Someone {
			n++
		}
		k--
	}
	e := rd.Elems[i-1]
	rd.Elems[i-1] = reading.Element{Start: e.Start, End: rd.Elems[i].End, Fig: &reading.Figure{Low: n, High: n, Start: e.Start, End: rd.Elems[i].End}}
	rd.Elems[i].Term = &scan.Term{Roles: []scan.Role{{Field: parser.People, Side: lexicon.Before, Soft: false}}}
}

// Every takes "cada polea" and "both blocks" for no more than "the": gear, or a
// place, of which nothing is added up.
func Every(rd *reading.Reading, i int) {
	plain := rd.At(i+1).Term != nil && rd.At(i+1).Polite() && rd.At(i+1).Pause == 0 && !stops.Person(rd, i+1) && !bounds.AnyWithin(rd, i, clauseEnd(rd, i+1), func(k int) bool { return rd.Elems[k].Fig != nil })
	if next := rd.At(i + 1); plain || stops.Kit(rd, i+1) || next.Marked(lexicon.MarkPlace|lexicon.MarkStanding) && !next.Piece() || rd.TermAt(i+1).Block != "" {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkArticle} })
	}
}

// atMiddle reads "va a media rama" where it is asked how a piece hangs or is tied: its
// middle, and no half of it.
func atMiddle(rd *reading.Reading, i int) bool {
	words := scan.SplitWords(rd.Text[:rd.Elems[i].Start])
	at := len(words) > 0 && rd.In.Cued(words[len(words)-1], lexicon.CueAtHalf)
	return at && rd.At(i+1).Piece() && rd.AnyAt(func(k int) bool {
		in := rd.TermAt(k).Intent
		return in == parser.AskBalance || in == parser.AskRaise
	})
}

// Somewhat reads "medio inclinada" and "va a media rama": no half of anything.
func Somewhat(rd *reading.Reading, i int) {
	next := rd.At(i + 1)
	if atMiddle(rd, i) {
		rd.Alter(i, func(t *scan.Term) {
			*t = scan.Term{Roles: []scan.Role{{Field: parser.MidDiameter, Side: lexicon.After | lexicon.Before}}}
		})
		return
	}
	if rd.At(i-1).Fig != nil || next.Term == nil || next.Piece() || len(next.Term.Roles) > 0 {
		return
	}
	if next.Term.Note == "lean" || next.Term.Level || next.Term.Note == stops.NoteWorn || next.Term.Damaged {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
	}
}
