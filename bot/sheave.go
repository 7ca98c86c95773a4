package bot

import (
	"heft/calc/tackle"
	"heft/parser"
)

// sheaves are the notes that name what the rope runs over.
var sheaves = map[string]string{
	naturalCrotch: "natural crotch", "rigging-ring": "rigging ring", "carabiner": "carabiner",
	"ball-bearing": "ball-bearing sheave", "bushed": "plain bushed sheave", "small-pulley": "small pulley",
}

// ordinary is a block of which nothing was said.
const ordinary = "sheave in ordinary order"

// sheave is what the rope runs over: as its efficiency was said, or the worst
// thing that was named, or a block in ordinary order.
func sheave(q parser.Question) tackle.Sheave {
	k := sheaveKind(q)
	if x, ok := q.Get(parser.Efficiency); ok {
		k.Efficiency = x.Low
	}
	return k.Sheave
}

func sheaveKind(q parser.Question) tackle.Kind {
	var worst tackle.Kind
	for _, n := range q.Notes {
		if name := sheaves[n]; name != "" {
			if k := kindOf(n); worst.Name == "" || k.Efficiency < worst.Efficiency {
				worst = k
			}
		}
	}
	if worst.Name == "" {
		return kindOf("")
	}
	return worst
}

// kindOf is the published kind of a note, an ordinary block where it has none.
func kindOf(note string) tackle.Kind {
	name := sheaves[note]
	if name == "" {
		name = ordinary
	}
	for _, k := range tackle.Kinds() {
		if k.Name == name {
			return k
		}
	}
	return tackle.Kind{}
}
