package parser

// Of what stands, crews tell the thick end as the one below and the thin one as
// the one above: "28 abajo 18 arriba", "de 65 cm abajo a 35 arriba".

// standingEnds gives such a pair of thicknesses their places. Either word alone
// says much else: who is below, how high something is.
func (rd *reading) standingEnds() {
	for i, e := range rd.elems {
		rd.endsBehind(i)
		if !e.fig.across() || !rd.termAt(i+1).lowEnd && !rd.termAt(i+1).highEnd {
			continue
		}
		j := i + 2
		for rd.at(j).pause > 0 && rd.at(j).pause < 4 || rd.at(j).marked(markAnd|markIs|markMade|markBy|markAt) {
			j++
		}
		other := rd.at(j)
		if !other.fig.across() {
			continue
		}
		low, high := i, j
		if rd.termAt(i + 1).highEnd {
			low, high = j, i
		}
		if !rd.termAt(low+1).lowEnd || !rd.termAt(high+1).highEnd || rd.elems[high].fig.in(rd.elems[low].fig) > rd.elems[low].fig.high {
			continue
		}
		rd.alter(low+1, func(t *term) { *t = term{roles: []role{{ButtDiameter, before, false}}} })
		rd.alter(high+1, func(t *term) { *t = term{roles: []role{{TipDiameter, before, false}}} })
	}
}

// endsBehind reads such a pair where each word stands before its number: "abajo 60
// y arriba 35 cm".
func (rd *reading) endsBehind(i int) {
	first, second := rd.termAt(i), 0
	a := rd.past(i+1, +1, markIs|markMade|markAt)
	if !first.lowEnd && !first.highEnd || rd.at(i-1).fig != nil || !rd.at(a).fig.across() {
		return
	}
	for second = a + 1; rd.at(second).pause > 0 && rd.at(second).pause < 4 || rd.at(second).marked(markAnd); second++ {
	}
	b := rd.past(second+1, +1, markIs|markMade|markAt)
	low, high, thick, thin := i, second, a, b
	if first.highEnd {
		low, high, thick, thin = second, i, b, a
	}
	if !rd.termAt(low).lowEnd || !rd.termAt(high).highEnd || !rd.at(b).fig.across() || rd.termAt(b+1).lowEnd || rd.termAt(b+1).highEnd {
		return
	}
	if rd.elems[thin].fig.in(rd.elems[thick].fig) > rd.elems[thick].fig.in(rd.elems[thin].fig) {
		return
	}
	rd.alter(low, func(t *term) { *t = term{roles: []role{{ButtDiameter, after, false}}} })
	rd.alter(high, func(t *term) { *t = term{roles: []role{{TipDiameter, after, false}}} })
}

// across says whether a number can be a thickness: of inches, centimetres or
// the like, or bare and more than people who stand somewhere.
func (f *figure) across() bool {
	const thinnest = 5
	return f.short() || f != nil && f.dim == dimCount && f.unit == nil && !f.pair && f.low >= thinnest
}
