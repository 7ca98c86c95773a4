package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
)

// Crews deny how a piece could be as well as tell how it is: "dead ash, dont gimme the
// green weight". What is denied so says nothing more.

// contraryEnd finds the end of what the denial at i denies, where that is nothing but a
// state and the message tells the other; 0 elsewhere.
func contraryEnd(rd *reading.Reading, i int) int {
	k := i + 1
	for k-i <= stops.Few && rd.At(k).Pause == 0 && (rd.At(k).Polite() || rd.At(k).Marked(lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkIs)) && stateAt(rd, k) == "" {
		k++
	}
	c := stateAt(rd, k)
	if c == "" || rd.TermAt(k).Tree != nil {
		return 0
	}
	same := func(n int) bool { return n != k && stateAt(rd, n) == c }
	if rd.AnyAt(same) || !rd.AnyAt(func(n int) bool { return contrary[c] == stateAt(rd, n) }) {
		return 0
	}
	end := k + 1
	if rd.TermAt(end).Intent == parser.AskWeight && rd.At(end+1).Fig == nil {
		end++
	}
	if rd.At(end).Fig != nil || rd.At(end).Piece() {
		return 0
	}
	return end
}

// contrary are the states of which a thing has one or the other.
var contrary = map[string]string{string(parser.Green): string(parser.Dead), string(parser.Dead): string(parser.Green), parser.Snubbed: parser.LetRun, parser.LetRun: parser.Snubbed}

// stateAt is the state that is told at i: of the wood, or of a line that is held fast or
// let run.
func stateAt(rd *reading.Reading, i int) string {
	switch t := rd.TermAt(i); {
	case t.Condition != "":
		return string(t.Condition)
	case t.Note == parser.Snubbed, t.Note == parser.LetRun:
		return t.Note
	}
	return ""
}
