package parser

// Crews that cannot tell two trees apart name both: "elm or hackberry", "either red
// oak or white oak, whichever is heavier". They are asked which, with what the piece
// weighs of either. Where they say that they cannot tell, nobody can answer that, and
// the heavier is planned on.

// eitherTrees finds the two trees that it is one of, false where there are more or
// fewer, or nothing says that it is either.
func (rd *reading) eitherTrees() (a, b int, ok bool) {
	a, b = -1, -1
	for i := range rd.elems {
		switch t := rd.termAt(i).tree; {
		case t == nil, a >= 0 && t.sci == rd.termAt(a).tree.sci, b >= 0 && t.sci == rd.termAt(b).tree.sci:
		case a < 0:
			a = i
		case b >= 0:
			return a, b, false
		default:
			b = i
		}
	}
	if b < 0 || !rd.otherTree(a, b) {
		return a, b, false
	}
	return a, b, rd.orBetween(a, b) || rd.heavierWanted()
}

// heavierWanted says whether the one that weighs more is wanted.
func (rd *reading) heavierWanted() bool {
	return rd.heavier || rd.anyAt(func(k int) bool { return rd.cued(rd.elems[k], cueWhichever) })
}

// orBetween says whether nothing but "or" stands between two elements, or "maybe" between
// or before both: "ash maybe elm", "could be oak could be ash".
func (rd *reading) orBetween(a, b int) bool {
	joined := false
	for k := a + 1; k < b; k++ {
		e := rd.elems[k]
		is, join := rd.in.joins[rd.word(e)]
		mayBe := rd.cued(e, cueMayBe)
		if joined = joined || mayBe || join && is == or; !mayBe && !e.polite() && !e.marked(markIs|markArticle|markPronoun) && rd.termAt(k).note != "about" {
			return false
		}
	}
	return joined
}

// eitherWords takes the doubt from the words that only say that it is one of two
// trees: "either", "the heavier one".
func (rd *reading) eitherWords(i int) bool {
	if !rd.cued(rd.elems[i], cueWhichever) && !rd.cued(rd.elems[i], cueEither) {
		return false
	}
	next, _ := nextWord(rd.text[rd.elems[i].end:])
	if _, _, ok := rd.eitherTrees(); !ok || rd.in.cues[cueThan][next] || rd.at(i+1).fig != nil {
		return false
	}
	end := i + 1
	if two := rd.past(end, +1, markIs|markRelation|markArticle); two > end && rd.at(two).fig.bare(2) {
		end = two + 1 // "the heavier of the two"
	}
	rd.leaveOut(i, end)
	return true
}

// whichOf asks which of two trees it is.
func (r *Reader) whichOf(rd *reading, a, b int) *Ask {
	either, end := rd.orBetween(a, b), rd.elems[a].end
	if either {
		end = rd.elems[b].end
	}
	ask := askAt(WhichTree, rd.text, rd.elems[a].start, end-rd.elems[a].start)
	ask.Fields, ask.Either, ask.Heavier = []Field{SpeciesField}, either, rd.heavierWanted()
	for _, i := range []int{a, b} {
		t := rd.elems[i].term.tree
		one := t.others
		if len(one) == 0 {
			one = []string{t.sci}
		}
		for _, sci := range one {
			ask.Choices = append(ask.Choices, Choice{Words: r.callIt(rd.in, sci), Scientific: sci})
		}
	}
	return ask
}
