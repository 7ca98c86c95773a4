package turning

import (
	"strconv"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Whoever comes to the rope besides those who were counted before makes one more: "one
// more guy", "si se viene Chuy a jalar también". The sum is said back.

// Joins reads those who join in a talk that has counted people, where a message counts
// none itself.
func Joins(rd *reading.Reading) {
	had, ok := rd.Before.Get(parser.People)
	if !ok || had.Low != had.High || rd.AnyAt(rd.Is(countsPeople)) {
		return
	}
	for i := range rd.Elems {
		n, from, to := oneMoreOnRope(rd, i)
		if n == 0 {
			n, from, to = namedJoins(rd, i)
		}
		if n > 0 {
			joined(rd, from, to, had.Low, n)
			return
		}
	}
}

// countsPeople says whether the number at i counts people.
func countsPeople(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Fig != nil && (rd.At(i+1).Plays(parser.People) || rd.Elems[i].Fig.Sure == parser.People)
}

// joined puts the sum of those before and those who join in the place of the words.
func joined(rd *reading.Reading, from, to int, had, more float64) {
	start, end := rd.Elems[from].Start, rd.Elems[to].End
	sum := had + more
	as := strconv.Itoa(int(had)) + " + " + strconv.Itoa(int(more)) + " = " + strconv.Itoa(int(sum))
	rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[start:end], As: as})
	rd.Elems[from] = reading.Element{Start: start, End: end, Fig: &reading.Figure{Low: sum, High: sum, Sure: parser.People, Start: start, End: end}}
	for k := from + 1; k <= to; k++ {
		rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{Chatter: true}}
	}
}

// oneMoreOnRope reads "one more guy", "another on the rope" and "otro compa": what is one
// more there is a person, or pulls.
func oneMoreOnRope(rd *reading.Reading, i int) (n float64, from, to int) {
	n, from, to = 1, i, i
	switch fig := rd.Elems[i].Fig; {
	case fig != nil && fig.Between(1, 4) && rd.Cued(rd.At(i+1), lexicon.CueMore):
		n, to = fig.Low, i+1
	case !rd.Cued(rd.Elems[i], lexicon.CueOneMore):
		return 0, 0, 0
	}
	if rd.Cued(rd.At(to+1), lexicon.CueMore) {
		to++ // "otro más"
	}
	next := rd.At(to + 1)
	helped := rd.Cued(rd.At(i-1), lexicon.CueJoins) && rd.EndsBreath(to+1) // "si nos ayuda otro"
	if helped {
		return n, from - 1, to
	}
	who := next.Fig == nil && next.Plays(parser.People) || rd.TermAt(to+1).Someone || rd.Cued(next, lexicon.CueFolk) || stops.Person(rd, to+1)
	if !who {
		return 0, 0, 0
	}
	return n, from, pastJoining(rd, to+2) - 1
}

// namedJoins reads "Chuy comes to pull too" and "si se viene Chuy a jalar": somebody who is
// named, a verb of coming or helping on either side, and what they come for, or that they
// do as well.
func namedJoins(rd *reading.Reading, i int) (n float64, from, to int) {
	if !rd.TermAt(i).Someone && !rd.Cued(rd.Elems[i], lexicon.CueMe) {
		return 0, 0, 0
	}
	n, from, to = 1, i, i
	if rd.At(i+1).Marked(lexicon.MarkAnd) && rd.TermAt(i+2).Someone {
		n, to = 2, i+2
	}
	if rd.Cued(rd.At(i-1), lexicon.CueJoins) {
		from = i - 1
	}
	end := pastJoining(rd, to+1)
	joins, pulls := from < i, false
	for k := to + 1; k < end; k++ {
		joins = joins || rd.Cued(rd.Elems[k], lexicon.CueJoins)
		pulls = pulls || pullsToo(rd, k)
	}
	if !joins || !pulls {
		return 0, 0, 0
	}
	return n, from, end - 1
}

// pastJoining is the element behind those from i on that tell of joining in.
func pastJoining(rd *reading.Reading, i int) int {
	for i < len(rd.Elems) && rd.Elems[i].Pause == 0 && rd.Elems[i].Fig == nil && (rd.Cued(rd.Elems[i], lexicon.CueJoins) || pullsToo(rd, i) || rd.TermAt(i).Serves || rd.At(i).Marked(lexicon.MarkAt)) {
		i++
	}
	return i
}

// pullsToo says whether the word at i says what somebody joins in: "pull", "on the rope",
// or that they do so as well.
func pullsToo(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return rd.TermAt(i).Intent == parser.AskLift && e.Term.Besides || rd.TermAt(i).Intent == parser.AskHelp && rd.Cued(e, lexicon.CueJoins) || e.Plays(parser.People) || rd.Cued(e, lexicon.CueJoinsToo)
}

// PartsMade reads "one more block on so its 3" of a lift as the parts of line that the
// blocks make then.
func PartsMade(rd *reading.Reading) {
	if !rd.LiftsOn() || !rd.AnyAt(func(i int) bool {
		return rd.Cued(rd.Elems[i], lexicon.CueBlocks) || gear.Part(rd.Elems[i]) == lexicon.PartBlock || rd.Cued(rd.Elems[i], lexicon.CueABlock)
	}) {
		return
	}
	for i, e := range rd.Elems {
		ratio := e.Fig != nil && e.Fig.Dim == parser.DimRatio
		if e.Fig == nil || !ratio && !e.Fig.Between(2, reading.MostParts) || !rd.Cued(rd.At(i-1), lexicon.CueMakes) || !rd.EndsBreath(i+1) {
			continue
		}
		if !ratio {
			rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[e.Fig.Start:e.Fig.End], As: strconv.Itoa(int(e.Fig.Low)) + ":1"})
			e.Fig.Dim, e.Fig.Told = parser.DimRatio, parser.Parts
		}
		moreBlocks(rd, i)
		return
	}
}

// moreBlocks leaves out the block more by which the parts told at i are reached.
func moreBlocks(rd *reading.Reading, i int) {
	for k := range i - 1 {
		if j := rd.Past(k+1, +1, lexicon.MarkArticle); rd.Cued(rd.Elems[k], lexicon.CueOneMore) && rd.Cued(rd.At(j), lexicon.CueABlock) {
			for n := k; n <= j; n++ {
				rd.Elems[n].Term = &scan.Term{Chatter: true}
			}
		}
	}
}
