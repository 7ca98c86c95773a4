package turning

import (
	"math"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// A small whole number can count what the question is not about: "hang it from two
// trees", "i need 3 scenarios". It is passed over and said back.

// CountedThings passes over such numbers.
func CountedThings(rd *reading.Reading) {
	const most = 12
	for i := range rd.Elems {
		picksAsked(rd, i)
		handBesideTackle(rd, i)
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low != fig.High || fig.Low != math.Trunc(fig.Low) || fig.Low < 1 || fig.Low > most {
			continue
		}
		switch {
		case rd.Cued(rd.At(i+1), lexicon.CueThings) && rd.At(i+2).Fig == nil:
			Blank(rd, i, i+1)
		case treesCounted(rd, i):
			rd.Pass(i, i+1)
			return
		case peopleOnTackle(rd, i), handsBehind(rd, i) && besideTackle(rd, i):
			places.Claim(rd, i, parser.People)
		}
	}
}

// treesCounted reads "two cedars at the church" and "macrocarpa x2" beside a limit or gear,
// where nothing tells how thick or long a piece is: how many trees a job has.
func treesCounted(rd *reading.Reading, i int) bool {
	sized := func(k int) bool {
		fig := rd.Elems[k].Fig
		return fig.Short() && !gear.OfRope(rd, k) || gear.Far(rd, k) || rd.TermAt(k).Shape != ""
	}
	ofJob := rd.Worded(parser.Limit) || rd.AnyAt(func(k int) bool { return gear.Strength(rd.Elems[k]) != "" })
	if !ofJob || rd.AnyAt(sized) {
		return false
	}
	next := rd.At(i + 1)
	before := i == 0 || rd.At(i-1).Pause > 0
	many := next.Term != nil && next.Term.Tree != nil && strings.HasSuffix(rd.Word(next), "s")
	behind := rd.At(i-1).Cross && rd.TermAt(i-2).Tree != nil && rd.EndsBreath(i+1)
	return before && many || behind
}

// picksAsked takes "1 pick or 2?" for asking how many it takes.
func picksAsked(rd *reading.Reading, i int) {
	const most = 9
	small := func(k int) bool { f := rd.At(k).Fig; return f != nil && f.Between(1, most) }
	word, n := scan.NextWord(rd.Text[rd.Elems[i].End:])
	or, m := scan.NextWord(rd.Text[rd.Elems[i].End+n:])
	if !small(i) || !rd.In.Cued(word, lexicon.CuePicks) || rd.In.Joins[or] != scan.Or {
		return
	}
	end := rd.Elems[i].End + n + m
	for k := i + 1; k < len(rd.Elems) && k <= i+3; k++ {
		if small(k) && rd.Elems[k].Start >= end && rd.Elems[k].Start-end < 3 && rd.EndsBreath(k+1) {
			Blank(rd, i, k+1)
			rd.Elems[i].Term = &scan.Term{Intent: parser.AskCutPlan}
			return
		}
	}
}

// peopleOnTackle reads "two on a 5:1": those who pull.
func peopleOnTackle(rd *reading.Reading, i int) bool {
	const most = 8
	j := rd.Past(i+2, +1, lexicon.MarkArticle)
	ratio := rd.At(j).Fig
	if rd.Elems[i].Fig.Low > most || !rd.At(i+1).Marked(lexicon.MarkIn) || ratio == nil || ratio.Dim != parser.DimRatio || rd.AnyAt(func(k int) bool { return rd.Elems[k].Plays(parser.People) && rd.At(k-1).Fig != nil }) {
		return false
	}
	return i == 0 || rd.At(i-1).Pause > 0 || rd.At(i-1).Marked(lexicon.MarkAnd|lexicon.MarkWhere) || rd.Cued(rd.At(i-1), lexicon.CueOwns)
}

// handBesideTackle makes a number of the "one" in "5:1 and one strong guy".
func handBesideTackle(rd *reading.Reading, i int) {
	e := rd.Elems[i]
	if e.Fig == nil && rd.In.Numbers[rd.Word(e)].Value == 1 && e.Pause == 0 && handsBehind(rd, i) && besideTackle(rd, i) {
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Fig: &reading.Figure{Low: 1, High: 1, Start: e.Start, End: e.End}}
	}
}

// handsBehind says whether people stand behind the number at i, who are told of alone.
func handsBehind(rd *reading.Reading, i int) bool {
	j := i + 1
	for rd.At(j).Marked(lexicon.MarkAdjective) || rd.TermAt(j).Serves {
		j++
	}
	return (stops.Person(rd, j) || rd.Cued(rd.At(j), lexicon.CueFolk)) && (rd.EndsBreath(j+1) || rd.TermAt(j+1).Intent != "")
}

// besideTackle says whether a tackle's parts are told right before the number at i, and
// nobody else who pulls.
func besideTackle(rd *reading.Reading, i int) bool {
	k := i - 1
	for k >= 0 && (rd.Elems[k].Pause > 0 || rd.Elems[k].Marked(lexicon.MarkAnd) || rd.Cued(rd.Elems[k], lexicon.CueHaving) || rd.Elems[k].Polite()) {
		k--
	}
	ratio := rd.At(k).Fig
	return ratio != nil && ratio.Dim == parser.DimRatio && !rd.AnyAt(func(n int) bool {
		return rd.Elems[n].Plays(parser.People) && rd.At(n-1).Fig != nil
	})
}

// HandOnIt reads "wet rope, 6 in drum. one guy on it" as one who holds the rope, where
// wraps are asked for and gear is told of last. On anything else he may ride.
func HandOnIt(rd *reading.Reading) {
	for i := 2; i < len(rd.Elems); i++ {
		one := rd.At(i - 1)
		fig := one.Fig
		counts := fig != nil && fig.Dim == parser.DimCount && fig.Low == 1 && fig.High == 1 || fig == nil && rd.In.Numbers[rd.Word(one)].Value == 1
		if !rd.Cued(rd.Elems[i], lexicon.CueOnIt) || !counts || rd.At(i-2).Pause == 0 || !gearLast(rd, i-2) || !gear.AsksFor(rd, parser.AskLower) {
			continue
		}
		rd.Elems[i-1] = reading.Element{Start: one.Start, End: one.End, Fig: &reading.Figure{Low: 1, High: 1, Start: one.Start, End: one.End}}
		rd.Alter(i, func(t *scan.Term) {
			*t = scan.Term{Roles: []scan.Role{{Field: parser.People, Side: lexicon.Before, Soft: false}}}
		})
	}
}

// gearLast says whether the last that is told of before i is gear, and no piece.
func gearLast(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0; k-- {
		switch e := rd.Elems[k]; {
		case stops.Kit(rd, k):
			return true
		case e.Piece(), rd.TermAt(k).Unnamed, rd.TermAt(k).Tree != nil, stops.Person(rd, k), e.Marked(lexicon.MarkPlace):
			return false
		}
	}
	return false
}
