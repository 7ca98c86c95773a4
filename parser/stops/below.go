package stops

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Whoever stands under a piece is in its way, whoever they are and in whatever order
// it is told: "hay un wey abajo de la rama", "under the log there's a dude".

// Under says whether the place at i is under a piece, and somebody is told to be there.
func Under(rd *reading.Reading, i int) bool {
	of := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkMade|lexicon.MarkIs)
	if !rd.TermAt(i).Beneath || rd.Elems[i].Pause > 0 || !hungWood(rd, of) {
		return false
	}
	return whoBefore(rd, i) || whoBehind(rd, of)
}

// hungWood says whether the element at i is what may come down on somebody.
func hungWood(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return rd.At(i).Pause == 0 && (t.Shape != "" || t.Unnamed || rd.At(i).Plays(parser.Weight) || rd.Cued(rd.At(i), lexicon.CueLoad))
}

// whoBefore reads "a lady is right" before a place. Who is denied is not there.
func whoBefore(rd *reading.Reading, i int) bool {
	k := i - 1
	for k >= 0 && rd.At(k).Pause == 0 && !somebodyAt(rd, k) && linksPlace(rd, k) {
		k--
	}
	return rd.At(k).Pause == 0 && somebodyAt(rd, k) && !absent(rd, k) && !ownerAt(rd, k)
}

// whoBehind reads "there's a guy" behind a place: somebody who is only spoken to has
// nothing before them.
func whoBehind(rd *reading.Reading, of int) bool {
	k := of + 1
	for k < len(rd.Elems) && rd.At(k).Pause == 0 && !somebodyAt(rd, k) && linksPlace(rd, k) {
		k++
	}
	return k > of+1 && rd.At(k).Pause == 0 && somebodyAt(rd, k) && !absent(rd, k) && !owns(rd, k)
}

// linksPlace says whether the element at i may stand between somebody and where they are.
func linksPlace(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Marked(lexicon.MarkIs|lexicon.MarkAdverb|lexicon.MarkErect|lexicon.MarkAdjective|lexicon.MarkArticle|lexicon.MarkAt) || rd.TermAt(i).Stays || rd.TermAt(i).Strays || rd.Cued(e, lexicon.CueOwns) || e.Polite() || e.Marked(lexicon.MarkRelation) && rd.At(i+1).Marked(lexicon.MarkIs)
}

// somebodyAt says whether the element at i is somebody else than who speaks. What
// people are called to their face, "dude", is somebody only behind an article or a
// number.
func somebodyAt(rd *reading.Reading, i int) bool {
	if rd.Cued(rd.At(i), lexicon.CueFolk) {
		return rd.At(i-1).Marked(lexicon.MarkArticle) || rd.At(i-1).Fig != nil || rd.At(i-1).Marked(lexicon.MarkUnsure) || rd.Cued(rd.At(i-1), lexicon.CueOwns)
	}
	return Present(rd, i) && !rd.At(i).Marked(lexicon.MarkPronoun|lexicon.MarkGear) && !rd.Cued(rd.At(i), lexicon.CueUs)
}

// absent says whether the person at i is denied: "no guy", "no hay nadie".
func absent(rd *reading.Reading, i int) bool {
	k := i - 1
	for rd.At(k).Pause == 0 && (rd.At(k).Marked(lexicon.MarkArticle|lexicon.MarkIs) || rd.Cued(rd.At(k), lexicon.CueOwns) && !rd.TermAt(k).Lacks || rd.At(k).Polite()) {
		k--
	}
	return rd.At(k).Pause == 0 && (rd.TermAt(k).Lacks || rd.TermAt(k).Denies)
}

// owns says whether what stands behind the person at i is theirs: "the guy's truck".
func owns(rd *reading.Reading, i int) bool {
	return rd.At(i + 1).Marked(lexicon.MarkPlace | lexicon.MarkObstacle | lexicon.MarkStation)
}

// ownerAt reads "el carro del vecino": whose thing stands there.
func ownerAt(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkIs)
	return k < i-1 && (rd.At(k).Marked(lexicon.MarkPlace|lexicon.MarkObstacle|lexicon.MarkStation) || Kit(rd, k))
}
