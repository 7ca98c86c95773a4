package talk

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/turning"
)

// AsksUs reads a message that asks about no piece.
func AsksUs(rd *reading.Reading) (parser.Question, bool) {
	q := parser.Question{Language: rd.Language, Units: turning.Units(rd), Notes: heights.Notes(rd), Passed: rd.Passed, Asks: true}
	asked, _, _ := senses.Intents(rd)
	helps := slices.Contains(asked, parser.AskHelp)
	switch {
	case Typed(rd, lexicon.CueInLog) && Typed(rd, lexicon.CueConfirmed) && !rd.AnyAt(rd.Is(ofPiece)):
		q.Intent = parser.AskLog // "what's in the log over 400 lb that nobody confirmed"
		return q, true
	case slices.Contains(asked, parser.AskLog) && fewUnknown(rd) && !Typed(rd, lexicon.CueAskedBy):
		return q, false // what is not known is said with it
	case slices.Contains(asked, parser.AskJob), helps && !Typed(rd, lexicon.CueCapable):
		return q, false // its own words ask for it
	case asksWithFigures(rd, asked, helps, &q):
		return q, true
	case rd.AnyAt(func(i int) bool { fig := rd.Elems[i].Fig; return fig != nil && !places.Bare(fig, 1) }):
		return q, false // "what is one wrap" counts none
	}
	return q, asksWithout(rd, asked, helps, &q)
}

// asksWithFigures puts into the question what is asked about no piece, whatever figures
// the message holds: they are in the question itself, or passed over.
func asksWithFigures(rd *reading.Reading, asked []parser.Intent, helps bool, q *parser.Question) bool {
	united := func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Unit != nil }
	switch topic, figures := topicWithFigures(rd, helps); {
	case !helps && onlyFactor(rd):
		q.Intent, q.Topic, q.Notes = parser.AskHelp, parser.TopicFactor, nil
	case (logNamed(rd) || Typed(rd, lexicon.CueInLog)) && !rd.AnyAt(united):
		q.Intent = parser.AskLog // whatever the hour, and whoever wants it
	case topic == parser.TopicTooFar, topic == parser.TopicWrapRule:
		q.Intent, q.Topic, q.Notes, q.Passed = parser.AskHelp, topic, nil, rd.Passed
	case !helps && !slices.Contains(asked, parser.AskLog) && asksLimit(rd):
		q.Intent, q.Notes = parser.AskJob, nil
	case asksRecord(rd) && !wonders(rd):
		q.Intent = parser.AskLog
	case topic != "":
		q.Intent, q.Topic, q.Notes, q.Passed, q.Quantities = parser.AskHelp, topic, nil, rd.Passed, figures
	default:
		return false
	}
	return true
}

// topicWithFigures is what is asked of the trade beside figures, and those of them that
// the answer rests on; "" for nothing.
func topicWithFigures(rd *reading.Reading, helps bool) (parser.Intent, []parser.Quantity) {
	if helps {
		return "", nil
	}
	if tooFar(rd) {
		return parser.TopicTooFar, nil
	}
	if turning.WrapRule(rd) {
		return parser.TopicWrapRule, nil
	}
	if deadOrGreen(rd) {
		return parser.TopicGreen, nil
	}
	if people, ok := handsAsked(rd); ok {
		return parser.TopicHands, []parser.Quantity{people}
	}
	if same, ok := converted(rd); ok {
		return parser.TopicConvert, []parser.Quantity{same}
	}
	return "", nil
}

// asksWithout puts into the question what is asked about no piece, and with no figure.
func asksWithout(rd *reading.Reading, asked []parser.Intent, helps bool, q *parser.Question) bool {
	tree := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Tree != nil })
	switch topic := topic(rd); {
	case !helps && !tree && tradeTopic(rd) == "" && !slices.Contains(asked, parser.AskLog) && AsksKept(rd):
		q.Intent, q.Notes = parser.AskJob, nil
	case !helps && asksLog(rd) && !wonders(rd), !helps && !tree && slices.Contains(asked, parser.AskLog):
		q.Intent = parser.AskLog
	case tree:
		return false
	case topic != "", Typed(rd, lexicon.CueHelps):
		q.Intent, q.Topic, q.Notes = parser.AskHelp, topic, nil
	default:
		return false
	}
	return true
}

// fewUnknown says whether a message holds some words that are not known, and not
// more of them than are named in one line.
func fewUnknown(rd *reading.Reading) bool {
	const most = 3
	n := 0
	for _, a := range rd.Asks {
		if a.Kind == parser.Unknown {
			n++
		}
	}
	return n > 0 && n <= most
}

// asksLog says whether it is asked what others asked, or what was done.
func asksLog(rd *reading.Reading) bool {
	asks := questioned(rd) || Typed(rd, lexicon.CueGives)
	switch {
	case Typed(rd, lexicon.CueHelps):
		return false
	case logNamed(rd):
		return true
	case asks && Typed(rd, lexicon.CueAskedBy):
		return true
	}
	return asks && Typed(rd, lexicon.CueDone) && Typed(rd, lexicon.CueEarlier) && !Typed(rd, lexicon.CueToCome) && !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Shape != "" })
}

// logNamed says whether the log is asked for, and no piece of wood: "can I get the
// log before I sign off", where nothing is done with it.
func logNamed(rd *reading.Reading) bool {
	if rd.AnyAt(rd.Is(senses.Sized)) {
		return false
	}
	words := plainWords(rd)
	for i := range words {
		for n := min(reading.LongestCue, len(words)-i); n >= 1; n-- {
			if !rd.In.Cued(strings.Join(words[i:i+n], " "), lexicon.CueOfLog) {
				continue
			}
			before := i - 1
			for before >= 0 && rd.In.Cued(words[before], lexicon.CueForWhom) {
				before--
			}
			moved := i+n < len(words) && rd.In.Cued(words[i+n], lexicon.CueMoves)
			return before >= 0 && rd.In.Cued(words[before], lexicon.CueGives) && !moved
		}
	}
	return false
}

// AsksKept says whether it is asked what is kept for the job, or who and what is
// in use today. A piece may be up as well as somebody: "cuántas vueltas le doy a la
// rama que está arriba de la casa".
func AsksKept(rd *reading.Reading) bool {
	piece := rd.AnyAt(func(i int) bool {
		return rd.TermAt(i).Shape != "" || rd.TermAt(i).Unnamed || rd.Elems[i].Plays(parser.Wraps) || rd.TermAt(i).Intent == parser.AskCutPlan
	})
	if !strings.Contains(rd.Text, "?") && rd.AnyAt(func(i int) bool { return rd.TermAt(i).Units != "" }) {
		return false // "change the units to metric, we have a new lad" tells
	}
	return questioned(rd) && (Typed(rd, lexicon.CueKept) || (Typed(rd, lexicon.CueHaveWe) && Typed(rd, lexicon.CueOfJob) || Typed(rd, lexicon.CueWhoIs) && Typed(rd, lexicon.CueArborist)) && !piece)
}

// questioned says whether a message asks for something.
func questioned(rd *reading.Reading) bool {
	words := plainWords(rd)
	asks := func(w string) bool { return rd.In.Cued(w, lexicon.CueQuery) }
	return slices.ContainsFunc(words, asks) || asksFirst(rd) || Typed(rd, lexicon.CueGives)
}

// fewWords are no more than name what is wanted, and ask for it.
const fewWords = 4

// topic is what is asked of the trade as a whole, "" for nothing.
func topic(rd *reading.Reading) parser.Intent {
	note := func(n string) bool { return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == n }) }
	run := note(parser.LetRun) || rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.RunLength) })
	wood := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Shape != "" || rd.TermAt(i).Unnamed })
	switch asks := questioned(rd) || strings.Contains(rd.Text, "?"); {
	case Typed(rd, lexicon.CueCapable) && Typed(rd, lexicon.CueToo) && capableOf(rd) != "":
		return capableOf(rd)
	case Typed(rd, lexicon.CueLanguage) && (Typed(rd, lexicon.CueCapable) || len(plainWords(rd)) <= fewWords):
		return parser.TopicLanguage // "en español por favor"
	case Typed(rd, lexicon.CueCapable) && !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Day }) && (turning.BareUnits(rd) != "" || unitsNamed(rd)):
		return parser.TopicUnits
	case asks && !wood && Typed(rd, lexicon.CueUnitsFine) && unitsNamed(rd):
		return parser.TopicUnits // "are lb and feet ok"
	case Typed(rd, lexicon.CueHeavyEnd) && (Typed(rd, lexicon.CueMeaning) || Typed(rd, lexicon.CueWhy)):
		return parser.TopicHeavyEnd
	case Typed(rd, lexicon.CueMeaning) && Typed(rd, lexicon.CueRating):
		return parser.TopicRating
	case !wood && allTyped(rd, []scan.Cue{lexicon.CueRopeDry, lexicon.CueChanges}): // "what does a wet rope do to the wraps" asks for no meaning
		return parser.TopicWet
	case Typed(rd, lexicon.CueMeaning) && rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.Wraps) }):
		return parser.TopicWrap
	case Typed(rd, lexicon.CueDouble) && Typed(rd, lexicon.CueSeesLoad):
		return parser.TopicBlock
	case !wood && allTyped(rd, []scan.Cue{lexicon.CueMoisture, lexicon.CueFigures}): // "en verde o en seco" snubs nothing
		return parser.TopicMoist
	case (note(parser.Snubbed) || run) && !wood && (note(parser.Snubbed) && run || Typed(rd, lexicon.CueBetter) || Typed(rd, lexicon.CueMeaning)):
		return parser.TopicSnub
	case note("wet") && Typed(rd, lexicon.CueWeaker) && !wood && asks:
		return parser.TopicWet
	case Typed(rd, lexicon.CueGreen) && Typed(rd, lexicon.CueHeavier):
		return parser.TopicGreen
	}
	return tradeTopic(rd)
}

// capableOf is the kind of question that it is asked whether we answer, "" for
// none: "can you do swings too".
func capableOf(rd *reading.Reading) parser.Intent {
	for _, e := range rd.Elems {
		switch {
		case e.Piece():
			return ""
		case e.Term != nil && e.Term.Intent != "" && e.Term.Intent != parser.AskHelp:
			return e.Term.Intent
		case e.Plays(parser.Wraps):
			return parser.AskLower
		}
	}
	return ""
}

// unitsNamed says whether units are named in a message without a number.
func unitsNamed(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Units != "" || rd.Elems[i].Marked(lexicon.MarkUnit) })
}

// onlyFactor says whether it is asked which design factor we plan on: of nothing
// that could be planned.
func onlyFactor(rd *reading.Reading) bool {
	factor := rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.DesignFactor) })
	other := rd.AnyAt(func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && (fig.Unit != nil || fig.Dim != parser.DimCount && fig.Dim != parser.DimRatio) || rd.Elems[i].Piece()
	})
	return factor && !other && (questioned(rd) || Typed(rd, lexicon.CueBetter))
}
