package parser

import (
	"slices"
	"strings"
)

// Some messages ask about no piece: what is kept for the job, what others asked,
// what the trade answers in one line. None of them holds a number, so that nothing
// is left out that could be one of a piece.

// The cues of such a message. They are looked for wherever they are typed.
const (
	cueArborist cue = "arborist"  // who confirms the answers of a job
	cueAskedBy  cue = "asked-by"  // what others asked, or did
	cueBetter   cue = "better"    // weighs one way of working against another
	cueCapable  cue = "capable"   // asks what we can do
	cueDone     cue = "done"      // what was done
	cueDouble   cue = "double"    // twice the load
	cueEarlier  cue = "earlier"   // when that was
	cueGives    cue = "gives"     // before what is to be handed over
	cueGreen    cue = "green"     // of wood that is alive
	cueInLog    cue = "in-log"    // asks what the log says
	cueHaveWe   cue = "have-we"   // asks what is in use
	cueHeavier  cue = "heavier"   // of one kind of wood beside another
	cueForWhom  cue = "for-whom"  // between what is handed over and the word that hands it over
	cueMoves    cue = "moves"     // behind a log of wood, where it goes
	cueWhy      cue = "why"       // asks for a reason
	cueHelps    cue = "helps"     // asks how we are asked
	cueToo      cue = "too"       // in what asks what we can do
	cueHeavyEnd cue = "heavy-end" // how we name the heaviest that a piece may be
	cueKept     cue = "kept"      // what was told to be kept
	cueLanguage cue = "language"  // English, Spanish
	cueSeesLoad cue = "sees-load" // what sees a load
	cueOfJob    cue = "of-job"    // what can hold for a job
	cueOfLog    cue = "of-log"    // the log, and no piece of wood
	cueRating   cue = "rating"    // the words of a gear's label
	cueWeaker   cue = "weaker"    // of a rope
	cueMeaning  cue = "meaning"   // asks what a word means
)

// What is asked of the trade as a whole. The desk answers each in a line.
const (
	TopicBlock    Intent = "about-block"     // whether the top block sees twice the load
	TopicSnub     Intent = "about-snub"      // whether to snub or to let run
	TopicWet      Intent = "about-wet"       // whether a wet rope holds less
	TopicGreen    Intent = "about-green"     // whether green wood is heavier
	TopicHeavyEnd Intent = "about-heavy-end" // what the heavy end is
	TopicRating   Intent = "about-rating"    // what the words of a label mean
	TopicFactor   Intent = "about-factor"    // how much of a breaking strength is planned on
	TopicWrap     Intent = "about-wrap"      // what a wrap is
	TopicUnits    Intent = "about-units"     // which units we speak
	TopicLanguage Intent = "about-language"  // which languages
)

// asksUs reads a message that asks about no piece.
func (rd *reading) asksUs() (Question, bool) {
	q := Question{Language: rd.language, Units: rd.units(), Notes: rd.notes(), Passed: rd.passed, Asks: true}
	asked, _, _ := rd.intents()
	helps := slices.Contains(asked, AskHelp)
	if slices.Contains(asked, AskLog) && rd.fewUnknown() && !rd.typed(cueAskedBy) {
		return q, false // what is not known is said with it
	}
	if slices.Contains(asked, AskJob) || helps && !rd.typed(cueCapable) {
		return q, false // its own words ask for it
	}
	if !helps && rd.onlyFactor() {
		q.Intent, q.Topic, q.Notes = AskHelp, TopicFactor, nil
		return q, true
	}
	if (rd.logNamed() || rd.typed(cueInLog)) && !rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil && rd.elems[i].fig.unit != nil }) {
		q.Intent = AskLog // whatever the hour, and whoever wants it
		return q, true
	}
	if !helps && rd.tooFar() {
		q.Intent, q.Topic, q.Notes, q.Passed = AskHelp, TopicTooFar, nil, rd.passed
		return q, true
	}
	if !helps && rd.wrapRule() {
		q.Intent, q.Topic, q.Notes = AskHelp, TopicWrapRule, nil
		return q, true
	}
	if rd.asksRecord() {
		q.Intent = AskLog
		return q, true
	}
	if !helps && rd.deadOrGreen() {
		q.Intent, q.Topic, q.Notes, q.Passed = AskHelp, TopicGreen, nil, rd.passed
		return q, true
	}
	if people, ok := rd.handsAsked(); ok && !helps {
		q.Intent, q.Topic, q.Quantities = AskHelp, TopicHands, []Quantity{people}
		return q, true
	}
	if rd.anyAt(func(i int) bool { fig := rd.elems[i].fig; return fig != nil && !fig.bare(1) }) {
		return q, false // "what is one wrap" counts none
	}
	tree := rd.anyAt(func(i int) bool { return rd.termAt(i).tree != nil })
	switch topic := rd.topic(); {
	case !helps && !tree && rd.tradeTopic() == "" && rd.asksKept():
		q.Intent, q.Notes = AskJob, nil
	case !helps && rd.asksLog(), !helps && !tree && slices.Contains(asked, AskLog):
		q.Intent = AskLog
	case tree:
		return q, false
	case topic != "", rd.typed(cueHelps):
		q.Intent, q.Topic, q.Notes = AskHelp, topic, nil
	default:
		return q, false
	}
	return q, true
}

// fewUnknown says whether a message holds some words that are not known, and not
// more of them than are named in one line.
func (rd *reading) fewUnknown() bool {
	const most = 3
	n := 0
	for _, a := range rd.asks {
		if a.Kind == Unknown {
			n++
		}
	}
	return n > 0 && n <= most
}

// asksLog says whether it is asked what others asked, or what was done.
func (rd *reading) asksLog() bool {
	asks := rd.questioned() || rd.typed(cueGives)
	switch {
	case rd.typed(cueHelps):
		return false
	case rd.logNamed():
		return true
	case asks && rd.typed(cueAskedBy):
		return true
	}
	return asks && rd.typed(cueDone) && rd.typed(cueEarlier) && !rd.anyAt(func(i int) bool { return rd.termAt(i).shape != "" })
}

// logNamed says whether the log is asked for, and no piece of wood: "can I get the
// log before I sign off", where nothing is done with it.
func (rd *reading) logNamed() bool {
	words := rd.plainWords()
	for i := range words {
		for n := min(longestCue, len(words)-i); n >= 1; n-- {
			if !rd.in.cues[cueOfLog][strings.Join(words[i:i+n], " ")] {
				continue
			}
			before := i - 1
			for before >= 0 && rd.in.cues[cueForWhom][words[before]] {
				before--
			}
			moved := i+n < len(words) && rd.in.cues[cueMoves][words[i+n]]
			return before >= 0 && rd.in.cues[cueGives][words[before]] && !moved
		}
	}
	return false
}

// asksKept says whether it is asked what is kept for the job, or who and what is
// in use today. A piece may be up as well as somebody: "cuántas vueltas le doy a la
// rama que está arriba de la casa".
func (rd *reading) asksKept() bool {
	piece := rd.anyAt(func(i int) bool { return rd.termAt(i).shape != "" || rd.termAt(i).unnamed || rd.elems[i].plays(Wraps) })
	return rd.questioned() && (rd.typed(cueKept) || (rd.typed(cueHaveWe) && rd.typed(cueOfJob) || rd.typed(cueWhoIs) && rd.typed(cueArborist)) && !piece)
}

// questioned says whether a message asks for something.
func (rd *reading) questioned() bool {
	words := rd.plainWords()
	asks := func(w string) bool { return rd.in.cues[cueQuery][w] }
	return slices.ContainsFunc(words, asks) || len(words) > 0 && (rd.in.cues[cueQueryFirst][words[0]] || rd.in.cues[cueAsking][words[0]]) || rd.typed(cueGives)
}

// topic is what is asked of the trade as a whole, "" for nothing.
func (rd *reading) topic() Intent {
	note := func(n string) bool { return rd.anyAt(func(i int) bool { return rd.termAt(i).note == n }) }
	run := note(letRun) || rd.anyAt(func(i int) bool { return rd.elems[i].plays(RunLength) })
	wood := rd.anyAt(func(i int) bool { return rd.termAt(i).shape != "" || rd.termAt(i).unnamed })
	switch asks := rd.questioned() || strings.Contains(rd.text, "?"); {
	case rd.typed(cueCapable) && rd.typed(cueToo) && rd.capableOf() != "":
		return rd.capableOf()
	case rd.typed(cueCapable) && rd.typed(cueLanguage):
		return TopicLanguage
	case rd.typed(cueCapable) && !rd.anyAt(func(i int) bool { return rd.termAt(i).day }) && (rd.bareUnits() != "" || rd.unitsNamed()):
		return TopicUnits
	case rd.typed(cueHeavyEnd) && (rd.typed(cueMeaning) || rd.typed(cueWhy)):
		return TopicHeavyEnd
	case rd.typed(cueMeaning) && rd.typed(cueRating):
		return TopicRating
	case rd.typed(cueMeaning) && rd.anyAt(func(i int) bool { return rd.elems[i].plays(Wraps) }):
		return TopicWrap
	case rd.typed(cueDouble) && rd.typed(cueSeesLoad):
		return TopicBlock
	case !wood && rd.allTyped([]cue{cueMoisture, cueFigures}): // "en verde o en seco" snubs nothing
		return TopicMoist
	case (note(snubbed) || run) && !wood && (note(snubbed) && run || rd.typed(cueBetter) || rd.typed(cueMeaning)):
		return TopicSnub
	case note("wet") && rd.typed(cueWeaker) && !wood && asks:
		return TopicWet
	case rd.typed(cueGreen) && rd.typed(cueHeavier):
		return TopicGreen
	}
	return rd.tradeTopic()
}

// capableOf is the kind of question that it is asked whether we answer, "" for
// none: "can you do swings too".
func (rd *reading) capableOf() Intent {
	for _, e := range rd.elems {
		switch {
		case e.piece():
			return ""
		case e.term != nil && e.term.intent != "" && e.term.intent != AskHelp:
			return e.term.intent
		case e.plays(Wraps):
			return AskLower
		}
	}
	return ""
}

// unitsNamed says whether units are named in a message without a number.
func (rd *reading) unitsNamed() bool {
	return rd.anyAt(func(i int) bool { return rd.termAt(i).units != "" || rd.elems[i].marked(markUnit) })
}

// onlyFactor says whether it is asked which design factor we plan on: of nothing
// that could be planned.
func (rd *reading) onlyFactor() bool {
	factor := rd.anyAt(func(i int) bool { return rd.elems[i].plays(DesignFactor) })
	other := rd.anyAt(func(i int) bool {
		fig := rd.elems[i].fig
		return fig != nil && (fig.unit != nil || fig.dim != dimCount && fig.dim != dimRatio) || rd.elems[i].piece()
	})
	return factor && !other && (rd.questioned() || rd.typed(cueBetter))
}
