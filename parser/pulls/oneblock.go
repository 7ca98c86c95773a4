package pulls

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// A winch with one block, "what if we use the winch with a pulley", is another tackle
// than the one that the talk has told: the parts of that one are not kept unasked.

// OneBlock asks what one block makes that a winch comes with, in a talk of a lift whose
// parts are told: it only turns the rope, or it rides on the load.
func OneBlock(rd *reading.Reading) {
	if rd.Before.Intent != parser.AskLift || !rd.Before.Has(parser.Parts) || partsSaid(rd) || len(rd.Asks) > 0 {
		return
	}
	if !rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.WinchPull) }) {
		return
	}
	for i, e := range rd.Elems {
		from := i - 1
		if rd.At(from).Marked(lexicon.MarkArticle) && !rd.Cued(rd.At(from), lexicon.CueThe) || rd.In.Numbers[rd.Word(rd.At(from))].Value == 1 || rd.At(from).Fig != nil && rd.Elems[from].Fig.Between(1, 1) {
			from--
		}
		with := rd.At(from).Marked(lexicon.MarkWhere|lexicon.MarkAnd) || rd.Cued(rd.At(from), lexicon.CueOverBlock)
		if rd.TermAt(i).Block != parser.AnyBlock || rd.TermAt(i).Blocks || rd.TermAt(i).Note != "" || from == i-1 || !with || !rd.EndsBreath(i+1) {
			continue
		}
		start := rd.Elems[from+1].Start
		a := reading.AskAt(parser.WhichParts, rd.Text, start, e.End-start)
		a.Fields, a.Number = []parser.Field{parser.Parts}, 1
		rd.Asks = append(rd.Asks, a)
		return
	}
}
