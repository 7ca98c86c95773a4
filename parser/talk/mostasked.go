package talk

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// MostAsked notes that the most is asked for which a tackle lifts or a drum holds: "what
// will a 5:1 and 2 guys pick", "whats 3 wraps good for". What does it is told, and nothing
// of a piece; the message begins by asking what, and the verb stands right behind that or at
// the end.
func MostAsked(rd *reading.Reading, q *parser.Question) {
	lifts := q.Intent == parser.AskLift && q.Has(parser.Parts) && q.Has(parser.People, parser.WinchPull)
	holds := q.Intent == parser.AskLower && q.Has(parser.Wraps)
	if !lifts && !holds || !q.Pieceless() || q.Has(parser.Ratings...) || q.Noted(parser.MostWanted) {
		return
	}
	p := plainText(rd)
	for at := range min(aside+1, len(p.Words)) {
		for n := 1; n <= min(2, len(p.Words)-at); n++ {
			if rd.In.Cued(run(p, at, n), lexicon.CueWhat) && mostVerb(rd, p, at+n) {
				q.Notes = append(slices.Clone(q.Notes), parser.MostWanted)
				return
			}
		}
	}
}

// aside is how many words of talk may stand before the question and behind it.
const aside = 2

// mostVerb says whether the verb stands at a word, or at the end of the message.
func mostVerb(rd *reading.Reading, p *reading.PlainText, at int) bool {
	verb := func(i, n int) bool {
		return i+n <= len(p.Words) && rd.In.Cued(run(p, i, n), lexicon.CueMostVerb)
	}
	for i := max(at, len(p.Words)-aside-1); i < len(p.Words); i++ {
		if verb(i, 1) || verb(i-1, 2) && i > at {
			return true
		}
	}
	return verb(at, 1)
}
