package reader

import (
	"slices"

	"heft/parser"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/stops"
	"heft/parser/turning"
)

// Some words end all arithmetic by themselves, and others by what they stand
// beside: "lift" before a person, "cracked" beside a shackle.

// halts keeps the words that end all arithmetic: what is read around them
// takes none of them away.
func halts(rd *reading.Reading) {
	stops.BreaksAt(rd)
	stops.RopeLines(rd)
	stops.Soundness(rd)
	senses.DryGear(rd)
	stops.OffFeet(rd)
	turning.HandOnIt(rd)
	rd.Tokens = stops.DangerTokens(rd)
	told, none := stops.Dangers(rd)
	for i, e := range rd.Elems {
		kind := haltAt(rd, i)
		if kind == "" {
			continue
		}
		if stops.Harmless(rd, kind, e, none) {
			stops.AskPole(rd, i, none)
			continue
		}
		if kind == parser.Damaged && stops.Replaced(rd, e) {
			stops.PutAway(rd, e)
			continue
		}
		if rd.TermAt(i).Stop != kind {
			e.Term = &scan.Term{Stop: kind}
			if rd.TermAt(i).Label {
				e.Start, e.End = stops.OfLabel(rd, i)
			}
		}
		rd.Stops = append(rd.Stops, e)
	}
	stops.PassAvoided(rd, none)
	rd.Stops = slices.Concat(rd.Stops, putAway(rd, stops.OffEnd(rd, told)), turning.Gales(rd))
}

// putAway leaves out the harm that is told of gear which is out of use.
func putAway(rd *reading.Reading, told []reading.Element) []reading.Element {
	return slices.DeleteFunc(told, func(e reading.Element) bool {
		away := e.Term.Stop == parser.Damaged && stops.Replaced(rd, e)
		if away {
			stops.PutAway(rd, e)
		}
		return away
	})
}

// haltAt is why arithmetic ends at the word at i, "" where it does not.
func haltAt(rd *reading.Reading, i int) parser.Kind {
	t := rd.TermAt(i)
	switch {
	case stops.Hurt(rd, i) && !stops.WasHurt(rd, i), stops.OnSomebody(rd, i), places.LetFallSomebody(rd, i), t.Jams && stops.StuckPerson(rd, i):
		return parser.Emergency
	case t.LetsGo && !turning.Measured(rd):
		return parser.Runaway
	case storms(rd, i):
		return parser.Storm
	case stops.GivesWay(rd, i), stops.DeadHold(rd, i):
		return parser.Unsound
	case stops.OfBadGear(rd, i), stops.LetFall(rd, i), stops.Unlabelled(rd, i):
		return parser.Damaged
	case stops.Personal(rd, i):
		return parser.Personal
	case stops.Jammed(rd, i):
		return parser.Stuck
	case t.Stop == parser.Felling && t.Topples && stops.Aside(rd, i), t.Stop == parser.Emergency && stops.WoodFell(rd, i), t.Stop == parser.Unsound && stops.Ails(rd, i):
		return ""
	case t.Stop != "":
		return t.Stop
	case stops.Doubted(rd, i):
		return parser.Unsound
	case turning.Fallen(rd, i) && !stops.PieceFell(rd, i):
		return parser.Emergency
	case stops.Lifted(rd, i), stops.Hangs(rd, i), t.Borne && stops.Borne(rd, i):
		return parser.Rider
	case stops.Stays(rd, i), stops.Strays(rd, i), stops.Guided(rd, i), turning.WontLeave(rd, i), stops.Under(rd, i):
		return parser.Below
	case t.Topples && stops.Felled(rd, i), t.FallsWhere && stops.Lies(rd, i), stops.PulledOver(rd, i):
		return parser.Felling
	case t.Machine && stops.Burdened(rd, i):
		return parser.Machine
	case t.Frail && stops.AnchorOf(rd, i):
		return parser.NoMethod
	case t.Erases && stops.Erased(rd, i):
		return parser.LogKept
	}
	return ""
}

// storms says whether the word at i tells of a storm that is near: "storm rolling
// in", "i see lightning". What an old one left behind is none.
func storms(rd *reading.Reading, i int) bool {
	const most = 3
	if rd.TermAt(i).Weather || rd.TermAt(i).Note == "gusty" {
		return !turning.Measured(rd) && rd.AnyAt(func(k int) bool { return rd.TermAt(k).CarriesOn })
	}
	if !rd.TermAt(i).Storm {
		return false
	}
	for step := -1; step <= 1; step += 2 {
		for k := i + step; (k-i)*step <= most && rd.At(k).Fig == nil && rd.At(k).Pause == 0; k += step {
			if rd.TermAt(k).Nears {
				return true
			}
		}
	}
	return false
}
