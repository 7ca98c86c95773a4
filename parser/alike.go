package parser

import "strings"

// mostAlike is how many pieces anybody tells of at once.
const mostAlike = 50

// alikePieces reads how many pieces a message tells of: "5 red oak rounds 20 in, 16
// in long", "two 14 in limbs". Its other figures are those of each, so that
// "each" turns nothing round; of a weight it must be said.
func (rd *reading) alikePieces() {
	for i, e := range rd.elems {
		if !e.fig.several() || e.fig.elsewhere || !rd.manyAt(i+1) && !rd.at(i+1).plays(Alike) && !rd.eachWeighed(i) {
			continue
		}
		if rd.atOnce(i) {
			return
		}
		rd.claim(i, Alike)
		for k, e := range rd.elems {
			if e.term != nil && e.term.each {
				rd.each = true
				rd.alter(k, func(t *term) { *t = rd.eachIs(k) })
			}
		}
		return
	}
	rd.eachOfMany()
	rd.eachSized()
}

// eachOfMany reads "pieces are 280 lb each", where nothing says how many they are:
// what each of them weighs is what one does.
func (rd *reading) eachOfMany() {
	many := -1
	for i := range rd.elems {
		switch t := rd.termAt(i); {
		case rd.elems[i].plays(People) && rd.at(i-1).fig != nil:
			return
		case (t.unnamed || t.shape != "") && rd.plural(i) && many < 0:
			many = i
		case t.each && many >= 0 && rd.eachWeight(i-1):
			rd.alter(i, func(t *term) { *t = rd.eachIs(i) })
			return
		}
	}
}

// eachWeight says whether the number at i can be what each piece weighs.
func (rd *reading) eachWeight(i int) bool {
	fig := rd.at(i).fig
	return rd.heavy(i) || fig != nil && fig.dim == dimCount && fig.low >= lightest && fig.claimed == ""
}

// plural says whether the words at i begin with one for more than one: "trozos de".
func (rd *reading) plural(i int) bool {
	e := rd.elems[i]
	return strings.HasSuffix(strings.Fields(fold(rd.text[e.start:e.end]))[0], "s")
}

// several says whether a number can be a count of pieces.
func (f *figure) several() bool {
	return f != nil && f.dim == dimCount && f.unit == nil && f.low == f.high && f.low >= 2 && f.low <= mostAlike && f.low == float64(int(f.low))
}

// manyAt says whether the words from an element on name a piece in the plural;
// what it is like, and a size, may stand before its name.
func (rd *reading) manyAt(i int) bool {
	for ; rd.at(i).marked(markAdjective) || rd.at(i).piece() && rd.termAt(i).shape == "" || rd.far(i) || rd.fineAt(i); i++ {
	}
	e := rd.at(i)
	return e.piece() && e.term.shape != "" && strings.HasSuffix(fold(rd.text[e.start:e.end]), "s")
}

// eachWeighed reads "3 pieces, 300 lb each": how many there are of what has no
// other name, where the weight of each is the only thing told of them. Of "3
// pieces of a 20 in x 12 ft log" each is only a part.
func (rd *reading) eachWeighed(i int) bool {
	each := -1
	for k, e := range rd.elems {
		switch {
		case e.fig != nil && (k < i || e.fig.dim == dimLength), e.cross, e.term != nil && e.term.intent == AskCutPlan:
			return false
		case rd.termAt(k).each && each < 0:
			each = k
		}
	}
	weighed := rd.heavy(each-1) || rd.at(each-1).fig != nil && rd.at(each-1).fig.low >= lightest && each-1 > i
	return rd.termAt(i+1).unnamed && each > i && weighed && !rd.at(i-1).marked(markWhere|markIn|markRelation)
}

// eachIs is what "each" comes to at k: behind a bare number, that it is a weight.
func (rd *reading) eachIs(k int) term {
	if fig := rd.at(k - 1).fig; fig != nil && fig.dim == dimCount && fig.claimed == "" {
		return term{roles: []role{{Weight, before, false}}}
	}
	return term{}
}

// atOnce makes one load of several pieces that hang together, where the weight
// of each is told: "3 logs of 300 lb each, lowered together" are 900 lb.
func (rd *reading) atOnce(i int) bool {
	once, each := -1, -1
	for k := range rd.elems {
		switch t := rd.termAt(k); {
		case t.atOnce:
			once = k
		case t.each && each >= 0:
			return false
		case t.each:
			each = k
		}
	}
	if once < 0 || each < 1 || !rd.heavy(each-1) {
		return false
	}
	n, fig := rd.elems[i].fig.low, rd.elems[each-1].fig
	fig.low, fig.high = n*fig.low, n*fig.high
	for _, k := range []int{once, each} {
		rd.alter(k, func(t *term) { *t = term{} })
	}
	rd.elems = append(rd.elems[:i], rd.elems[i+1:]...)
	return true
}

// onePiece passes over the number of "1 pedazo de maple" and "1 limb": one is all
// that is told of where nothing else is said.
func (rd *reading) onePiece() {
	for i := 0; i < len(rd.elems); i++ {
		if !rd.elems[i].fig.bare(1) || !rd.opens(i) || !rd.singleAt(i+1) {
			continue
		}
		rd.pass(i, i+1)
	}
}

// opens says whether nothing before the number at i could be about it.
func (rd *reading) opens(i int) bool {
	e := rd.at(i - 1)
	return i == 0 || e.pause > 0 || e.polite() && !rd.endsInAt(i-1) || e.term != nil && e.term.intent != "" && len(e.term.roles) == 0 && e.term.marks == 0
}

// singleAt says whether the words from an element on name one piece.
func (rd *reading) singleAt(i int) bool {
	for ; rd.at(i).marked(markAdjective) || rd.at(i).piece() && rd.termAt(i).shape == ""; i++ {
	}
	e := rd.at(i)
	words := strings.Fields(fold(rd.text[e.start:e.end]))
	return (rd.termAt(i).shape != "" || rd.termAt(i).unnamed) && !strings.HasSuffix(words[0], "s")
}

func (rd *reading) fineAt(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && fig.dim == dimLength && fig.unit.fine
}

// alikeAsk asks about pieces of which a weight was told, and not whether it is
// that of each; and about several where the answer is not for each by itself.
func (rd *reading) alikeAsk(q Question) *Ask {
	alone := q.Intent == AskWeight || q.Intent == AskLower || q.Intent == AskTree
	if !q.Has(Alike) || alone && (rd.each || !q.Has(Weight)) {
		return nil
	}
	n, _ := q.Get(Alike)
	return &Ask{Kind: Twist, Words: n.Words, Start: n.Start, End: n.End}
}
