package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// How long a piece is, crews also tell by how far it goes from where it is cut: a limb
// is "22 ft out", a top "18 ft tall", a leader "goes up 8 metres". Gear beside it, or
// anything that stands there, could be what is so far or so high.

// LongPieces claims such a length, where it is the only one.
func LongPieces(rd *reading.Reading) {
	at := -1
	for i := range rd.Elems {
		switch {
		case !gear.Far(rd, i):
		case rd.Elems[i].Fig.Claimed == parser.Length || rd.At(i+1).Plays(parser.Length) && !rd.At(i+1).Marked(lexicon.MarkTall):
			return
		case tallTop(rd, i), goesFar(rd, i), farOut(rd, i):
			if at >= 0 {
				return // two of them are two things
			}
			at = i
		}
	}
	if at >= 0 {
		places.Claim(rd, at, parser.Length)
	}
}

// tallTop reads "ash top, 8 in butt, 18 ft tall": a top is the last that was named. How tall
// something is beside a limb may be its tree.
func tallTop(rd *reading.Reading, i int) bool {
	if !rd.At(i + 1).Marked(lexicon.MarkTall) {
		return false
	}
	next := i + 2
	if rd.TermAt(next).Tree != nil {
		next++
	}
	if rd.TermAt(next).TopEnd && rd.TermAt(next).Shape != "" {
		return true // "8 m tall pine top"
	}
	top := func(k int) bool { return k < i && rd.TermAt(k).TopEnd }
	return rd.EndsBreath(i+2) && lastNamed(rd, i) == parser.Limb && rd.AnyAt(top) || topAlone(rd, i)
}

// topAlone reads "doing a top out of a fir, 14 inch at the cut and 25 ft tall" and "top,
// 25 ft tall 9 inch at the cut": behind a tree whose top it is, how tall is the top's where
// a butt is told beside it, only its weight is asked of, and nothing else may be so tall.
func topAlone(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkAnd|lexicon.MarkIs)
	before := rd.At(j).Plays(parser.ButtDiameter) && rd.At(j-1).Fig.Short()
	behind := rd.At(i+2).Fig.Short() && rd.At(i+3).Plays(parser.ButtDiameter)
	top := func(k int) bool { return k < i && rd.TermAt(k).TopEnd }
	other := func(k int) bool {
		e := rd.Elems[k]
		return gear.Part(e) != "" || gear.Obstacle(e) != "" || rd.TermAt(k).Shape == parser.Log || k != i && gear.Far(rd, k) || e.Plays(parser.HitchHeight)
	}
	weighs := gear.AsksFor(rd, parser.AskWeight) || rd.Worded(parser.Weight) && !rd.AnyAt(rd.Is(gear.Heavy))
	return (before || behind) && weighs && rd.AnyAt(top) && !rd.AnyAt(other)
}

// goesFar reads "the leader is 42 cm at the cut and goes up 8 metres".
func goesFar(rd *reading.Reading, i int) bool {
	tips := rd.Past(i+1, +1, lexicon.MarkRelation|lexicon.MarkArticle)
	toTips := tips > i+1 && rd.At(tips).Plays(parser.TipDiameter) && rd.EndsBreath(tips+1) // "six metres to the tips"
	ends := toTips || rd.EndsBreath(i+1) || rd.At(i+1).Marked(lexicon.MarkWhere) || rd.At(i+1).Marked(lexicon.MarkUpward) && rd.EndsBreath(i+2)
	return ends && rd.TypedBefore(i, lexicon.CueGoesFar) && lastNamed(rd, i) != "" && !rd.Has(lexicon.MarkSide)
}

// farOut reads "limb, 10 in at the collar, 22 foot out", where nothing is moved, tied or
// hung that could be so far out.
func farOut(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.At(i+1), lexicon.CueAlong) || i+2 < len(rd.Elems) && rd.At(i+2).Pause == 0 || lastNamed(rd, i) != parser.Limb || rd.Has(lexicon.MarkTug|lexicon.MarkSide|lexicon.MarkBridle|lexicon.MarkTwins|lexicon.MarkMoving) {
		return false
	}
	apart := rd.At(i-1).Pause > 0 || rd.At(i-1).Marked(lexicon.MarkAnd) || rd.At(i-1).Plays(parser.ButtDiameter)
	return apart && rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig.Short() }) && !rd.AnyAt(rd.Is(reachesOut))
}

// reachesOut says whether the element at i is, or asks for, what else may be far out: a
// tie, a block, a swing. How far up the block hangs is no such thing.
func reachesOut(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	switch t.Intent {
	case parser.AskSwing, parser.AskBalance, parser.AskRaise, parser.AskAnchor, parser.AskNotch:
		return true
	}
	return t.Tied || t.Anchors || gear.Part(rd.Elems[i]) == lexicon.PartBlock || rd.Cued(rd.Elems[i], lexicon.CueCutting) || sizes.Surely(rd, i, parser.Tie)
}

// lastNamed is the shape of the piece that is the last thing named before i, "" where
// that is a tree, gear or what stands around.
func lastNamed(rd *reading.Reading, i int) parser.Shape {
	for k := i - 1; k >= 0; k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case t.Shape != "":
			return t.Shape
		case t.Tree != nil, gear.Part(e) != "", gear.Obstacle(e) != "" && !e.Marked(lexicon.MarkPerson), e.Marked(lexicon.MarkPlace|lexicon.MarkStation) && !e.Marked(lexicon.MarkPerson|lexicon.MarkOutward):
			return ""
		}
	}
	return ""
}

// OwnLong claims a length that is told with its unit before "long", where a bare thickness
// follows that the word could take as well: "7 m long 350 at the butt 150 at the tip".
func OwnLong(rd *reading.Reading) {
	for i := range rd.Elems {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || rd.Elems[i].Fig.Elsewhere || !rd.At(i+1).Plays(parser.Length) {
			continue
		}
		next, end := rd.At(i+2).Fig, rd.At(i+3)
		if next != nil && next.Unit == nil && (end.Plays(parser.ButtDiameter) || end.Plays(parser.TipDiameter) || end.Plays(parser.Diameter)) {
			places.Claim(rd, i, parser.Length)
			rd.Alter(i+1, func(t *scan.Term) { t.Roles = nil })
			return
		}
	}
}
