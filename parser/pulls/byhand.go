package pulls

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Wood that is cut is lifted with bare hands as well: "can i lift that round on my own",
// "do we pick it up by hand", "can two of us shift it". No parts of line are asked for then; what it weighs is.

// LiftedByHand takes such a lift for a piece that somebody moves by hand, where nothing of a
// tackle or a rope is told, nor was before.
func LiftedByHand(rd *reading.Reading) {
	if rd.LiftsOn() || rd.Before.Has(parser.Parts, parser.HitchHeight, parser.RopeLength, parser.RopeBreak) || rd.AnyAt(rd.Is(roped)) || !rd.AnyAt(rd.Is(woodOrBody)) {
		return
	}
	people := rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Plays(parser.People) || rd.TermAt(i).Count > 0 || rd.TermAt(i).AndSelf
	})
	bare := rd.AnyAt(func(i int) bool {
		return rd.TermAt(i).ByHand || single(rd, i) || people && oneEnd(rd, i)
	})
	endPassed(rd, bare)
	for i, e := range rd.Elems {
		carried := rd.TermAt(i).Intent != parser.AskLift // which no tackle does
		lifted := rd.Cued(e, lexicon.CueHandLift) && (bare || people && (carried || rd.Has(lexicon.MarkRound)))
		if lifted || rd.Cued(e, lexicon.CueHandMove) && (bare || people) && rd.At(i+1).Fig == nil {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskWeight, Note: parser.MovedByHand} })
			rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return p.Start == e.Start })
		}
	}
}

// oneEnd says whether the element at i tells that one end of the piece is lifted, "lift one
// end of it", and no more of it than that.
func oneEnd(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).OneEnd && rd.Cued(rd.At(i-1), lexicon.CueHandLift) && rd.At(i-1).Fig == nil
}

// endPassed passes over which end is lifted by hand: it is planned on all of the piece.
func endPassed(rd *reading.Reading, byHand bool) {
	for i := range rd.Elems {
		if byHand && oneEnd(rd, i) {
			e := rd.Elems[i]
			rd.Pass(i, i+1, reading.Element{Start: e.Start, End: e.End, Term: &scan.Term{Chatter: true}})
		}
	}
}

// woodOrBody says whether the element at i tells of wood, or of who would lift it. Of a bare
// weight, "lift 1500 lb by hand how many", it is rather asked how many pull it up.
func woodOrBody(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	return e.Piece() || t.Unnamed || t.Human || t.Count > 0 || e.Plays(parser.People) || e.Marked(lexicon.MarkRound|lexicon.MarkPronoun|lexicon.MarkPerson) || rd.Cued(e, lexicon.CuePeople) || rd.Cued(e, lexicon.CueSelf)
}

// single says whether the element at i tells of one person and no more: "on my own", "one guy".
func single(rd *reading.Reading, i int) bool {
	before := rd.At(i - 1).Fig
	one := before != nil && before.Dim == parser.DimCount && before.Low == 1 && before.High == 1
	return rd.Elems[i].Plays(parser.People) && (one || rd.TermAt(i).Count == 1)
}

// roped says whether the element at i tells of a tackle, of a rope or of gear, or asks for one.
func roped(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	if e.Fig != nil {
		return e.Fig.Dim == parser.DimRatio || e.Fig.Rope
	}
	if t.WoodRing && rd.TermAt(i-1).Tree != nil {
		return false // a "red oak ring" is wood
	}
	asks := t.Intent != "" && t.Intent != parser.AskWeight && t.Intent != parser.AskHelp && !t.Besides && !rd.Cued(e, lexicon.CueHandLift) && !rd.Cued(e, lexicon.CueHandMove)
	onRope := slices.ContainsFunc(strings.Fields(rd.Word(e)), func(w string) bool { return rd.In.Cued(w, lexicon.CueRopeName) }) // "two on the rope"
	overBlock := t.Straight || t.Doubles || t.Block != "" && !t.Blocks                                                           // "by hand over one block up top"
	return asks || onRope || overBlock || gear.Part(e) != "" || e.Marked(lexicon.MarkGear|lexicon.MarkCord) || e.Plays(parser.Parts) || e.Plays(parser.Wraps) || t.Hauls || e.Plays(parser.HitchHeight) && (rd.At(i-1).Fig != nil || rd.At(i+1).Fig != nil)
}
