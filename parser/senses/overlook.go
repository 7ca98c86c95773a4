package senses

import (
	"heft/parser"
	"heft/parser/asking"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Some words of talk could matter in another company: "plenty", "other". They
// are left out and said back, but asked about right beside a number that has no
// unit, whose they could be.

// overlook leaves out the word at i. One that may tell how something is, "ugly",
// is left out only where it stands beside nothing that it could change.
func overlook(rd *reading.Reading, i int) {
	if rd.TermAt(i).Perhaps && !asking.Idle(rd, i) {
		rd.Alter(i, func(t *scan.Term) { t.Ask = parser.Unknown })
		return
	}
	if p := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAt); rd.TermAt(i).OneEnd && endOf(rd, p) && rd.AnyAt(func(k int) bool { return k != p && endOf(rd, k) }) {
		return // "5 the other"
	}
	e := rd.Elems[i]
	for _, near := range []reading.Element{rd.At(i - 1), rd.At(i + 1)} {
		if near.Fig != nil && near.Fig.Dim == parser.DimCount {
			rd.Alter(i, func(t *scan.Term) { t.Ask = parser.Unknown })
			return
		}
	}
	words := rd.Text[e.Start:e.End]
	rd.Passed = append(rd.Passed, parser.Said[string]{Value: words, Words: words, Start: e.Start, End: e.End})
	rd.Elems[i].Term = &scan.Term{Chatter: true, Body: e.Term.Body} // "banged up his elbow" stays what it is
}
