package reader

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Two pieces are told in one breath, each with its tree, its thickness and its length:
// "red oak limb 14 in 22 ft hitched at 35 ft and a white ash log 12 in 8 ft". Each is the
// message by itself; only what is asked before the first is asked of all.

// eachWhole divides a message into such pieces; nil where a part of it does not stand
// alone.
func (r *Reader) eachWhole(rd *reading.Reading) []parser.Said[string] {
	parts := eachTree(rd)
	if len(parts) < 2 || len(parts) > manyPieces {
		return nil
	}
	head := askedFirst(rd)
	var intents []parser.Intent
	for i, p := range parts {
		q, ok := r.stands(p.Value)
		if ok && i > 0 && head != "" && !q.Asks {
			parts[i].Value = head + " " + p.Value
			q, ok = r.stands(parts[i].Value)
		}
		if !ok {
			return nil
		}
		intents = append(intents, q.Intent)
		if i > 0 && q.Asks && head == "" && slices.ContainsFunc(intents, func(in parser.Intent) bool { return in != q.Intent }) {
			return nil // what is asked behind the last may be asked of all
		}
	}
	return parts
}

// eachTree divides a message at what joins its pieces, where a tree and a length or more
// stand on either side.
func eachTree(rd *reading.Reading) (parts []parser.Said[string]) {
	from, trees, sizes := 0, 0, 0
	for i, e := range rd.Elems {
		joins := e.Marked(lexicon.MarkAnd) || rd.Cued(e, lexicon.CueLaterOn)
		if (joins || e.Pause > 0) && trees == 1 && sizes > 1 && treeFrom(rd, i) {
			parts = append(parts, partOf(rd.Text, from, e.Start))
			from, trees, sizes = e.Start, 0, 0
		}
		if joins && sizes == 0 && trees == 0 {
			from = e.End
		}
		if rd.TermAt(i).Tree != nil {
			trees++
		}
		if e.Fig != nil && e.Fig.Dim == parser.DimLength {
			sizes++
		}
		if trees > 1 {
			return nil
		}
	}
	if len(parts) == 0 {
		return nil
	}
	return append(parts, partOf(rd.Text, from, len(rd.Text)))
}

// treeFrom says whether a tree is named from the element at i on.
func treeFrom(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool { return k >= i && rd.TermAt(k).Tree != nil })
}

// askedFirst are the words that ask for something before the first piece, "" where there
// are none.
func askedFirst(rd *reading.Reading) string {
	asks := false
	for i, e := range rd.Elems {
		if e.Fig != nil || e.Piece() {
			if asks {
				return rd.Text[:rd.At(rd.Past(i-1, -1, lexicon.MarkArticle)).End]
			}
			break
		}
		asks = asks || rd.TermAt(i).Intent != ""
	}
	return ""
}

// partOf is a part of a message, without what stands around its words.
func partOf(text string, from, to int) parser.Said[string] {
	one := strings.Trim(text[from:to], " \t\r\n,.;")
	start := from + strings.Index(text[from:to], one)
	return parser.Said[string]{Value: one, Words: one, Start: start, End: start + len(one)}
}

// stands says whether a text tells one piece with its tree and its sizes, and asks for no
// more than what it weighs or how to lower it.
func (r *Reader) stands(text string) (parser.Question, bool) {
	q, err := r.Read(text)
	if q.FollowUp || q.Intent != parser.AskWeight && q.Intent != parser.AskLower {
		return q, false
	}
	piece := q
	piece.Intent = parser.AskWeight
	return q, wholePiece(piece, err) && (q.Species != nil || err != nil) && q.Has(parser.Length) && q.Has(parser.Across...)
}
