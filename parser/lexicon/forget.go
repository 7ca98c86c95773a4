package lexicon

import (
	"regexp"
	"slices"
	"sync"

	"heft/parser"
)

// ForgetWords are the words of a message that takes something back of what a job keeps:
// "please wipe the job, we moved", "forget the rope but leave the crew". Each pattern but
// Listed and Turns matches at the beginning of what is left of the message.
type ForgetWords struct {
	Begin  *regexp.Regexp      // what asks for it: "can you clear"
	Takes  *regexp.Regexp      // what takes something off a list: "knock", "lose"
	Listed *regexp.Regexp      // "off the gear", anywhere
	Asked  *regexp.Regexp      // "how do i", "did you"
	Behind func() *ForgetsWhat // what stands behind one that begins so
}

// ForgetsWhat are the words behind the beginning. Few messages get that far, and making
// the patterns is a good part of the start, so they are made when one does.
type ForgetsWhat struct {
	Hands   *regexp.Regexp                  // what asks for it where it is done by hand as well: "remove"
	Clears  *regexp.Regexp                  // the same of what lies about: "clear"
	Off     *regexp.Regexp                  // "off the gear", behind what is taken off
	Size    *regexp.Regexp                  // "16 mm", of what is taken off
	Job     *regexp.Regexp                  // "the whole job"
	All     *regexp.Regexp                  // "everything", of whatever is spoken of
	Part    map[parser.Field]*regexp.Regexp // by the first of its fields: "the rope"
	Between *regexp.Regexp                  // "and the"
	Whose   *regexp.Regexp                  // "from", before whose it was
	When    *regexp.Regexp                  // "yesterday"
	Number  *regexp.Regexp                  // "of 500 lb", behind a limit
	Spare   *regexp.Regexp                  // "but leave"
	As      *regexp.Regexp                  // "as they are"
	Polite  *regexp.Regexp                  // "please"
	Why     *regexp.Regexp                  // "we", as in "we moved to a new yard"
	New     *regexp.Regexp                  // the same without a verb: "new yard"
	Turns   *regexp.Regexp                  // anywhere: "wait", "don't"
}

// ForgetParts are the facts that go together with a part of what a job keeps.
var ForgetParts = map[parser.Field][]parser.Field{
	parser.SpeciesField:   {parser.SpeciesField},
	parser.HitchHeight:    {parser.HitchHeight},
	parser.Limit:          {parser.Limit},
	parser.People:         {parser.People, parser.PersonPull},
	parser.WinchPull:      {parser.WinchPull},
	parser.RopeBreak:      ropeFacts,
	parser.BlockBreak:     {parser.BlockBreak, parser.BlockWorking},
	parser.SlingBreak:     slingFacts,
	parser.ConnectorBreak: {parser.ConnectorBreak, parser.ConnectorWorking},
	parser.DrumBreak:      {parser.DrumAcross, parser.DrumBreak, parser.DrumWorking},
	parser.Efficiency:     GearFacts,
}

var ropeFacts = []parser.Field{parser.RopeBreak, parser.RopeWorking, parser.RopeDiameter, parser.RopeLength, parser.Strands}

var slingFacts = []parser.Field{parser.SlingBreak, parser.SlingWorking, parser.Legs, parser.LegAngle, parser.ChokeAngle}

// GearFacts are all that a job keeps of gear.
var GearFacts = slices.Concat(ropeFacts, parser.Ratings[2:], slingFacts[2:], []parser.Field{parser.DrumAcross, parser.WinchPull, parser.Efficiency, parser.DesignFactor})

// partLabels are the labels of the parts, by the first of their fields.
var partLabels = map[parser.Field]string{
	parser.SpeciesField: labelTree, parser.HitchHeight: labelHitch, parser.Limit: labelLimit,
	parser.People: "drop-people", parser.WinchPull: "drop-winch", parser.RopeBreak: "drop-rope", parser.BlockBreak: "drop-block",
	parser.SlingBreak: "drop-sling", parser.ConnectorBreak: "drop-connector", parser.DrumBreak: "drop-drum", parser.Efficiency: "drop-gear",
}

// forgetLabels are all labels that the patterns are made of.
var forgetLabels = []string{labelDrop, labelTree, labelHitch, labelLimit, "drop-hands", "drop-clears", "drop-takes", "drop-off", "drop-list", "drop-job", "drop-all", "drop-people", "drop-winch", "drop-rope", "drop-block", "drop-sling",
	"drop-connector", "drop-drum", "drop-gear", "drop-lead", "drop-which", "drop-whose", "drop-when", "drop-new", "drop-spare", "drop-as", "drop-polite", "drop-why", "drop-turns", "drop-asked"}

// behindWord is what ends a word, and fromStart begins a pattern that matches nowhere but
// at the beginning of what is left.
const behindWord = `(?:[^\pL\pN]+|$)`

func fromStart(pattern string) *regexp.Regexp { return regexp.MustCompile(`(?i)^` + pattern) }

// newForgetWords makes the patterns; any is a pattern for the spellings of a label.
func newForgetWords(any func(label string) string) ForgetWords {
	lead := `[^\pL\pN]*(?:` + any("drop-lead") + `[^\pL\pN]+)*`
	off := any("drop-off") + `\s+(?:` + any("drop-which") + `\s+)*` + any("drop-list")
	return ForgetWords{
		Begin:  fromStart(lead + "(?:" + any(labelDrop) + "|" + any("drop-hands") + "|" + any("drop-clears") + ")" + behindWord),
		Takes:  fromStart(lead + any("drop-takes") + behindWord),
		Listed: regexp.MustCompile(`(?i)(?:^|[^\pL\pN])` + off + behindWord),
		Asked:  fromStart(lead + any("drop-asked") + behindWord),
		Behind: sync.OnceValue(func() *ForgetsWhat { return newForgetsWhat(any, lead, off) }),
	}
}

// newForgetsWhat makes those of what stands behind: lead may stand before a verb, and off
// is a pattern for "off the gear".
func newForgetsWhat(any func(label string) string, lead, off string) *ForgetsWhat {
	word := func(label string) *regexp.Regexp { return fromStart(any(label) + behindWord) }
	which := `(?:` + any("drop-which") + behindWord + `)`
	w := ForgetsWhat{
		Hands: fromStart(lead + any("drop-hands") + behindWord), Clears: fromStart(lead + any("drop-clears") + behindWord),
		Off: fromStart(off + behindWord), Size: fromStart(`(?:[0-9][0-9.,/]*\s*(?:mm|cm|inch(?:es)?|in|kg|lbs?|kn|t|ft|m|"|'')?|` + any("drop-which") + `)` + behindWord),
		Job: word("drop-job"), All: word("drop-all"), Part: map[parser.Field]*regexp.Regexp{},
		Between: fromStart(which + `+`), Whose: word("drop-whose"), When: word("drop-when"), Number: fromStart(any("drop-whose") + `\s+[0-9][0-9.,]*\s*\pL*` + behindWord), New: word("drop-new"),
		Spare: fromStart(which + `*` + any("drop-spare") + behindWord), As: word("drop-as"), Polite: word("drop-polite"), Why: word("drop-why"),
		Turns: regexp.MustCompile(`(?i)(?:^|[^\pL\pN])` + any("drop-turns") + behindWord),
	}
	ofJob := `(?:\s+` + any("drop-whose") + `\s+(?:` + any("drop-which") + `\s+)*` + any("drop-job") + `)?` // "the limit for this job"
	for f, label := range partLabels {
		w.Part[f] = fromStart(any(label) + ofJob + behindWord)
	}
	return &w
}
