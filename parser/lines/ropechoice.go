package lines

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Which of the ropes on the truck to take is asked with their lengths in a row: "got a
// 120, a 150 and a 200". Whether it takes a longer one than the one at hand is the same
// question as whether that one reaches.

// ropeChoice settles both, where it is told how high the block is and nothing that hangs
// on the rope.
func ropeChoice(rd *reading.Reading) {
	if rd.AnyAt(rd.Is(Sized)) || rd.AnyAt(rd.Is(gear.Heavy)) || gear.Swings(rd) {
		return
	}
	topUp(rd)
	high := rd.AnyAt(func(i int) bool {
		fig := rd.Elems[i].Fig
		return sizes.Hitched(rd, i) || fig != nil && (fig.Told == parser.HitchHeight || gear.Beside(rd, i, parser.HitchHeight))
	})
	if !high {
		return
	}
	which := rd.Only(func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueWhichRope) })
	if ropesInRow(rd, which >= 0) && which >= 0 {
		takesRope(rd, which)
	}
	for i := range rd.Elems {
		rope := gear.Part(rd.At(i+1)) == lexicon.PartRope || gear.Part(rd.At(i-1)) == lexicon.PartRope
		if rope && rd.Cued(rd.Elems[i], lexicon.CueLength) && rd.TermAt(i).Turning == parser.TurnsCompared {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskRope} })
		}
	}
}

// takesRope makes "which rope" ask how long a one, and what is pulled off the truck no
// lift.
func takesRope(rd *reading.Reading, which int) {
	rd.Alter(which, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskRope} })
	for j := which + 1; j < len(rd.Elems) && rd.At(j).Pause == 0; j++ {
		if t := rd.TermAt(j); t.Intent == parser.AskLift && t.Besides {
			rd.Elems[j].Term = &scan.Term{}
		}
	}
}

// topUp reads "the top is up about 60 ft" as where the block hangs, where the rope's
// reach is asked and no piece is told.
func topUp(rd *reading.Reading) {
	if !rd.AnyAt(rd.Is(heights.ReachAsked)) {
		return
	}
	for i := range rd.Elems {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || rd.At(i+1).Plays(parser.Length) {
			continue
		}
		k := i - 1
		for rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkUpward) || rd.TermAt(k).Note == "about" {
			k--
		}
		upward := rd.At(i-1).Marked(lexicon.MarkAt) || rd.At(i+1).Marked(lexicon.MarkUpward) || slices.ContainsFunc(rd.Elems[k+1:i], func(e reading.Element) bool { return e.Marked(lexicon.MarkUpward) })
		other := rd.AnyAt(func(n int) bool { return n != i+1 && n != i-1 && sizes.Hitched(rd, n) })
		if !other && rd.TermAt(k).TopEnd && rd.TermAt(k).Shape == parser.Limb && k < i-1 && upward && rd.TermAt(k-1).Tree == nil {
			rd.Elems[i].Fig.Told = parser.HitchHeight
			rd.Elems[k].Term = &scan.Term{}
			return
		}
	}
}

// ropesInRow tells the lengths of ropes that stand in a row, and says whether there are
// any: two where it is asked which rope, else three.
func ropesInRow(rd *reading.Reading, asked bool) bool {
	least := 3
	if asked {
		least = 2
	} else if rd.AnyAt(func(i int) bool {
		return rd.Cued(rd.Elems[i], lexicon.CueEnough) && rd.Cued(rd.Elems[i], lexicon.CueWhichOfAll)
	}) {
		least = 2 // "got a 120 and a 150, which reaches"
	} else if !rd.AnyAt(rd.Is(heights.ReachAsked)) && !rd.AnyAt(func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueEnough) }) {
		return false
	}
	for i := range rd.Elems {
		end, n := rowOfRopes(rd, i)
		if n < least {
			continue
		}
		tellRopes(rd, i, end)
		return true
	}
	return false
}

// rowOfRopes is where a row of ropes ends that begins at i, and how many they are.
func rowOfRopes(rd *reading.Reading, i int) (end, n int) {
	for j := i; j < len(rd.Elems); j++ {
		e := rd.At(j)
		switch {
		case maybeRope(rd, j):
			if n, end = n+1, j+1; eitherOf(rd, j) > 0 {
				n++
			}
		case n == 0:
			return i, 0
		case e.Pause != 2 && !e.Marked(lexicon.MarkArticle|lexicon.MarkAnd|lexicon.MarkMade) && !rd.Cued(e, lexicon.CueOther):
			return end, n
		}
	}
	return end, n
}

// maybeRope says whether the number at i can be how long a rope is: a bare one of that
// size, or a length that nothing else takes.
func maybeRope(rd *reading.Reading, i int) bool {
	fig, next := rd.At(i).Fig, rd.At(i+1)
	if fig == nil || fig.Told != "" && fig.Told != parser.RopeLength || fig.Pair || fig.Falling || fig.Elsewhere || next.Plays(parser.HitchHeight) || rd.At(rd.Back(i-1)).LeadsTo(parser.HitchHeight) || next.Plays(parser.People) || next.Plays(parser.Wraps) {
		return false
	}
	bare := fig.Dim == parser.DimCount && fig.Unit == nil && shortestRope <= fig.Low && fig.High <= longestRope
	return bare || fig.Far() && fig.Low >= shortestHand
}

// eitherOf is where the second number of "150 or 200" begins, which elsewhere is a range;
// 0 where the number at i is no such two.
func eitherOf(rd *reading.Reading, i int) int {
	fig := rd.Elems[i].Fig
	if fig.Low == fig.High {
		return 0
	}
	words, at := fig.Words(rd.Text), 0
	for _, w := range strings.Fields(words) {
		at += strings.Index(words[at:], w) + len(w)
		if rd.In.Joins[scan.Fold(w)] == scan.Or {
			return fig.Start + at + 1
		}
	}
	return 0
}

// tellRopes tells those of a row.
func tellRopes(rd *reading.Reading, from, to int) {
	field := parser.RopeLength
	for i := from; i < to; i++ {
		if rd.Elems[i].Fig == nil {
			continue
		}
		if at := eitherOf(rd, i); at > 0 {
			a, b := *rd.Elems[i].Fig, *rd.Elems[i].Fig
			a.High, a.End, b.Low, b.Start = a.Low, at-1, b.High, at
			rd.Elems[i] = reading.Element{Start: a.Start, End: a.End, Fig: &a}
			rd.Elems = slices.Insert(rd.Elems, i+1, reading.Element{Start: b.Start, End: b.End, Fig: &b})
			to++
		}
		if fig := rd.Elems[i].Fig; lentRope(rd, i) {
			fig.Told = field
		} else {
			fig.Sure = field
		}
		field = parser.SecondRope
	}
}
