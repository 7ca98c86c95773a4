package lexicon

import (
	"regexp"
	"slices"

	"heft/parser"
)

// ForgetWords are the words of a message that takes something back of what a job keeps:
// "please wipe the job, we moved", "forget the rope but leave the crew". Each pattern but
// the last two matches at the beginning of what is left of the message.
type ForgetWords struct {
	Begin   *regexp.Regexp                  // what asks for it: "can you clear"
	Hands   *regexp.Regexp                  // the same where it is done by hand as well: "remove"
	Clears  *regexp.Regexp                  // the same of what lies about: "clear"
	Takes   *regexp.Regexp                  // what takes something off a list: "knock", "lose"
	Off     *regexp.Regexp                  // "off the gear", behind what such words take off
	Listed  *regexp.Regexp                  // the same anywhere
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
	Asked   *regexp.Regexp                  // "how do i", "did you"
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

// newForgetWords makes the patterns; any is a pattern for the spellings of a label.
func newForgetWords(any func(label string) string) ForgetWords {
	const end = `(?:[^\pL\pN]+|$)`
	at := func(pattern string) *regexp.Regexp { return regexp.MustCompile(`(?i)^` + pattern) }
	word := func(label string) *regexp.Regexp { return at(any(label) + end) }
	lead := `[^\pL\pN]*(?:` + any("drop-lead") + `[^\pL\pN]+)*`
	off := any("drop-off") + `\s+(?:` + any("drop-which") + `\s+)*` + any("drop-list")
	w := ForgetWords{
		Begin: at(lead + "(?:" + any(labelDrop) + "|" + any("drop-hands") + "|" + any("drop-clears") + ")" + end), Hands: at(lead + any("drop-hands") + end), Clears: at(lead + any("drop-clears") + end),
		Takes: at(lead + any("drop-takes") + end), Off: at(off + end), Listed: regexp.MustCompile(`(?i)(?:^|[^\pL\pN])` + off + end), Size: at(`(?:[0-9][0-9.,/]*\s*(?:mm|cm|inch(?:es)?|in|kg|lbs?|kn|t|ft|m|"|'')?|` + any("drop-which") + `)` + end),
		Job: word("drop-job"), All: word("drop-all"), Part: map[parser.Field]*regexp.Regexp{},
		Between: at(`(?:` + any("drop-which") + end + `)+`), Whose: word("drop-whose"), When: word("drop-when"), Number: at(any("drop-whose") + `\s+[0-9][0-9.,]*\s*\pL*` + end), New: word("drop-new"),
		Spare: at(`(?:` + any("drop-which") + end + `)*` + any("drop-spare") + end), As: word("drop-as"), Polite: word("drop-polite"), Why: at(any("drop-why") + end),
		Turns: regexp.MustCompile(`(?i)(?:^|[^\pL\pN])` + any("drop-turns") + end), Asked: at(lead + any("drop-asked") + end),
	}
	ofJob := `(?:\s+` + any("drop-whose") + `\s+(?:` + any("drop-which") + `\s+)*` + any("drop-job") + `)?` // "the limit for this job"
	for f, label := range partLabels {
		w.Part[f] = at(any(label) + ofJob + end)
	}
	return w
}
