package talk

import (
	"strings"

	"heft/calc/unit"
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// converted is the number that is asked for in another unit, and of which nothing else
// is told or asked: "how many kN is 1250 lb", "3.5 kN in pounds".
func converted(rd *reading.Reading) (parser.Quantity, bool) {
	if len(rd.Asks) > 0 || asksBut(rd, parser.AskWeight) {
		return parser.Quantity{}, false
	}
	var fig *reading.Figure
	into := false
	for i, e := range rd.Elems {
		switch {
		case e.Fig != nil && (fig != nil || e.Fig.Unit == nil || e.Fig.Low != e.Fig.High || unitBehind(rd, i)), tellsMore(rd, i):
			return parser.Quantity{}, false
		case e.Fig != nil:
			fig = e.Fig
		default:
			into = into || wantsUnit(rd, i)
		}
	}
	if fig == nil || !into || fig.Dim != parser.DimLength && fig.Dim != parser.DimMass && fig.Dim != parser.DimForce {
		return parser.Quantity{}, false
	}
	q := parser.Quantity{Field: parser.Length, Low: fig.Low, High: fig.High, System: fig.Unit.System, Words: fig.Words(rd.Text), Start: fig.Start, End: fig.End}
	if fig.Dim != parser.DimLength {
		q.Field = parser.Weight
	}
	if fig.Dim == parser.DimForce {
		q.Low = float64(unit.Force(fig.Low).Held())
		q.High = q.Low
	}
	return q, true
}

// tellsMore says whether the element at i tells of wood, gear or people, whose number
// it would be.
func tellsMore(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	for _, r := range t.Roles {
		if r.Field != parser.Weight {
			return true
		}
	}
	return e.Piece() || t.Tree != nil || t.Shape != "" || t.Unnamed || t.Stop != "" || t.Human || gear.Part(e) != ""
}

// wantsUnit says whether the element at i names a unit, or the units of a system: "kN",
// "in pounds", "how many kN".
func wantsUnit(rd *reading.Reading, i int) bool {
	words := strings.Fields(rd.Word(rd.Elems[i]))
	ends := len(words) > 1 && !rd.TermAt(i).Chatter && rd.In.Units[words[len(words)-1]] != nil
	return ends || rd.Elems[i].Marked(lexicon.MarkUnit) || rd.TermAt(i).Units != ""
}

// unitBehind says whether a unit stands right behind the number at i: "600 ft lbs" is one
// that nobody asks for in another.
func unitBehind(rd *reading.Reading, i int) bool {
	return rd.At(i+1).Marked(lexicon.MarkUnit) && strings.TrimSpace(rd.Text[rd.Elems[i].End:rd.Elems[i+1].Start]) == ""
}
