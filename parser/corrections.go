package parser

// Crews take back what they just typed: "31 inches no make that 33", "beech, no
// wait its hornbeam", "no el sauce, el álamo". What is taken back is passed
// over, and said so; where it is not plain what is, the word is asked about.

// corrected reads the word at i, "no" or "make that", as taking back the fact
// before it, where the one behind it is of the same kind.
func (rd *reading) corrected(i int) {
	if rd.termAt(i).apology && rd.begins(i) {
		rd.alter(i, func(t *term) { *t = term{} })
		return
	}
	if rd.cued(rd.elems[i], cueHangsOn) && rd.at(i-1).pause == 0 && (rd.who(i-1) || rd.at(i-1).marked(markPronoun)) {
		rd.alter(i, func(t *term) { *t = term{chatter: true} }) // "what may i hang on it"
		return
	}
	if rd.rightShape(i) {
		return
	}
	n := rd.nextFact(i + 1)
	if rd.putsRight(i, n) {
		rd.clearDoubt(i, max(n, i+1))
		return
	}
	if n < 0 {
		return
	}
	p := rd.takenBack(i, n)
	switch {
	case p >= 0 && rd.eitherWay(i, p, n):
		return
	case p >= 0 && p == rd.sameWords(i, n):
		rd.clearDoubt(i, n)
		rd.alter(n+1, func(t *term) { *t = *rd.elems[p+1].term })
		rd.pass(p, p+2)
	case p >= 0:
		fig := rd.elems[n].fig
		if fig != nil && fig.unit == nil && fig.dim == dimCount {
			fig.lent(rd.elems[p].fig.unit)
		}
		rd.clearDoubt(i, n)
		rd.pass(p, p+1)
	case rd.deniedTree(n):
		rd.clearDoubt(i, n)
		rd.passTree(n)
	}
}

// putsRight says whether the word at i only tells that what goes with it, the fact at n
// behind it, takes the place of what was said before in the talk: "no, 80 kg", "nah its 18
// in", "400 lb sorry". "No 3:1" denies what stands behind it.
func (rd *reading) putsRight(i, n int) bool {
	t, next := rd.termAt(i), rd.at(i+1)
	switch {
	case rd.first:
		return false
	case n < 0:
		return t.apology && i+1 == len(rd.elems)
	case !rd.begins(i):
		return false
	}
	return !t.denies && !t.lacks || next.pause > 0 || next.marked(markPronoun|markIs) || rd.heavy(i+1)
}

// rightShape passes over the shape before the words at i where they put it right: "oak
// limb no wait its a log". A "no" by itself may deny what stands behind it.
func (rd *reading) rightShape(i int) bool {
	if rd.termAt(i).lacks {
		return false
	}
	k, p := rd.past(i+1, +1, markArticle|markPronoun|markIs), i-1
	if rd.at(p).pause > 0 {
		p--
	}
	is, was := rd.termAt(k), rd.termAt(p)
	if is.shape == "" || was.shape == "" || is.tree != nil || was.tree != nil {
		return false
	}
	rd.clearDoubt(i, k)
	rd.pass(p, p+1)
	return true
}

// begins says whether nothing but courtesy is said before the word at i.
func (rd *reading) begins(i int) bool {
	for i--; i >= 0; i-- {
		if e := rd.elems[i]; e.pause == 0 && !e.polite() {
			return false
		}
	}
	return true
}

// passTree passes over the tree at n wherever it is named: "pino 5 pies, no es
// pino es cedro".
func (rd *reading) passTree(n int) {
	sci := rd.termAt(n).tree.sci
	for k := n; k >= 0; k-- {
		if t := rd.termAt(k).tree; t != nil && t.sci == sci {
			rd.pass(k, k+1)
		}
	}
}

// eitherWay says whether the word at i could as well deny the number behind it,
// which is the smaller: "16 pulgadas no 14".
func (rd *reading) eitherWay(i, p, n int) bool {
	is, not := rd.elems[p].fig, rd.elems[n].fig
	return rd.termAt(i).denies && rd.at(i+1).pause == 0 && is != nil && not.in(is) < is.high
}

// in is the number in the unit of another where it has none of its own.
func (f *figure) in(other *figure) float64 {
	if f.unit == nil && other.unit != nil {
		return f.high * other.unit.factor
	}
	return f.high
}

// clearDoubt takes the doubt from the words that take back, from i up to a fact.
func (rd *reading) clearDoubt(i, fact int) {
	for ; i < fact; i++ {
		if t := rd.termAt(i); t.corrects || t.denies {
			rd.alter(i, func(t *term) { *t = term{} })
		}
	}
}

// deniedTree says whether the fact at i is a tree that is denied before another
// is named: "no es oak es hickory", "not the oak the ash".
func (rd *reading) deniedTree(i int) bool {
	next := rd.nextFact(i + 1)
	return next > i && rd.otherTree(i, next)
}

// otherTree says whether two trees of different kinds stand at i and j.
func (rd *reading) otherTree(i, j int) bool {
	a, b := rd.termAt(i).tree, rd.termAt(j).tree
	return a != nil && b != nil && a.sci != b.sci && !narrows(a, b) && !narrows(b, a)
}

// nextFact finds the number or the tree that stands behind i with nothing
// between but what says nothing, -1 where something else comes first.
func (rd *reading) nextFact(i int) int {
	for ; i < len(rd.elems); i++ {
		e := rd.elems[i]
		switch {
		case e.fig != nil, e.term != nil && e.term.tree != nil:
			return i
		case e.pause > 2, e.pause == 0 && !rd.saysNothing(i):
			return -1
		}
	}
	return -1
}

// saysNothing says whether the term at i says nothing between a correction and
// what it puts right.
func (rd *reading) saysNothing(i int) bool {
	t := rd.termAt(i)
	return t.corrects || t.denies || t.ask == "" && t.says(markHello|markIs|markArticle|markMade|markRelation|markAt|markWhere|markFollow|markPronoun)
}

// takenBack finds the fact before i that the one at n puts right: the last of
// its kind, or the last that has the same words behind it; -1 for none. A number
// far from the other is rather another.
func (rd *reading) takenBack(i, n int) int {
	const farthestBack, most = 8, 2
	if p := rd.sameWords(i, n); p >= 0 {
		return p
	}
	words := rd.roleBehind(n)
	for p := rd.saidBefore(i); p >= max(0, i-farthestBack) && (rd.elems[p].pause < 4 || rd.askedAt(p)); p-- {
		if rd.otherTree(p, n) {
			return p
		}
		a, b := rd.elems[p].fig, rd.elems[n].fig
		if a == nil || b == nil || a.pair || b.pair {
			continue
		}
		own := rd.roleBehind(p)
		if words != "" && own != "" && own != words {
			continue
		}
		if a.unit == nil && b.unit != nil && a.dim == dimCount && own == "" && (p == i-1 || p == i-2) {
			if x, y := a.high, b.high/b.unit.factor; x <= most*y && y <= most*x {
				return p // "hitch at 30 no 35 ft"
			}
			return -1
		}
		if x, y := a.high, b.in(a); b.unit != nil && b.unit != a.unit || x <= 0 || x > most*y || y > most*x {
			return -1
		}
		return p
	}
	return -1
}

// saidBefore is the last that is said before the word at i. What plainly takes back may
// begin what is said anew: "8 ft long. scratch that, 10".
func (rd *reading) saidBefore(i int) int {
	p := i - 1
	for p >= 0 && rd.elems[p].pause > 2 && !rd.termAt(i).lacks && !rd.termAt(i).denies {
		p--
	}
	return p
}

// askedAt says whether a question mark stands at p: "¿abedul? no, haya".
func (rd *reading) askedAt(p int) bool { return rd.text[rd.elems[p].start:rd.elems[p].end] == "?" }

// roleBehind is the field of the words right behind the number at i, "" for
// none.
func (rd *reading) roleBehind(i int) Field {
	for _, r := range rd.termAt(rd.past(i+1, +1, markAt|markWhere|markArticle|markIs)).roles {
		if r.side&before != 0 {
			return r.field
		}
	}
	return ""
}

// sameWords finds the number before i that has the very words behind it that the
// one at n has, -1 for none: "40 abajo 25 arriba 3 m, no no 35 arriba".
func (rd *reading) sameWords(i, n int) int {
	const farthestBack, most = 8, 2
	words := rd.word(rd.at(n + 1))
	b := rd.at(n).fig
	if b == nil || b.pair || words == "" || !rd.at(n+1).looks(before) || rd.at(n+1).looks(after) {
		return -1
	}
	for p := i - 1; p >= max(0, i-farthestBack) && (rd.elems[p].pause < 4 || rd.askedAt(p)); p-- {
		a := rd.elems[p].fig
		if a == nil || a.pair || rd.word(rd.at(p+1)) != words {
			continue
		}
		if a.unit != b.unit || a.dim != b.dim || a.high > most*b.high || b.high > most*a.high {
			return -1
		}
		return p
	}
	return -1
}
