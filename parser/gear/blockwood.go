package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// blockWood finds such wood, where nothing is told of wraps or of a fall.
func blockWood(rd *reading.Reading) {
	if rd.Worded(parser.Wraps) || AsksFor(rd, parser.AskDrop) || AsksFor(rd, parser.AskRope) || AsksFor(rd, parser.AskRaise) || !rd.AnyAt(rd.Is(Heavy)) {
		return
	}
	for i := range rd.Elems {
		if at, thick := woodBehind(rd, i); thick {
			makeAnchor(rd, i, at)
			return
		}
	}
	for i := range rd.Elems {
		switch at := thickAt(rd, i); {
		case at >= 0 && !AsksFor(rd, parser.AskAnchor):
			thickAtBlock(rd, i, at)
			return
		case at >= 0 && lowersOver(rd):
			hangBlock(rd, at)
			return
		}
	}
}

// lowersOver says whether something is lowered over the block, and not hung on the wood.
func lowersOver(rd *reading.Reading) bool {
	return AsksFor(rd, parser.AskLower) && !rd.AnyAt(func(k int) bool { return Heavy(rd, k) && pullsOnStem(rd, k) })
}

// hangBlock notes behind the words at i that a block hangs there.
func hangBlock(rd *reading.Reading, i int) {
	end := rd.Elems[i].End
	rd.Elems = slices.Insert(rd.Elems, i+1, reading.Element{Start: end, End: end, Term: &scan.Term{Note: parser.NoteBlockHung}})
}

// thickAt is where it is said that the thickness at i is that at the block, -1 for
// nowhere: "35 cm birch at the block", "where its about 12 in".
func thickAt(rd *reading.Reading, i int) int {
	if !rd.Elems[i].Fig.Short() {
		return -1
	}
	j, k := i+1, i-1
	for rd.TermAt(j).Tree != nil || rd.TermAt(j).Shape == parser.Log || rd.At(j).Marked(lexicon.MarkIs|lexicon.MarkArticle) {
		j++
	}
	for rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkAdverb) && !rd.TermAt(k).AtAnchor || rd.At(k).Polite() && rd.At(k).Pause == 0 && !rd.TermAt(k).AtAnchor || rd.TermAt(k).Note == "about" {
		k--
	}
	switch {
	case rd.TermAt(j).AtAnchor:
		return j
	case rd.TermAt(k).AtAnchor:
		return k
	}
	return -1
}

// woodBehind reads "block on a 9 in white oak limb" at i: where the word for the
// limb or the stem stands, -1 where only a tree is named, and whether it is told how
// thick it is.
func woodBehind(rd *reading.Reading, i int) (shape int, thick bool) {
	part := Part(rd.Elems[i])
	block := part == lexicon.PartBlock && !parser.Redirecting(rd.TermAt(i).Block) && rd.At(i+1).Marked(lexicon.MarkIn|lexicon.MarkRelation|lexicon.MarkMade)
	drum := part == lexicon.PartDrum && rd.At(i+1).Marked(lexicon.MarkIn) // "pongo el tambor en un pino vivo de 14 in"
	if !block && !drum && !rd.TermAt(i).HangsBlock {
		return -1, false
	}
	shape = -1
	named := false
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause == 0; k++ {
		e := rd.Elems[k]
		switch {
		case e.Fig.Short():
			thick = true
		case rd.TermAt(k).Shape != "" && shape < 0:
			shape, named = k, true
		case rd.TermAt(k).Tree != nil:
			named = true
		case !e.Marked(lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkIn|lexicon.MarkRelation) && !e.Polite() && rd.TermAt(k).Condition == "":
			return shape, thick && named
		}
	}
	return shape, thick && named
}

// makeAnchor takes the wood at shape for what the block at i hangs on.
func makeAnchor(rd *reading.Reading, i, shape int) {
	note := parser.NoteAnchorSpar
	if shape >= 0 {
		if rd.TermAt(shape).Shape == parser.Limb {
			note = parser.NoteAnchorLimb
		}
		rd.Alter(shape, func(t *scan.Term) { *t = scan.Term{Note: parser.NoteBlockHung, Marks: t.Marks & lexicon.MarkAdjective} })
	}
	rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskAnchor, Note: note, Part: t.Part} })
	elsewhereStrong(rd, i)
}

// thickAtBlock takes the thickness at i for that of the stem where the block hangs: a
// thickness at the height of the chest is of no more use then.
func thickAtBlock(rd *reading.Reading, i, at int) {
	note, hung := parser.NoteAnchorSpar, true
	for k := range rd.Elems {
		switch t := rd.TermAt(k); {
		case Heavy(rd, k) && pullsOnStem(rd, k):
			hung = false
		case k <= i+1 && t.Shape == parser.Limb:
			note = parser.NoteAnchorLimb
			fallthrough
		case k <= i+1 && t.Shape != "":
			rd.Alter(k, func(t *scan.Term) { t.Shape = "" })
		}
	}
	rd.Elems[i].Fig.Sure = parser.Diameter
	rd.Alter(at, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskAnchor, Note: note} })
	elsewhereStrong(rd, at)
	for k := len(rd.Elems) - 1; k > 0; k-- {
		if rd.TermAt(k).Ask == parser.BreastHigh && rd.Elems[k-1].Fig.Short() {
			rd.Pass(k-1, k+1)
			if k < at {
				at -= 2
			}
		}
	}
	if hung {
		hangBlock(rd, at)
	}
}

// pullsOnStem says whether the number at i is what pulls on the stem itself, and no
// piece that is lowered through the block: "side pull 800 lb", "3000 lb on it".
func pullsOnStem(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkIn|lexicon.MarkArticle)
	onIt := j > i+1 && (rd.At(j).Marked(lexicon.MarkPronoun) || Part(rd.At(j)) == lexicon.PartBlock) || rd.Cued(rd.At(i+1), lexicon.CuePull)
	before := rd.Back(i - 1)
	for rd.At(before).Marked(lexicon.MarkIs|lexicon.MarkAdverb) || rd.TermAt(before).Note == "about" {
		before--
	}
	return onIt || rd.TermAt(i+1).PullsAside || rd.TermAt(before).PullsAside
}

// elsewhereStrong leaves the words without a say that would ask about gear or a
// lower: "strong enough", "will it hold".
func elsewhereStrong(rd *reading.Reading, but int) {
	for k := range rd.Elems {
		switch t := rd.TermAt(k); {
		case k == but:
		case t.Intent == parser.AskGear && t.Strength == "", t.Intent == parser.AskLower && t.Note == "":
			rd.Alter(k, func(t *scan.Term) { t.Intent = "" })
		}
	}
}
