package reading

import (
	"slices"

	"heft/parser"
)

// AskAt is an ask about n bytes of a text.
func AskAt(k parser.Kind, text string, start, n int) *parser.Ask {
	return &parser.Ask{Kind: k, Words: text[start : start+n], Start: start, End: start + n}
}

// OrAsk is the question, or the first of what must be asked about it.
func OrAsk(q parser.Question, asks []*parser.Ask) (parser.Question, error) {
	withoutDoubtful(&q, asks)
	if a := FirstAsk(asks...); a != nil {
		q.InDoubt = AskedAbout(asks)
		for _, other := range asks {
			if other != nil && other != a && other.Kind == parser.WhichTree {
				q.Which = other
			}
		}
		return q, a
	}
	return q, nil
}

// AskedAbout are the fields that any of the asks is about.
func AskedAbout(asks []*parser.Ask) (out []parser.Field) {
	for _, a := range asks {
		if a != nil {
			out = append(out, a.Fields...)
		}
	}
	return out
}

// withoutDoubtful takes out the quantities that any ask is about, so that no
// later message can complete the question with one of them.
func withoutDoubtful(q *parser.Question, asks []*parser.Ask) {
	drop := map[parser.Field]bool{}
	for _, f := range AskedAbout(asks) {
		drop[f] = true
	}
	for _, a := range asks {
		if a != nil && (a.Kind == parser.Girth || a.Kind == parser.BreastHigh) {
			for _, f := range parser.Across {
				drop[f] = true
			}
		}
	}
	q.Quantities = slices.DeleteFunc(q.Quantities, func(x parser.Quantity) bool { return drop[x.Field] })
}
