package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
)

// "So it doesn't hit the fence" says why something is asked, and turns nothing
// round. What it names is no question of its own, unless it is how blocks meet.

// Purpose takes the doubt from the words at i where no number stands in what
// they lead to, up to the next pause.
func Purpose(rd *reading.Reading, i int) {
	end := i + 1
	for ; end < len(rd.Elems) && rd.Elems[end].Pause == 0 && !rd.Elems[end].Marked(lexicon.MarkAnd); end++ {
		if e := rd.Elems[end]; e.Fig != nil || e.Cross || e.Piece() {
			return
		}
		if purposeEnds(rd, end) {
			end++
			break
		}
	}
	struck(rd, i, end)
	for k := i + 1; k < end; k++ {
		if t := rd.TermAt(k); t.Stop == "" && t.Ask == "" && t.Intent != parser.AskRaise && !t.Perhaps {
			rd.Alter(k, func(t *scan.Term) { *t = scan.Term{} })
		}
	}
	rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Purpose: true} }) // what it is told of ends there
}

// Unwanted reads what the piece shall not do on its way, "without dragging it over the
// tiles", "no quiero pegarle al techo", at a denial; false elsewhere. Who may be hit, and
// what gear may break, is no purpose of the crew's.
func Unwanted(rd *reading.Reading, i int) bool {
	if !sizes.Denial(rd, i) || rd.TermAt(i+1).Corrects || bounds.GearBefore(rd, i) || !strikes(rd, i) {
		return false // "no scratch that, 18 ft" takes back
	}
	Purpose(rd, i)
	return true
}

// struck takes the doubt from the words from one element up to another that are known for
// nothing but what a piece shall not do.
func struck(rd *reading.Reading, from, to int) {
	start, end := rd.Elems[from].Start, startOf(rd, to)
	known := func(words string) bool { return rd.CuedAs(words, lexicon.CueStrikes) }
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && a.Start >= start && a.End <= end && known(a.Words)
	})
	rd.Fixes = slices.DeleteFunc(rd.Fixes, func(f parser.Fix) bool { return known(f.Words) })
	rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return p.Start >= start && p.End <= end && known(p.Words) })
	hit := false
	for k := from; k < to; k++ {
		e := rd.Elems[k]
		hit = hit || known(rd.Word(e))
		switch {
		case rd.TermAt(k).Ask != parser.Unknown:
		case known(rd.Word(e)):
			rd.Elems[k].Term = &scan.Term{}
		case hit:
			LeaveOut(rd, k, k+1) // what it shall not hit: "pegarle al aire"
		}
	}
}

// strikes says whether words of what a piece would hit or drag over stand behind the denial
// at i, with little between, and nobody and no gear in the same breath.
func strikes(rd *reading.Reading, i int) bool {
	const mostLead = 5
	end := i + 1
	for ; end < len(rd.Elems) && rd.Elems[end].Pause == 0; end++ {
		if t := rd.TermAt(end); stops.Kit(rd, end) || gear.Part(rd.Elems[end]) != "" || t.Human && end > i+1 || t.Body || t.Stop != "" {
			return false
		}
	}
	words := scan.SplitWords(rd.Text[rd.Elems[i].End:startOf(rd, end)])
	for n, w := range words[:min(mostLead, len(words))] {
		switch w = scan.Fold(w); {
		case rd.In.Cued(w, lexicon.CueStrikes):
			return n+1 < len(words)
		case !rd.In.Cued(w, lexicon.CueStrikesLead):
			return false
		}
	}
	return false
}

// purposeEnds says whether what shall not be hit is named at i and words that
// lead to a number of their own begin behind it: "para que no toque el tejado lo
// tengo que desplazar 2 m".
func purposeEnds(rd *reading.Reading, i int) bool {
	next := rd.At(i + 1)
	return rd.Elems[i].Marked(lexicon.MarkPlace|lexicon.MarkObstacle) && next.Looks(lexicon.After) && !next.Looks(lexicon.Before) && !next.Marked(lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkWhere|lexicon.MarkRelation)
}
