package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// DrumSizes finds how thick a drum is, told behind it.
func DrumSizes(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig != nil && e.Fig.Told == "" && e.Fig.Claimed == "" && (drumThick(rd, i) || drumTold(rd, i) || ofSizedDrum(rd, i) || ofPost(rd, i)) {
			e.Fig.Told = parser.DrumAcross
		}
	}
}

// drumThick says whether the number at i is how thick a drum is: "the bollard we have is
// aluminum 6 inch". "The log on the drum is 14 in" tells of the log.
func drumThick(rd *reading.Reading, i int) bool {
	if !thickAsDrum(rd, i) {
		return false
	}
	comma := i - 2
	for rd.At(comma).Pause == 0 && rd.At(comma).Polite() {
		comma--
	}
	if rd.At(i-1).Marked(lexicon.MarkArticle) && rd.At(comma).Pause == 2 && Part(rd.At(comma-1)) == lexicon.PartDrum && !woodNext(rd, i+1) {
		return true // "the big drum, the 8 inch"
	}
	if bigOne(rd, i) {
		return true
	}
	k := pastMetal(rd, rd.Past(i-1, -1, lexicon.MarkArticle))
	before := rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkPronoun)
	begins := before < 0 || rd.At(before).Marked(lexicon.MarkAnd) || rd.At(before).Pause > 0 || rd.At(before).Polite()
	if Part(rd.At(k)) != lexicon.PartDrum || !begins || k == i-1 && AsksFor(rd, parser.AskRope) {
		return false
	}
	end := i + 1
	for rd.Cued(rd.At(end), lexicon.CueMetal) || rd.At(end).Plays(parser.Diameter) && rd.At(end).Fig == nil && !rd.At(end).Piece() {
		end++
	}
	return rd.EndsBreath(end)
}

// bigOne says whether the number at i goes on behind which of the drums it is: "the drum is
// the big one, 8 inch I believe", "el tambor el chico, como 4 pulgadas".
func bigOne(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkAt|lexicon.MarkRelation)
	for rd.At(k).Pause == 0 && (rd.TermAt(k).Note == "about" || rd.At(k).Fig == nil && rd.At(k).Polite()) {
		k--
	}
	if rd.At(k).Pause != 2 || woodNext(rd, i+1) {
		return false
	}
	which, named := k-1, false
	for rd.At(which).Fig == nil && rd.At(which).Pause == 0 && (rd.At(which).Marked(lexicon.MarkArticle|lexicon.MarkAdjective) || rd.In.Numbers[rd.Word(rd.At(which))].Value == 1) {
		named = named || rd.At(which).Marked(lexicon.MarkArticle)
		which--
	}
	drum := which
	if rd.At(which).Marked(lexicon.MarkIs) || named && rd.At(which).Pause == 2 {
		named, drum = true, which-1
	}
	before := rd.Past(drum-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkPronoun)
	begins := before < 0 || rd.At(before).Marked(lexicon.MarkAnd) || rd.At(before).Pause > 0 || rd.At(before).Polite() // not "the log on the drum"
	return begins && named && which < k-1 && Part(rd.At(drum)) == lexicon.PartDrum
}

// drumTold says whether the number at i is told of a drum, or of the post that stands for
// one, that begins what is said: "the post is the small kind, like 4 inch".
func drumTold(rd *reading.Reading, i int) bool {
	if !thickAsDrum(rd, i) || woodNext(rd, i+1) && !rd.At(i+1).Plays(parser.Diameter) {
		return false
	}
	k, told := i-1, false
	for k >= 0 && rd.At(k).Fig == nil && !drumNoun(rd, k) {
		e := rd.At(k)
		comma := e.Pause == 2 && !told
		told = told || comma
		if !comma && !ofDrumSize(rd, k) {
			return false
		}
		k--
	}
	if k < 0 || k == i-1 || !drumNoun(rd, k) {
		return false
	}
	before := k - 1
	for before >= 0 && rd.At(before).Pause == 0 && (ofDrumSize(rd, before) || rd.At(before).Marked(lexicon.MarkPronoun) || rd.Cued(rd.At(before), lexicon.CueOwns) || rd.Cued(rd.At(before), lexicon.CueUs) || rd.At(before).Plays(parser.Wraps)) {
		before--
	}
	if before >= 0 && rd.At(before).Pause == 0 && !rd.At(before).Marked(lexicon.MarkAnd) && !rd.At(before).Polite() {
		return false
	}
	end := i + 1
	for rd.At(end).Pause == 0 && end < len(rd.Elems) && (rd.At(end).Plays(parser.Diameter) || rd.Cued(rd.At(end), lexicon.CueSortOf) || rd.Cued(rd.At(end), lexicon.CueMetal)) {
		end++
	}
	return rd.EndsBreath(end)
}

// drumNoun says whether the word at i names a drum, or a post where a rope is lowered on.
func drumNoun(rd *reading.Reading, i int) bool {
	lowers := rd.Before.Intent == parser.AskLower || AsksFor(rd, parser.AskLower) || rd.AnyAt(func(k int) bool { return rd.Elems[k].Plays(parser.Wraps) || rd.Elems[k].Plays(parser.People) })
	return Part(rd.At(i)) == lexicon.PartDrum || lowers && rd.Cued(rd.At(i), lexicon.CueWrapPost)
}

// ofDrumSize says whether the word at i leads from a drum to its size.
func ofDrumSize(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Pause == 0 && (e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAdjective) || rd.TermAt(i).Note == "about" || rd.Cued(e, lexicon.CueMerely) || rd.Cued(e, lexicon.CueSortOf) || rd.Cued(e, lexicon.CueBuilt) || rd.Cued(e, lexicon.CueMetal))
}

// thickAsDrum says whether a drum may be as thick as the number at i tells.
func thickAsDrum(rd *reading.Reading, i int) bool {
	const thinnest, thickest = 0.025, 0.5
	fig := rd.Elems[i].Fig
	return fig.Short() && fig.Low >= thinnest && fig.High <= thickest && !rd.At(i+1).Cross && !rd.At(i-1).Cross
}

// ofSizedDrum says whether the number at i can only be how thick the drum is: a follow-up
// that says a drum is big or small, and tells of nothing else, "its a big drum, 8 inch".
func ofSizedDrum(rd *reading.Reading, i int) bool {
	if rd.First || !thickAsDrum(rd, i) {
		return false
	}
	sized := false
	for k, e := range rd.Elems {
		part := Part(e)
		switch {
		case e.Fig != nil && k != i, e.Piece(), part != "" && part != lexicon.PartDrum:
			return false
		case k < i && rd.TypedBefore(k+1, lexicon.CueDrumSize):
			sized = true
		}
	}
	return sized
}

// ofPost says whether the number at i is how thick a post is: no piece is one, and what a crew
// measures of a post by the inch is what the rope winds round, "the post is like 4 inch". What
// is told of wood or other gear in the same breath is of those.
func ofPost(rd *reading.Reading, i int) bool {
	if !thickAsDrum(rd, i) || AsksFor(rd, parser.AskSwing) {
		return false
	}
	from, to := rd.Span(rd.Elems[i].Start, func(e reading.Element) bool { return e.Pause > 0 })
	post := false
	for k, e := range rd.Elems {
		if e.End <= from || e.Start >= to {
			continue
		}
		if e.Fig != nil && k != i || e.Piece() || rd.TermAt(k).Tree != nil || Part(e) != "" || rd.Cued(e, lexicon.CuePiece) {
			return false
		}
		post = post || rd.Cued(e, lexicon.CueDrumPost)
	}
	return post
}

// woodNext says whether the number before the element at i is one of wood: "on the drum,
// the 8 inch limb".
func woodNext(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Fig != nil || e.Piece() || rd.TermAt(i).Tree != nil || rd.TermAt(i).Unnamed || rd.Cued(e, lexicon.CuePiece) || e.Plays(parser.Diameter) || e.Plays(parser.Length)
}

// pastMetal goes back over what a drum is made of and whose it is: "the bollard we have
// is aluminum 6 inch".
func pastMetal(rd *reading.Reading, i int) int {
	k := PastIs(rd, i)
	for rd.Cued(rd.At(k), lexicon.CueMetal) {
		k = PastIs(rd, k-1)
	}
	if !rd.TypedBefore(k+1, lexicon.CueOwns) {
		return k
	}
	const mostWords = 3 // "que tenemos", "we have got"
	for j := k; j > k-mostWords && rd.At(j).Fig == nil && rd.At(j).Pause == 0; j-- {
		if rd.At(j - 1).Marked(lexicon.MarkGear) {
			return j - 1
		}
	}
	return k
}
