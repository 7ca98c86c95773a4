package parser

// How far off plumb a swing starts is told in degrees as well, "starts 45 off the
// block": a bare number that could be either is asked about, and one that is more than
// the line is long can only be degrees.

// leastSlant and mostSlant bound what a bare number of degrees off plumb can be.
const leastSlant, mostSlant = 20, 90

// slanted says whether the number at i could be degrees off plumb: it is told of what
// swings, and not of the block.
func (rd *reading) slanted(i int) bool {
	fig := rd.elems[i].fig
	if fig == nil || fig.pair || fig.falling || fig.told != "" || rd.asksFor(AskRaise) || rd.blockBefore(i) {
		return false
	}
	starts := rd.at(rd.back(i - 1)).plays(Sideways)
	if offPlumb := rd.at(i+1).plays(Sideways) && rd.offPlumbAt(i+1); offPlumb {
		return true
	}
	k := rd.past(i+2, +1, markArticle)
	ofBlock := rd.cued(rd.at(i+1), cueOut) && rd.at(k).part() == partBlock
	return starts && (ofBlock || fig.dim == dimAngle && rd.cued(rd.at(i+1), cueOut))
}

// offPlumbAt says whether the words at i tell how far from plumb something is, and not
// only how far to the side.
func (rd *reading) offPlumbAt(i int) bool { return rd.typedAt(i, cuePlumb) }

// slants makes degrees of the number at i where they are told, or where it is more than
// the line of the swing is long: "starts 45 off the block, 20 ft of line".
func (rd *reading) slants(i int) bool {
	fig := rd.elems[i].fig
	if !rd.slanted(i) || fig.low < leastSlant || fig.high > mostSlant {
		return false
	}
	line := rd.shortestLine()
	bare := fig.dim == dimCount && fig.unit == nil && line > 0 && fig.low*foot.factor > line
	if fig.dim != dimAngle && !bare {
		return false
	}
	fig.unit, fig.dim, fig.told = degree, dimAngle, StartAngle
	for k := i + 1; k <= i+3 && k < len(rd.elems) && rd.elems[k].term != nil; k++ {
		block := rd.at(k).part() == partBlock
		rd.elems[k].term = &term{}
		if block || k == i+1 && !rd.at(k+1).marked(markArticle) && rd.at(k+1).part() != partBlock {
			break
		}
	}
	return true
}

// maybeSlants asks about a bare number that is as likely to be degrees as a length.
func (rd *reading) maybeSlants(i int) bool {
	fig := rd.elems[i].fig
	if !rd.slanted(i) || fig.low < leastSlant || fig.high > mostSlant || rd.shortestLine() > 0 {
		return false
	}
	a := fig.ask(NoUnit, rd.text)
	a.Fields = []Field{StartAngle, Sideways}
	rd.asks = append(rd.asks, a)
	fig.elsewhere = true
	return true
}

// shortestLine is how long the line of a swing is told to be, in metres, 0 where it is
// not.
func (rd *reading) shortestLine() float64 {
	for i := range rd.elems {
		if rd.far(i) && (rd.at(i+1).plays(LineOut) || rd.at(i+1).plays(RopeLength) || rd.at(rd.back(i-1)).plays(LineOut)) {
			return rd.elems[i].fig.high
		}
	}
	return 0
}
