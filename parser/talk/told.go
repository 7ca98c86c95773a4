package talk

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/stops"
	"heft/parser/turning"
)

// A new groundworker asks in words of his own what a shock load is, what to do where the
// piece runs away, who sees what he asked. The lines `topic` of the word files say which
// words stand together then, as the lines `danger` do.

// toldAt is a line that a message matches, and where.
type toldAt struct {
	line     *scan.TopicLine
	from, to int // tokens
}

// Told finds what is asked of no piece by several words together. An *parser.Ask is the
// answer to what is no question of ours.
func Told(rd *reading.Reading) (parser.Question, *parser.Ask, bool) {
	topic, from, to := told(rd)
	if topic == "" {
		return parser.Question{}, nil, false
	}
	q := parser.Question{Intent: parser.AskHelp, Topic: topic, Language: rd.Language, Units: turning.Units(rd), Passed: slices.Concat(rd.Passed, inDoubt(rd, from, to), numbersOf(rd)), Asks: true}
	switch topic {
	case parser.TopicAside:
		return q, &parser.Ask{Kind: parser.Nonsense, Words: rd.Text, End: len(rd.Text)}, true
	case parser.TopicLog:
		q.Intent, q.Topic, q.Notes = parser.AskLog, "", heights.Notes(rd)
	case parser.TopicLogOpen:
		q.Intent, q.Topic, q.Notes = parser.AskLog, "", []string{parser.LogUnconfirmed}
	case parser.TopicWhy:
		q.Intent, q.Topic, q.Explain = parser.AskWeight, "", parser.ExplainNumbers
	case parser.TopicAssumed:
		q.Intent, q.Topic, q.Explain = parser.AskWeight, "", parser.ExplainAssumed
	}
	return q, nil, true
}

// inDoubt are the words of talk that may bear on a piece in other company: here they are
// said back, but for those of the topic itself, from one place of the text to another.
func inDoubt(rd *reading.Reading, from, to int) (out []parser.Said[string]) {
	for i, e := range rd.Elems {
		said := func(p parser.Said[string]) bool { return p.Start <= e.Start && e.End <= p.End }
		if rd.TermAt(i).Ask != parser.Unknown || from <= e.Start && e.End <= to || slices.ContainsFunc(rd.Passed, said) {
			continue
		}
		words := rd.Text[e.Start:e.End]
		out = append(out, parser.Said[string]{Value: words, Words: words, Start: e.Start, End: e.End})
	}
	return out
}

// told is the topic of the words that come first, and where they stand; "" for none.
func told(rd *reading.Reading) (topic parser.Intent, from, to int) {
	var none, found []toldAt
	figures := rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil })
	tree := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Tree != nil })
	plain, beside, weighed := !figures && !tree, !tree || !rd.AnyAt(rd.Is(sized)), asksWraps(rd)
	for i, t := range rd.Tokens {
		for _, n := range stops.BeginsAt(rd.In.Dangers.Asks, t) {
			line := rd.In.Dangers.Topics[n]
			to := stops.Matches(line.Slots, rd.Tokens, i)
			switch {
			case to <= i:
			case line.None:
				none = append(none, toldAt{line, i, to})
			case rests[line.Name] && rd.AnyAt(rd.Is(strengthTold)), tells[line.Name] && !plain && asksOrKeeps(rd), line.Name == "note" && rd.AnyAt(rd.Is(ofJob)):
			case (plain || line.Beside && beside && (!weighed || grave[line.Name])) && (!line.First || rd.First):
				found = append(found, toldAt{line, i, to})
			}
		}
	}
	for _, at := range found {
		if !at.spared(none) {
			return "about-" + parser.Intent(at.line.Name), rd.Tokens[at.from].Start, rd.Tokens[at.to-1].End
		}
	}
	return "", 0, 0
}

// sized says whether a size stands at i: with its tree beside it a piece is told whole,
// and what is asked is of that.
func sized(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return fig != nil && fig.Unit != nil && fig.Dim == parser.DimLength
}

// grave are the topics that no figure makes up for: they go before whatever is asked
// besides.
var grave = map[string]bool{"edge": true, "heavier": true}

// rests are the topics that have a figure where the strength of gear is told.
var rests = map[string]bool{"knot": true}

// tells are the topics that a message tells rather than asks.
var tells = map[string]bool{"how-confirm": true, "note": true}

// ofJob says whether what may be kept for the job or the piece stands at i: gear, who works,
// how thick it is.
func ofJob(rd *reading.Reading, i int) bool {
	return gear.Part(rd.Elems[i]) != "" || rd.Elems[i].Plays(parser.People) || rd.Elems[i].Fig.Short()
}

// asksOrKeeps says whether anything is asked beside what is told, or told that may hold for
// the job: "supervisor ok'd the anchor, block load for 600 lb", "boss ok'd the 600 lb limit".
func asksOrKeeps(rd *reading.Reading) bool {
	asked, _, _ := senses.Intents(rd)
	other := func(in parser.Intent) bool { return in != parser.AskWeight && in != parser.AskLower }
	limits := func(i int) bool { return rd.Elems[i].Plays(parser.Limit) }
	rated := func(i int) bool { return gear.Strength(rd.Elems[i]) != "" }
	return slices.ContainsFunc(asked, other) || rd.AnyAt(rated) || rd.AnyAt(limits)
}

// strengthTold says whether a word for the strength of gear stands at i, or a number that
// may be one.
func strengthTold(rd *reading.Reading, i int) bool {
	return gear.Strength(rd.Elems[i]) != "" || rd.Elems[i].Fig != nil && gear.Rates(rd.Elems[i].Fig)
}

// asksWraps says whether it is asked how to lower a piece of which the weight is told:
// "what if the rope slips, how many wraps for 600 lb" has its own answer.
func asksWraps(rd *reading.Reading) bool {
	asked, _, _ := senses.Intents(rd)
	return slices.Contains(asked, parser.AskLower) && rd.AnyAt(func(i int) bool { return gear.Heavy(rd, i) })
}

// spared says whether a topic stands within what is told to be none.
func (at toldAt) spared(none []toldAt) bool {
	for _, n := range none {
		if n.line.Name == at.line.Name && n.from < at.to && at.from < n.to {
			return true
		}
	}
	return false
}

// numbersOf are the numbers of a message, of which the answer to it takes none: those
// that are read as such, and whatever else holds a digit.
func numbersOf(rd *reading.Reading) (out []parser.Said[string]) {
	pass := func(start, end int) {
		covers := func(s parser.Said[string]) bool { return s.Start <= start && end <= s.End }
		if words := rd.Text[start:end]; !slices.ContainsFunc(out, covers) && !slices.ContainsFunc(rd.Passed, covers) {
			out = append(out, parser.Said[string]{Value: words, Words: words, Start: start, End: end})
		}
	}
	for _, e := range rd.Elems {
		if e.Fig != nil {
			pass(e.Fig.Start, e.Fig.End)
		}
	}
	for i, e := range rd.Elems {
		if t := rd.TermAt(i); t.Perhaps && t.Ask == parser.Unknown {
			pass(e.Start, e.End) // a word of talk that would be asked about elsewhere
		}
	}
	for _, t := range rd.Tokens {
		if strings.ContainsAny(t.Word, "0123456789") {
			pass(t.Start, t.End)
		}
	}
	return out
}
