package stops

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What tells of harm, "cracked", "cut", "bent", is said of gear as of wood: by what it
// stands beside, gear goes out of use or the tree is looked at.

// OfBadGear says whether the word at i tells that gear is damaged: "a melted
// rope", "the carabiner has a crack", "a cut in the sling".
func OfBadGear(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Damaged || gear.RopeBent(rd, i) {
		return false
	}
	k := i - 1
	for k >= 0 && i-k < 6 && !Kit(rd, k) && gear.Strength(rd.At(k)) == "" && tells(rd, k) {
		k--
	}
	if gear.Strength(rd.At(k)) != "" {
		return true // "a 9,000 lb MBS with a little fuzz on it"
	}
	n := i + 1
	for n < i+4 && (rd.At(n).Fig != nil || rd.At(n).Marked(lexicon.MarkAdjective|lexicon.MarkArticle)) {
		n++ // "a fuzzy 5/8 rope"
	}
	switch {
	case denied(rd, i):
		return true
	case rd.At(k).Piece(), rd.At(i + 1).Piece(), woodOfKit(rd, i, k):
		return false // "the limb is cracked on the block", "the rope is on a cracked limb"
	case Kit(rd, k), Kit(rd, n), ofGearAlone(rd, i), restates(rd, i):
		return true
	default:
		return !hasIt(rd, k, i) && inGear(rd, i)
	}
}

// hasIt says whether the tree at k has what is told at i: "the tree has a crack by the block".
func hasIt(rd *reading.Reading, k, i int) bool {
	for j := k + 1; j <= i; j++ {
		if rd.At(j).Pause != 0 {
			return false
		}
	}
	return k+1 < i && ofTree(rd, k)
}

// woodOfKit reads "the limb for the block has a crack": wood that is told by the gear at k
// on it, where the word at i may be said of either.
func woodOfKit(rd *reading.Reading, i, k int) bool {
	of := rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)
	leads := rd.At(of).Marked(lexicon.MarkRelation) || rd.Cued(rd.At(of), lexicon.CueFor)
	return rd.TermAt(i).Stop == parser.Unsound && k < i && Kit(rd, k) && leads && rd.At(of).Pause == 0 && ofTree(rd, of-1)
}

// ofTree says whether the element at i is a tree or wood of one.
func ofTree(rd *reading.Reading, i int) bool { return Wooden(rd, i) || rd.TermAt(i).Tree != nil }

// inGear reads "a crack in the block", "a hairline in the cheek of the pulley" and "a crack
// by the rivet": where the harm at i is in gear or in a part of it, whatever that is called.
func inGear(rd *reading.Reading, i int) bool {
	const most = 5
	lead := rd.At(i + 1)
	within := lead.Marked(lexicon.MarkIn | lexicon.MarkMade | lexicon.MarkWhere)
	if !within && !lead.Marked(lexicon.MarkRelation|lexicon.MarkAt) {
		return false
	}
	first := rd.Past(i+2, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
	for k := i + 2; k < i+2+most && rd.At(k).Pause == 0 && !ofTree(rd, k); k++ {
		before := rd.At(rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective))
		of := before.Marked(lexicon.MarkRelation) && before.Marked(lexicon.MarkIs)
		switch {
		case rd.TermAt(k).OfKit && k == first:
			return true
		case Kit(rd, k) && within && (k == first || of):
			return !ofTree(rd, k+1) // "a crack in the block tree"
		}
	}
	return false
}

// ofGearAlone says whether gear is named before the word at i in its clause, every word
// between them known and none of wood: "one of the biners on the tag line has a crack".
// A crack beside the block is one of what the block hangs on.
func ofGearAlone(rd *reading.Reading, i int) bool {
	const most = 8
	wood := func(k int) bool { return Wooden(rd, k) || rd.TermAt(k).Tree != nil || rd.TermAt(k).Block != "" }
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause == 0; k++ {
		if wood(k) {
			return false
		}
	}
	named := false
	for k := i - 1; k >= max(0, i-most) && rd.Elems[k].Pause == 0; k-- {
		e := rd.Elems[k]
		if !next(rd, k) || wood(k) || e.Fig != nil || e.Marked(lexicon.MarkAnd) || e.Marked(lexicon.MarkObstacle|lexicon.MarkStanding) && !Kit(rd, k) {
			return false
		}
		before := rd.At(rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective))
		of := before.Marked(lexicon.MarkRelation) && before.Marked(lexicon.MarkIs)
		named = named || Kit(rd, k) && (of || !before.Marked(lexicon.MarkRelation|lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkAt))
	}
	return named
}

// restates reads "the sheave is cracked, just a hairline": where the word at i closes what
// was told of gear, and no wood stands between.
func restates(rd *reading.Reading, i int) bool {
	const most = 9
	for k := i + 1; k < len(rd.Elems); k++ {
		if !rd.Elems[k].Polite() {
			return false
		}
	}
	for k := i - 1; k >= max(0, i-most) && !ofTree(rd, k) && rd.At(k).Fig == nil && !rd.At(k).Piece(); k-- {
		if rd.TermAt(k).Damaged {
			return OfBadGear(rd, k)
		}
	}
	return false
}

// tells says whether the element at i stands between a thing and how it is.
func tells(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	return !e.Marked(lexicon.MarkAt) && (e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkTrailing|lexicon.MarkWhere) || rd.Half(i) || t.State || t.Damaged || e.Polite())
}

// Kit says whether the element at i is gear, and no wood.
func Kit(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	worn := e.Term != nil && e.Term.Note == NoteWorn && !e.Term.Damaged // "old rope"
	return !e.Piece() && (gear.Part(e) != "" || e.Marked(lexicon.MarkCord|lexicon.MarkStation) || worn || rd.TermAt(i).OfKit)
}
