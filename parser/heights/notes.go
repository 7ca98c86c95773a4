package heights

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/reading"
)

// Notes are what the message said besides, such as a wet rope.
func Notes(rd *reading.Reading) []string {
	var out []string
	for i, e := range rd.Elems {
		if e.Term == nil || e.Term.Note == parser.Bridled && (gear.Slung(rd) || LegsOfRope(rd)) || e.Term.Near && rd.At(i+1).Fig == nil {
			continue
		}
		for _, n := range []string{e.Term.Note, parser.RedirectsOn[e.Term.Block]} {
			if n != "" && !slices.Contains(out, n) {
				out = append(out, n)
			}
		}
	}
	return out
}
