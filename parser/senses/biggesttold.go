package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BiggestTold reads "the biggest piece this morning is going to be around 900 lb" as a
// piece that weighs so much: whoever tells what the biggest weighs does not ask how to cut
// one.
func BiggestTold(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Term == nil || e.Term.Note != "" || !rd.Cued(e, lexicon.CueBiggestOne) {
			continue
		}
		k, is := i+1, false
		for rd.At(k).Pause == 0 && k < len(rd.Elems) && linksOrTalk(rd, k) {
			is = is || rd.At(k).Marked(lexicon.MarkIs) || rd.TermAt(k).Intent == parser.AskWeight
			k++
		}
		if is && gear.Heavy(rd, k) && rd.Elems[k].Fig.Told == "" && (rd.EndsBreath(k+1) || rd.At(k+1).Polite() || rd.At(k+1).Marked(lexicon.MarkWhere|lexicon.MarkAdverb)) {
			rd.Elems[i].Term = &scan.Term{Unnamed: true}
			for n := i + 1; n < k; n++ {
				if rd.TermAt(n).Intent == parser.AskWeight {
					rd.Alter(n, func(t *scan.Term) { t.Intent = "" }) // "va a pesar" tells
				}
			}
			return
		}
	}
}

// linksOrTalk says whether the element at i may stand between a piece and what it weighs.
func linksOrTalk(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	return e.Fig == nil && (t.Intent == "" || t.Intent == parser.AskWeight) && (t.Intent != "" || e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkMade) || e.Polite() || t.Day || t.Note == "about")
}
