package parser

// How far a load hangs below its block is also told from the block, or from who
// cuts. Where a word could as well mean the height of the block above the
// ground, it is asked about by its name.

// hangsElse reads "im 10 ft off center" and "the block's 8 m above it", and asks
// about "40 ft to the block".
func (rd *reading) hangsElse(i int) {
	switch {
	case rd.ifAside(i):
		rd.elems[i].fig.told = Sideways
		rd.elems[i-1].term, rd.elems[i+1].term = &term{}, &term{} // who cuts there is not what is struck
	case rd.at(i + 1).looksBack(StartAngle):
		rd.elems[i].fig.told = Sideways // "3 m de la vertical"
		rd.elems[i+1].term = &term{}
	case rd.overLoad(i) && rd.tagsAlone():
		rd.elems[i].fig.told = LineOut // a load that is pulled aside hung plumb before
		rd.elems[i+1].term = &term{}
	case rd.overLoad(i), rd.aboveAlone(i), rd.toBlock(i):
		rd.maybeLine(i)
	case rd.termAt(i+1).belowBlock && rd.termAt(rd.back(i-1)).tied:
		rd.maybeLine(i)
		rd.elems[i+1].term = &term{}
	}
}

// ifAside says whether the number at i is how far to the side the piece starts,
// told of who cuts it: "if im 10 ft off center". Who only stands there says no if.
func (rd *reading) ifAside(i int) bool {
	next := rd.at(i + 2)
	return rd.at(i+1).plays(Sideways) && rd.cued(rd.at(i-1), cueMe) && rd.cued(rd.at(i-2), cueIf) && !next.marked(markRelation|markMade|markPlace)
}

// overLoad says whether the number at i is how far the block is above the load,
// and not above the ground or a roof.
func (rd *reading) overLoad(i int) bool {
	if !rd.cued(rd.at(i+1), cueAbove) || !rd.blockBefore(i) && !rd.blockAt(i-1) || rd.asksFor(AskRaise) {
		return false
	}
	k := rd.past(i+2, +1, markMade|markArticle)
	load := rd.termAt(k).shape != "" || rd.termAt(k).unnamed || rd.cued(rd.at(i+2), cueLoad) && !rd.anyAt(func(n int) bool { return n < i && rd.elems[n].obstacle() != "" })
	return load && !rd.goesOn(k+1)
}

// aboveAlone says whether it is told how far the block is above, and not above
// what.
func (rd *reading) aboveAlone(i int) bool {
	next := rd.at(i + 2)
	return rd.cued(rd.at(i+1), cueAbove) && (rd.blockBefore(i) || rd.blockAt(i-1)) && !rd.asksFor(AskRaise) && (rd.endsBreath(i+2) || next.marked(markPronoun))
}

// toBlock says whether the number at i is told as far as the block.
func (rd *reading) toBlock(i int) bool {
	j := rd.past(i+1, +1, markErect|markAdverb)
	return rd.cued(rd.at(j), cueTowards) && rd.at(rd.past(j+1, +1, markArticle)).part() == partBlock && !rd.goesOn(i-1)
}

// maybeLine asks whether the number at i is the line that the load hangs on.
func (rd *reading) maybeLine(i int) {
	fig := rd.elems[i].fig
	a := fig.ask(Loose, rd.text)
	a.Fields, a.Choices = []Field{LineOut}, []Choice{{Field: LineOut}}
	rd.asks = append(rd.asks, a)
	fig.elsewhere = true
}

// untold are those of some fields that no number is told of.
func (rd *reading) untold(fields ...Field) (out []Field) {
	for _, f := range fields {
		told := func(i int) bool { return rd.elems[i].fig != nil && rd.elems[i].fig.told == f || rd.beside(i, f) }
		if !rd.anyAt(told) {
			out = append(out, f)
		}
	}
	return out
}

// tagsAlone says whether the message asks for a tag line and not for a swing.
func (rd *reading) tagsAlone() bool {
	asks := func(in Intent) bool { return rd.anyAt(func(i int) bool { return rd.termAt(i).intent == in }) }
	return asks(AskBalance) && !asks(AskSwing)
}

// offsets reads "3 m offset" and "offset is 3 m" of a swing: how far to the side
// the piece starts. A limb that is stood up has a block that is offset.
func (rd *reading) offsets() {
	if !rd.swings() && !rd.asksFor(AskSwing) || rd.asksFor(AskRaise) {
		return
	}
	for i := range rd.elems {
		if !rd.far(i) || rd.elems[i].fig.told != "" {
			continue
		}
		behind, ahead := rd.cued(rd.at(i+1), cueOffset) && !rd.far(i+2), rd.cued(rd.at(rd.back(i-1)), cueOffset) && !rd.asideAt(rd.back(i-1)-1)
		if behind || ahead {
			rd.elems[i].fig.told = Sideways
		}
	}
}

// asideAt says whether the number at i is how far to the side the piece starts.
func (rd *reading) asideAt(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && fig.told == Sideways
}
