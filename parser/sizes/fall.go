package sizes

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BelowCut finds how far a block is below the cut: "block 40 cm below the cut".
func BelowCut(rd *reading.Reading) {
	belowBare(rd)
	climberAtCut(rd)
	for i := 0; i < len(rd.Elems); i++ {
		if !rd.TermAt(i).BelowCut || !gear.BlockBefore(rd, i+1) && !BlockAt(rd, i-2) {
			continue
		}
		rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskDrop, false })
		at := rd.Past(rd.Forth(i+1), +1, lexicon.MarkAt)
		switch {
		case places.LengthAt(rd, i-1):
			rd.Elems[i-1].Fig.Told = parser.BlockBelow
		case places.LengthAt(rd, at) && at > i+1 && rd.EndsBreath(at+1):
			rd.Elems[at].Fig.Told = parser.BlockBelow
		}
	}
}

// belowBare reads "negative rig, block a foot under": below what needs no saying
// where something falls onto its rope.
func belowBare(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskDrop) {
		return
	}
	for i := range rd.Elems {
		if rd.Cued(rd.Elems[i], lexicon.CueBelow) && places.LengthAt(rd, i-1) && gear.BlockBefore(rd, i-1) && rd.EndsBreath(i+1) && !rd.TermAt(rd.Back(i-2)).Hung {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{BelowCut: true} })
		}
	}
}

// climberAtCut reads "i'm at 48 ft, block right under the cut": who cuts is as high
// as the block, where no other height is told.
func climberAtCut(rd *reading.Reading) {
	under := func(i int) bool { return rd.TermAt(i).BelowCut && (gear.BlockBefore(rd, i+1) || BlockAt(rd, i-2)) }
	if !rd.AnyAt(under) || rd.AnyAt(rd.Is(Hitched)) {
		return
	}
	for i := range rd.Elems {
		if at := rd.At(i - 1); places.LengthAt(rd, i) && gear.Far(rd, i) && at.Marked(lexicon.MarkPerson) && at.Marked(lexicon.MarkPlace) {
			rd.Elems[i].Fig.Told = parser.HitchHeight
		}
	}
}

// below says whether the number is how far a block is below the cut.
func below(f *reading.Figure) bool { return f != nil && f.Told == parser.BlockBelow }

// BlockAt says whether the words at i lead from a block to a height: "polea a".
func BlockAt(rd *reading.Reading, i int) bool { return rd.At(i).LeadsTo(parser.HitchHeight) }

// fallBehind says whether the words at i say that what stands before them is the
// fall: "120 kg a metre before it catches" tells no weight of a metre.
func fallBehind(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Term != nil && e.LooksBack(parser.DropHeight)
}

// single are the units that are told without a number: "a foot".
var single = []string{"foot", "metre", "meter"}

// SingleUnits reads "a foot under the cut" as one foot.
func SingleUnits(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		a, e := rd.Elems[i-1], rd.Elems[i]
		if rd.Word(a) != "a" || !slices.Contains(single, rd.Word(e)) || !e.Marked(lexicon.MarkUnit) || rd.At(i-2).Fig != nil && !fallBehind(rd, i+1) {
			continue
		}
		u := rd.In.Units[rd.Word(e)]
		f := &reading.Figure{Low: u.Factor, High: u.Factor, Unit: u, Dim: parser.DimLength, Start: a.Start, End: e.End}
		rd.Elems = slices.Replace(rd.Elems, i-1, i+1, reading.Element{Start: a.Start, End: e.End, Fig: f})
	}
}

// RunsInstead settles "let it run instead of snubbing it" at i, and the other way
// round: the answer tells what both do.
func RunsInstead(rd *reading.Reading, i int) bool {
	held := rd.TermAt(i+1).Note == parser.Snubbed
	other := parser.Snubbed
	if held {
		other = parser.LetRun
	}
	if !held && rd.TermAt(i+1).Note != parser.LetRun || !rd.AnyAt(func(k int) bool { return rd.TermAt(k).Note == other }) {
		return false
	}
	rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
	if held && rd.AnyAt(func(k int) bool {
		return rd.TermAt(k).Note == parser.LetRun && (gear.Far(rd, k+1) || gear.Far(rd, k-1))
	}) {
		rd.Alter(i+1, func(t *scan.Term) { t.Note = "" }) // "instead of snubbing it let it run 6 ft"
	}
	return true
}

// DropTold reads "only 6 ft, drop 3 ft, rope breaks at 9,000 lb": what stands
// between the word for a fall and the end of a breath is the fall, whatever else
// is told around it.
func DropTold(rd *reading.Reading) {
	for i := range rd.Elems {
		lead, apart := rd.At(i-1), rd.At(i-2).Pause > 0
		if apart && places.LengthAt(rd, i) && gear.Far(rd, i) && rd.At(i+1).Pause > 0 && lead.Term != nil && lead.LeadsTo(parser.DropHeight) && !lead.LeadsTo(parser.RunLength) {
			rd.Elems[i].Fig.Told = parser.DropHeight
			rd.Alter(i-1, func(t *scan.Term) { t.Roles = nil }) // it has its number
		}
	}
}

// Hitched says whether the element at i has words of a hitch that say nothing
// else, other than "up" and "high".
func Hitched(rd *reading.Reading, i int) bool {
	for _, r := range reading.RolesOf(rd.TermAt(i), parser.HitchHeight) {
		if !r.Soft && (gear.Far(rd, i-1) || gear.Far(rd, rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkBound))) {
			return true
		}
	}
	return false
}

// OfPlace reads "a 12 ft high fence", "a 60 ft red oak tree", "1/2 in rope".
func OfPlace(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if rd.At(i+1).Marked(lexicon.MarkTall) && !gear.ShapedFrom(rd, 0, parser.Log) || gear.Height(rd, i) {
		return true
	}
	if rd.At(i+1).Marked(lexicon.MarkFine) && fig.Far() {
		return true // "a 5 pies de la punta"
	}
	j := i + 1
	for rd.At(j).Marked(lexicon.MarkAdjective) || rd.At(j).Piece() && rd.At(j).Term.Shape == "" {
		j++
	}
	e := rd.At(j)
	switch {
	case e.Marked(lexicon.MarkPlace) && j == i+1 && !rd.At(i-1).Marked(lexicon.MarkArticle|lexicon.MarkRelation) && rd.At(rd.Past(j+1, +1, lexicon.MarkIs)).Fig.Far():
		return false // "22 ft, roof 12 ft" without the comma
	case e.Marked(lexicon.MarkPlace|lexicon.MarkPart) || gear.OfTree(rd, i, j):
		return true
	case gear.Heavy(rd, i) && gear.Part(e) == lexicon.PartBlock && below(rd.At(rd.Past(j+1, +1, lexicon.MarkIs)).Fig):
		return false // "200 lb block 2 ft under the cut" without the comma
	case e.Marked(lexicon.MarkGear):
		small := fig.Dim == parser.DimCount && fig.Low < 1 // "5/8 rope"
		return small || gear.Gearly(fig) || e.Marked(lexicon.MarkLoaded) && !e.Plays(parser.HitchHeight)
	}
	return false
}
