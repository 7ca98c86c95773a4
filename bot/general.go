package bot

import "heft/parser"

// general are the answers to what is asked of the trade as a whole: what the
// calculators state of every piece, and what to type for a figure.
var general = map[parser.Intent][]string{
	parser.TopicBlock: {"About twice the load: both legs of the rope pull on the top block. Legs apart: less. Lift, snub or drop: more.",
		"For a figure: “block load for 600 lb, 60° between the legs”."},
	parser.TopicSnub: {"Let it run, where there is room: a piece that is snubbed loads the line and the block far more than one that is let run.",
		"For a figure: “300 lb log drops 3 ft, let it run 10 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicWet:   {"Wet or icy rope is not covered by these figures: test with a small piece first."},
	parser.TopicGreen: {"Green wood is heavier than dry: it is full of water. A dead tree may be as wet inside, so I plan on no less for it."},
	parser.TopicHeavyEnd: {"The heavy end is what to plan on: trees of one kind differ and sizes are by eye, so the piece may weigh that much.",
		"“show the numbers” after an answer says how it was worked out."},
	parser.TopicRating: {"Working load (WLL): what the gear may be loaded with, by its label. Breaking strength (MBS): what it breaks at when new.",
		"Of a breaking strength I plan on a tenth, 10:1. For a figure: “600 lb limb, is my rope strong enough, it breaks at 16,000 lb”."},
	parser.TopicFactor: {"I plan on a tenth of the breaking strength, 10:1: loads of a tree are not accurately known. 5:1 is the least for rigging.",
		"“design factor 8” with the piece takes another."},
	parser.TopicWrap: {"A wrap is one full turn of the rope round the drum. More wraps: less in the hand.",
		"For a figure: “600 lb limb, 3 wraps, two on the rope”."},
	parser.TopicUnits: {"Both, feet and pounds or metres and kilos: I answer in the units you type.",
		"“use kilos from now on” or “pounds and feet from now on” keeps it for the job."},
	parser.TopicLanguage: {"English and Spanish: I answer in the one you type."},
}

// generally answers what is asked of the trade as a whole; false where it was
// something else.
func (a *answer) generally() bool {
	for _, line := range general[a.question.Topic] {
		a.lines = append(a.lines, a.voice.word(line))
	}
	return len(a.lines) > 0
}
