package turning

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// A "no" before other words of taking back, or before what tells anew, denies nothing of
// what stands behind it: "no scratch that, 18 ft", "no make it 4 ft", "no top is 12".

// onlyBegins says whether the word at i only begins other words of taking back, "no scratch
// that", or answers what was asked in the middle of what is told: "and no, we can run it".
func onlyBegins(rd *reading.Reading, i int) bool {
	t, next := rd.TermAt(i), rd.At(i+1)
	if !t.Lacks && !t.Denies {
		return false
	}
	other := next.Pause == 0 && rd.TermAt(i+1).Corrects && !rd.TermAt(i+1).Lacks && !rd.TermAt(i+1).Denies
	answers := rd.At(i-1).Marked(lexicon.MarkAnd) && next.Pause == 2 && Who(rd, i+2)
	return other || answers
}

// tellsBehind says whether what stands behind the "no" at i is told, and lacks nothing: words
// that tell anew, or a thing in a talk whose number stands behind "is".
func tellsBehind(rd *reading.Reading, i int) bool {
	t, next := rd.TermAt(i), rd.At(i+1)
	if !t.Lacks && !t.Denies || next.Fig != nil || next.Pause > 0 {
		return false
	}
	if rd.Cued(next, lexicon.CueNewly) && len(rd.TermAt(i+1).Roles) == 0 {
		return true
	}
	k := rd.Past(i+1, +1, lexicon.MarkArticle) + 1
	return !rd.First && begins(rd, i) && !t.Denies && rd.At(k).Marked(lexicon.MarkIs) && rd.At(k+1).Fig != nil
}

// interjected says whether the "no" at i only begins what somebody says, "no we got 2
// blocks", "nope dont like that": it denies nothing that stands behind it, and answers what
// was asked.
func interjected(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.Elems[i], lexicon.CueNay) || !begins(rd, i) {
		return false
	}
	behind := rd.TermAt(i + 1)
	first := pastBlanks(rd.Text, rd.Elems[i].End)
	denial := behind.Ask == parser.Twist && behind.Turning == parser.TurnsDenied && !behind.Denies && !behind.Corrects
	return rd.SaidTo(lexicon.CueInterjects, first) >= 0 && (!rd.First || !rd.TermAt(i).Denies) || denial
}

// onlyOpens says whether the "no" at i begins a message before which nothing was spoken of,
// "no, he's at 4 wraps": there is nothing that it could take back.
func onlyOpens(rd *reading.Reading, i int) bool {
	return rd.First && rd.Cued(rd.Elems[i], lexicon.CueNay) && begins(rd, i) && rd.At(i+1).Pause == 2 && toldBehind(rd, i)
}

// quoted says whether the "no" at i is what somebody said, or what an answer comes to: "why
// do you say no", "so thats a no". What stands behind it may be put right all the same.
func quoted(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.Elems[i], lexicon.CueNay) || !rd.TypedBefore(i, lexicon.CueSaysNo) {
		return false
	}
	why := false
	for k := i - 1; k >= 0 && rd.At(k).Pause == 0; k-- {
		why = why || rd.TermAt(k).Explain != ""
	}
	tag := rd.SaidOut(i+2) && rd.At(i+1).Fig == nil && !rd.At(i+1).Piece() // "thats a no right"
	return rd.Cued(rd.At(i+1), lexicon.CueClause) || (rd.EndsBreath(i+1) || tag) && (why || nextFact(rd, i+1) < 0)
}

// notLiked says whether what is denied from the word at i up to another element is only that
// somebody likes our answer, in the breath that begins the message: "nope, don't like that".
func notLiked(rd *reading.Reading, i, from, to int) bool {
	word, n := scan.NextWord(rd.Text[rd.Elems[i].End:])
	if !rd.In.Cued(word, lexicon.CueLikes) || !begins(rd, from) {
		return false
	}
	rest := strings.TrimSpace(rd.Text[rd.Elems[i].End+n : startOf(rd, to)])
	return rd.CuedAs(strings.Trim(rest, ".,!? "), lexicon.CueOurAnswer)
}

// untold says whether the denial at i, of a clause up to another element, is of what somebody
// says, and no number, tree or state stands in it: "he didnt say anything about the sling".
func untold(rd *reading.Reading, i, from, to int) bool {
	head, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	who := anyWho(rd, from, i) || rd.TermAt(i).Denies // "no dijo" says who by itself
	if !rd.In.Cued(head, lexicon.CueUtters) || !who || direAt(rd, from, to) {
		return false
	}
	for k := from; k < to; k++ {
		e, t := rd.Elems[k], rd.TermAt(k)
		if e.Fig != nil || t.Tree != nil || t.Stop != "" || t.Condition != "" || t.Damaged || t.Frail || t.Harms || k != i && t.Ask != "" && !sizes.Denial(rd, k) {
			return false
		}
	}
	return true
}

// WhyNot takes the doubt from what is denied behind a "why", "why not 3", "xq 4 vueltas y no
// 3": it is asked why the answer is what it is. So many wraps are told to be judged, "why not
// 3 wraps"; a bare number is passed over.
func WhyNot(rd *reading.Reading) {
	for k, e := range rd.Elems {
		if rd.Cued(e, lexicon.CueWhyShort) && begins(rd, k) {
			rd.Alter(k, func(t *scan.Term) { *t = scan.Term{Explain: "numbers"} })
		}
	}
	why := false
	for i := 0; i < len(rd.Elems); i++ {
		switch t := rd.TermAt(i); {
		case rd.Elems[i].Pause > 2:
			why = false
		case t.Explain != "":
			why = true
		case !why || t.Ask != parser.Twist || !t.Denies && !t.Lacks:
		default:
			whyDenied(rd, i, rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdverb|lexicon.MarkIs))
		}
	}
}

// whyDenied settles the denial at i behind a "why", before the number at n where one is told.
func whyDenied(rd *reading.Reading, i, n int) {
	fig := rd.At(n).Fig
	wraps := rd.At(n + 1).Plays(parser.Wraps)
	switch {
	case fig == nil && rd.SaidOut(i+1):
		rd.Elems[i].Term = &scan.Term{} // "why not"
	case fig == nil || fig.Unit != nil || fig.Dim != parser.DimCount || !rd.EndsBreath(n+1) && !wraps:
	case wraps && !rd.AnyAt(func(k int) bool { return k != n+1 && rd.Elems[k].Plays(parser.Wraps) }):
		rd.Elems[i].Term = &scan.Term{}
		for k := range i {
			if !rd.First && rd.TermAt(k).Explain != "" {
				rd.Elems[k].Term = &scan.Term{} // they are judged
			}
		}
	default:
		Blank(rd, i, n+1)
		for k := i - 1; k > 0 && rd.TermAt(k).Explain == ""; k-- {
			if f := rd.At(k).Fig; f != nil && f.Unit == nil && f.Dim == parser.DimCount && (CountedBy(rd, k+1) || k+1 == i || rd.At(k+1).Marked(lexicon.MarkAnd)) {
				rd.Alter(k+1, func(t *scan.Term) { t.Roles, t.Intent = nil, "" })
				Blank(rd, k, k+1) // "xq 4 vueltas y no 3"
			}
		}
	}
}
