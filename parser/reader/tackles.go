package reader

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Which of two tackles a lift takes is asked in one breath: "do we need a 3:1 or a 5:1",
// "can two of us lift it on a straight pull or do we need a 3 to 1", "by hand or with a 3:1".
// Each is the message by itself, with the other left out.

// eitherTackle reads such a message.
func (r *Reader) eitherTackle(rd *reading.Reading) (parser.Question, bool) {
	q := parser.Question{Intent: parser.AskTree, Language: rd.Language, InRow: true}
	first, last := tackleBefore(rd), secondTackle(rd)
	if first < 0 || last < 0 || len(rd.Asks) > 0 {
		return q, false
	}
	a, b := rd.Elems[first], rd.Elems[last]
	or := orAhead(rd, last)
	texts := []string{rd.Text[:or] + rd.Text[b.End:], rd.Text[:a.Start] + rd.Text[a.End:or] + " " + rd.Text[b.Start:]}
	if a.Fig != nil {
		texts[1] = rd.Text[:a.Start] + rd.Text[b.Start:]
	}
	for i, e := range []reading.Element{a, b} {
		said := parser.Said[string]{Value: strings.TrimSpace(texts[i]), Words: rd.Text[e.Start:e.End], Start: e.Start, End: e.End}
		one, err := r.Read(said.Value)
		lifted := i == 0 && a.Fig == nil || one.Intent == parser.AskLift // bare hands lift in no tackle
		if err != nil || !lifted || len(one.Pieces) > 0 || len(one.Missing()) > 0 {
			return q, false
		}
		q.Units = one.Units
		q.Pieces = append(q.Pieces, said)
	}
	return q, true
}

// secondTackle is the last ratio of a message, told behind an "or"; -1 where there is none.
func secondTackle(rd *reading.Reading) int {
	last := -1
	for i := range rd.Elems {
		if ratioAt(rd, i) {
			last = i
		}
	}
	if last < 0 || orAhead(rd, last) < 0 {
		return -1
	}
	return last
}

// tackleBefore is the other tackle, told before that "or": a ratio, a straight pull or bare
// hands; -1 where there is none, or there are several.
func tackleBefore(rd *reading.Reading) int {
	last, at := secondTackle(rd), -1
	for i := range max(last, 0) {
		t := rd.TermAt(i)
		if !ratioAt(rd, i) && !t.Straight && !t.ByHand || rd.Elems[i].Start > orAhead(rd, last) {
			continue
		}
		if at >= 0 && (ratioAt(rd, i) || ratioAt(rd, at)) {
			return -1
		}
		at = i
	}
	return at
}

// ratioAt says whether the element at i is how many parts of line a tackle has.
func ratioAt(rd *reading.Reading, i int) bool {
	f := rd.At(i).Fig
	return f != nil && f.Dim == parser.DimRatio && f.Sure != parser.DesignFactor
}

// orAhead is where the "or" stands in the text that leads to the element at i with nothing of
// a number, a piece or gear between, "or do we need a"; -1 where it does not.
func orAhead(rd *reading.Reading, i int) int {
	const most = 8
	for k := i - 1; k >= 0 && i-k <= most; k-- {
		e := rd.Elems[k]
		switch {
		case e.Fig == nil && rd.In.Joins[scan.Fold(rd.Text[e.Start:e.End])] == scan.Or:
			return e.Start
		case e.Fig != nil, e.Piece(), e.Pause > 2, gear.Part(e) != "" && !e.Marked(lexicon.MarkArticle):
			return -1
		}
	}
	return -1
}
