package sizes

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// What a crane or a loader takes is read off its chart by who runs it: "crane good for
// 4,500 there", "loader lifts 1500 lb". Told so, it is the most that a piece may weigh,
// and never what one does. What a truck or a trailer is good for is its payload.

// MachineRated makes such a number the limit.
func MachineRated(rd *reading.Reading) {
	for i := range rd.Elems {
		at := ratedMachine(rd, i)
		if at < 0 {
			continue
		}
		fig, hauls := rd.Elems[i].Fig, truck(rd, at)
		if fig.Unit == nil {
			fig.Lent(CapacityUnit(rd, i))
		}
		for k := at; k < i; k++ {
			if rd.Elems[k].Pause == 0 {
				rd.Elems[k].Term = &scan.Term{Chatter: true}
			}
		}
		f, note := parser.Limit, parser.MachineLimit
		if hauls {
			f, note = parser.Payload, ""
		}
		rd.Elems[at].Term = &scan.Term{Note: note}
		if fig.Told, fig.Sure = f, f; fig.Unit == nil {
			fig.Told, fig.Sure = "", "" // asked for its unit
			rd.Elems[i-1].Term = &scan.Term{Note: note, Roles: []scan.Role{{Field: f, Side: lexicon.After}}}
		}
		atReach(rd, i+1)
		if eachPiece(rd) || rd.AnyAt(func(k int) bool { return rd.TermAt(k).Unnamed && bounds.PluralAt(rd, k) }) {
			rd.Elems[at].Term.Intent, rd.Elems[at].Term.Besides = parser.AskCutPlan, true
		}
		return
	}
}

// eachPiece takes the doubt from "each piece" and "each load" where what one may weigh is told
// by what takes it: "so each piece can go up with the mini loader, which lifts 900 lb".
func eachPiece(rd *reading.Reading) (told bool) {
	for i := range rd.Elems {
		if rd.TermAt(i).Each && (rd.TermAt(i+1).Unnamed || rd.Cued(rd.At(i+1), lexicon.CueLot) || rd.At(i+1).Piece()) {
			rd.Alter(i, func(t *scan.Term) { t.Ask, t.Each = "", false })
			told = true
		}
	}
	return told
}

// ratedMachine finds the machine of which the number at i is told as what it takes, -1 for
// none. "Rated" may follow in a breath of its own, "the crane, its rated 990 kg".
func ratedMachine(rd *reading.Reading, i int) int {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Pair || fig.Told != "" || fig.Sure != "" && fig.Sure != parser.Weight || fig.Claimed != "" || !(fig.Dim == parser.DimMass && fig.Unit != nil || fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= stops.LeastLoad) {
		return -1
	}
	k, rated := i-1, false
	for ; k >= 0 && rd.Elems[k].Fig == nil && rd.Elems[k].Pause == 0 && !rd.TermAt(k).Machine && !truck(rd, k); k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		rated = rated || t.Rated || t.Bears || rd.Cued(e, lexicon.CueManages)
		if !t.Rated && !t.Bears && !rd.Cued(e, lexicon.CueManages) && !armOf(rd, k) && !e.Polite() && t.Note != "about" && !e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAt|lexicon.MarkBound|lexicon.MarkRating|lexicon.MarkPronoun|lexicon.MarkAdverb) {
			return -1
		}
	}
	switch {
	case !rated, rd.Elems[max(k, 0)].Fig != nil:
		return -1
	case rd.TermAt(k).Machine, truck(rd, k):
		return k
	}
	machine := func(n int) bool { return n < i && rd.TermAt(n).Machine }
	other := func(n int) bool { return gear.Part(rd.Elems[n]) != "" || rd.Elems[n].Marked(lexicon.MarkGear) }
	if at := rd.Only(machine); at >= 0 && rd.At(k).Pause > 0 && !rd.AnyAt(other) {
		return at
	}
	return -1
}

// armOf says whether the word at i is the arm of a machine, which it stands right behind:
// "loader arm", "brazo del cargador".
func armOf(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i), lexicon.CueArm) && rd.TermAt(i-1).Machine
}

// atReach passes over how far out a machine takes so much, "at the reach we got", "at 60
// ft".
func atReach(rd *reading.Reading, i int) {
	for k := i; k < len(rd.Elems) && rd.Elems[k].Pause == 0 && !rd.Elems[k].Piece(); k++ {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case gear.Far(rd, k) && rd.At(k-1).Marked(lexicon.MarkAt):
			e.Fig.Elsewhere, e.Fig.Claimed = false, ""
			rd.Pass(k, k+1, reading.Element{Start: e.Start, End: e.End, Term: &scan.Term{Chatter: true}})
		case e.Fig != nil:
			return
		case t.Intent == parser.AskRope, t.Bears:
			rd.Elems[k].Term = &scan.Term{Chatter: true} // "at that reach"
		}
	}
}
