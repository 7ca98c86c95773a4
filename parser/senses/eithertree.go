package senses

import (
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// Crews that cannot tell two trees apart name both: "elm or hackberry", "either red
// oak or white oak, whichever is heavier". They are asked which, with what the piece
// weighs of either. Where they say that they cannot tell, nobody can answer that, and
// the heavier is planned on.

// EitherTrees finds the two trees that it is one of, false where there are more or
// fewer, or nothing says that it is either.
func EitherTrees(rd *reading.Reading) (a, b int, ok bool) {
	a, b = -1, -1
	for i := range rd.Elems {
		switch t := rd.TermAt(i).Tree; {
		case t == nil, a >= 0 && t.Sci == rd.TermAt(a).Tree.Sci, b >= 0 && t.Sci == rd.TermAt(b).Tree.Sci:
		case a < 0:
			a = i
		case b >= 0:
			return a, b, false
		default:
			b = i
		}
	}
	if b < 0 || !turning.OtherTree(rd, a, b) {
		return a, b, false
	}
	return a, b, OrBetween(rd, a, b) || HeavierWanted(rd)
}

// HeavierWanted says whether the one that weighs more is wanted.
func HeavierWanted(rd *reading.Reading) bool {
	return rd.Heavier || rd.AnyAt(func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueWhichever) })
}

// OrBetween says whether nothing but "or" stands between two elements, or "maybe" between
// or before both: "ash maybe elm", "could be oak could be ash".
func OrBetween(rd *reading.Reading, a, b int) bool {
	joined := false
	for k := a + 1; k < b; k++ {
		e := rd.Elems[k]
		is, join := rd.In.Joins[rd.Word(e)]
		mayBe := rd.Cued(e, lexicon.CueMayBe)
		if joined = joined || mayBe || join && is == scan.Or; !mayBe && !e.Polite() && !e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkPronoun) && rd.TermAt(k).Note != "about" {
			return false
		}
	}
	return joined
}

// EitherWords takes the doubt from the words that only say that it is one of two
// trees: "either", "the heavier one".
func EitherWords(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.Elems[i], lexicon.CueWhichever) && !rd.Cued(rd.Elems[i], lexicon.CueEither) {
		return false
	}
	next, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	if _, _, ok := EitherTrees(rd); !ok || rd.In.Cued(next, lexicon.CueThan) || rd.At(i+1).Fig != nil {
		return false
	}
	end := i + 1
	if two := rd.Past(end, +1, lexicon.MarkIs|lexicon.MarkRelation|lexicon.MarkArticle); two > end && places.Bare(rd.At(two).Fig, 2) {
		end = two + 1 // "the heavier of the two"
	}
	turning.LeaveOut(rd, i, end)
	return true
}
