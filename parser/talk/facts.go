package talk

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/turning"
)

// TellsFacts notes whether a message tells what can hold for a job, and no more.
// Where a word says that it is to be kept, or that it holds today, it is the
// job's whatever was spoken of before. What gear is good for asks what it may
// carry where nothing says that it is to be kept.
func TellsFacts(rd *reading.Reading, q *parser.Question, asks []*parser.Ask) {
	told := slices.Clone(q.Quantities)
	for _, f := range reading.AskedAbout(asks) {
		told = append(told, parser.Quantity{Field: f})
	}
	whole := *q
	whole.Quantities = told
	held := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Day }) || keeps(rd) || rd.Changed
	if held && !Queries(rd) && !q.Asks && tellsTree(rd, whole) {
		q.Facts = true
		return
	}
	switch {
	case !Jobs(whole) && !keptBeside(rd, whole), q.Asks && !keepsRating(rd, *q), q.FollowUp && !rd.Changed, q.Clear, q.Explain != "", q.Noted(parser.PeopleBelow), Queries(rd) && !(held && len(told) == 0), !slices.Contains(ofFacts, q.Intent):
		return
	case strings.ContainsAny(rd.Text, "?¿") && !keeps(rd) && !treeToday(rd, whole) && !(held && len(told) == 1 && q.Has(parser.People)):
		return
	case !held && len(told) > 0 && !whole.Has(parser.Limit, parser.People):
		return
	}
	const many = 3 // facts that nobody tells of one piece alone
	q.Facts = true
	if held || len(told) >= many || len(told) == 0 && rd.First {
		q.Intent = parser.AskJob
	}
}

// tellsTree says whether a message tells which the tree is, or how high the block, and
// nothing else: "the tree is ash now", "hitch is 45 ft now".
func tellsTree(rd *reading.Reading, q parser.Question) bool {
	tree := q.Species != nil || slices.ContainsFunc(q.Quantities, func(x parser.Quantity) bool { return x.Field == parser.SpeciesField })
	other := func(x parser.Quantity) bool { return x.Field != parser.HitchHeight && x.Field != parser.SpeciesField }
	switch {
	case q.Shape != nil, q.Condition != nil, slices.ContainsFunc(q.Quantities, other), strings.ContainsAny(rd.Text, "?¿"):
		return false
	case tree && !Typed(rd, lexicon.CueTheTree):
		return false
	}
	return tree || q.Has(parser.HitchHeight)
}

// treeToday says whether a message that begins a talk tells what can hold for a job, its
// tree or its hitch among it, and that it holds today.
func treeToday(rd *reading.Reading, q parser.Question) bool {
	return rd.First && !Jobs(q) && q.Has(OfJob...) && OfJobsTree(q) && rd.AnyAt(func(i int) bool { return rd.TermAt(i).Day })
}

// keptBeside says whether something is to be kept that can hold for a job, and a
// tree is named beside it of which no piece is told. So is what begins a talk and holds today.
func keptBeside(rd *reading.Reading, q parser.Question) bool {
	return treeToday(rd, q) || keeps(rd) && q.Shape == nil && q.Has(OfJob...) && !q.Has(parser.Across...) && !q.Has(parser.Weight)
}

// ofFacts are what a message seems to ask for that only tells of the job.
var ofFacts = []parser.Intent{parser.AskWeight, parser.AskLower, parser.AskLift, parser.AskRope, parser.AskGear, parser.AskHelp, parser.AskJob}

// keeps says whether a word says that what is told is to be kept.
func keeps(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Keeps })
}

// Queries says whether a message asks something rather than tells it: with a word
// that asks or supposes.
func Queries(rd *reading.Reading) bool {
	if asksFirst(rd) {
		return true
	}
	return !rd.Changed && Typed(rd, lexicon.CueQuery) || rd.AnyAt(func(i int) bool { return rd.TermAt(i).Supposes })
}

// asksFirst says whether a message begins with a word that asks, greetings aside: "is",
// "puedo". What is wished begins so too, and asks nothing: "have everything under 160 kg".
func asksFirst(rd *reading.Reading) bool {
	asks := func(from int) bool {
		words := newPlainText(rd.Text[from:]).Words
		first := len(words) > 0 && (rd.In.Cued(words[0], lexicon.CueQueryFirst) || rd.In.Cued(words[0], lexicon.CueAsking))
		return first && !rd.Begin(lexicon.CueWished, strings.Join(words, " "))
	}
	if asks(0) {
		return true
	}
	for i, e := range rd.Elems {
		switch {
		case e.Pause > 0 && i > 0 && asks(e.End): // "ok so, is the limit …"
			return true
		case e.Pause == 0 && (!e.Polite() || rd.TermAt(i).Day):
			return false
		}
	}
	return false
}

// MostLeft is how many clauses of talk a message of the job may hold: with more
// of them it is not understood.
const MostLeft = 6

// MaybeFacts says whether a message could tell of the job at all.
func MaybeFacts(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Plays(parser.Limit) || rd.Elems[i].Plays(parser.People) || rd.TermAt(i).Keeps || rd.TermAt(i).Day
	})
}

// keepsRating says whether what gear is good for is to be kept, and not asked: "block good
// for 5000 lb wll, remember it".
func keepsRating(rd *reading.Reading, q parser.Question) bool {
	return keeps(rd) && q.Intent == parser.AskGear && q.Has(parser.Ratings...) && !q.Has(parser.Weight) && !strings.ContainsAny(rd.Text, "?¿")
}

// OnlyKeeps says whether something is to be kept, and nothing that can be is told.
func OnlyKeeps(rd *reading.Reading, q parser.Question, err error) bool {
	a, _ := err.(*parser.Ask)
	return (a == nil || a.Kind == parser.Nonsense) && keeps(rd) && q.Empty() && !q.Asks
}

// Talk finds a clause that is only talk: one that says why, or how long, or the
// one that holds the word in doubt. It returns nothing where there is none.
func Talk(rd *reading.Reading, err error) (from, to int) {
	for i, e := range rd.Elems {
		var reason bool
		switch {
		case heights.TypedAt(rd, i, lexicon.CueReason):
			_, to = breath(rd, e.Start)
			from, reason = e.Start, true
		case rd.TermAt(i).Someone && !rd.At(i-1).Marked(lexicon.MarkHello):
			from, to = breath(rd, e.Start)
		}
		if from < to && leavable(rd, from, to, reason) {
			return from, to
		}
	}
	a, _ := err.(*parser.Ask)
	if a == nil || a.Kind != parser.Unknown && (a.Kind != parser.Twist || a.Turning != "") || a.LikeStop != "" || a.Start >= a.End {
		return 0, 0
	}
	if from, to = breath(rd, a.Start); leavable(rd, from, to, false) {
		return from, to
	}
	return 0, 0
}

// Doubted finds the clause of a job's line that holds what is in doubt, where more is told
// besides: the rest of the line is kept, and the clause is said to be none of it. What limits
// a piece, and what takes back, is asked about instead. A number without a place is in doubt
// by itself.
func Doubted(rd *reading.Reading, err error) (from, to int) {
	a, _ := err.(*parser.Ask)
	switch {
	case a == nil || a.LikeStop != "" || a.Start >= a.End:
		return 0, 0
	case a.Kind == parser.Loose:
		return a.Start, a.End
	case a.Kind != parser.Unknown && a.Kind != parser.Twist && a.Kind != parser.OddNumber:
		return 0, 0
	}
	from, to = rd.Span(a.Start, func(e reading.Element) bool { return e.Pause > 0 })
	from, to = withoutCourtesy(rd, from, to)
	outside := rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Fig != nil && (rd.Elems[i].End <= from || rd.Elems[i].Start >= to)
	})
	binds := rd.AnyAt(func(i int) bool {
		e, t := rd.Elems[i], rd.TermAt(i)
		inside := e.End > from && e.Start < to
		return inside && (e.Plays(parser.Limit) || t.Keeps || t.Apology || t.Corrects && (numbered(rd, from, to) || !t.Denies && !t.Lacks))
	})
	if !outside || binds {
		return 0, 0
	}
	return from, to
}

// TellsGear says whether a clause tells a number, gear or wood: what is not known in it may
// say which it is, or how, and is asked about though the rest is kept.
func TellsGear(rd *reading.Reading, from, to int) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		inside := e.End > from && e.Start < to
		return inside && (e.Fig != nil || gear.Part(e) != "" || e.Piece() || rd.TermAt(i).Tree != nil)
	})
}

// breath is where the clause around a place begins and ends: at what a reader
// stops at, and at "and" where it holds a number else.
func breath(rd *reading.Reading, at int) (from, to int) {
	from, to = rd.Span(at, func(e reading.Element) bool { return e.Pause > 0 })
	if numbered(rd, from, to) {
		from, to = rd.Span(at, func(e reading.Element) bool { return e.Pause > 0 || e.Marked(lexicon.MarkAnd) })
	}
	return withoutCourtesy(rd, from, to)
}

// numbered says whether a number stands in a stretch.
func numbered(rd *reading.Reading, from, to int) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		return e.Fig != nil && e.Start >= from && e.End <= to
	})
}

// leavable says whether a clause can be left out of what a job is told: it
// holds no number and takes nothing back. Only where it says why may it name
// wood, or gear that is told of elsewhere: else it could say how they are.
func leavable(rd *reading.Reading, from, to int, reason bool) bool {
	ofGear, is := false, false
	for i, e := range rd.Elems {
		if e.End <= from || e.Start >= to {
			continue
		}
		t := rd.TermAt(i)
		turns := !reason && (t.Ask == parser.Twist && turning.TurnedBy(rd, i) != "" && !t.AndSelf || t.Denies || t.Corrects || t.Lacks)
		if e.Fig != nil || turns || t.Keeps || t.Note == parser.PeopleBelow || !reason && (toldElsewhere(rd, e, from, to) || e.Piece() || t.Tree != nil || t.Condition != "") {
			return false
		}
		ofGear, is = ofGear || gear.Part(e) != "", is || e.Marked(lexicon.MarkIs)
	}
	return from < to && (reason || !ofGear || !is) // "the rope is …" says how it is
}

// toldElsewhere says whether an element of a stretch is of gear that is told of
// outside of it too.
func toldElsewhere(rd *reading.Reading, e reading.Element, from, to int) bool {
	return gear.Part(e) != "" && rd.AnyAt(func(i int) bool {
		other := rd.Elems[i]
		return gear.Part(other) == gear.Part(e) && (other.End <= from || other.Start >= to)
	})
}
