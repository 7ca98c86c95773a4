package stops

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// A dead tree holds nothing: it is no piece where something is hung on it or tied to
// it, "the block in a dead elm", "colgar de un fresno muerto".

// DeadHold says whether the dead wood at i is what something is to hang on.
func DeadHold(rd *reading.Reading, i int) bool {
	if rd.TermAt(i).Condition != parser.Dead {
		return false
	}
	from, until, named := i, i, false
	for deadName(rd, from-1) {
		from--
		named = named || treeOrAnchor(rd, from)
	}
	for deadName(rd, until+1) {
		until++
		named = named || treeOrAnchor(rd, until)
	}
	shape := shapeAt(rd, from, until+1)
	if shape == "" {
		hung := rd.At(from - 1).Plays(parser.HitchHeight) // "ponemos la polea en el álamo seco"
		return named && (hung || holdsAt(rd, from-1, false) || holdsAt(rd, from-1, true))
	}
	return holdsAt(rd, from-1, true) || shape == parser.Log && blockOnSame(rd, until+1)
}

// deadName says whether the element at i goes on with the name of dead wood.
func deadName(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return rd.At(i).Pause == 0 && rd.At(i).Fig == nil && (t.Tree != nil || t.Condition == parser.Dead || rd.At(i).Marked(lexicon.MarkArticle|lexicon.MarkAdjective))
}

// shapeAt is the shape that is told from one element up to another.
func shapeAt(rd *reading.Reading, from, until int) parser.Shape {
	for k := from - 1; k <= until; k++ {
		if s := rd.TermAt(k).Shape; s != "" && rd.At(k).Pause == 0 {
			return s
		}
	}
	return ""
}

// holdsAt says whether the words up to i tell that what follows holds a block or a
// drum, or, where none is asked for, whatever is tied, hung or anchored.
func holdsAt(rd *reading.Reading, i int, block bool) bool {
	k := i
	for rd.At(k).Pause == 0 && rd.At(k).Fig == nil && onto(rd, k) {
		k--
	}
	part := gear.Part(rd.At(k))
	switch {
	case rd.At(k).Pause > 0 || k == i && !rd.TermAt(k).Leads && !rd.TermAt(k).Anchors && !rd.TermAt(k).Employs:
		return false
	case block:
		return part == lexicon.PartBlock || part == lexicon.PartDrum || rd.At(k).Marked(lexicon.MarkStation) || rd.TermAt(k).Leads && rd.At(k).Plays(parser.HitchHeight) && !rd.TermAt(k).Tied
	}
	return part == lexicon.PartSling || tiesOn(rd, k)
}

// tiesOn says whether the element at i ties, hangs or anchors something.
func tiesOn(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	employs := t.Employs && !rd.At(i).Marked(lexicon.MarkRelation)
	return t.Tied || t.Anchors || t.Hung || employs || rd.Cued(rd.At(i), lexicon.CueHangFrom) || rd.Cued(rd.At(i), lexicon.CueAnchor)
}

// onto says whether the element at i leads from what is hung to what it hangs on.
func onto(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return !tiesOn(rd, i) && gear.Part(e) == "" && (e.Marked(lexicon.MarkIn|lexicon.MarkAt|lexicon.MarkRelation|lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkWhere) || rd.TermAt(i).Leads || e.Polite())
}

// blockOnSame reads "a dead ash stem with the block on the same stem" behind the stem.
func blockOnSame(rd *reading.Reading, i int) bool {
	const words = 3 // between the block's place and the stem
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause == 0; k++ {
		if gear.Part(rd.Elems[k]) != lexicon.PartBlock || !rd.At(k+1).Marked(lexicon.MarkIn) {
			continue
		}
		for j := k + 2; j < k+2+words && rd.At(j).Pause == 0 && rd.At(j).Fig == nil; j++ {
			if rd.At(j).Marked(lexicon.MarkStanding) {
				return true
			}
		}
	}
	return false
}

// DeadAnchor stops where what is to hold as an anchor is told to be dead, or to have lost
// its bark, as only dead wood does.
func DeadAnchor(rd *reading.Reading, q parser.Question) *parser.Ask {
	if q.Intent != parser.AskAnchor {
		return nil
	}
	if d := q.Condition; d != nil && d.Value == parser.Dead {
		return reading.AskAt(parser.Unsound, rd.Text, d.Start, d.End-d.Start)
	}
	for i, e := range rd.Elems {
		if rd.TermAt(i).Note == parser.NoBark {
			return reading.AskAt(parser.Unsound, rd.Text, e.Start, e.End-e.Start)
		}
	}
	return nil
}
