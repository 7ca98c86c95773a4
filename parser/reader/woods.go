package reader

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/talk"
)

// woods finds the question which of two trees has the heavier wood, of which no piece is
// told: "is white oak heavier than red maple?". Of a name that several trees share their
// genus is taken, and where they have none it is asked as ever.
func (r *Reader) woods(rd *reading.Reading) (parser.Question, bool) {
	q := parser.Question{Intent: parser.AskHelp, Topic: parser.TopicWoods, Language: rd.Language, Fixes: rd.Fixes, Passed: rd.Passed, Asks: true}
	if !asksHeavier(rd) {
		return q, false
	}
	for i, e := range rd.Elems {
		t := rd.TermAt(i)
		switch {
		case e.Fig != nil, gear.Part(e) != "", len(t.Roles) > 0 && t.Tree == nil && t.Shape == "" && !talk.Typed(rd, lexicon.CueVersus):
			return q, false
		case t.Condition != "":
			q.Condition = said(rd, e, t.Condition)
		case t.Tree == nil:
		case len(t.Tree.Others) > 0 && !parser.Genus(t.Tree.Sci), q.Against != nil:
			return q, false
		case q.Species == nil:
			q.Species = said(rd, e, parser.Species{Scientific: t.Tree.Sci, Name: r.nameIn(rd, t.Tree)})
		default:
			q.Against = said(rd, e, parser.Species{Scientific: t.Tree.Sci, Name: r.nameIn(rd, t.Tree)})
		}
	}
	return q, q.Against != nil && q.Against.Value.Scientific != q.Species.Value.Scientific
}

// asksHeavier says whether it is asked which of two is heavier, and nothing else: "which
// weighs more", "is it heavier than". "Whichever is heavier" tells of one piece.
func asksHeavier(rd *reading.Reading) bool {
	asked, _, _ := senses.Intents(rd)
	for _, in := range asked {
		if in != parser.AskWeight {
			return false
		}
	}
	for _, a := range rd.Asks {
		if a.Kind == parser.Unknown && !comparesAt(rd, a) {
			return false
		}
	}
	than := talk.Typed(rd, lexicon.CueVersus) && (strings.ContainsAny(rd.Text, "?¿") || talk.Queries(rd))
	if than && len(asked) > 0 {
		return true // "cuánto pesa el fresno comparado con el álamo"
	}
	return talk.Typed(rd, lexicon.CueHeavier) && (than || talk.AsksFirst(rd) && !talk.Typed(rd, lexicon.CueMayBe) && rd.AnyAt(func(i int) bool { return i > 0 && rd.TermAt(i).Tree != nil }))
}

// comparesAt says whether the word that is asked about begins what parts the two trees:
// "compared" of "compared to".
func comparesAt(rd *reading.Reading, a *parser.Ask) bool {
	for words, cues := range rd.In.Cues {
		if cues.Has(lexicon.CueVersus) && strings.HasPrefix(words, scan.Fold(a.Words)+" ") {
			return true
		}
	}
	return false
}
