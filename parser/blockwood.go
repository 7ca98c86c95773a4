package parser

import "slices"

// Wood that a block hangs on is an anchor and no piece: "hang the block on an 8 in red
// maple limb", "12 in at the block". What it is loaded with is lowered through that
// block.

// NoteBlockHung is the note of an anchor that a block hangs on.
const NoteBlockHung = "block-hung"

// blockWood finds such wood, where nothing is told of wraps or of a fall.
func (rd *reading) blockWood() {
	if rd.worded(Wraps) || rd.asksFor(AskDrop) || rd.asksFor(AskRope) || rd.asksFor(AskRaise) || !rd.anyAt(rd.heavy) {
		return
	}
	for i := range rd.elems {
		if at, thick := rd.woodBehind(i); thick {
			rd.makeAnchor(i, at)
			return
		}
	}
	for i := range rd.elems {
		if at := rd.thickAt(i); at >= 0 && !rd.asksFor(AskAnchor) {
			rd.thickAtBlock(i, at)
			return
		}
	}
}

// thickAt is where it is said that the thickness at i is that at the block, -1 for
// nowhere: "35 cm birch at the block", "where its about 12 in".
func (rd *reading) thickAt(i int) int {
	if !rd.elems[i].fig.short() {
		return -1
	}
	j, k := i+1, i-1
	for rd.termAt(j).tree != nil || rd.termAt(j).shape == Log || rd.at(j).marked(markIs|markArticle) {
		j++
	}
	for rd.at(k).marked(markIs|markAdverb) && !rd.termAt(k).atAnchor || rd.at(k).polite() && rd.at(k).pause == 0 && !rd.termAt(k).atAnchor || rd.termAt(k).note == "about" {
		k--
	}
	switch {
	case rd.termAt(j).atAnchor:
		return j
	case rd.termAt(k).atAnchor:
		return k
	}
	return -1
}

// woodBehind reads "block on a 9 in white oak limb" at i: where the word for the
// limb or the stem stands, -1 where only a tree is named, and whether it is told how
// thick it is.
func (rd *reading) woodBehind(i int) (shape int, thick bool) {
	part := rd.elems[i].part()
	block := part == partBlock && !Redirecting(rd.termAt(i).block) && rd.at(i+1).marked(markIn|markRelation|markMade)
	drum := part == partDrum && rd.at(i+1).marked(markIn) // "pongo el tambor en un pino vivo de 14 in"
	if !block && !drum && !rd.termAt(i).hangsBlock {
		return -1, false
	}
	shape = -1
	named := false
	for k := i + 1; k < len(rd.elems) && rd.elems[k].pause == 0; k++ {
		e := rd.elems[k]
		switch {
		case e.fig.short():
			thick = true
		case rd.termAt(k).shape != "" && shape < 0:
			shape, named = k, true
		case rd.termAt(k).tree != nil:
			named = true
		case !e.marked(markArticle|markAdjective|markMade|markIs|markIn|markRelation) && !e.polite() && rd.termAt(k).condition == "":
			return shape, thick && named
		}
	}
	return shape, thick && named
}

// makeAnchor takes the wood at shape for what the block at i hangs on.
func (rd *reading) makeAnchor(i, shape int) {
	note := NoteAnchorSpar
	if shape >= 0 {
		if rd.termAt(shape).shape == Limb {
			note = NoteAnchorLimb
		}
		rd.alter(shape, func(t *term) { *t = term{note: NoteBlockHung, marks: t.marks & markAdjective} })
	}
	rd.alter(i, func(t *term) { *t = term{intent: AskAnchor, note: note, part: t.part} })
	rd.elsewhereStrong(i)
}

// thickAtBlock takes the thickness at i for that of the stem where the block hangs: a
// thickness at the height of the chest is of no more use then.
func (rd *reading) thickAtBlock(i, at int) {
	note, hung := NoteAnchorSpar, NoteBlockHung
	for k := range rd.elems {
		switch t := rd.termAt(k); {
		case rd.heavy(k) && rd.pullsOnStem(k):
			hung = ""
		case k <= i+1 && t.shape == Limb:
			note = NoteAnchorLimb
			fallthrough
		case k <= i+1 && t.shape != "":
			rd.alter(k, func(t *term) { t.shape = "" })
		}
	}
	rd.elems[i].fig.sure = Diameter
	rd.alter(at, func(t *term) { *t = term{intent: AskAnchor, note: note} })
	rd.elsewhereStrong(at)
	for k := len(rd.elems) - 1; k > 0; k-- {
		if rd.termAt(k).ask == BreastHigh && rd.elems[k-1].fig.short() {
			rd.pass(k-1, k+1)
			if k < at {
				at -= 2
			}
		}
	}
	if e := rd.at(at); hung != "" {
		rd.elems = slices.Insert(rd.elems, at+1, element{start: e.end, end: e.end, term: &term{note: hung}})
	}
}

// pullsOnStem says whether the number at i is what pulls on the stem itself, and no
// piece that is lowered through the block: "side pull 800 lb", "3000 lb on it".
func (rd *reading) pullsOnStem(i int) bool {
	j := rd.past(i+1, +1, markIn|markArticle)
	onIt := j > i+1 && (rd.at(j).marked(markPronoun) || rd.at(j).part() == partBlock) || rd.cued(rd.at(i+1), cuePull)
	before := rd.back(i - 1)
	for rd.at(before).marked(markIs|markAdverb) || rd.termAt(before).note == "about" {
		before--
	}
	return onIt || rd.termAt(i+1).pullsAside || rd.termAt(before).pullsAside
}

// elsewhereStrong leaves the words without a say that would ask about gear or a
// lower: "strong enough", "will it hold".
func (rd *reading) elsewhereStrong(but int) {
	for k := range rd.elems {
		switch t := rd.termAt(k); {
		case k == but:
		case t.intent == AskGear && t.strength == "", t.intent == AskLower && t.note == "":
			rd.alter(k, func(t *term) { t.intent = "" })
		}
	}
}
