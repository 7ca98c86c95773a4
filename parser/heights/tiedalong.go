package heights

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Where a piece is tied is told as a part of its length as well: "tied 1/3 from the
// butt", "a third of the way out", "in the middle", "at the tip"; or from its tip, "tied 4
// ft from the tip".

// TiedAlong finds the part, or how far from the tip. Two ends, "butt tied or tip tied",
// are a choice and no tie.
func TiedAlong(rd *reading.Reading) {
	tiedAtEnds(rd)
	for i := 0; i < len(rd.Elems); i++ {
		if !tiedJustBefore(rd, i) {
			continue
		}
		if n := fromTip(rd, i); n > 0 {
			rd.Elems[i].Fig.Told = parser.TieAlong
			rd.Elems[i].Fig.End = rd.Elems[i+n-1].End // said back whole: "4 ft from the tip"
			hush(rd, i+1, i+n)
			continue
		}
		of, n := shareAt(rd, i)
		if n == 0 || rd.Share != nil {
			continue
		}
		start, end := rd.Elems[i].Start, rd.Elems[i+n-1].End
		rd.Share = &reading.Share{Start: start, End: end, Of: of}
		rd.Elems = slices.Replace(rd.Elems, i, i+n, reading.Element{Start: start, End: end, Term: &scan.Term{}})
	}
}

// tiedAtEnds reads "tip tied", "tied at the butt" and "tied in the middle", which their
// word files have whole.
func tiedAtEnds(rd *reading.Reading) {
	at, several := -1, false
	for i, e := range rd.Elems {
		if rd.Cued(e, lexicon.CueTiedTip) || rd.Cued(e, lexicon.CueTiedButt) || rd.Cued(e, lexicon.CueTiedMiddle) {
			at, several = i, at >= 0
		}
	}
	if tie := eitherTie(rd); tie > 0 {
		eitherEnd(rd, tie)
		return
	}
	if several && at >= 0 {
		eitherEnd(rd, at)
		return
	}
	if at < 0 {
		return
	}
	e := rd.Elems[at]
	s := &reading.Share{Start: e.Start, End: e.End, Of: 1, AtEnd: true}
	switch {
	case rd.Cued(e, lexicon.CueTiedButt):
		s.Of = 0
	case rd.Cued(e, lexicon.CueTiedMiddle) && !rd.EndsBreath(at+1):
		return // "tied in the middle of the crown"
	case rd.Cued(e, lexicon.CueTiedMiddle):
		s.Of, s.AtEnd = scan.Half, false
	}
	rd.Share = s
}

// eitherTie is the last element of "butt tie or tip tie", 0 where nobody asks that. Neither
// end has a number there.
func eitherTie(rd *reading.Reading) int {
	end := func(k int, f parser.Field) bool { return rd.At(k).Plays(f) && rd.TermAt(k+1).Tied }
	for i := range rd.Elems {
		or := rd.TermAt(i+2).ISay || rd.At(i+2).Pause > 0 && rd.In.Joins[rd.Word(rd.At(i+2))] == scan.Or
		both := end(i, parser.ButtDiameter) && end(i+3, parser.TipDiameter) || end(i, parser.TipDiameter) && end(i+3, parser.ButtDiameter)
		if !or || !both {
			continue
		}
		for k := i; k <= i+4; k++ {
			rd.Elems[k].Term = &scan.Term{}
		}
		return i + 4
	}
	return 0
}

// tiedJustBefore says whether the words of a tie lead to the element at i.
func tiedJustBefore(rd *reading.Reading, i int) bool {
	j := i - 1
	for rd.At(j).Marked(lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkArticle) && !rd.TermAt(j).Tied || rd.TermAt(j).Note == "about" {
		j--
	}
	return rd.TermAt(j).Tied
}

// fromTip is how many elements from the length at i on say that it is counted from the
// tip, 0 where they do not.
func fromTip(rd *reading.Reading, i int) int {
	if rd.First && !gear.AsksFor(rd, parser.AskRaise) && !gear.AsksFor(rd, parser.AskBalance) {
		return 0 // of what is lowered or weighed nobody asks where it is tied
	}
	k := i + 1
	for rd.Cued(rd.At(k), lexicon.CueInward) || rd.Cued(rd.At(k), lexicon.CueOut) {
		k++ // "4 ft back from the tip"
	}
	if !gear.Far(rd, i) || !rd.Cued(rd.At(k), lexicon.CueFromTip) || !breathEnds(rd, k+1) {
		return 0
	}
	return k + 1 - i
}

// shareAt is the part of the length that is told from the element at i on, and in how
// many elements; 0 of them where none is.
func shareAt(rd *reading.Reading, i int) (of float64, n int) {
	of, n = partAt(rd, i)
	if n == 0 {
		return 0, 0
	}
	k := i + n
	if rd.Cued(rd.At(k), lexicon.CueOfWay) {
		k++
	}
	for rd.Cued(rd.At(k), lexicon.CueAlong) || rd.Cued(rd.At(k), lexicon.CueOut) {
		k++
	}
	switch {
	case rd.Cued(rd.At(k), lexicon.CueFromTip):
		of, k = 1-of, k+1
	case rd.At(k).Plays(parser.Tie), rd.At(k).LooksBack(parser.ButtDiameter):
		k++
	}
	if !breathEnds(rd, k) {
		return 0, 0
	}
	return of, k - i
}

// partAt is a fraction at i, "1/3", "a third" or "two thirds", and in how many elements.
func partAt(rd *reading.Reading, i int) (of float64, n int) {
	const third = 1.0 / 3
	fig := rd.Elems[i].Fig
	switch {
	case rd.Cued(rd.Elems[i], lexicon.CueThird):
		return third, 1
	case places.Bare(fig, 1) && rd.Cued(rd.At(i+1), lexicon.CueThird):
		return third, 2
	case places.Bare(fig, 2) && rd.Cued(rd.At(i+1), lexicon.CueThird):
		return twoThirds, 2
	case fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low == fig.High && 0 < fig.Low && fig.Low < 1:
		return fig.Low, 1
	}
	return 0, 0
}

// TieAtShare makes the tie of the part of the length that was told, where the question
// turns on it or nothing else is told. Where the length is not told, and was not before,
// a raise asks about the words.
func TieAtShare(rd *reading.Reading, q *parser.Question) *parser.Ask {
	for i, x := range q.Quantities {
		if x.Field == parser.TieAlong {
			q.Quantities[i].Along = &parser.Along{Share: 1, Short: x}
		}
	}
	wants := q.Intent == parser.AskRaise || q.Intent == parser.AskBalance || len(q.Quantities) == 0
	if s := rd.Share; s != nil && (wants || !s.AtEnd) && !q.Has(parser.Tie, parser.TieAlong, parser.SecondTie) {
		x := parser.Quantity{Field: parser.TieAlong, Words: rd.Text[s.Start:s.End], Start: s.Start, End: s.End, Along: &parser.Along{Share: s.Of}}
		q.Quantities = append(q.Quantities, x)
		if q.Intent == parser.AskRaise && rd.First && !q.Has(parser.Length) {
			q.Quantities = q.Quantities[:len(q.Quantities)-1]
			return reading.AskAt(parser.Twist, rd.Text, s.Start, s.End-s.Start)
		}
	}
	q.PlaceTie()
	return nil
}
