package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// standsIn makes such words ask for the anchor.
func standsIn(rd *reading.Reading) {
	for i := range rd.Elems {
		slung := slungRound(rd, i)
		if !slung && !redirectOn(rd, i) && (!rd.TermAt(i).StandsIn || !treeBefore(rd, i) && !treeIs(rd, i+1)) {
			continue
		}
		rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskAnchor, false })
		redirectUp(rd, i)
		for j := i - 1; slung && j >= 0; j-- {
			if rd.Elems[j].Fig.Short() {
				rd.Elems[j].Fig.Sure = parser.Diameter // of the stem, not of the sling
			}
		}
	}
}

// redirectUp takes the stem that a redirect at i is told to be up on for a spar, and
// a side pull for what is on the stem rather than in the line.
func redirectUp(rd *reading.Reading, i int) {
	up := func(k int) bool { return k > i && Far(rd, k) && rd.At(k+1).Plays(parser.HitchHeight) }
	if parser.Redirecting(rd.TermAt(i).Block) && redirectOn(rd, i) && rd.AnyAt(up) && !ShapedFrom(rd, 0, parser.Limb) {
		rd.Alter(i, func(t *scan.Term) { t.Note = parser.NoteAnchorSpar })
	}
	if rd.AnyAt(func(k int) bool { return Heavy(rd, k) && pullsOnStem(rd, k) }) {
		rd.Alter(i, func(t *scan.Term) { t.Block = "" })
	}
}

// redirectOn reads "redirect is on a 20 cm birch" as a question about the birch,
// where nothing else is asked: that is no piece.
func redirectOn(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkIs)
	on := rd.At(j).Marked(lexicon.MarkWhere | lexicon.MarkIn | lexicon.MarkAt)
	if rd.TermAt(j).Tied {
		on, j = true, rd.Past(j+1, +1, lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkAt)-1
	}
	if !on || !parser.Redirecting(rd.TermAt(i).Block) || AsksFor(rd, parser.AskBlockLoad) {
		return false
	}
	return rd.At(rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)).Fig.Short() && rd.AnyAt(func(k int) bool { return k > j && rd.Elems[k].Piece() })
}

// strongAboveUnion reads "12 in stem, block 6 ft above the crotch, strong enough?"
// as a question about the wood, where no gear has a strength.
func strongAboveUnion(rd *reading.Reading) {
	above := func(i int) bool { return Far(rd, i) && aboveUnion(rd, i) && BlockBefore(rd, i) }
	rated := func(i int) bool { return Strength(rd.Elems[i]) != "" }
	if !rd.AnyAt(above) || rd.AnyAt(rated) || AsksFor(rd, parser.AskRaise) || !rd.AnyAt(rd.Is(Heavy)) {
		return
	}
	for i := range rd.Elems {
		if rd.TermAt(i).Intent == parser.AskGear {
			rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskAnchor, false })
		}
	}
}

// slingsAnchor reads "sling WLL 1 t. can the block anchor take a 300 kg log": where the
// strength of a sling is told, and nothing of any wood, the sling is the anchor, and it
// holds the block.
func slingsAnchor(rd *reading.Reading) {
	wood := func(k int) bool {
		return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimLength || rd.TermAt(k).Tree != nil || rd.TermAt(k).Shape == parser.Limb
	}
	if !Slung(rd) || rd.AnyAt(wood) {
		return
	}
	for i := range rd.Elems {
		if rd.TermAt(i).Intent == parser.AskAnchor {
			rd.Alter(i, func(t *scan.Term) {
				*t = scan.Term{Intent: parser.AskGear, Note: parser.NoteHoldsBlock}
			})
		}
	}
}

// treeBefore says whether a tree or a thickness is named before i in the same
// breath.
func treeBefore(rd *reading.Reading, i int) bool {
	for j := i - 1; j >= 0 && rd.Elems[j].Pause == 0; j-- {
		if rd.Elems[j].Fig.Short() || rd.TermAt(j).Tree != nil {
			return true
		}
	}
	return false
}

// treeIs says whether a tree of a told thickness is what stands in: "the only
// thing for a redirect is a 6 in pear".
func treeIs(rd *reading.Reading, i int) bool {
	thick, tree := false, false
	for k := i + 1; rd.At(i).Marked(lexicon.MarkIs) && k < len(rd.Elems) && rd.Elems[k].Pause == 0; k++ {
		thick = thick || rd.Elems[k].Fig.Short()
		tree = tree || thick && rd.TermAt(k).Tree != nil
	}
	return tree
}

// slungRound reads "25 cm spruce sling at 1 m pulling 8 kN": a sling round a
// stem, where nothing is told of a piece but how thick it is.
func slungRound(rd *reading.Reading, i int) bool {
	if Part(rd.Elems[i]) != lexicon.PartSling || !low(rd, i+2) || !rd.At(i+1).Marked(lexicon.MarkAt) || !treeBefore(rd, i) || Slung(rd) {
		return false
	}
	thick := 0
	for _, e := range rd.Elems {
		if e.Fig.Short() {
			thick++
		}
	}
	return thick == 1 && rd.AnyAt(rd.Is(Heavy)) && !rd.AnyAt(func(k int) bool { return k != i+2 && Far(rd, k) })
}

// low says whether the number at i can be how high a sling is round a stem.
func low(rd *reading.Reading, i int) bool {
	return Far(rd, i) && rd.Elems[i].Fig.High <= parser.HighestSling
}

// slungAt reads "sling at 1 m", "tied at 3 ft" and "at 4 ft" of an anchor that is
// no limb.
func slungAt(rd *reading.Reading, i int) bool {
	limb := ShapedFrom(rd, 0, parser.Limb) || slices.ContainsFunc(rd.Elems, func(e reading.Element) bool { return e.Term != nil && e.Term.Note == parser.NoteAnchorLimb })
	before, next := rd.At(i-2), rd.At(i+1)
	tied := rd.TermAt(i-1).Tied && rd.At(i-1).Plays(parser.HitchHeight)
	switch {
	case limb || !low(rd, i) || !tied && !rd.At(i-1).Marked(lexicon.MarkAt) || next.Piece() || next.Plays(parser.Tie):
		return false
	case tied:
		return true
	case Part(before) == lexicon.PartSling:
		return true
	}
	return len(rd.TermAt(i+1).Roles) == 0 && (before.Pause > 0 || before.Fig != nil)
}

// slungUp reads "sling 80 cm up", which is too much for how thick a sling is, and
// "tied 300 mm up".
func slungUp(rd *reading.Reading, i int) bool {
	const least = 0.2
	fig := rd.Elems[i].Fig
	slung := rd.Past(i-1, -1, lexicon.MarkAt|lexicon.MarkIs)
	tied := rd.TermAt(slung).Tied && rd.At(i+1).Plays(parser.HitchHeight) || slices.Contains(rd.TermAt(i-1).Roles, scan.Role{Field: parser.HitchHeight, Side: lexicon.After})
	return fig.Short() && fig.Low >= least && fig.High <= parser.HighestSling && (tied || Part(rd.At(slung)) == lexicon.PartSling)
}

// anchorIn reads "anclaje en un plátano de 35 cm" where a load is told and
// nothing else that a piece would have.
func anchorIn(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.Elems[i], lexicon.CueAnchorIn) || !rd.AnyAt(rd.Is(Heavy)) {
		return false
	}
	j := i + 1
	for rd.At(j).Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkIn|lexicon.MarkMade) || rd.TermAt(j).Tree != nil {
		j++
	}
	return j > i+1 && rd.At(j).Fig.Short() && !rd.AnyAt(func(k int) bool {
		return Far(rd, k) && rd.Elems[k].Fig.High > parser.HighestSling || rd.Elems[k].Plays(parser.Wraps)
	})
}

// aboveUnion reads "block 6 ft above the crotch" of an anchor: how far the block is
// from where the stem or the lead that holds it springs.
func aboveUnion(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkAdverb)
	return rd.Cued(rd.At(j), lexicon.CueAbove) && rd.At(j).Marked(lexicon.MarkRelation) && rd.Cued(rd.At(rd.Past(j+1, +1, lexicon.MarkArticle)), lexicon.CueHinge)
}

// leverAt makes the number at i how far from its base the anchor is loaded, and
// leaves the words behind it without a say.
func leverAt(rd *reading.Reading, i int) {
	rd.Elems[i].Fig.Sure = parser.HitchHeight
	if ShapedFrom(rd, 0, parser.Limb) {
		rd.Elems[i].Fig.Sure = parser.Tie // a lead bends as a limb does
	}
	for j := i + 1; j < len(rd.Elems); j++ {
		e := rd.Elems[j]
		if e.Term != nil {
			rd.Elems[j].Term = &scan.Term{Marks: e.Term.Marks & (lexicon.MarkRelation | lexicon.MarkArticle | lexicon.MarkAdverb)}
		}
		if rd.Cued(e, lexicon.CueHinge) {
			return
		}
	}
}

// Heavy says whether the number at i is a mass or a force.
func Heavy(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && (fig.Dim == parser.DimMass || fig.Dim == parser.DimForce)
}

// BlockBefore says whether a block is named before i in the same breath,
// or in the words right there.
func BlockBefore(rd *reading.Reading, i int) bool {
	for j := i - 1; j >= 0 && rd.Elems[j].Pause == 0; j-- {
		if Part(rd.Elems[j]) == lexicon.PartBlock {
			return true
		}
		if rd.Elems[j].Piece() {
			return false
		}
	}
	return false
}

// StemHolds takes "the anchor point would be the stem itself" for where the rope hangs, and
// for no shape of the piece, where another is told.
func StemHolds(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if rd.TermAt(i).Shape != parser.Log || rd.TermAt(i).Tree != nil || e.Fig != nil || !ShapedFrom(rd, 0, parser.Limb) {
			continue
		}
		k := i - 1
		for rd.At(k).Pause == 0 && rd.At(k).Fig == nil && (rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAdverb) || rd.At(k).Polite()) {
			k--
		}
		if k < i-1 && rd.Cued(rd.At(k), lexicon.CueAnchorPoint) {
			rd.Alter(i, func(t *scan.Term) { t.Shape, t.Roles = "", nil })
		}
	}
}
