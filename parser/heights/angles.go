package heights

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// An angle is told without its degrees beside the words for one, or beside a
// redirect: "angle 60", "redirect at like 45". No size stands there.

// BareAngles gives such numbers their degrees. Whether one is the turn or lies
// between the legs is another question, but for a right angle: that could be the
// height of a redirect where other heights are told.
func BareAngles(rd *reading.Reading) {
	const least, most, right = 10, 180, 90
	legsApart(rd)
	named := rd.AnyAt(func(i int) bool {
		return rd.TermAt(i).Block != "" || rd.Elems[i].Plays(parser.BlockAngle) && (rd.Cued(rd.Elems[i], lexicon.CueAngle) || angleNamed(rd, i))
	})
	if !named && !gear.AsksFor(rd, parser.AskBlockLoad) && !tensionAtBlock(rd) {
		return
	}
	long := rd.AnyAt(rd.Is(gear.Far))
	for i, e := range rd.Elems {
		fig := e.Fig
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Pair || fig.Low < least || fig.High > most || sizes.Counts(rd, i) || rd.At(i+1).Plays(parser.HitchHeight) || blockRight(rd, i) != "" && !rd.Cued(rd.At(rd.Back(i-1)), lexicon.CueAngle) {
			continue
		}
		j := backToAngle(rd, i)
		redirect := parser.Redirecting(rd.TermAt(j).Block) && !(long && fig.High == right)
		if rd.Cued(rd.At(j), lexicon.CueAngle) || rd.At(j).LeadsTo(parser.BlockAngle) && angleNamed(rd, j) || redirect || courseAngle(rd, i) {
			fig.Dim, fig.Unit = parser.DimAngle, scan.Degree
		}
	}
}

// angleNamed says whether the words at i name an angle, "angle between the legs", and not
// only what two legs have between them.
func angleNamed(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i-1), lexicon.CueAngle) || slices.ContainsFunc(scan.SplitWords(rd.Word(rd.Elems[i])), func(w string) bool { return rd.In.Cued(w, lexicon.CueAngle) })
}

// backToAngle goes back from the number at i to what it may be the angle of: talk between,
// "angle at the redirect i dunno maybe 45", says nothing.
func backToAngle(rd *reading.Reading, i int) int {
	j := rd.Back(i - 1)
	for idle := true; idle && j > 0; {
		e := rd.At(j)
		idle = e.Pause == 0 && e.Fig == nil && !rd.Cued(e, lexicon.CueAngle) && (e.Polite() || e.Marked(lexicon.MarkPronoun|lexicon.MarkUnsure) || rd.Cued(e, lexicon.CueAllOf) || parser.Redirecting(rd.TermAt(j).Block) && rd.Cued(rd.At(j-1), lexicon.CueAngle))
		if idle {
			j = rd.Back(j - 1)
		}
	}
	return j
}

// courseAngle reads "the rope makes about a 60" and "goes off about 60" at a redirect: where the
// rope is the one that goes, and nothing else is told behind the number, so many degrees. How
// far it runs is of no matter there.
func courseAngle(rd *reading.Reading, i int) bool {
	if !turning.Redirected(rd) || !Degrees(rd.Elems[i].Fig) || !rd.EndsBreath(i+1) {
		return false
	}
	course := false
	for k := rd.Back(rd.Past(i-1, -1, lexicon.MarkArticle)); k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k-- {
		e := rd.At(k)
		switch {
		case gear.Part(e) == lexicon.PartRope:
			return course
		case rd.TermAt(k).Course:
			course = true
		case !e.Marked(lexicon.MarkIn|lexicon.MarkAnd|lexicon.MarkIs) && !rd.Cued(e, lexicon.CueOut) && !e.Polite():
			return false
		}
	}
	return false
}

// legsApart reads the angle that legs are said to have between them, "ramales a 120
// entre ellos": its degrees, which a smaller number needs to be told with, and that it
// lies between, whatever leads to it.
func legsApart(rd *reading.Reading) {
	const least, most = 45, 170
	if !rd.Has(lexicon.MarkBridle | lexicon.MarkTwins) {
		return
	}
	for i, e := range rd.Elems {
		fig := e.Fig
		if fig == nil || fig.Pair || !rd.At(i+1).Plays(parser.BlockAngle) {
			continue
		}
		if fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= least && fig.High <= most {
			fig.Dim, fig.Unit = parser.DimAngle, scan.Degree
		}
		if fig.Dim == parser.DimAngle && rd.At(i-1).Plays(parser.LegAngle) {
			rd.Alter(i-1, func(t *scan.Term) {
				t.Roles = slices.DeleteFunc(slices.Clone(t.Roles), func(r scan.Role) bool { return r.Field == parser.LegAngle })
			})
		}
	}
}

// tensionAtBlock says whether a block is named and how hard the rope pulls there:
// "angle 60 tension 5 kN block?".
func tensionAtBlock(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Tension }) && rd.AnyAt(func(i int) bool { return gear.Part(rd.Elems[i]) == lexicon.PartBlock })
}

// legsForm reads "the two legs make about 60 deg" as the angle between the legs at the
// block: what they make with anything else is another.
func legsForm(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Dim != parser.DimAngle || e.Fig.Told != "" || rd.TypedAfter(i, lexicon.CueAgainst) || !rd.TypedBefore(i, lexicon.CueForms) {
			continue
		}
		e.Fig.Told = parser.BlockAngle
		for k := range rd.Elems[:i] {
			if next := rd.At(k + 1); places.Bare(rd.Elems[k].Fig, 2) && (next.Marked(lexicon.MarkTwins|lexicon.MarkBridle|lexicon.MarkCord) || next.Plays(parser.Legs)) {
				rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{}} // both of them
			}
		}
		return
	}
}

// LegsAsk asks about "legs at 40°" where the load on a block is asked: of two legs that
// bear the piece it is told above level, of those of the rope between them, and then the
// block sees more than twice as much.
func LegsAsk(rd *reading.Reading, q parser.Question) *parser.Ask {
	x, ok := q.Get(parser.LegAngle)
	if !ok || !LegsOfRope(rd) || q.Has(parser.SecondLeg) {
		return nil
	}
	if rd.AnyAt(func(i int) bool { return rd.Elems[i].Start == x.Start && rd.At(i+1).Plays(parser.LimbAngle) }) {
		return nil // "45° above level"
	}
	a := reading.AskAt(parser.WhichAngle, rd.Text, x.Start, x.End-x.Start)
	a.Fields = []parser.Field{parser.BlockAngle, parser.LegAngle}
	return a
}

// Twins claims the places of two lines, "lines at 3 ft and 15 ft", and the
// angles of two legs to one point, "legs at 60° and 45°".
func Twins(rd *reading.Reading) {
	places.BetweenTwo(rd)
	legsForm(rd)
	if gear.Slung(rd) {
		return // the legs of a sling are gear
	}
	for i, e := range rd.Elems {
		if e.Marked(lexicon.MarkTwins|lexicon.MarkBridle) && places.Bare(rd.At(i-1).Fig, 2) {
			places.Claim(rd, i-1, parser.Lines) // "two lines"
		}
		if !e.Marked(lexicon.MarkTwins) || rd.At(i+1).Fig == nil || !rd.At(i+2).Marked(lexicon.MarkAnd) || rd.At(i+3).Fig == nil {
			continue
		}
		a, b := rd.Elems[i+1].Fig, rd.Elems[i+3].Fig
		switch {
		case a.Far() && b.Far() && a.High < b.Low:
			places.Claim(rd, i+1, parser.Tie)
			places.Claim(rd, i+3, parser.SecondTie)
		case a.Dim == parser.DimAngle && b.Dim == parser.DimAngle:
			places.Claim(rd, i+1, parser.LegAngle)
			places.Claim(rd, i+3, parser.SecondLeg)
		}
	}
	if !rd.Has(lexicon.MarkBridle) {
		return
	}
	for i, e := range rd.Elems {
		if e.Fig != nil && e.Fig.Dim == parser.DimAngle && e.Fig.Claimed == "" && rd.At(i+1).Plays(parser.LimbAngle) {
			places.Claim(rd, i, parser.LegAngle) // "45° above level"
		}
	}
}

// LegsOfRope says whether "legs" are those of the rope at a block, whose load is
// asked: "what does the block see, legs 40° apart".
func LegsOfRope(rd *reading.Reading) bool {
	asked := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Intent == parser.AskBlockLoad })
	seen := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Receives }) && rd.AnyAt(func(i int) bool { return gear.Part(rd.Elems[i]) == lexicon.PartBlock })
	return (asked || seen) && !rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.Lines) })
}
