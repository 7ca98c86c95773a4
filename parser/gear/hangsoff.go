package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// HangsOff reads "can I hang nine hundred pounds off of it" and "hang 900 lb off a 10 in
// silver maple crotch" as what an anchor is asked to hold: wood is told, and no piece.
func HangsOff(rd *reading.Reading) {
	if Shaped(rd) || !rd.AnyAt(func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueWood) }) {
		return
	}
	for i := range rd.Elems {
		if !Heavy(rd, i) || rd.Elems[i].Fig.Told != "" || !hangs(rd, i-1) {
			continue
		}
		off := i + 1
		if !rd.In.Leads[rd.Word(rd.At(off))] && rd.TermAt(off).Intent != parser.AskAnchor && !rd.At(off).Marked(lexicon.MarkRelation) && !rd.Cued(rd.At(off), lexicon.CueOver) && !rd.EndsBreath(off) {
			continue
		}
		rd.Elems[i].Fig.Told = parser.Weight
		rd.Elems[i-1].Term = &scan.Term{Intent: parser.AskAnchor}
		return
	}
}

// hangs says whether the word at i hangs something, and asks for nothing else.
func hangs(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return rd.Cued(rd.At(i), lexicon.CueHangFrom) && t.Intent == "" && len(t.Roles) == 0
}
