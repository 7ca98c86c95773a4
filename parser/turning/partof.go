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
)

// A share of a piece is no size, and asked about. It is talk where the part is told by its
// own sizes, "the top third, 9 m of it, 45 cm at the cut". A log that somebody split
// lengthwise is half a log: it is planned as the whole one.

// OwnSizes leaves out the share at i where the sizes behind it are those of the part, and
// says whether it did: so much "of it", so thick "at the cut", and nothing else is long.
func OwnSizes(rd *reading.Reading, i int) bool {
	if TurnedBy(rd, i) != parser.TurnsPart || rd.At(i-1).Fig != nil {
		return false
	}
	thick, long, own := 0, 0, false
	for k, e := range rd.Elems {
		switch {
		case e.Fig == nil:
			continue
		case k < i, e.Fig.Dim != parser.DimLength, e.Fig.Pair, rd.At(k + 1).Piece():
			return false // "half the 600 lb log", "a third of a 60 ft cedar"
		case e.Fig.Unit.Fine:
			thick++
		default:
			long++
		}
		own = own || rd.TermAt(k+1).OfIt || e.Fig.Unit.Fine && rd.TypedAfter(k, lexicon.CueAtCut)
	}
	if !own || thick != 1 || long != 1 {
		return false
	}
	LeaveOut(rd, i, i+1)
	return true
}

// PartInstead leaves out what might be done rather than take the piece as it is, "or should
// we quarter it first": the sizes before it tell the whole one, and it is said back. It says
// whether it did.
func PartInstead(rd *reading.Reading, i int) bool {
	if TurnedBy(rd, i) != parser.TurnsPart || !tellsPiece(rd) {
		return false
	}
	from, to := i, i+1
	for from > 0 && rd.Elems[from-1].Pause == 0 && rd.Elems[from-1].Fig == nil && !orBefore(rd, from) {
		from--
	}
	for to < len(rd.Elems) && rd.Elems[to].Pause == 0 {
		to++
	}
	verb := from
	if first, _ := scan.NextWord(rd.Text[rd.Elems[from].Start:]); rd.In.Joins[first] == scan.Or {
		verb++
	}
	cut := verb < i || rd.At(i+1).Marked(lexicon.MarkPronoun|lexicon.MarkArticle) // "or half" alone is another piece
	told := func(k int) bool { return rd.Elems[k].Fig != nil || rd.Elems[k].Piece() }
	if !orBefore(rd, from) || !cut || bounds.AnyWithin(rd, from-1, to, told) || !bounds.AnyWithin(rd, -1, from, told) {
		return false
	}
	LeaveOut(rd, from, beforeCourtesy(rd, i, to))
	return true
}

// orBefore says whether "or" stands in the text right before the element at i, or begins it.
func orBefore(rd *reading.Reading, i int) bool {
	words := scan.SplitWords(rd.Text[max(0, rd.At(i-1).End):rd.Elems[i].Start])
	first, _ := scan.NextWord(rd.Text[rd.Elems[i].Start:])
	return rd.In.Joins[first] == scan.Or || slices.ContainsFunc(words, func(w string) bool { return rd.In.Joins[scan.Fold(w)] == scan.Or })
}

// CutInParts asks about "take it in two parts" as about any share of a piece: it is cut, and
// hangs on no more parts of line. A message that lifts means the line by such words.
func CutInParts(rd *reading.Reading) {
	if rd.LiftsOn() || rd.AnyAt(func(i int) bool { return rd.TermAt(i).Intent == parser.AskLift }) {
		return
	}
	for i, e := range rd.Elems {
		n, in := i-1, rd.At(i-2)
		if n > 0 && rd.Cued(e, lexicon.CueParts) && rd.At(n).Fig != nil && rd.At(n).Fig.Between(2, reading.MostParts) && in.Marked(lexicon.MarkIn) {
			rd.Elems[n] = reading.Element{Start: rd.Elems[n].Start, End: e.End, Term: &scan.Term{Ask: parser.Twist, Turning: parser.TurnsPart}}
			rd.Elems = slices.Delete(rd.Elems, i, i+1)
			return
		}
	}
}

// HalfLog notes half a log at i, where it is told that a log was split lengthwise, and
// says whether it did. Wood that split by itself is stopped at before.
func HalfLog(rd *reading.Reading, i int) bool {
	if TurnedBy(rd, i) != parser.TurnsPart || !rd.Cued(rd.Elems[i], lexicon.CueHalved) || !gear.ShapedFrom(rd, 0, parser.Log) || !typedIn(rd, lexicon.CueLengthwise) {
		return false
	}
	rd.Elems[i].Term = &scan.Term{Note: parser.HalfLog}
	for k, e := range rd.Elems {
		before := scan.SplitWords(rd.Text[:e.Start])
		down := func(w string) bool { return rd.In.Cued(w, lexicon.CueDown) }
		if e.Plays(parser.MidDiameter) && slices.ContainsFunc(before[max(0, len(before)-2):], down) {
			rd.Alter(k, func(t *scan.Term) { *t = scan.Term{} }) // "down the middle, 20 in": no size was taken there
		}
	}
	return true
}

// typedIn says whether the words of a cue are typed anywhere in the message.
func typedIn(rd *reading.Reading, c scan.Cue) bool {
	words := strings.FieldsFunc(scan.Fold(rd.Text), func(r rune) bool { return !unicode.IsLetter(r) && r != '\'' })
	for i := range words {
		for n := 1; n <= min(reading.LongestCue, len(words)-i); n++ {
			if rd.In.Cued(strings.Join(words[i:i+n], " "), c) {
				return true
			}
		}
	}
	return false
}
