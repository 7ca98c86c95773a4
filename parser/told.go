package parser

// toldOf is a number of an obstacle, and what its words make it: a field, or
// the reason to ask.
type toldOf struct {
	at      int
	field   Field
	unclear Kind
}

// manyTold is how many numbers one obstacle has.
const manyTold = 2

// told lists the numbers of the thing at i: "a 14 ft roof", "the roof is 12 ft
// away and 14 ft high".
func (rd *reading) told(i int) []toldOf {
	var out []toldOf
	if j := rd.past(i-1, -1, markAdjective|markUpward); rd.leads(j) {
		out = append(out, toldOf{at: j, field: ObstacleHeight})
	} else if rd.at(j).marked(markRelation) && !rd.at(j).marked(markIs) && rd.far(j-1) {
		return append(out, toldOf{at: j - 1, unclear: FromWhere}) // "12 ft from the roof"
	} else if k := rd.past(j, -1, markArticle); rd.at(k).marked(markRelation) && !rd.at(k).marked(markIs) && rd.far(k-1) {
		return append(out, toldOf{at: k - 1, unclear: FromWhere})
	}
	led := true
	for k := i + 1; k < len(rd.elems) && len(out) < manyTold; k++ {
		e := rd.elems[k]
		switch {
		case e.fig != nil:
			t, last, ok := rd.toldAt(k, led)
			if !ok {
				return out
			}
			out, k, led = append(out, t), last, false
		case e.marked(markAt | markAnd | markIs | markArticle | markFollow):
			led = led || e.marked(markAt|markAnd)
		case e.marked(markOutward) && rd.atBlock(k): // "roof past the block 12 ft away"
		case e.pause == 2:
			led = rd.text[e.start:e.end] == ":"
		case e.pause == 0 && e.term != nil && len(e.term.roles) == 0 && e.term.marks == 0 && e.term.intent == "" && !e.piece():
		default:
			return out
		}
	}
	return out
}

// leads says whether the number at j stands before its thing and is of no
// other: "block at 40 ft roof" is not "a 40 ft roof".
func (rd *reading) leads(j int) bool {
	if !rd.far(j) {
		return false
	}
	before := rd.at(rd.past(j-1, -1, markIs|markAt))
	return before.term == nil || len(before.term.roles) == 0
}

func (rd *reading) far(i int) bool { return rd.at(i).fig.far() }

// toldAt reads the number at k by the words behind it, and returns the last
// element of them. A number without such words is the thing's only where
// something leads to it.
func (rd *reading) toldAt(k int, led bool) (t toldOf, last int, ok bool) {
	t = toldOf{at: k}
	next := rd.at(k + 1)
	switch {
	case rd.elems[k].fig.dim != dimLength:
		return t, k, false
	case next.marked(markUpward):
		t.field = ObstacleHeight
		return t, k + 1, true
	case rd.cued(next, cueAbove) && rd.endsBreath(k+2): // "climber 12 ft above": above what?
		t.unclear = FromWhere
		return t, k + 1, true
	case next.marked(markOutward | markRelation), next.marked(markArticle) && (rd.atBlock(k+2) || rd.at(k+2).marked(markOutward)):
		last = rd.outward(k+1, &t)
		return t, last, true
	case next.marked(markNearside), next.plays(Tie): // "12 ft from the trunk"
		t.unclear = FromWhere
		return t, k + 1, true
	case next.marked(markAdjective) || next.piece() || next.obstacle() != "" || next.term != nil && len(next.term.roles) > 0:
		return t, k, false // "12 ft wide", "22 ft limb", "8 ft to the side"
	}
	return t, k, led && rd.far(k)
}

// outward reads what a distance is told from, behind the number at k-1: the
// block or nothing will do.
func (rd *reading) outward(k int, t *toldOf) (last int) {
	t.field = ObstacleOut
	last = k
	whole := false // the words say the block or the far side themselves
	for ; rd.at(last).marked(markOutward | markRelation | markArticle); last++ {
		whole = whole || rd.atBlock(last)
	}
	switch e := rd.at(last); {
	case e.marked(markNearside):
		t.field, t.unclear = "", FromWhere
	case e.plays(HitchHeight) && !e.plays(Tie) && rd.at(last-1).marked(markRelation|markArticle):
		if !e.marked(markLoaded) || rd.at(last+1).marked(markAt) {
			return last - 1 // "from the block at 40 ft" tells the block's height too
		}
		return last
	case whole || !rd.at(last-1).marked(markRelation|markArticle) || e.term == nil || rd.at(last-1).marked(markOutward) && !e.marked(markPlace|markPronoun|markPart|markStation) && !e.piece():
		return last - 1
	default:
		t.field, t.unclear = "", FromWhere
	}
	return last
}

// atBlock says whether the words name the block, plumb, or the far side.
func (rd *reading) atBlock(i int) bool {
	e := rd.at(i)
	return e.marked(markOutward) && e.marked(markPlace) && !e.marked(markRelation) && e.end-e.start > len("away")
}

// eliminate gives a number without words of its own the place that is left. A
// person "at" somewhere is so high.
func (rd *reading) eliminate(told []toldOf, kind Obstacle, thing int) {
	other := map[Field]Field{ObstacleOut: ObstacleHeight, ObstacleHeight: ObstacleOut}
	for i := range told {
		t := &told[i]
		switch {
		case t.field != "" || t.unclear != "":
		case len(told) == manyTold && told[1-i].field != "":
			t.field = other[told[1-i].field]
		case kind == Person && len(told) == 1 && (rd.at(t.at-1).marked(markAt) || rd.endsInAt(thing)):
			t.field = ObstacleHeight
		default:
			t.unclear = TwoReadings
		}
	}
}

// stands says whether a distance is told: else a trunk is the piece itself.
func (rd *reading) stands(told []toldOf) bool {
	for _, t := range told {
		if t.field == ObstacleOut || t.unclear == FromWhere {
			return true
		}
	}
	return false
}
