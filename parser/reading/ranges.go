package reading

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// Compounds joins feet and inches that stand apart: 6'4", 6 ft 4 in. With a
// space between them they are one length only where the message has another
// thickness: "22 ft 10 in red oak" could be 22'10" or 22 ft of 10 in. Before
// the words of a thickness the inches are its own, "22 ft 6 in tip", unless
// both could be: "1 ft 2 in across".
func (rd *Reading) Compounds() {
	for i := 0; i+1 < len(rd.Elems); i++ {
		rd.joinInches(i)
		rd.joinCentimetres(i)
		a, b := rd.At(i).Fig, rd.At(i+1).Fig
		if a == nil || b == nil {
			continue
		}
		tight := a.End == b.Start
		inches := *b
		if tight && b.Unit == nil && b.Low >= 0 {
			inches.Unit = scan.Inch
			inches.Low, inches.High = b.Low*inches.Unit.Factor, b.Low*inches.Unit.Factor
		}
		across := !tight && rd.thicknessWord(i+2)
		if !FeetInches(a, &inches) || across && a.Low > Roundest || !tight && rd.At(i+2).Marked(lexicon.MarkPlace|lexicon.MarkPart|lexicon.MarkGear) {
			continue
		}
		whole := *a
		whole.Low, whole.High, whole.End = a.Low+inches.Low, a.Low+inches.Low, b.End
		if across && !rd.lengthElsewhere(i) || !across && !tight && !rd.ThicknessBeside(b) {
			ask := whole.Ask(parser.TwoReadings, rd.Text)
			ask.Fields = []parser.Field{parser.Length}
			whole.Elsewhere = true
			rd.Asks = append(rd.Asks, ask)
		}
		rd.Elems[i] = Element{Start: whole.Start, End: whole.End, Fig: &whole}
		rd.Elems = append(rd.Elems[:i+1], rd.Elems[i+2:]...)
	}
}

// joinCentimetres reads "1m80" as metres and centimetres.
func (rd *Reading) joinCentimetres(i int) {
	a, b := rd.At(i).Fig, rd.At(i+1).Fig
	if a == nil || b == nil || a.Dim != parser.DimLength || a.Unit.Factor != 1 || a.Low != a.High || a.End != b.Start || b.Unit != nil || b.End-b.Start != 2 || b.Low < 0 {
		return
	}
	whole := *a
	whole.Low, whole.End = a.Low+b.Low/100, b.End
	whole.High = whole.Low
	rd.Elems[i] = Element{Start: whole.Start, End: whole.End, Fig: &whole}
	rd.Elems = append(rd.Elems[:i+1], rd.Elems[i+2:]...)
}

// halfAt finds the half that goes on from a number at j, "y media" or "and a
// half", -1 where there is none: "and half of the brush" is another.
func (rd *Reading) halfAt(j int) int {
	e, next := rd.At(j), rd.At(j+1)
	switch {
	case e.Marked(lexicon.MarkAnd) && next.Marked(lexicon.MarkHalf):
		return j + 1
	case e.Marked(lexicon.MarkHalf) && strings.HasSuffix(oneSpaced(rd.Text[e.Start:e.End]), " a half") && !next.Marked(lexicon.MarkIs|lexicon.MarkArticle) && !next.Piece():
		return j
	}
	return -1
}

// partAt finds the half or the quarter that goes on from a number before j, and how much
// it is; -1 where there is none.
func (rd *Reading) partAt(j int) (k int, part float64) {
	if k = rd.halfAt(j); k >= 0 {
		return k, scan.Half
	}
	if j >= len(rd.Elems) || rd.Elems[j].Fig != nil || rd.Elems[j].Pause > 0 {
		return -1, 0
	}
	start := rd.Elems[j].Start
	part, n := rd.In.AndPart(rd.Text[start:])
	for k = j; k < len(rd.Elems) && rd.Elems[k].End < start+n; k++ {
	}
	if next := rd.At(k + 1); part != scan.Quarter || next.Marked(lexicon.MarkUnit) || next.Plays(parser.Wraps) {
		return -1, 0 // "2 m y un cuarto de vuelta"
	}
	return k, part
}

// Half says whether the word at i is a half: "half worn", "medio gastada".
func (rd *Reading) Half(i int) bool {
	e := rd.At(i)
	return e.Term != nil && (e.Marked(lexicon.MarkHalf) || rd.In.Numbers[rd.Word(e)].Value == scan.Half)
}

func oneSpaced(words string) string { return strings.Join(strings.Fields(scan.Fold(words)), " ") }

// lengthElsewhere says whether another number than those at i and i+1 is told
// to be the length, so that "1 ft 2 in thick, 22 ft long" is one thickness.
func (rd *Reading) lengthElsewhere(i int) bool {
	for j, e := range rd.Elems {
		if j != i && j != i+1 && e.Fig.Far() && (rd.At(j+1).Plays(parser.Length) || j > i && rd.At(j-1).Plays(parser.Length)) {
			return true
		}
	}
	return false
}

// joinInches takes out what stands between the feet and the inches of one
// length: "6 pies y 4 pulgadas".
func (rd *Reading) joinInches(i int) {
	a, b := rd.Elems[i].Fig, rd.At(i+2).Fig
	if a != nil && b != nil && rd.Elems[i+1].Marked(lexicon.MarkInches) && FeetInches(a, b) {
		rd.Elems = slices.Delete(rd.Elems, i+1, i+2)
	}
}

// Halves adds the half or the quarter behind a number and its thing: "14 pulgadas y
// media", "2 vueltas y cuarto". Any other is asked about.
func (rd *Reading) Halves() {
	for i := 0; i+1 < len(rd.Elems); i++ {
		rd.oneAndPart(i)
		fig, j := rd.Elems[i].Fig, i+1
		if fig == nil || fig.Low != fig.High {
			continue
		}
		step := 1.0
		if fig.Unit != nil {
			step *= fig.Unit.Factor
		} else if rd.At(j).Plays(parser.Wraps) {
			j++
		} else {
			continue
		}
		k, part := rd.partAt(j)
		if k < 0 {
			continue
		}
		step *= part
		more := *fig
		more.Low, more.High, more.End = fig.Low+step, fig.High+step, rd.Elems[k].End
		rd.Elems[i] = Element{Start: more.Start, End: more.End, Fig: &more}
		rd.Elems = slices.Delete(rd.Elems, j, k+1)
	}
}

// HalfCounts reads "half a wrap" as a number, where none stands before it.
func (rd *Reading) HalfCounts() {
	for i := 0; i+2 < len(rd.Elems); i++ {
		e, next := rd.Elems[i], rd.At(i+2)
		if e.Term == nil || rd.In.Numbers[rd.Word(e)].Value != scan.Half || !rd.At(i+1).Marked(lexicon.MarkArticle) || next.Fig != nil || !next.Plays(parser.Wraps) {
			continue
		}
		if rd.At(i-1).Fig == nil && !rd.At(i-1).Marked(lexicon.MarkAnd) {
			rd.Join(i, i+2, &Figure{Low: scan.Half, High: scan.Half, Start: e.Start, End: e.End})
		}
	}
}

// oneAndPart reads the name of a unit at i with a part behind it as one and so much:
// "metre and a half", "metro y cuarto".
func (rd *Reading) oneAndPart(i int) {
	e := rd.Elems[i]
	u := rd.In.Units[scan.Fold(rd.Text[e.Start:e.End])]
	k, part := rd.partAt(i + 1)
	if last := rd.At(i - 1).Fig; u == nil || !e.Marked(lexicon.MarkUnit) || k < 0 || last != nil && last.Unit == nil {
		return
	}
	more := 1 + part
	f := &Figure{Unit: u, Dim: u.Dim, Low: more * u.Factor, High: more * u.Factor, Start: e.Start, End: rd.Elems[k].End}
	if u.Unsure {
		rd.Asks = append(rd.Asks, whichTon(f, rd.Text, more))
	}
	rd.Elems = slices.Replace(rd.Elems, i, k+1, Element{Start: f.Start, End: f.End, Fig: f})
}

// thicknessWord says whether the element has the words of a thickness, so
// that the inches before it are its: "22 ft 6 in tip".
func (rd *Reading) thicknessWord(i int) bool {
	for rd.At(i).Marked(lexicon.MarkIs | lexicon.MarkWhere) {
		i++
	}
	if e := rd.At(i); e.Term != nil {
		for _, r := range e.Term.Roles {
			if parser.Thickness(r.Field) {
				return true
			}
		}
	}
	return false
}

// ThicknessBeside says whether the message has a number in inches or the like
// besides f.
func (rd *Reading) ThicknessBeside(f *Figure) bool {
	for _, e := range rd.Elems {
		if e.Fig != nil && e.Fig != f && e.Fig.Told == "" && e.Fig.Unit != nil && e.Fig.Unit.Fine && !e.Fig.Rope && e.Fig.High > ThickestRope {
			return true
		}
	}
	return false
}

// Drooping turns the angle of a limb that hangs below level into one above it:
// "20° below level", "drooping 20°".
func (rd *Reading) Drooping() {
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Dim != parser.DimAngle {
			continue
		}
		if rd.At(i+1).Marked(lexicon.MarkDroops) || rd.At(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAdverb)).Marked(lexicon.MarkDroops) {
			e.Fig.Low, e.Fig.High = -e.Fig.High, -e.Fig.Low
		}
	}
}

// Tapers reads two ends in one breath, "14 in to 10 in" or "10-14 in", as
// butt and tip. The butt borrows the unit of the tip: "14 down to 10 inches".
func (rd *Reading) Tapers() {
	for i, e := range rd.Elems {
		if tip := rd.At(i + 2).Fig; rd.At(i+1).Marked(lexicon.MarkTaper) && e.Fig.bareTo(tip) {
			e.Fig.Unit, e.Fig.Dim = tip.Unit, tip.Dim
			e.Fig.Low, e.Fig.High = e.Fig.Low*tip.Unit.Factor, e.Fig.High*tip.Unit.Factor
		} else if rd.At(i+1).Marked(lexicon.MarkTaper) && tip.bareFrom(e.Fig) && !rd.At(i+3).Looks(lexicon.Before) && !rd.At(i+3).Piece() {
			tip.Lent(e.Fig.Unit) // "30 cm down to 9"
		}
		if e.Fig != nil && e.Fig.Dim == parser.DimLength && e.Fig.Unit.Fine && e.Fig.Low < e.Fig.High && !rd.thicknessWord(i+1) {
			e.Fig.Pair, e.Fig.Falling = true, false
		}
	}
}

// TapersTo reads "350 at the butt goes down to maybe 150" and "35 cm en la base y termina en
// 15": behind the thick end with its words, what it tapers to is the thin one, in its unit.
func (rd *Reading) TapersTo() {
	for i, e := range rd.Elems {
		if !e.Marked(lexicon.MarkTaper) {
			continue
		}
		t, b := i+1, i-1
		for rd.TermAt(t).Note == "about" {
			t++
		}
		for b > 0 && (rd.At(b).Pause == 2 || rd.At(b).Marked(lexicon.MarkAnd) || rd.At(b).Polite() && rd.At(b).Pause == 0 || rd.TermAt(b).HowMuch) {
			b-- // "que acaba en 14"
		}
		if !rd.At(b).Plays(parser.ButtDiameter) || rd.At(b-1).Fig == nil {
			continue
		}
		tip, butt := rd.At(t).Fig, rd.At(b-1).Fig
		high := rd.TermAt(t + 1).HighEnd // "acaba en 14 arriba"
		if tip == nil || tip.Told != "" || rd.At(t+1).Looks(lexicon.Before) && !high || !butt.Short() {
			continue
		}
		if tip.bareFrom(butt) && !rd.At(t+1).Piece() {
			tip.Lent(butt.Unit)
		}
		if tip.Short() && tip.High < butt.Low {
			tip.Told = parser.TipDiameter
			if high {
				rd.Elems[t+1].Term = &scan.Term{}
			}
		}
	}
}

// bareFrom says whether a number without a unit can be the tip of a piece whose butt
// is another number.
func (f *Figure) bareFrom(butt *Figure) bool {
	return f != nil && f.Unit == nil && f.Dim == parser.DimCount && !f.Falling && butt.Short() && f.Low > 0 && f.Low*butt.Unit.Factor < butt.Low
}

// bareTo says whether a number without a unit can be the butt of a piece whose
// tip is another number.
func (f *Figure) bareTo(tip *Figure) bool {
	if f == nil || f.Unit != nil || f.Dim != parser.DimCount || tip == nil || tip.Dim != parser.DimLength || !tip.Unit.Fine {
		return false
	}
	n := f.Low * tip.Unit.Factor
	return tip.High < n && n <= Roundest
}

// BareTapers reads "stem, 12 m, 700 down to 350" as the two ends of the piece in one breath:
// neither has a unit, and how long it is stands beside them. A limit, wraps or people go
// down as well, and have their words beside them.
func (rd *Reading) BareTapers() {
	const least = 1.25 // times the tip
	bare := func(f *Figure) bool {
		return f != nil && f.Unit == nil && f.Dim == parser.DimCount && !f.Pair && f.Low == f.High && f.Low > 0
	}
	far := func(i int) bool { return rd.Elems[i].Fig.Far() }
	named := func(i int) bool { return rd.Elems[i].Piece() }
	for i := 1; i+2 < len(rd.Elems); i++ {
		butt, tip, before := rd.Elems[i].Fig, rd.Elems[i+2].Fig, rd.Elems[i-1]
		if !bare(butt) || !bare(tip) || !rd.At(i+1).Marked(lexicon.MarkTaper) || butt.Low < least*tip.Low || !rd.AnyAt(far) || !rd.AnyAt(named) {
			continue
		}
		led := before.Pause > 0 || before.Fig.Far() || before.Piece() || before.Marked(lexicon.MarkMade) && (rd.At(i-2).Pause > 0 || rd.At(i-2).Piece() || rd.At(i-2).Fig.Far())
		if next := rd.At(i + 3); !led || !rd.EndsBreath(i+3) && !next.Piece() || next.Plays(parser.Weight) {
			continue
		}
		both := *butt
		both.Low, both.Falling, both.End = tip.Low, true, tip.End
		rd.Elems = slices.Replace(rd.Elems, i, i+3, Element{Start: both.Start, End: both.End, Fig: &both})
	}
}
