package pulls

import (
	"heft/calc/unit"
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
	"heft/parser/turning"
)

// SomebodyPulls reads "mi compa jala 40 lb", "the groundie pulls 40 lb max" and "he can only
// hold like 30 pounds": what one person pulls with or holds is never what the piece weighs.
// What no hand pulls stays open.
func SomebodyPulls(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !gear.Heavy(rd, i) || e.Fig.Told != "" || rd.At(i+1).Piece() || newtons(e.Fig) > mostByHand {
			continue
		}
		at := handVerb(rd, i)
		holds := rd.TermAt(at).SelfHolds || rd.Cued(rd.At(at), lexicon.CueHandHolds)
		switch {
		case rd.TermAt(at).SelfHolds && asksFirst(rd, at):
			continue // "mike, can i hold 40 lb"
		case rd.TermAt(at).SelfHolds:
		case (holds || rd.Cued(rd.At(at), lexicon.CueHandPulls)) && rd.At(at).Pause == 0 && onePerson(rd, at-1):
		default:
			continue
		}
		e.Fig.Told = parser.PersonPull
		rd.Elems[at].Term = &scan.Term{}
		if holds && !rd.LiftsOn() && !turning.Lifting(rd) {
			rd.Elems[at].Term.Intent = parser.AskLower // no tackle has a tail in the hand
		}
	}
}

// handVerb is where the word of pulling or holding stands that leads to the number at i:
// "holds" links as well, and is not passed over.
func handVerb(rd *reading.Reading, i int) int {
	verb := func(k int) bool {
		return rd.Cued(rd.At(k), lexicon.CueHandPulls) || rd.Cued(rd.At(k), lexicon.CueHandHolds) || rd.TermAt(k).SelfHolds
	}
	at := i - 1
	for !verb(at) && (rd.At(at).Marked(lexicon.MarkIs|lexicon.MarkTrailing|lexicon.MarkBound) || rd.TermAt(at).Note == "about") {
		at--
	}
	return at
}

// asksFirst says whether the words at i ask, "can i hold 40 lb".
func asksFirst(rd *reading.Reading, i int) bool {
	first, _ := scan.NextWord(rd.Word(rd.At(i)))
	return rd.In.Cued(first, lexicon.CueAsks) || rd.In.Cued(first, lexicon.CueAsking)
}

// newtons is the most that a mass or a force comes to.
func newtons(fig *reading.Figure) float64 {
	if fig.Dim == parser.DimMass {
		return float64(unit.Mass(fig.High).Weight())
	}
	return fig.High
}

// onePerson says whether the element at i, past talk, is somebody that no number counts.
func onePerson(rd *reading.Reading, i int) bool {
	for rd.At(i).Polite() && !stops.Present(rd, i) && rd.At(i).Pause == 0 {
		i--
	}
	return stops.Present(rd, i) && rd.At(i-1).Fig == nil
}

// pulledWith reads "jalamos con 150 lb" and "pulling with 150 lb": the pull on a tackle,
// where no other number tells of the load.
func pulledWith(rd *reading.Reading, i int) bool {
	tackle := rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimRatio })
	turned := rd.AnyAt(func(k int) bool { return parser.Redirecting(rd.TermAt(k).Block) })
	return tackle && !turned && rd.Cued(rd.At(rd.Back(i-1)), lexicon.CuePullWith) && !rd.ShapedOrNamed()
}
