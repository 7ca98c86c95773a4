package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// toldOf is a number of an obstacle, and what its words make it: a field, or
// the reason to ask.
type toldOf struct {
	at      int
	field   parser.Field
	unclear parser.Kind
}

// manyTold is how many numbers one obstacle has.
const manyTold = 2

// Told lists the numbers of the thing at i: "a 14 ft roof", "the roof is 12 ft
// away and 14 ft high".
func Told(rd *reading.Reading, i int) []toldOf {
	var out []toldOf
	if j := rd.Past(i-1, -1, lexicon.MarkAdjective|lexicon.MarkUpward); leads(rd, j) {
		out = append(out, toldOf{at: j, field: parser.ObstacleHeight})
	} else if rd.At(j).Marked(lexicon.MarkRelation) && !rd.At(j).Marked(lexicon.MarkIs) && Far(rd, j-1) {
		return append(out, toldOf{at: j - 1, unclear: parser.FromWhere}) // "12 ft from the roof"
	} else if k := rd.Past(j, -1, lexicon.MarkArticle); rd.At(k).Marked(lexicon.MarkRelation) && !rd.At(k).Marked(lexicon.MarkIs) && Far(rd, k-1) {
		return append(out, toldOf{at: k - 1, unclear: parser.FromWhere})
	}
	led := true
	for k := i + 1; k < len(rd.Elems) && len(out) < manyTold; k++ {
		e := rd.Elems[k]
		switch {
		case e.Fig != nil:
			t, last, ok := toldAt(rd, k, led)
			if !ok {
				return out
			}
			out, k, led = append(out, t), last, false
		case e.Marked(lexicon.MarkAt | lexicon.MarkAnd | lexicon.MarkIs | lexicon.MarkArticle | lexicon.MarkFollow):
			led = led || e.Marked(lexicon.MarkAt|lexicon.MarkAnd)
		case e.Marked(lexicon.MarkOutward) && atBlock(rd, k): // "roof past the block 12 ft away"
		case e.Pause == 2:
			led = rd.Text[e.Start:e.End] == ":"
		case e.Pause == 0 && e.Term != nil && len(e.Term.Roles) == 0 && e.Term.Marks == 0 && e.Term.Intent == "" && !e.Piece():
		default:
			return out
		}
	}
	return out
}

// leads says whether the number at j stands before its thing and is of no
// other: "block at 40 ft roof" is not "a 40 ft roof".
func leads(rd *reading.Reading, j int) bool {
	if !Far(rd, j) {
		return false
	}
	before := rd.At(rd.Past(j-1, -1, lexicon.MarkIs|lexicon.MarkAt))
	return before.Term == nil || len(before.Term.Roles) == 0
}

// Far says whether the number at i is a length in a unit of distance.
func Far(rd *reading.Reading, i int) bool { return rd.At(i).Fig.Far() }

// toldAt reads the number at k by the words behind it, and returns the last
// element of them. A number without such words is the thing's only where
// something leads to it.
func toldAt(rd *reading.Reading, k int, led bool) (t toldOf, last int, ok bool) {
	t = toldOf{at: k}
	next := rd.At(k + 1)
	switch {
	case rd.Elems[k].Fig.Dim != parser.DimLength || rd.Elems[k].Fig.Told == parser.DropHeight:
		return t, k, false
	case next.Marked(lexicon.MarkUpward):
		t.field = parser.ObstacleHeight
		return t, k + 1, true
	case atItsTop(rd, k+1) > 0: // "roof is 20 ft at the ridge"
		t.field = parser.ObstacleHeight
		return t, atItsTop(rd, k+1), true
	case rd.Cued(next, lexicon.CueAbove) && rd.EndsBreath(k+2): // "climber 12 ft above": above what?
		t.unclear = parser.FromWhere
		return t, k + 1, true
	case next.Marked(lexicon.MarkOutward | lexicon.MarkRelation), next.Marked(lexicon.MarkArticle) && (atBlock(rd, k+2) || rd.At(k+2).Marked(lexicon.MarkOutward)):
		last = outward(rd, k+1, &t)
		return t, last, true
	case next.Marked(lexicon.MarkNearside), next.Plays(parser.Tie), rd.Cued(next, lexicon.CueOffTrunk): // "12 ft from the trunk"
		t.unclear = parser.FromWhere
		return t, k + 1, true
	case sideTold(rd, k) != "" && next.Term != nil && (len(next.Term.Roles) == 0 || led && startSided(rd, k) >= 0): // "12 ft right"
		return t, k + 1, led
	case next.Marked(lexicon.MarkAdjective) || next.Piece() || Obstacle(next) != "" || next.Term != nil && len(next.Term.Roles) > 0:
		return t, k, false // "12 ft wide", "22 ft limb", "8 ft to the side"
	}
	return t, k, led && Far(rd, k)
}

// atItsTop is where "at the ridge" ends from the element at i on, which tells of a roof how
// high it is; 0 where that does not stand there.
func atItsTop(rd *reading.Reading, i int) int {
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	if rd.At(i).Marked(lexicon.MarkAt) && rd.Cued(rd.At(j), lexicon.CueRidge) {
		return j
	}
	return 0
}

// outward reads what a distance is told from, behind the number at k-1: the
// block or nothing will do.
func outward(rd *reading.Reading, k int, t *toldOf) (last int) {
	t.field = parser.ObstacleOut
	last = k
	whole := false // the words say the block or the far side themselves
	for ; rd.At(last).Marked(lexicon.MarkOutward | lexicon.MarkRelation | lexicon.MarkArticle); last++ {
		whole = whole || atBlock(rd, last)
	}
	switch e := rd.At(last); {
	case e.Marked(lexicon.MarkNearside):
		t.field, t.unclear = "", parser.FromWhere
	case e.Plays(parser.HitchHeight) && !e.Plays(parser.Tie) && rd.At(last-1).Marked(lexicon.MarkRelation|lexicon.MarkArticle):
		if !e.Marked(lexicon.MarkLoaded) || rd.At(last+1).Marked(lexicon.MarkAt) {
			return last - 1 // "from the block at 40 ft" tells the block's height too
		}
		return last
	case whole || !rd.At(last-1).Marked(lexicon.MarkRelation|lexicon.MarkArticle) || e.Term == nil || rd.At(last-1).Marked(lexicon.MarkOutward) && !e.Marked(lexicon.MarkPlace|lexicon.MarkPronoun|lexicon.MarkPart|lexicon.MarkStation) && !e.Piece():
		return last - 1
	default:
		t.field, t.unclear = "", parser.FromWhere
	}
	return last
}

// atBlock says whether the words name the block, plumb, or the far side.
func atBlock(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Marked(lexicon.MarkOutward) && e.Marked(lexicon.MarkPlace) && !e.Marked(lexicon.MarkRelation) && e.End-e.Start > len("away")
}

// Eliminate gives a number without words of its own the place that is left. A
// person "at" somewhere is so high.
func Eliminate(rd *reading.Reading, told []toldOf, kind parser.Obstacle, thing int) {
	other := map[parser.Field]parser.Field{parser.ObstacleOut: parser.ObstacleHeight, parser.ObstacleHeight: parser.ObstacleOut}
	for i := range told {
		t := &told[i]
		switch {
		case t.field != "" || t.unclear != "":
		case len(told) == manyTold && told[1-i].field != "":
			t.field = other[told[1-i].field]
		case kind == parser.Person && len(told) == 1 && (rd.At(t.at-1).Marked(lexicon.MarkAt) || EndsInAt(rd, thing)):
			t.field = parser.ObstacleHeight
		case hangWanted(rd) && len(told) == 1:
			t.field = parser.ObstacleHeight // what hangs over it hangs over its top: "shed roof at 3 m"
		case sideTold(rd, t.at) != "":
			t.field, t.unclear = bySides(rd, t.at)
		default:
			t.unclear = parser.TwoReadings
		}
	}
}

// hangWanted says whether it is asked how high a piece ends up hanging.
func hangWanted(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == parser.HangWanted })
}

// Stands says whether a distance is told: else a trunk is the piece itself.
func Stands(rd *reading.Reading, told []toldOf) bool {
	for _, t := range told {
		if t.field == parser.ObstacleOut || t.unclear == parser.FromWhere {
			return true
		}
	}
	return false
}

// Said keeps in mind what is passed over, to say it back.
func Said(rd *reading.Reading, start, end int) {
	words := rd.Text[start:end]
	rd.Passed = append(rd.Passed, parser.Said[string]{Value: words, Words: words, Start: start, End: end})
}
