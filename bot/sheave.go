package bot

import (
	"heft/calc/block"
	"heft/calc/tackle"
	"heft/parser"
)

// sheaves are the notes that name what the rope runs over.
var sheaves = map[string]string{
	naturalCrotch: "natural crotch", "rigging-ring": "rigging ring", "carabiner": "carabiner",
	"ball-bearing": "ball-bearing sheave", "bushed": "plain bushed sheave", "small-pulley": "small pulley",
}

// sheave is what the rope runs over: as its efficiency was said, or the worst
// thing that was named, or a block in ordinary order.
func sheave(q parser.Question) tackle.Sheave {
	k := kindOf(worstSheave(q))
	if x, ok := q.Get(parser.Efficiency); ok {
		k.Efficiency = x.Low
	}
	return k.Sheave
}

// worstSheave is the note of the worst thing that was named, "" where none was.
func worstSheave(q parser.Question) string {
	worst := ""
	for _, n := range q.Notes {
		if sheaves[n] != "" && (worst == "" || kindOf(n).Efficiency < kindOf(worst).Efficiency) {
			worst = n
		}
	}
	return worst
}

// kindOf is the published kind of a note, a block in ordinary order where it
// has none.
func kindOf(note string) tackle.Kind {
	for _, k := range tackle.Kinds() {
		if k.Name == sheaves[note] || sheaves[note] == "" && k.Efficiency == block.Efficiency {
			return k
		}
	}
	return tackle.Kind{}
}
