package bot

import (
	"cmp"

	"heft/calc/gear"
	"heft/parser"
)

// A figure of gear may be told where only the talk says whose it is: "the new one says
// 30 kN", behind a block.

// gearSpoken is the one part of the gear whose strength a talk has told, or asked about
// last; "" for none, or several.
func (t Turn) gearSpoken() (of gear.Part) {
	if t.pending != nil && t.pending.Kind != parser.WhichGear && gearAsk(t.pending) {
		return partOf(t.pending.Fields[0])
	}
	for _, x := range t.question.Quantities {
		switch p := partOf(x.Field); {
		case p == "" || p == of:
		case of != "":
			return ""
		default:
			of = p
		}
	}
	return of
}

// gearOfTalk asks of the gear that was last spoken of which of its strengths a figure is,
// where a message names none.
func (t Turn) gearOfTalk(ask *parser.Ask) *parser.Ask {
	if !t.known || t.gear == "" || ask == nil || ask.Kind != parser.WhichGear {
		return ask
	}
	of := *ask
	of.Kind, of.OfTalk, of.Fields = parser.WhichStrength, true, nil
	for _, k := range kit {
		if k.part == t.gear {
			of.Fields = []parser.Field{k.marked, k.breaks}
		}
	}
	return &of
}

// ofGearSpoken is a strength that names no gear as that of the gear a talk spoke of last, or
// asked about: "it breaks at 9000 lb", behind "is the block good for 500 lb". By itself it
// would be the rope's. What it names it is of.
func (t Turn) ofGearSpoken(r crewReader, text string, q parser.Question) parser.Question {
	of := cmp.Or(t.gearSpoken(), t.gear)
	if !t.known || of == "" || of == gear.Rope || len(q.Quantities) != 1 || !q.Has(parser.RopeBreak, parser.RopeWorking) {
		return q
	}
	named, err := r.ReadAfter(speaker{language: q.Language}.word(partNames[of])+" "+text, t.question)
	if err != nil || len(named.Quantities) != 1 || partOf(named.Quantities[0].Field) != of {
		return q
	}
	is := q.Quantities[0]
	is.Field = named.Quantities[0].Field
	q.Quantities = []parser.Quantity{is}
	return q
}
