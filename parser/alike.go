package parser

import "strings"

// mostAlike is how many pieces anybody tells of at once.
const mostAlike = 50

// alikePieces reads how many pieces a message tells of: "5 red oak rounds 20 in, 16
// in long", "two 14 in limbs". Its other figures are those of each, so that
// "each" turns nothing round; of a weight it must be said.
func (rd *reading) alikePieces() {
	for i, e := range rd.elems {
		if !e.fig.several() || e.fig.elsewhere || !rd.manyAt(i+1) && !rd.at(i+1).plays(Alike) {
			continue
		}
		rd.claim(i, Alike)
		for k, e := range rd.elems {
			if e.term != nil && e.term.each {
				rd.each = true
				rd.alter(k, func(t *term) { *t = term{} })
			}
		}
		return
	}
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
