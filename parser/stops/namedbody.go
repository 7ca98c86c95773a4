package stops

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// namedBodies passes over what somebody weighs who is told with it, in brackets or beside
// another who pulls: "I've got Steve (95 kg) and the lad". No piece is called so; whoever is
// lifted has been stopped for before.
func namedBodies(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Dim != parser.DimMass || fig.Low < Lightest || fig.High > heaviest || rd.At(i+1).Piece() || rd.At(i+1).Fig != nil {
			continue
		}
		from, to := i, i+1
		bracket := opens(rd, i-1)
		if rd.At(i-1).Pause == 2 {
			from--
			if rd.At(to).Pause == 2 {
				to++
			}
			for talk := to; rd.At(talk).Pause == 0 && (rd.At(talk).Polite() || rd.TermAt(talk).Overlook); talk++ {
				to = talk + 1
			}
		}
		who := from - 1
		if !Person(rd, who) || rd.At(who).Marked(lexicon.MarkPronoun) || rd.At(who).Plays(parser.Weight) {
			continue
		}
		beside := personPast(rd, to) || rd.At(who-1).Marked(lexicon.MarkAnd) && Person(rd, who-2)
		if bracket || beside {
			rd.Pass(from, to)
			countNamed(rd, who)
			i = who
		}
	}
}

// countNamed makes a number of people of those who are named from the element at i on, two
// or more: "Steve and the lad". Where their number is told besides, that holds.
func countNamed(rd *reading.Reading, i int) {
	counted := func(k int) bool { return rd.Elems[k].Fig != nil && rd.At(k+1).Plays(parser.People) }
	if !personPast(rd, i+1) || rd.AnyAt(counted) {
		return
	}
	people, last := 1, i
	for personPast(rd, last+1) {
		people, last = people+1, rd.Past(last+2, +1, lexicon.MarkArticle|lexicon.MarkAt)
	}
	start, end := rd.Elems[i].Start, rd.Elems[last].End
	fig := &reading.Figure{Low: float64(people), High: float64(people), Sure: parser.People, Start: start, End: end}
	rd.Elems = append(append(rd.Elems[:i:i], reading.Element{Start: start, End: end, Fig: fig}), rd.Elems[last+1:]...)
}

// opens says whether the element at i is a bracket that opens.
func opens(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Pause > 0 && rd.Text[e.Start:e.End] == "("
}

// personPast says whether "and" and another person stand at i: "and the lad", "y otro más".
func personPast(rd *reading.Reading, i int) bool {
	if !rd.At(i).Marked(lexicon.MarkAnd) {
		return false
	}
	j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAt)
	return Person(rd, j)
}
