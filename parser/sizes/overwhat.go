package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// overWhat passes over what a load comes up for, "come up 4 ft to clear the fence", where
// a tackle lifts it: the height is told, and nothing swings.
func overWhat(rd *reading.Reading, i int) {
	thing := clearedAt(rd, purposeAt(rd, i))
	if thing < 0 && rd.Cued(rd.At(i), lexicon.CueOver) {
		thing = obstacleAt(rd, i+1) // "18 in over the wall"
	}
	if thing < 0 || !rd.EndsBreath(thing+1) || !liftTold(rd) {
		return
	}
	passOver(rd, i, thing)
}

// obstacleAt is where a thing stands that a load may strike, behind an article at i, or -1.
func obstacleAt(rd *reading.Reading, i int) int {
	if k := rd.Past(i, +1, lexicon.MarkArticle|lexicon.MarkAdjective); gear.Obstacle(rd.At(k)) != "" {
		return k
	}
	return -1
}

// BeforeSwung passes over what comes behind a lift, "needs to come up 1 m before swinging
// out": how far the load comes up is told, and nothing is told of a swing.
func BeforeSwung(rd *reading.Reading) {
	for i := range rd.Elems {
		if fig := rd.Elems[i].Fig; fig == nil || fig.Told != parser.Rise || !rd.Cued(rd.At(i+1), lexicon.CueClause) && !(rd.Cued(rd.At(i+1), lexicon.CueFormerly) && rd.At(i+2).Marked(lexicon.MarkMade)) {
			continue
		}
		swings, k := false, i+2
		for ; !rd.EndsBreath(k) && rd.At(k).Fig == nil; k++ {
			swings = swings || rd.TermAt(k).Intent == parser.AskSwing || rd.At(k).Marked(lexicon.MarkTug) || rd.At(k).Plays(parser.Sideways)
		}
		if swings && rd.At(k).Fig == nil && !rd.Worded(parser.LineOut) {
			passOver(rd, i+1, k-1)
		}
	}
}

// ToClear passes over what a load is pulled aside or lowered for, "7 ft sideways to clear
// the shed", and says it back, where nothing else asks of a swing.
func ToClear(rd *reading.Reading) {
	if !rd.AnyAt(func(k int) bool {
		return rd.Elems[k].Marked(lexicon.MarkTug) || rd.TermAt(k).Intent == parser.AskBalance || rd.Elems[k].Plays(parser.Wraps)
	}) {
		return
	}
	for i := range rd.Elems {
		thing := clearedAt(rd, purposeAt(rd, i))
		swings := func(k int) bool { return (k < i || k > thing) && rd.TermAt(k).Intent == parser.AskSwing }
		behind := rd.At(i-1).Pause > 0 || rd.At(i-1).Fig != nil || rd.At(i-1).Plays(parser.Sideways) || rd.At(i-1).Plays(parser.Wraps) // not "is it able to clear"
		if thing >= 0 && behind && rd.EndsBreath(thing+1) && !rd.AnyAt(swings) {
			passOver(rd, i, thing)
			return
		}
	}
}

// BeforeClear passes over when the load of a lift would come clear, "the blocks meet before
// the limb clears the gutter": nothing swings there either.
func BeforeClear(rd *reading.Reading) {
	rises := rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Told == parser.Rise })
	for i := range rd.Elems {
		if !rd.Cued(rd.Elems[i], lexicon.CueClause) || !rises && !tackleTold(rd) && !rd.LiftsOn() {
			continue
		}
		load := rd.Past(i+1, +1, lexicon.MarkArticle)
		if !rd.At(load).Piece() && !rd.Cued(rd.At(load), lexicon.CueLoad) {
			load-- // "antes de que libre el techo"
		}
		if thing := clearedAt(rd, load+1); thing >= 0 && rd.EndsBreath(thing+1) {
			passOver(rd, i, thing)
		}
	}
}

// passOver leaves out the elements of a stretch, and says them back.
func passOver(rd *reading.Reading, from, to int) {
	kept := make([]reading.Element, 0, to+1-from)
	for k := from; k <= to; k++ {
		kept = append(kept, reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{Chatter: true}})
	}
	rd.Pass(from, to+1, kept...)
}

// purposeAt is what stands behind "to", "so", "so that it" at i, or -1: a load comes up
// for something.
func purposeAt(rd *reading.Reading, i int) int {
	switch {
	case rd.TermAt(i).Serves:
		return i + 1
	case rd.Cued(rd.At(i), lexicon.CueSoThat):
		return rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkPronoun)
	}
	return -1
}

// clearedAt is the thing that the verb at i has to come clear of, or -1: what stands
// there, or the wood that is left.
func clearedAt(rd *reading.Reading, i int) int {
	if clears := rd.TermAt(i); i < 0 || clears.Intent != parser.AskSwing || !clears.Besides {
		return -1
	}
	thing := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkMade)
	e := rd.At(thing)
	wood := rd.Cued(e, lexicon.CueWood) || rd.Cued(e, lexicon.CueHinge)
	if !wood && gear.Obstacle(e) == "" && !e.Marked(lexicon.MarkPlace) {
		return -1
	}
	return thing
}
