package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Nonsense says whether nothing in the message is of the trade: something is
// not known, or it is all chatter.
func Nonsense(rd *reading.Reading, q parser.Question, asks []*parser.Ask) bool {
	if len(asks) == 0 && !chatters(rd) && !rd.Talked && len(rd.Passed) == 0 || !q.Empty() || q.SaysUnits && q.Intent == parser.AskJob || slices.ContainsFunc(asks, func(a *parser.Ask) bool { return a.Kind != parser.Unknown }) {
		return false
	}
	if slices.ContainsFunc(asks, func(a *parser.Ask) bool { return LikeStop(rd, a) != "" }) {
		return false // "theres mushroms at the bottom"
	}
	if len(rd.Guessed) > 0 || bounds.EndOfPlan(rd) || q.Intent == parser.AskGear && q.OfGear != "" {
		return false
	}
	for _, e := range rd.Elems {
		t := e.Term
		if e.Fig != nil || t != nil && (t.Intent != "" || t.Explain != "" || t.Note == parser.Snubbed || t.Note == parser.LetRun || t.Units != "" || t.Tree != nil || t.Marks&lexicon.MarkFollow != 0) {
			return false
		}
	}
	return true
}

// Acknowledges says whether a message begins with a word that greets or thanks,
// whatever talk follows: "thanks, back after lunch".
func Acknowledges(rd *reading.Reading) bool {
	return len(rd.Elems) > 0 && rd.Elems[0].Marked(lexicon.MarkHello) && !slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Start < rd.Elems[0].Start })
}

// Small takes small talk for what it is: where every word says nothing here but
// for one that turns a meaning, "wont", there is no meaning to turn, degrees are
// the weather's and 12:45 is an hour.
func Small(rd *reading.Reading) {
	chats := slices.ContainsFunc(rd.Elems, func(e reading.Element) bool { return e.Term != nil && e.Term.Chatter && !e.Term.Someone })
	if !chats && !rd.Talked && !slices.ContainsFunc(rd.Asks, ofClock) ||
		slices.ContainsFunc(rd.Elems, func(e reading.Element) bool { return e.Pause == 0 && !idle(e) }) ||
		slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind != parser.Unknown && !ofClock(a) }) {
		return
	}
	for i := len(rd.Elems) - 1; i >= 0; i-- {
		if rd.Elems[i].Fig != nil {
			rd.Pass(i, i+1)
		} else if rd.TermAt(i).Ask == parser.Twist {
			rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
		}
	}
	for _, a := range rd.Asks {
		if ofClock(a) {
			rd.Passed = append(rd.Passed, parser.Said[string]{Value: a.Words, Words: a.Words, Start: a.Start, End: a.End})
		}
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, ofClock)
}

// idle says whether an element can stand in small talk: degrees, or a word that
// tells of no piece, gear or place.
func idle(e reading.Element) bool {
	if e.Fig != nil {
		return e.Fig.Dim == parser.DimAngle
	}
	if e.Term == nil {
		return false // "x" between two sizes
	}
	t := *e.Term
	if t.Ask == parser.Twist {
		t.Ask = ""
	}
	const joining = lexicon.MarkHello | lexicon.MarkArticle | lexicon.MarkIs | lexicon.MarkAt | lexicon.MarkAnd | lexicon.MarkPronoun | lexicon.MarkRelation | lexicon.MarkWhere | lexicon.MarkIn | lexicon.MarkAdverb | lexicon.MarkAdjective | lexicon.MarkMade
	return lexicon.Says(&t, joining)
}

// chatters says whether the message has words that say nothing here, and none
// that greets.
func chatters(rd *reading.Reading) bool {
	return !rd.Has(lexicon.MarkHello) && slices.ContainsFunc(rd.Elems, func(e reading.Element) bool { return e.Term != nil && e.Term.Chatter })
}

// SaysUnits says whether a system was asked for, rather than used.
func SaysUnits(rd *reading.Reading) bool {
	return BareUnits(rd) != "" || slices.ContainsFunc(rd.Elems, func(e reading.Element) bool { return e.Term != nil && e.Term.Units != "" })
}

// BareUnits is the system of the units that are named in a message without a
// number, "use kilos from now on": nothing else can be wanted of them. There is
// none where two systems are named.
func BareUnits(rd *reading.Reading) (out parser.System) {
	for _, e := range rd.Elems {
		u := rd.In.Units[rd.Word(e)]
		switch {
		case e.Fig != nil:
			return ""
		case !e.Marked(lexicon.MarkUnit) || u == nil || u.System == "" || u.Dim == parser.DimAngle:
		case out != "" && out != u.System:
			return ""
		default:
			out = u.System
		}
	}
	return out
}

// WantsHelp says whether help was asked for in so many words.
func WantsHelp(rd *reading.Reading) bool {
	return slices.ContainsFunc(rd.Elems, func(e reading.Element) bool { return e.Term != nil && e.Term.Intent == parser.AskHelp })
}

// AsksHow says whether the message asks how a kind of question is asked, rather
// than asking it: "what do you need from me for a swing". "Help" alone goes with
// any question.
func AsksHow(rd *reading.Reading, q parser.Question) bool {
	switch {
	case q.Intent == parser.AskHelp, q.Intent == parser.AskLog, q.Intent == parser.AskJob, q.Species != nil, len(q.Quantities) > 0:
		return false
	}
	return slices.ContainsFunc(rd.Elems, func(e reading.Element) bool {
		words := rd.Text[e.Start:e.End]
		return e.Term != nil && e.Term.Intent == parser.AskHelp && strings.Contains(words, " ") && !strings.HasSuffix(strings.ToLower(words), " me")
	})
}

// Units is the system asked for, or else that of most numbers. What stands on the labels of
// gear counts only where nothing else does: kilonewtons are stamped for everybody.
func Units(rd *reading.Reading) parser.System {
	for _, e := range rd.Elems {
		if e.Term != nil && e.Term.Units != "" {
			return e.Term.Units
		}
	}
	if bare := BareUnits(rd); bare != "" {
		return bare
	}
	label := func(f *reading.Figure) bool { return slices.Contains(parser.Ratings, f.Sure) }
	most := mostUnits(rd, func(f *reading.Figure) bool { return !label(f) })
	if most == "" {
		most = mostUnits(rd, label)
	}
	return most
}

// mostUnits is the system of most of the numbers that count, "" where none does.
func mostUnits(rd *reading.Reading, counts func(*reading.Figure) bool) parser.System {
	count := map[parser.System]int{}
	for _, e := range rd.Elems {
		if e.Fig != nil && e.Fig.Unit != nil && counts(e.Fig) {
			count[e.Fig.Unit.System]++
		}
	}
	switch {
	case count[parser.Imperial] > count[parser.Metric]:
		return parser.Imperial
	case count[parser.Metric] > 0:
		return parser.Metric
	}
	return ""
}

// Leafed notes it of a piece of which it is not said whether it is a log or a
// limb: of a limb it goes without saying. A message that tells nothing else, "its got all
// its leaf on", says it of the piece before.
func Leafed(rd *reading.Reading, q *parser.Question) {
	if q.Shape == nil && (!q.Pieceless() || q.Empty()) && rd.AnyAt(func(i int) bool { return rd.TermAt(i).Leafed }) {
		q.Notes = append(q.Notes, parser.LeavesOn)
	}
}
