package bot

import (
	"slices"
	"strings"

	"heft/calc/block"
	"heft/calc/gear"
	"heft/calc/rope"
	"heft/calc/unit"
	"heft/parser"
)

// general are the answers to what is asked of the trade as a whole: what the
// calculators state of every piece, and what to type for a figure.
var general = map[parser.Intent][]string{
	parser.TopicBlock: {"About twice the load: both legs of the rope pull on the top block. Legs apart: less. Lift, snub or drop: more.",
		"For a figure: “block load for 600 lb, 60° between the legs”."},
	parser.TopicSnub: {"Snub: stop the running rope short on the drum. Let it run: slow it little by little.",
		"Let it run, where there is room: a piece that is snubbed loads the line and the block far more than one that is let run.",
		"For a figure: “300 lb log drops 3 ft, let it run 10 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicWet: {"A wet rope may grip more or less than a dry one: start with no fewer wraps, rather one more.", // common practice, no source
		"Wet or icy rope is not covered by these figures: test with a small piece first."},
	parser.TopicGreen: {"Green wood is heavier than dry: it is full of water. A dead tree may be as wet inside, so I plan on no less for it.",
		"Dead wood breaks without warning: have it looked at before anyone rigs on it."},
	parser.TopicHeavyEnd: {"The heavy end is what to plan on: trees of one kind differ and sizes are by eye, so the piece may weigh that much.",
		"“show the numbers” after an answer says how it was worked out."},
	parser.TopicRating: {"Working load (WLL): what the gear may be loaded with, by its label. Breaking strength (MBS): what it breaks at when new.",
		"Of a breaking strength I plan on a tenth, 10:1. For a figure: “600 lb limb, is my rope strong enough, it breaks at 16,000 lb”."},
	parser.TopicFactor: {"I plan on a tenth of the breaking strength, 10:1: loads of a tree are not accurately known. 5:1 is the least for rigging.",
		"“design factor 8” with the piece takes another."},
	parser.TopicWrap: {"A wrap is one full turn of the rope round the drum. More wraps: less in the hand.",
		"For a figure: “600 lb limb, 3 wraps, two on the rope”."},
	parser.TopicWrapRule: {"No such rule: every wrap multiplies what the hand holds, it does not add so many pounds. What a wrap holds hangs on the rope and the drum too.",
		"For a figure: “600 lb limb, 3 wraps, two on the rope”."},
	parser.TopicUnits: {"Both, feet and pounds or metres and kilos: I answer in the units you type.",
		"“use kilos from now on” or “pounds and feet from now on” keeps it for the job."},
	parser.TopicGentle: {"Lowered slowly, never stopped short: about its weight on the rope, about twice that on the top block. A snub or a drop: more, much more.",
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicMoist: {"Green weight: wood full of water, with its bark. A dead tree may be as wet inside, so I plan on no less for it."},
	parser.TopicConfirm: {"To be confirmed: every lift, limb stood up, swing and drop, and any answer over your limit. The others need nobody's name.",
		"The job's arborist or a supervisor confirms it below the answer. The log keeps who and when."},
	parser.TopicLeaves:  {"Planned with its branches and leaves on: the heavy side."},
	parser.TopicOldRope: {"For rope that is used, old or without a label no figure holds: ask the qualified arborist whether it still serves."},
	parser.TopicDrumSize: {"How thick the drum is has no part in it: the hold goes by the wraps. What the drum may carry is on its label.",
		"For a figure: “600 lb limb, 3 wraps, two on the rope”."},
	parser.TopicAnyTree: {"Then type “hardwood” or “softwood” for the tree: the range is wider, and its heavy end is what to plan on.",
		"A weight from a scale goes before any tree: “600 lb limb”."},
	parser.TopicMoreBlock: {"The rope's turn is shared: what turns less at a block loads it less, and each block adds a little friction.",
		"What the second block hangs on is loaded too: ask the qualified arborist about that limb.",
		"For a figure: “600 lb, rope turns 60° at the top block, 30° at the redirect”."},
	parser.TopicTooFar: {"Closer: a block nearer to straight above the piece. It comes about as far past plumb as it starts to the side; a higher block alone changes little of that.",
		"For a figure: “600 lb limb swing, 15 ft of line out, 8 ft to the side, block at 40 ft”."},
	parser.TopicWay:      {"Either way round, I count the same: wrap as the maker of the drum shows. Ask the qualified arborist."},
	parser.TopicWear:     {"What to wear is not what I work out: ask the qualified arborist."},
	parser.TopicLanguage: {"English and Spanish: I answer in the one you type."},
}

// generally answers what is asked of the trade as a whole; false where it was
// something else.
func (a *answer) generally() bool {
	a.inWords()
	switch v := a.voice; a.question.Topic {
	case parser.TopicOnePerson:
		a.lines = []string{v.say("One person, gloves on: I plan on %s, held or hauled steady on a dry rope. On a wet rope less: test with a small piece first.", v.pullHad(rope.PerPerson)),
			v.word("For a figure: “600 lb limb, 3 wraps, two on the rope”.")}
	case parser.TopicTail:
		a.lines = []string{v.say("I add %s to a rope for the knot, the wraps and the hands. How much tail stays behind the drum: ask the qualified arborist.", v.ropeNeeded(rope.Tail)),
			v.word("For a figure: “how much rope for a hitch at 45 ft”.")}
	}
	switch topic := a.question.Topic; {
	case topic == parser.TopicKnot && a.inFigures():
		a.tellFiguresPassed()
	case len(a.lines) == 0:
	case topic == parser.TopicTooFar, topic == parser.TopicGreen:
		a.tellPassed()
	case topic != parser.WordTackle && slices.Contains(parser.TopicsTold, topic):
		a.tellFiguresPassed()
	}
	return len(a.lines) > 0 || a.inFigures()
}

// inWords answers what needs no figure.
func (a *answer) inWords() {
	topic, v := a.question.Topic, a.voice
	for _, line := range general[topic] {
		a.lines = append(a.lines, v.word(line))
	}
	for _, line := range taught[topic] {
		a.lines = append(a.lines, v.word(line))
	}
	for _, line := range ofAnswers[topic] {
		a.lines = append(a.lines, v.word(line))
	}
	for _, line := range meant[topic] {
		a.lines = append(a.lines, v.word(line))
	}
}

// tellFiguresPassed names the numbers of a message of which its answer takes none. The
// words of the question itself are not passed over.
func (a *answer) tellFiguresPassed() {
	figure := func(s parser.Said[string]) bool { return strings.ContainsAny(s.Words, "0123456789") }
	passed := slices.DeleteFunc(slices.Clone(a.question.Passed), func(s parser.Said[string]) bool { return !figure(s) })
	if len(passed) > 0 {
		a.lines = append(a.lines, a.voice.say("Passed over: %s.", a.voice.and(wordsOf(passed))))
	}
}

// inFigures answers what is asked of the trade with the figures that are planned on;
// false where it was something else.
func (a *answer) inFigures() bool {
	v := a.voice
	lost := func(k gear.Knot) string { return trimmed(100-100*gear.Keeps(k).Kept.Low, 0) }
	switch a.question.Topic {
	case parser.TopicWoods:
		if err := a.compareWoods(); err != nil {
			a.lines = []string{a.problem(err)}
		}
	case parser.TopicConvert:
		a.lines = []string{v.converted(a.question.Quantities[0])}
	case parser.TopicKN:
		a.lines = []string{v.say("kN is kilonewton: how hard something pulls. %s", v.converted(parser.Quantity{Field: parser.Weight, Low: float64(unit.Force(unit.Kilonewton).Held()), Words: "1 kN"}))}
	case parser.TopicKilo:
		a.lines = []string{v.converted(parser.Quantity{Field: parser.Weight, Low: 1, Words: "1 kg"})}
	case parser.TopicHands:
		n := int(low(a.question, parser.People))
		a.lines = []string{v.say("%s, gloves on: I plan on a pull of %s in all, hauled steady on a dry rope with firm footing. On a wet rope or wet ground less: test with a small piece first.", v.people(n), v.pullHad(unit.Force(n)*rope.PerPerson)),
			v.word("For a figure: “two of us on a 3:1, can we lift 300 lb”.")}
	case parser.TopicKnot:
		a.lines = []string{v.say("I take it off the breaking strength: you lose %s%% with a bowline, %s%% with an eye splice, %s%% with a knot that you do not name. The weakest on the rope counts.", lost(gear.Bowline), lost(gear.EyeSplice), lost(gear.AnyOtherKnot)),
			v.word("For a figure: “600 lb limb, is my rope strong enough, it breaks at 16,000 lb, bowline”.")}
	case parser.TopicFriction:
		a.lines = []string{v.say("Drum: I plan the hold on a friction of %s, and expect anything up to %s. Wet, worn or glazed rope is not covered: test with a small piece first.", trimmed(float64(rope.Slick), 2), trimmed(float64(rope.Grippy), 2)),
			v.say("Blocks: %s%% of the pull passes where the rope is turned right back, unless you tell me another.", trimmed(100*block.Efficiency, 0))}
	}
	return len(a.lines) > 0
}
