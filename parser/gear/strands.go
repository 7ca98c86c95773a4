package gear

import (
	"heft/parser"
	"heft/parser/reading"
)

// PlaitedStrands passes over how many strands a braid is plaited of, "half inch 16 strand":
// more than a laid rope ever has, and no table here goes by them. It stays a rope.
func PlaitedStrands(rd *reading.Reading) {
	const least, most = 8, 48
	for i := 0; i+1 < len(rd.Elems); i++ {
		fig, j := rd.Elems[i].Fig, i+1
		if e := rd.Elems[j]; e.Pause > 0 && rd.Text[e.Start:e.End] == "-" {
			j++
		}
		e := rd.At(j)
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low < least || fig.High > most || rd.TermAt(j).Note != "rope-three-strand" {
			continue
		}
		t := *e.Term
		t.Note = ""
		rd.Pass(i, j+1, reading.Element{Start: e.Start, End: e.End, Term: &t})
	}
}
