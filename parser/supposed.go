package parser

import (
	"slices"
	"strings"
)

// What is supposed of a weight is no weight: "if it weighs over 1000 lb we split
// it". And what a cut is planned for is what each piece may weigh: "longest 60 cm
// ash for 250 kg".

// supposed passes over a bound that the weight is only to be held against, where
// the sizes tell the weight and nothing but that is asked for.
func (rd *reading) supposed() {
	const least = 100 // what is less is rather no weight
	for i := 0; i < len(rd.elems); i++ {
		if !rd.termAt(i).supposes || !rd.at(i+1).marked(markBound) || !rd.sizedWhole() {
			continue
		}
		fig := rd.at(i + 2).fig
		if fig == nil || fig.dim != dimMass && (fig.dim != dimCount || fig.unit != nil || fig.low < least) {
			continue
		}
		rd.pass(i, i+3)
	}
}

// heldAgainst reads "is a white ash log 22 in by 4 ft over 600 lb?" as what the piece
// may weigh: the answer says whether it does. Where nothing asks so, the weight could
// be told of it.
func (rd *reading) heldAgainst() {
	for i, e := range rd.elems {
		if than := rd.termAt(i).turning == TurnsCompared && rd.cued(rd.at(i+1), cueThan); than && rd.heavy(i+2) && rd.asksOver(i) {
			rd.elems[i].term = &term{}
			rd.claim(i+2, Limit) // "is that heavier than 500 lb"
			return
		}
		if !e.marked(markBound) || !rd.heavy(i+1) || !rd.asksOver(i) && !(rd.asksOfPiece(i) && (rd.sizedWhole() || rd.sizesTold())) && !(rd.overAlone(i) && rd.sizesTold()) {
			continue
		}
		rd.claim(i+1, Limit)
		return
	}
}

// asksOfPiece says whether what stands before i asks for a yes or a no, in one breath
// with the tree: "is a white ash log …", not "is dave …".
func (rd *reading) asksOfPiece(i int) bool {
	word, _ := nextWord(rd.text)
	apart := func(e element) bool { return e.pause > 1 || rd.in.cues[cueItself][rd.word(e)] }
	return rd.in.cues[cueAsking][word] && len(rd.treesIn(0, i)) == 1 && !slices.ContainsFunc(rd.elems[:i], apart)
}

// asksOver says whether the clause that ends in the bound at i asks it of the piece, "is
// that over 200 lb", "does the big one go over 200 kg", and nothing but the weight is
// asked for.
func (rd *reading) asksOver(i int) bool {
	asks := func(k int) bool {
		first, _, _ := strings.Cut(rd.word(rd.elems[k]), " ")
		return rd.in.cues[cueAsking][first]
	}
	k := i - 1
	for ; k >= 0 && i-k <= few && rd.elems[k].pause == 0 && !asks(k); k-- {
		e, t := rd.elems[k], rd.termAt(k)
		if e.fig != nil || t.human || t.someone || t.note != "" || !e.piece() && !e.polite() && !t.ofThese && !e.marked(markArticle|markPronoun|markAdverb|markAdjective|markIs) {
			return false
		}
	}
	if k < 0 || !asks(k) || k == i-1 && !strings.Contains(rd.word(rd.elems[k]), " ") {
		return false // "is over 200 lb" tells
	}
	end := i + 2
	if rd.cued(rd.at(i+1), cueThan) {
		end++
	}
	next := rd.at(end)
	return (rd.endsBreath(end) || rd.cued(next, cueClause) || next.polite() || rd.termAt(end).note == "about") && !rd.anyAt(rd.besidesWeight)
}

// overAlone says whether the bound at i and its number are asked by themselves behind
// the sizes: "red oak limb 12 in 18 ft, over 500 lb?".
func (rd *reading) overAlone(i int) bool {
	return !rd.kit(i-1) && (rd.at(i-1).pause > 0 || rd.at(i-1).fig != nil || rd.at(i-1).piece() || rd.at(i-1).plays(Length)) && i+2 < len(rd.elems) && rd.askedAt(i+2)
}

// sizedWhole says whether the message tells the tree, a thickness and a length,
// and asks for nothing but the weight.
func (rd *reading) sizedWhole() bool {
	tree := func(i int) bool { return rd.termAt(i).tree != nil }
	long := func(i int) bool {
		return rd.far(i) && (rd.at(i+1).plays(Length) || rd.at(i-1).plays(Length) || rd.sizedLong(i))
	}
	return rd.anyAt(tree) && rd.anyAt(long) && !rd.anyAt(rd.besidesWeight)
}

// besidesWeight says whether the element at i asks for more than the weight, or
// tells of what only matters to more.
func (rd *reading) besidesWeight(i int) bool {
	e := rd.elems[i]
	return e.plays(Wraps) || e.plays(People) || e.plays(Limit) && !e.marked(markBound) || e.plays(HitchHeight) || e.plays(DropHeight) ||
		rd.termAt(i).intent == AskLower || slices.Contains(special, rd.termAt(i).intent)
}

// cutFor reads the only mass of a cut plan as its limit where "for" leads to it.
func (rd *reading) cutFor() {
	at := -1
	for i := range rd.elems {
		if !rd.heavy(i) {
			continue
		}
		if at >= 0 {
			return
		}
		at = i
	}
	if at < 0 || !rd.asksFor(AskCutPlan) || !rd.saidOut(at+1) || !rd.cued(rd.at(at-1), cueFor) {
		return
	}
	rd.claim(at, Limit)
}
