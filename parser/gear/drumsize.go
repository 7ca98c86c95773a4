package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// DrumSizes finds how thick a drum is, told behind it.
func DrumSizes(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig != nil && e.Fig.Told == "" && e.Fig.Claimed == "" && (drumThick(rd, i) || ofSizedDrum(rd, i)) {
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
	k := pastMetal(rd, rd.Past(i-1, -1, lexicon.MarkArticle))
	before := rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkPronoun)
	if begins := before < 0 || rd.At(before).Pause > 0 || rd.At(before).Polite(); Part(rd.At(k)) != lexicon.PartDrum || k == i-1 || !begins {
		return false
	}
	end := i + 1
	for rd.Cued(rd.At(end), lexicon.CueMetal) || rd.At(end).Plays(parser.Diameter) && rd.At(end).Fig == nil && !rd.At(end).Piece() {
		end++
	}
	return rd.EndsBreath(end)
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
