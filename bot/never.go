package bot

import "heft/parser"

// byHand is said with and without words for a drum that is not there.
var byHand = []string{"STOP. Nobody holds a piece by hand alone: wraps on a drum hold it, the hand only feeds the rope.",
	"Rig the drum first. How many wraps I can tell, from what the piece weighs.",
	"One person on the rope holds 45 lb (20 kg) and no more, and a jerk takes it out of the hand."}

// never words what nobody does, whatever the figures say, and beyond what is asked
// beside rigging and is none: each by its name in the lines `danger` of the word files.
var never = map[string][]string{
	"hand": {"STOP. No rope round a hand, an arm or the body, and nobody stands on it: it takes them along.",
		"The wraps go on the drum, so many that an open hand holds the tail. How many I can tell, from what the piece weighs."},
	"by-hand":   byHand,
	"bare-hand": byHand,
	"knot": {"STOP. No knot runs through a block: it jams there, with the piece hanging and nobody able to lower it.",
		"Use one rope that is long enough. How long I can tell, from how high the block is."},
	"vehicle": {"STOP. No pull or lift with a vehicle, and no running start: nobody feels how hard it pulls until something breaks.",
		"Use a winch or a tackle of which the pull is known, taken up slowly. What it pulls I can work out."},
	"anchor": {"STOP. No climber hangs on what the piece is lowered from: not on its block, its sling or its anchor.",
		"Climbing has an anchor and gear of its own. The qualified arborist says where, before anything is lowered."},
	"brake": {"STOP. No rope round a vehicle, and no vehicle as the brake: whoever drives neither feels the load nor sees it.",
		"Let the rope run round a drum, with somebody at its tail who sees the piece. How many wraps I can tell, from what the piece weighs."},
	"built": {"STOP. No rigging on a chimney, a post, a rail or anything else that is built: it is no anchor and comes down with the piece.",
		"Rig on another sound stem, which the qualified arborist picks."},
	"moved": {"STOP. Gear that moved on the tree under load is loaded no more until it is set anew.",
		"Load off it, everybody out from under. The qualified arborist looks at the tree, the sling and the gear before the next piece."},
	"bight": {"Out of the bend of the rope too: where a block or a sling lets go, the rope sweeps through it."}, // common practice, no source
	"gas":   {"Gas: engines and saws off, no flame, no switch, no spark. Everybody away from it, upwind, and call from there."},
	"unroped": {"STOP. Nobody leaves the ground untied, and nobody cuts up there without a second tie-in, however short the job.",
		"The qualified arborist says whether anybody goes up today, and how they are tied in."},
	"saw": {"STOP. No saw with one hand, and none over the shoulder or the head: it kicks back at who holds it.",
		"Both hands on it, a second tie-in, and a place from which the cut is in front of the body. Else another cut or another day."},
}

var beyond = map[string]string{
	"price":   "I do not work out prices, hours or bids, only the rigging.",
	"fall":    "What a climber's fall does to a line, a lanyard or a harness I do not work out: ask the maker of the gear and the qualified arborist. What took a fall stays out of use until they have seen it.",
	"health":  "An ache, a burn or an illness is no question for me: ask a first aider or a doctor. Whoever is not fit for it tells the supervisor before going up.",
	"landing": "How hard a piece that falls free hits the ground I do not work out. Lower it on a rope, or clear the drop zone first. Ask the qualified arborist.",
	"drag":    "What it takes to drag a piece along the ground I do not work out: ground, slope and what it catches on decide. Ask the qualified arborist.",
	"notch":   "How deep a notch or a cut goes, and how thick the hinge stays, I do not work out, for a tree or a piece. Ask the qualified arborist.",
	"box":     "What fits in a truck by its size, and what chips, brush or firewood fill, I do not work out. Loads I count by weight: “truck takes 8,000 lb”.",
	"rest":    "I take nothing off a piece. What is left type by its own sizes, its cuts measured: “26 in butt, 14 in tip, 30 ft red oak log”.",
	"tie-in":  "What a climber hangs on I give no figure for: no limb, no stem, no anchor of theirs. Ask the qualified arborist.",
	"saws":    "Which saw or bar to take, and how much oil or fuel, I do not work out.",
	"wind":    "How hard wind pushes on a top I do not work out. Where it moves the piece or the stem, come down and wait. Ask the qualified arborist.",
	"roof":    "What a roof or a deck holds I do not work out: set nothing down on it. Ask the qualified arborist.",
}

// bars words such a refusal.
func (a *answer) bars(ask *parser.Ask) {
	v := a.voice
	for _, line := range never[ask.Danger] {
		a.lines = append(a.lines, v.word(line))
	}
	if ask.Kind == parser.Beyond {
		a.lines = append(a.lines, v.word(beyond[ask.Danger]), a.instead(ask.Danger))
	}
}

// instead words what can be told beside what is beyond us: the nearest to it that we work
// out.
func (a *answer) instead(danger string) string {
	v := a.voice
	switch danger {
	case "notch":
		return v.say("How wide a notch opens for a limb stood up I can tell: %s.", v.word(asksOf[parser.AskNotch][0]))
	case "drag":
		return v.say("What it takes to lift it clear of the ground I can tell: %s.", v.word(asksOf[parser.AskLift][0]))
	}
	return v.say("What a piece weighs I can tell: “%s”.", example(v))
}
