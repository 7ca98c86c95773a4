package stops

import (
	"strings"

	"heft/parser/lexicon"
	"heft/parser/reading"
)

// That somebody is hurt is told by what was done and to what part of them: "caught
// his arm", "my hand is stuck". Wood and rope are caught and stuck as well, so
// neither word stops by itself.

// Hurt says whether the word at i tells of harm to somebody or to a part of them.
func Hurt(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return (t.Harms || t.MayHarm && !overCut(rd, i)) && (harmed(rd, i, -1) || harmed(rd, i, +1))
}

// overCut reads "the block's 12 ft over his head, right over the cut": where the
// cut is in the wood.
func overCut(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkArticle)
	noun := j < i-1 || strings.HasPrefix(rd.Word(rd.Elems[i]), "the ")
	return noun && (rd.At(j).Marked(lexicon.MarkRelation) || rd.TermAt(j).Nears)
}

// harmed looks for whom the word at i harms, up to five words on one side of it.
func harmed(rd *reading.Reading, i, step int) bool {
	t, beside := rd.TermAt(i), true
	for k := i + step; k != i+6*step; k += step {
		if rd.At(max(k, k-step)).Pause > 0 {
			return false
		}
		if (t.Harms || beside) && OfBody(rd, k) || t.Maims && beside && wounded(rd, k) {
			return true
		}
		beside = beside && LeadsTo(rd, k)
	}
	return false
}

// OfBody says whether the element at i is a part of somebody's body.
func OfBody(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return t.Body || t.BodyOf && (rd.TermAt(i-1).Whose || Person(rd, i-1))
}

// wounded says whether the element at i is somebody, and not what is theirs:
// "the neighbor's roof".
func wounded(rd *reading.Reading, i int) bool {
	owns := rd.At(i+1).Marked(lexicon.MarkPlace|lexicon.MarkObstacle) || rd.At(i+1).Piece()
	return (Person(rd, i) || rd.At(i).Marked(lexicon.MarkPerson)) && !owns
}

// LeadsTo says whether the element at i may stand between a blow and whom it
// struck: "landed right on the".
func LeadsTo(rd *reading.Reading, i int) bool {
	return rd.At(i).Marked(lexicon.MarkArticle|lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkIn|lexicon.MarkWhere|lexicon.MarkRelation|lexicon.MarkAdverb|lexicon.MarkAdjective|lexicon.MarkMade) || rd.At(i).Polite() || Person(rd, i) && OfBody(rd, i+1)
}
