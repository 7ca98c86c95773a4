package senses

import (
	"heft/parser"
	"heft/parser/reading"
	"heft/parser/scan"
)

// WrapsAsked takes "wraps?" that stands alone in its sentence for what is asked for: the
// number before it ended another, "2.2 it is. wraps?".
func WrapsAsked(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.Elems[i].Plays(parser.Wraps) || rd.At(i-1).Pause == 0 {
			continue
		}
		j := i + 1
		for rd.At(j).Polite() && rd.At(j).Pause == 0 {
			j++
		}
		asked := rd.At(j).Pause > 0 && rd.Text[rd.At(j).Start] == '?'
		if asked || rd.At(i-1).Pause == 4 && j == len(rd.Elems) {
			rd.Elems[i].Term = &scan.Term{Intent: parser.AskLower}
		}
	}
}
