package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// Crews tell the ends of a piece without saying which is which: "10 in one end,
// 5 the other". The thicker is the butt. And a ring of wood is a round.

// BothEnds finds the two thicknesses of such a piece.
func BothEnds(rd *reading.Reading) {
	var at []int
	for i := range rd.Elems {
		if endOf(rd, i) {
			at = append(at, i)
		}
	}
	if len(at) == 1 {
		if other := otherEnd(rd, at[0]); other > 0 {
			at = append(at, other)
		} else if first := firstEnd(rd, at[0]); first != nil {
			at = first
		} else {
			at = namedEnd(rd, at[0])
		}
	}
	if len(at) != 2 {
		return
	}
	a, b := rd.Elems[at[0]].Fig, rd.Elems[at[1]].Fig
	if b.Unit == nil {
		b.Lent(a.Unit)
	}
	if u := drawnEnds(rd, a, b); u != nil {
		a.Lent(u)
		b.Lent(u)
	}
	if a.Unit != b.Unit || a.Unit != nil && !a.Short() || a.High == b.High || a.Pair || b.Pair {
		return
	}
	butt, tip := a, b
	if a.High < b.High {
		butt, tip = b, a
	}
	if a.Unit == nil {
		butt.Sure, tip.Sure = parser.ButtDiameter, parser.TipDiameter // only the unit is in doubt
	} else {
		butt.Told, tip.Told = parser.ButtDiameter, parser.TipDiameter
	}
	for _, i := range at {
		if !rd.TermAt(rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkArticle)).OneEnd {
			continue
		}
		rd.Alter(rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkArticle), func(t *scan.Term) { *t = scan.Term{} })
	}
}

// namedEnd finds the thickness that is told of the butt or of the tip by name, where the one
// at i is told of the other end: "16 in butt, 12 in the other end". It returns both, or none.
func namedEnd(rd *reading.Reading, i int) []int {
	for k, e := range rd.Elems {
		butt, tip := e.Plays(parser.ButtDiameter), e.Plays(parser.TipDiameter)
		if butt == tip || e.Plays(parser.Diameter) {
			continue
		}
		n := rd.Past(k-1, -1, lexicon.MarkAt|lexicon.MarkArticle)
		if !rd.At(n).Fig.Short() && rd.At(k+1).Fig.Short() && labels(rd, k) {
			n = k + 1
		}
		named, other := rd.At(n).Fig, rd.Elems[i].Fig
		if n == i || !named.Short() || named.Told != "" || butt && !over(named, other) || tip && !over(other, named) {
			continue
		}
		rd.Alter(k, func(t *scan.Term) { t.Roles = nil })
		return []int{n, i}
	}
	return nil
}

// otherEnd finds the thickness behind the one at i that "other" is said of alone: "40 at
// one end 34 other".
func otherEnd(rd *reading.Reading, i int) int {
	k := rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkArticle) + 1
	for rd.At(k).Pause > 0 && rd.At(k).Pause < 4 || rd.At(k).Marked(lexicon.MarkAnd|lexicon.MarkIs) {
		k++
	}
	fig, n := rd.At(k).Fig, rd.Past(k+1, +1, lexicon.MarkAt|lexicon.MarkArticle)
	if fig == nil || fig.Told != "" || !fig.Short() && (fig.Dim != parser.DimCount || fig.Unit != nil) || !rd.Cued(rd.At(n), lexicon.CueOther) || !rd.EndsBreath(n+1) {
		return -1
	}
	rd.Elems[n].Term = &scan.Term{}
	return k
}

// drawnEnds is the millimetre for two bare ends that are more than any centimetres, where
// all lengths are metric; nil elsewhere.
func drawnEnds(rd *reading.Reading, a, b *reading.Figure) *scan.UnitWord {
	const least, most = 200, 2000
	if a.Unit != nil || b.Unit != nil || min(a.Low, b.Low) < least || max(a.High, b.High) > most || !sizes.Only(rd, parser.Metric, parser.DimLength) {
		return nil
	}
	return scan.Millimetre
}

// firstEnd finds the thickness before the one at i that is told of the other end,
// by itself or of "a tip": "27 cm, 20 en la otra punta", "27 cm en una punta y 20 en
// la otra". It returns both, or none.
func firstEnd(rd *reading.Reading, i int) []int {
	p := i - 1
	for rd.At(p).Pause > 0 && rd.At(p).Pause < 4 || rd.At(p).Marked(lexicon.MarkAnd|lexicon.MarkIs|lexicon.MarkMade) {
		p--
	}
	end := p
	if rd.At(p).Plays(parser.TipDiameter) || rd.At(p).Plays(parser.Sideways) {
		p--
	}
	fig := rd.At(p).Fig
	bare := fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && end > p
	if !fig.Short() && !bare || fig.Told != "" || fig.Pair || end == p && rd.At(p-1).Looks(lexicon.After) {
		return nil
	}
	if end == p && rd.At(p-1).Plays(parser.Sideways) {
		end = p - 1 // "de un lado 50 cm y 30 del otro"
	}
	if end != p {
		rd.Alter(end, func(t *scan.Term) { *t = scan.Term{} })
	}
	return []int{p, i}
}

// endOf says whether the number at i is told of one of two ends.
func endOf(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && fig.Told == "" && (fig.Short() || fig.Dim == parser.DimCount && fig.Unit == nil) &&
		rd.TermAt(rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkArticle)).OneEnd
}

// thinEnd reads "36 in butt, 30 in top", "22 at the bottom, 12 up top" and "butt 17
// top 13" as both ends of one piece: the words at i stand where those of the thick
// end do, beside a lesser number.
func thinEnd(rd *reading.Reading, i int) {
	if rd.At(i + 1).Piece() {
		return
	}
	for k := range rd.Elems {
		if k == i || !rd.At(k).Plays(parser.ButtDiameter) {
			continue
		}
		behind := numberBefore(rd, k) != nil && over(numberBefore(rd, k), numberBefore(rd, i))
		ahead := !behind && labels(rd, k) && labels(rd, i) && over(rd.At(k+1).Fig, rd.At(i+1).Fig)
		switch {
		case behind:
			rd.Alter(i, func(t *scan.Term) {
				t.Shape, t.Roles = "", []scan.Role{{Field: parser.TipDiameter, Side: lexicon.Before, Soft: false}}
			})
			return
		case ahead:
			rd.Alter(i, func(t *scan.Term) {
				t.Shape, t.Roles = "", []scan.Role{{Field: parser.TipDiameter, Side: lexicon.After, Soft: false}}
			})
			return
		}
	}
}

// labels says whether the words at k stand before their number, and none before
// them: "butt 17 top 13".
func labels(rd *reading.Reading, k int) bool {
	before := rd.At(k - 1)
	return rd.At(k+1).Fig != nil && (before.Fig == nil || rd.At(k-2).Looks(lexicon.After))
}

// numberBefore is the number that the words at k stand behind, nil for none.
func numberBefore(rd *reading.Reading, k int) *reading.Figure {
	return rd.At(rd.Past(k-1, -1, lexicon.MarkAt|lexicon.MarkArticle)).Fig
}

// over says whether a thickness is more than another that is told alike.
func over(f *reading.Figure, thin *reading.Figure) bool {
	alike := func(f *reading.Figure) bool {
		return f.Short() || f != nil && f.Dim == parser.DimCount && f.Unit == nil
	}
	return alike(f) && alike(thin) && !f.Pair && !thin.Pair && f.High > thin.In(f)
}

// ThickOfThin reads "20 in, 18 in at the small end": of two thicknesses the one
// that nothing is said of is at the other end.
func ThickOfThin(rd *reading.Reading) {
	tip, other := -1, -1
	for i, e := range rd.Elems {
		switch {
		case e.Fig == nil:
			if e.Plays(parser.ButtDiameter) || e.Plays(parser.MidDiameter) || e.Plays(parser.Diameter) && !e.Marked(lexicon.MarkAdjective) || e.Marked(lexicon.MarkTaper) || e.Term != nil && e.Term.Shape == parser.Limb {
				return
			}
		case turning.RoleBehind(rd, i) == parser.TipDiameter:
			if tip >= 0 {
				return
			}
			tip = i
		case !e.Fig.Short() || e.Fig.High <= reading.ThickestRope:
		case other >= 0 || e.Fig.Told != "" || e.Fig.Pair || rd.At(i+1).Looks(lexicon.Before):
			return
		default:
			other = i
		}
	}
	if other < 0 || tip < other || !over(rd.Elems[other].Fig, rd.Elems[tip].Fig) {
		return
	}
	if thin := rd.Elems[tip].Fig; thin.Unit == nil {
		thin.Lent(rd.Elems[other].Fig.Unit)
	}
	rd.Elems[other].Fig.Told = parser.ButtDiameter
}

// ToTip claims how long a piece is where it is told as far as its end: "22 foot out to
// the tip". What goes on from there, "to the tip from the tie", tells of a part of it.
func ToTip(rd *reading.Reading) {
	const most = 6 // words: "all the way out to the tip"
	for i := range rd.Elems {
		before, tip := rd.At(i-1), i+1
		if !gear.Far(rd, i) || !rd.TypedAfter(i, lexicon.CueToTip) || before.Marked(lexicon.MarkRelation) || rd.Cued(before, lexicon.CueMore) || rd.Cued(before, lexicon.CueOther) {
			continue
		}
		for tip < i+most && !rd.At(tip).Plays(parser.TipDiameter) && rd.At(tip).Term != nil {
			tip++
		}
		part := rd.AnyAt(func(k int) bool { return (k < i || k > tip) && (rd.TermAt(k).Tied || rd.Elems[k].Plays(parser.Tie)) })
		if goesOn := rd.At(tip + 1); part || goesOn.Fig.Short() || !rd.At(tip).Plays(parser.TipDiameter) || goesOn.Marked(lexicon.MarkRelation) && !goesOn.Marked(lexicon.MarkIs) {
			continue
		}
		places.Claim(rd, i, parser.Length)
		for k := i + 1; k <= tip; k++ {
			rd.Elems[k].Term = &scan.Term{}
		}
	}
}

// ringOfWood reads "sycamore ring" as a round: a ring that a tree is named
// before is no gear.
func ringOfWood(rd *reading.Reading, i int) {
	if rd.TermAt(i-1).Tree != nil {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Shape: parser.Log, Marks: lexicon.MarkRound} })
	}
}
