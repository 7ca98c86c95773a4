package talk

import (
	"heft/parser"
	"heft/parser/reading"
)

// MassAlone asks what a mass is that is the whole message, "400 lb", where the piece of the
// talk is told by its sizes and was weighed by them: what it weighs, or the limit. Taken for
// the weight it would put a piece of 400 lb in its place.
func MassAlone(rd *reading.Reading) {
	was := rd.Before
	sized := was.Has(parser.Length) && was.Has(parser.Across...) && was.Shape != nil && was.Species != nil
	if was.Intent != parser.AskWeight || !sized || was.Has(parser.Weight) {
		return
	}
	at := -1
	for i, e := range rd.Elems {
		switch {
		case e.Fig != nil && e.Fig.Dim == parser.DimMass && e.Fig.Unit != nil && e.Fig.Sure == "" && at < 0:
			at = i
		case e.Pause == 0 && !e.Polite():
			return
		}
	}
	if at < 0 || len(rd.Asks) > 0 {
		return
	}
	fig := rd.Elems[at].Fig
	a := fig.Ask(parser.TwoReadings, rd.Text)
	a.Fields = []parser.Field{parser.Weight, parser.Limit}
	a.Choices = []parser.Choice{{Field: parser.Weight}, {Field: parser.Limit}}
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere = true
}
