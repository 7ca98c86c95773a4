package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What holds the drum at the foot of a tree, a sling, a strap, an anchor, bears what the
// rope pulls, and no more than that; the top block bears twice as much. Asked about by
// whichever name, both are said.

// DrumHeld makes what is asked about the gear that holds the drum a question about its
// load: "the strap that holds the drum, how much does it have to hold", "what does the
// bollard anchor cop". Wood that is told is an anchor to be screened, and a strength that
// is told one to be held against.
func DrumHeld(rd *reading.Reading) {
	if rd.AnyAt(rd.Is(heldByLabel)) || rd.AnyAt(rd.Is(Heavy)) && rd.AnyAt(rd.Is(woodTold)) {
		return
	}
	for i := range rd.Elems {
		from, to, ok := drumLoadAt(rd, i)
		if !ok {
			continue
		}
		for k := range rd.Elems {
			within := k >= from && k <= to
			if rd.TermAt(k).Intent == parser.AskAnchor || within && bearsOrHolds(rd, k) {
				rd.Alter(k, func(t *scan.Term) { t.Intent, t.Ask, t.Note = "", "", "" })
			}
			if roundIt(rd, k) {
				rd.Alter(k, func(t *scan.Term) { t.Shape, t.Roles = "", nil })
			}
		}
		rd.Alter(i, func(t *scan.Term) {
			t.Intent, t.Besides, t.Ask, t.Note = parser.AskBlockLoad, false, "", parser.NoteDrumLoad
		})
		return
	}
}

// roundIt reads "the strap round the base": there "round" is no log.
func roundIt(rd *reading.Reading, k int) bool {
	return rd.TermAt(k).Shape == parser.Log && Part(rd.At(k-1)) == lexicon.PartSling && rd.At(k+1).Marked(lexicon.MarkArticle)
}

// woodTold says whether the word at i names a tree, or is how thick one is: beside a load
// it is that of what holds the drum.
func woodTold(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Tree != nil || rd.TermAt(i).Shape == parser.Limb || rd.Elems[i].Fig.Short()
}

// heldByLabel says whether the word at i tells the strength of what holds the drum, or asks
// for one. That of the rope has no part in what the drum bears.
func heldByLabel(rd *reading.Reading, i int) bool {
	const near = 5
	t := rd.TermAt(i)
	if Strength(rd.Elems[i]) != "" {
		for k := i - 1; k >= 0 && i-k <= near; k-- {
			if p := Part(rd.Elems[k]); p != "" {
				return p != lexicon.PartRope
			}
		}
	}
	return t.Note == parser.MostWanted || rd.Cued(rd.Elems[i], lexicon.CueRequired) && t.Rated
}

// bearsOrHolds says whether the word at k asks for what an anchor, a sling or hands hold.
func bearsOrHolds(rd *reading.Reading, k int) bool {
	t := rd.TermAt(k)
	holds := t.Intent == parser.AskAnchor || t.Intent == parser.AskGear || t.Intent == parser.AskWeight || t.Intent == parser.AskLower && (t.Bears || rd.Cued(rd.At(k), lexicon.CueHolds) || rd.Cued(rd.At(k), lexicon.CueToHold))
	return holds || rd.Cued(rd.At(k), lexicon.CueTakesLoad) && t.Intent == ""
}

// drumLoadAt says whether the word at i asks what the gear that holds the drum bears, and
// from where to where the words of that stand.
func drumLoadAt(rd *reading.Reading, i int) (from, to int, ok bool) {
	const far = 9
	ofGear := rd.TermAt(i).Intent == parser.AskBlockLoad && rd.TermAt(i).Block == "" && Part(rd.At(i)) != lexicon.PartBlock
	if !rd.TermAt(i).HowMuch && !ofGear {
		return 0, 0, false
	}
	for k := i - 1; k >= 0 && rd.At(k).Fig == nil && i-k <= 2*far; k-- {
		switch {
		case rd.At(k).Pause == 4 && k != lastPause(rd, i):
			return 0, 0, false // what is asked is at most one sentence away
		case drumHolder(rd, k):
			if felt := feltAt(rd, i, far); felt >= 0 || ofGear || k == i-1 && pullNoun(rd, i) {
				return k, max(i, felt), true
			}
		case Part(rd.At(k)) == lexicon.PartBlock:
			return 0, 0, false
		}
	}
	felt := rd.TermAt(i).Receives || ofGear
	for k := i + 1; k <= i+far && rd.At(k).Fig == nil && rd.At(k).Pause < 4 && Part(rd.At(k)) != lexicon.PartBlock && !someone(rd, k); k++ {
		felt = felt || feels(rd, k) || rd.At(k).Marked(lexicon.MarkIn)
		if !drumHolder(rd, k) {
			continue
		}
		if at := feltAt(rd, k, far); at >= 0 || felt {
			return i, max(k, at), true
		}
	}
	return 0, 0, false
}

// pullNoun reads "the drum pull", "anchor force".
func pullNoun(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i), lexicon.CueForce) || rd.Cued(rd.At(i), lexicon.CuePull)
}

// lastPause is the end of the sentence before the one at i, -1 for none.
func lastPause(rd *reading.Reading, i int) int {
	for k := i - 1; k >= 0; k-- {
		if rd.At(k).Pause == 4 {
			return k
		}
	}
	return -1
}

// feltAt is where a word of what gear gets stands behind i, -1 for none: no number and no
// other gear is told between.
func feltAt(rd *reading.Reading, i, far int) int {
	for k := i + 1; k <= i+far && rd.At(k).Fig == nil && rd.At(k).Pause < 4; k++ {
		if p := Part(rd.At(k)); p == lexicon.PartBlock || p == lexicon.PartRope || someone(rd, k) {
			return -1
		}
		if feels(rd, k) {
			return k
		}
	}
	return -1
}

// someone says whether the word at k is a person: "él" is typed like the article.
func someone(rd *reading.Reading, k int) bool {
	return rd.TermAt(k).Human && !rd.At(k).Marked(lexicon.MarkArticle)
}

// feels says whether the word at k is what gear does with a load that comes on it. What it
// can hold is its strength, what it has to hold a load.
func feels(rd *reading.Reading, k int) bool {
	e := rd.At(k)
	if rd.TermAt(k).Receives {
		return true
	}
	can := rd.AnyAt(func(n int) bool { return rd.Cued(rd.Elems[n], lexicon.CueCan) })
	can = can || rd.Worded(parser.Wraps) || !rd.AnyAt(rd.Is(Heavy)) // "qué aguanta un tambor con 3 vueltas"
	return (rd.Cued(e, lexicon.CueTakesLoad) || rd.Cued(e, lexicon.CueToHold)) && !can
}

// drumHolder says whether the word at k names the drum, or what holds it: "drum sling",
// "the anchor of the bollard", "the strap round the base that holds the drum".
func drumHolder(rd *reading.Reading, k int) bool {
	e := rd.At(k)
	holder := Part(e) == lexicon.PartSling || rd.Cued(e, lexicon.CueAnchor) || rd.Cued(e, lexicon.CueAnchorPoint) || rd.TermAt(k).Anchors
	switch {
	case Part(e) == lexicon.PartDrum, rd.Cued(e, lexicon.CueDrumHolder):
		return true
	case !holder || Part(e) == lexicon.PartBlock:
		return false
	}
	return drumBeside(rd, k, -1) || drumBeside(rd, k, +1)
}

// drumBeside says whether the drum is named on one side of the word at k, with no number
// and no block between.
func drumBeside(rd *reading.Reading, k, step int) bool {
	const far = 18
	for n := k + step; n >= 0 && n < len(rd.Elems) && n != k+far*step; n += step {
		e := rd.Elems[n]
		if e.Fig != nil || Part(e) == lexicon.PartBlock || rd.TermAt(n).Block == parser.TopBlock {
			return false
		}
		if Part(e) == lexicon.PartDrum {
			return true
		}
	}
	return false
}
