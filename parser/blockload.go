package parser

import "strings"

// What a sling, a drum or a block bears is asked for in as many words as there are
// for bearing, and told in the same ones: "how many lbs on the drum sling", "block
// load worked out at 24 kN".

// The notes of what bears it.
const (
	NoteOnBlock  = "on-block"  // the load told is that of the block, and of what holds it
	NoteDrumLoad = "drum-load" // it is asked what the drum, and its sling, bears
)

// loadsAsked makes a word for how much, before gear that feels a load, ask for that
// load: "how much does the drum sling get", "qué carga tiene la eslinga".
func (rd *reading) loadsAsked() {
	for i := range rd.elems {
		at := rd.bearer(i)
		if at < 0 {
			continue
		}
		rd.alter(i, func(t *term) { t.intent, t.besides, t.ask = AskBlockLoad, false, "" })
		rd.lendAsked(i)
		if rd.ofDrum(at) {
			rd.alter(i, func(t *term) { t.note = NoteDrumLoad })
		}
		for k := i + 1; k <= at+1 && k < len(rd.elems); k++ {
			if t := rd.termAt(k); t.intent == AskGear || t.intent == AskRope {
				rd.alter(k, func(t *term) { t.intent = "" })
			}
		}
	}
}

// lendAsked gives the one bare number the unit that the answer is asked in: "how many
// lbs on the sling with 820".
func (rd *reading) lendAsked(i int) {
	words := strings.Fields(rd.word(rd.elems[i]))
	u := rd.in.units[words[len(words)-1]]
	if u == nil || u.dim != dimMass {
		return
	}
	for _, e := range rd.elems {
		if f := e.fig; f != nil && f.dim == dimCount && f.unit == nil && f.rates() {
			f.unit, f.dim, f.low, f.high = u, dimMass, f.low*u.factor, f.high*u.factor
			return
		}
	}
}

// bearer is the gear whose load is asked for by the word at i, -1 for none: gear that
// something is on, or that is told to feel it. What it can take is its strength.
func (rd *reading) bearer(i int) int {
	const most = 6
	if !rd.termAt(i).howMuch || !rd.anyAt(func(k int) bool { return rd.elems[k].fig != nil && rd.elems[k].fig.rates() }) {
		return -1
	}
	felt := rd.termAt(i).receives
	for k := i + 1; k <= i+most && rd.bare(k); k++ {
		felt = felt || rd.termAt(k).receives || k == i+1 && rd.at(k).marked(markIn)
		switch rd.at(k).part() {
		case partSling, partDrum, partConnector, partBlock:
			if p := rd.at(k + 1).part(); p != "" && p != partRope {
				k++ // "the drum sling"
			}
			if felt || rd.receivesAfter(k) {
				return k
			}
		}
	}
	return -1
}

// receivesAfter reads "the shackle at the block see".
func (rd *reading) receivesAfter(i int) bool {
	const most = 3
	for k := i + 1; k <= i+most && rd.bare(k); k++ {
		if rd.termAt(k).receives {
			return true
		}
	}
	return false
}

// bare says whether the element at i is neither number nor rope, nor what else could
// be asked about: a strength, wraps, a piece.
func (rd *reading) bare(i int) bool {
	e := rd.at(i)
	counted := e.part() == "" && (e.plays(Wraps) || e.plays(People))
	return e.term != nil && e.pause == 0 && !e.piece() && e.part() != partRope && e.strength() == "" && !counted && !rd.termAt(i).rated
}

// loadWanted says whether the load on gear is asked for, so that a number without a
// word for it is no strength of the gear.
func (rd *reading) loadWanted() bool {
	return rd.anyAt(func(i int) bool { return rd.bearer(i) >= 0 })
}

// ofDrum says whether the gear at i is the drum, or holds it.
func (rd *reading) ofDrum(i int) bool {
	if rd.at(i).part() == partBlock {
		return false
	}
	after := rd.at(rd.past(i+1, +1, markIn|markMade|markArticle|markRelation)).part()
	return rd.at(i).part() == partDrum || rd.at(i-1).part() == partDrum || after == partDrum
}

// loadsTold takes the number beside words for the load on a block for that load,
// where the strength of what holds it is told or asked about.
func (rd *reading) loadsTold() {
	lowers := func(i int) bool { return rd.termAt(i).intent == AskLower && !rd.gearHolds(i) }
	if rd.anyAt(lowers) || rd.worded(Wraps) || rd.asksFor(AskLift) || rd.asksFor(AskDrop) || !rd.anyAt(rd.heldAt) {
		return
	}
	for i := range rd.elems {
		if !rd.heavy(i) || rd.elems[i].fig.told != "" || rd.at(i+1).piece() {
			continue
		}
		if s, _ := rd.strengthBeside(i-1, i+1); s != "" {
			continue
		}
		if at := rd.onBlock(i); at >= 0 {
			rd.elems[i].fig.told, rd.elems[i].fig.sure = Weight, Weight
			rd.alter(at, func(t *term) { *t = term{note: NoteOnBlock, intent: AskGear, part: t.part} })
			for k := range rd.elems {
				if rd.gearHolds(k) {
					rd.alter(k, func(t *term) { t.intent = "" })
				}
			}
			return
		}
	}
}

// gearHolds says whether the word at i asks whether gear before it holds: "will the
// sling hold".
func (rd *reading) gearHolds(i int) bool {
	p := rd.at(i - 1).part()
	return rd.termAt(i).intent == AskLower && (p == partSling || p == partConnector || p == partBlock)
}

// heldAt says whether the word at i tells a strength, or names what a block hangs in.
func (rd *reading) heldAt(i int) bool {
	p := rd.elems[i].part()
	return rd.elems[i].strength() != "" || rd.termAt(i).rated || p == partSling || p == partConnector
}

// onBlock finds the words that make the number at i the load of a block, -1 for none.
func (rd *reading) onBlock(i int) int {
	before := i - 1
	for t := rd.termAt(before); before > 0 && i-before < wordsApart && rd.bare(before) && len(t.roles) == 0 && t.intent == "" && t.part == "" && !t.receives; t = rd.termAt(before) {
		before-- // "block load worked out at"
	}
	switch {
	case rd.termAt(before).intent == AskBlockLoad && !rd.termAt(before).howMuch:
		return before
	case rd.termAt(before).receives && rd.at(before-1).part() == partBlock:
		return before
	case rd.termAt(i+1).intent == AskBlockLoad:
		return i + 1
	}
	if rd.termAt(i+1).receives && rd.at(i+2).part() == partBlock {
		return i + 2 // "3000 lb on the trunk block"
	}
	j := rd.past(i+1, +1, markIn|markArticle|markRelation)
	if j > i+1 && rd.at(i+1).marked(markIn) && rd.at(j).part() == partBlock {
		return j
	}
	return -1
}
