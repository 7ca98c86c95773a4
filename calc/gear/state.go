package gear

// State says what is known of a piece of gear.
type State int

// The states. Only what is labelled and in good order has a number.
const (
	Labelled State = iota // strength read off its label, nothing said against it
	SecondHand
	Old
	Unlabelled
)

// Unrated says that a piece of gear has no number, and what to ask instead.
type Unrated struct {
	Part  Part
	State State
	Ask   string // one plain question
}

// asks are the words for the states, and the question that goes with each.
var asks = map[State][2]string{
	SecondHand: {"used", "has the qualified arborist inspected it and found it fit, and what does its label say?"},
	Old:        {"old", "has the qualified arborist inspected it, and is it within the life its maker gives it?"},
	Unlabelled: {"unlabelled", "is there a maker's sheet that surely belongs to it? If not, do not rig on it"},
}

// Error says it in plain English.
func (e *Unrated) Error() string {
	return "no working load for " + asks[e.State][0] + " gear: " + e.Ask
}

// rated returns an *Unrated for gear without a number. A state that is none
// of ours is no better than no label.
func (l Link) rated() error {
	if l.State == Labelled {
		return nil
	}
	state := l.State
	if _, known := asks[state]; !known {
		state = Unlabelled
	}
	return &Unrated{Part: l.Part, State: state, Ask: asks[state][1]}
}
