package reader

import (
	"cmp"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
)

// unsaidStrength asks about a number that is rather gear's than the piece's,
// and has no word for which of the two on its label it is: "carabiner 22 kN",
// or "5/8 double braid, 16,000 lb" with no piece in sight.
func unsaidStrength(rd *reading.Reading, i int, used map[int]bool) {
	fig, before := rd.Elems[i].Fig, rd.At(i-1)
	if p := gear.StrongWhenNew(rd, i); p != "" {
		gear.AsksStrength(rd, fig, p)
		return
	}
	if unit := sizes.CapacityUnit(rd, i); gear.ThinRated(rd, i, unit) {
		a := gear.AsksStrength(rd, fig, lexicon.PartRope)
		if fig.Dim == parser.DimCount {
			scan.InUnit(a, unit)
		}
		return
	}
	if gear.WithStrength(rd, i) {
		gear.AsksStrength(rd, fig, lexicon.PartRope)
		return
	}
	if p := cmp.Or(gear.StrengthNamed(rd, i), gear.GoodForPastLimit(rd, i), gear.LabelledAhead(rd, i), gear.CalledBy(rd, i)); p != "" {
		gear.AsksStrength(rd, fig, p)
		return
	}
	if massOfTree(rd, i) {
		fig.Sure = parser.Weight
		return
	}
	if gear.MarkedBreak(rd, i) {
		return
	}
	if gear.WantsWorking(rd, i) {
		fig.Sure = parser.RopeBreak
		return
	}
	if p := gear.Labelled(rd, i); p != "" {
		gear.AsksStrength(rd, fig, p)
		return
	}
	if gear.LoadOnRated(rd, i) || gear.OnLine(rd, i) {
		fig.Sure = parser.Weight
		return
	}
	if p := gear.RatedAhead(rd, i); p != "" && fig.Dim != parser.DimCount {
		gear.AsksStrength(rd, fig, p)
		return
	}
	if gear.GoodFor(rd, i) && fig.Dim == parser.DimMass && !rd.Worded(parser.Limit) && askedAt(rd, i) {
		fig.Sure = parser.Weight // "is half inch rope ok for 900 lb thru the block"
		return
	}
	if gear.LoadWanted(rd) || gear.GoodFor(rd, i) {
		return // "what's on the redirect sling with 300 kg in the line"
	}
	if p := gear.OneOfKind(rd, i); p != "" {
		gear.AsksStrength(rd, fig, p)
		return
	}
	if p := gear.HeldUpTo(rd, i); p != "" && fig.Dim != parser.DimCount {
		gear.AsksStrength(rd, fig, p)
		return
	}
	if p := isOf(rd, i); p != "" {
		gear.AsksStrength(rd, fig, p)
		return
	}
	if p := gear.DescribedGear(rd, i); p != "" {
		gear.AsksStrength(rd, fig, p)
		return
	}
	if p := gear.PartMeant(rd); fig.Dim == parser.DimForce && (p == lexicon.PartConnector || p == lexicon.PartSling) && !rd.AnyAt(func(k int) bool { return rd.Elems[k].Piece() || rd.TermAt(k).Unnamed }) {
		gear.AsksStrength(rd, fig, p) // "my biner, its 24 kN"
		return
	}
	p := cmp.Or(gear.RatedRope(rd, i), gear.SizedThenRated(rd, i))
	if fig.Dim == parser.DimCount && p != "" {
		scan.InUnit(gear.AsksStrength(rd, fig, p), sizes.CapacityUnit(rd, i))
		return
	}
	if fig.Dim == parser.DimCount || rd.At(i+1).Piece() || gear.PieceIs(rd, i) {
		return
	}
	if p == "" && !before.Marked(lexicon.MarkWhere) && (before.Term == nil || len(before.Term.Roles) == 0 || gear.Part(before) != "") {
		p = gear.RatedPart(rd, i, used)
	}
	p = cmp.Or(p, gear.PastMarked(rd, i))
	if p != "" && fig.Dim == parser.DimMass && gear.Acted(rd, i) {
		fig.Sure = parser.Weight
		return
	}
	if p != "" {
		gear.AsksStrength(rd, fig, p)
	}
}

// askedAt says whether the breath that the number at i stands in begins as a question does:
// "is half inch rope ok for 900 lb".
func askedAt(rd *reading.Reading, i int) bool {
	k := i
	for k > 0 && rd.At(k-1).Pause == 0 {
		k--
	}
	return rd.Cued(rd.At(k), lexicon.CueQueryFirst)
}

// massOfTree reads "wet drum, 300 kg of oak", where no other mass is told, as what the
// piece weighs, and not the one behind "limit".
func massOfTree(rd *reading.Reading, i int) bool {
	tree := rd.Past(i+1, +1, lexicon.MarkMade|lexicon.MarkIs)
	alone := !rd.AnyAt(func(k int) bool { return k != i && gear.Heavy(rd, k) })
	return alone && tree > i+1 && !rd.At(rd.WordsBefore(i)).LeadsTo(parser.Limit) && rd.Elems[i].Fig.Dim == parser.DimMass && rd.TermAt(tree).Tree != nil
}

// isOf reads "the rope is now 6 tonne" and "rope strength 6 tonne": of which part
// a mass is told, where it is told of no piece and of no weight.
func isOf(rd *reading.Reading, i int) scan.Part {
	k, is := i-1, false
	for gear.Part(rd.At(k)) == "" && (rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkRating) && !rd.At(k).Marked(lexicon.MarkAt|lexicon.MarkRelation) || rd.At(k).Polite() && !stops.Person(rd, k)) {
		is = is || rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkRating)
		k--
	}
	of := func(i int) bool { return rd.Elems[i].Piece() || rd.At(i).Plays(parser.Weight) }
	if rd.Elems[i].Fig.Dim == parser.DimCount || !is && !rd.At(k).Marked(lexicon.MarkRating) || rd.AnyAt(of) || pulls.RopeTurned(rd) && pulls.InLine(rd, i) {
		return ""
	}
	return gear.Part(rd.At(k))
}
