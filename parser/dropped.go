package parser

// Gear that fell on something hard may be cracked where nobody sees it: whether
// it is still good is for whoever inspects it.

// letFall says whether the word at i tells that gear fell, and the message that
// it hit something hard, that no harm is seen on it, or asks whether it is still
// good: "dropped the block on the driveway". A block is also dropped to another
// height.
func (rd *reading) letFall(i int) bool {
	if !rd.termAt(i).letFall || !rd.anyAt(func(k int) bool { return rd.termAt(k).afterFall || rd.spared(k) }) {
		return false
	}
	j, k := rd.past(i+1, +1, markArticle|markAdjective), i-1
	for k >= 0 && i-k < 6 && !rd.hardware(k) && rd.tells(k) {
		k--
	}
	return rd.hardware(j) || rd.hardware(k)
}

// letFallSomebody reads "se me cayó un compañero".
func (rd *reading) letFallSomebody(i int) bool {
	if !rd.termAt(i).letFall {
		return false
	}
	j := rd.past(i+1, +1, markArticle)
	if rd.at(j).fig.bare(1) {
		j++
	}
	return rd.person(j) && !rd.at(j+1).marked(markGear|markStation) && !rd.hardware(j+1) && rd.termAt(i).own
}

// already passes over how many pieces came down before this one, "dropped 3 pieces
// already", and takes "dropped the block to 30 ft" for where it hangs now: neither
// tells how far a piece falls.
func (rd *reading) already() {
	for i := 0; i < len(rd.elems); i++ {
		if !rd.termAt(i).letFall {
			continue
		}
		j := rd.past(i+1, +1, markArticle|markAdjective)
		switch {
		case rd.at(j).fig.several() && (rd.manyAt(j+1) || rd.termAt(j+1).unnamed):
			k := j + 1
			for rd.at(k).piece() || rd.termAt(k).unnamed {
				k++
			}
			rd.pass(i, k)
		case rd.hardware(j):
			rd.alter(i, func(t *term) { t.roles, t.intent = nil, "" })
		case rd.droppedOn(i):
			rd.alter(i, func(t *term) { t.intent = AskDrop })
		}
	}
}

// droppedOn says whether the word at i drops a piece on gear that is told with what it
// bears, "drum rated 2000 lb, log 650, dropped": that is no load at rest.
func (rd *reading) droppedOn(i int) bool {
	rated := func(k int) bool { return rd.elems[k].strength() != "" || rd.termAt(k).rated }
	return rd.anyAt(rated) && rd.anyAt(rd.heavy) && (rd.hungWood(i-1) || rd.at(i-1).fig != nil || rd.at(i-1).pause > 0 || rd.hungWood(i+1))
}

// hardware says whether the element at i is gear of metal: a rope that falls
// takes no harm.
func (rd *reading) hardware(i int) bool {
	e := rd.at(i)
	return rd.kit(i) && !e.marked(markCord) && e.part() != partRope
}

// spared says whether the damage at i is told to be none: "no cracks".
func (rd *reading) spared(i int) bool { return rd.termAt(i).damaged && rd.termAt(i-1).lacks }

// denied says whether the damage at i is what is not seen on gear that fell, "no
// cracks i can see", or what is told where no wood is.
func (rd *reading) denied(i int) bool {
	wood := func(k int) bool { return rd.elems[k].piece() || rd.termAt(k).tree != nil || rd.termAt(k).unnamed }
	return (rd.spared(i) || !rd.anyAt(wood)) && rd.anyAt(rd.letFall)
}
