package talk

import (
	"strings"
	"unicode"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
)

// TwoLimits asks which of several limits holds now that are told for a side each: "200 lb
// on the fence side, 600 on the street side". One is kept at a time, and none by guess.
func TwoLimits(rd *reading.Reading) {
	limit, told := -1, []int(nil)
	for i := range rd.Elems {
		switch {
		case rd.Elems[i].Plays(parser.Limit) && limit < 0:
			limit = i
		case rd.Elems[i].Fig != nil && loadTold(rd, i) && (limit >= 0 || len(told) > 0):
			told = append(told, i)
		}
	}
	const two = 2
	asked, _, _ := senses.Intents(rd)
	if limit < 0 || len(told) < two || len(asked) > 0 || rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() && rd.TermAt(i).Tree == nil }) {
		return
	}
	for _, i := range told[1:] {
		if !ofSide(rd, i) {
			return
		}
	}
	rd.Asks = append(rd.Asks, whichLimit(rd, limit, told))
	for _, i := range told {
		e := rd.Elems[i]
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Pause: e.Pause, Term: &scan.Term{Chatter: true}}
	}
}

// ofSide says whether a number stands beside the place that it holds for.
func ofSide(rd *reading.Reading, i int) bool {
	from, to := breath(rd, rd.Elems[i].Start)
	named := func(k int) bool {
		e := rd.Elems[k]
		return e.Start >= from && e.End <= to && (e.Marked(lexicon.MarkPlace) || e.Marked(lexicon.MarkObstacle))
	}
	return rd.AnyAt(named) || cuesIn(newPlainText(rd.Text[from:to]), rd.In).Has(lexicon.CueSideOf)
}

// whichLimit asks which it is, from the first word of a limit to the place of the last.
func whichLimit(rd *reading.Reading, limit int, told []int) *parser.Ask {
	start := min(rd.Elems[limit].Start, rd.Elems[told[0]].Start)
	_, end := breath(rd, rd.Elems[told[len(told)-1]].Start)
	a := reading.AskAt(parser.WhichLimit, rd.Text, start, end-start)
	a.Fields = []parser.Field{parser.Limit}
	unit := ""
	for _, i := range told {
		if words := rd.Text[rd.Elems[i].Start:rd.Elems[i].End]; unit == "" {
			unit = strings.TrimLeftFunc(words, func(r rune) bool { return !unicode.IsLetter(r) })
		}
	}
	for _, i := range told {
		words := rd.Text[rd.Elems[i].Start:rd.Elems[i].End]
		if unit != "" && !strings.ContainsFunc(words, unicode.IsLetter) {
			words += " " + unit
		}
		a.Choices = append(a.Choices, parser.Choice{Words: words, Field: parser.Limit})
	}
	return a
}
