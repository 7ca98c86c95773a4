package bot

// Scene is what a picture of an answer shows: a side view in metres, with
// every word and number finished. Whoever draws it needs no formula and no
// unit; the same scene is drawn the same way each time.
type Scene struct {
	Title   string   // what the piece was taken to be, and what is done with it
	Plan    string   // the first figure of the answer; empty where the set-up is refused
	Verdict string   // a word or two in capitals, or empty
	Asked   bool     // it is drawn only when asked for: the words are enough
	Refused bool     // the verdict is that it must not be done so
	Notes   []string // a few short lines under the view
	Marks   []Mark   // in the order in which they are drawn
	Bar     Bar

	Language string `json:",omitempty"` // of its words; empty is English
}

// Reminder is the line at the foot of every picture: no scene is without it.
func (s *Scene) Reminder() string { return speaker{language: s.Language}.word(reminder) }

// Point is a place in the side view, in metres: X to the right, Y up.
type Point struct{ X, Y float64 }

// Bar is the bar of the scale. Without a length the view is not to scale, and
// the label says so.
type Bar struct {
	Length float64 // metres
	Label  string
}

// Mark is one thing to draw.
type Mark struct {
	Kind  Kind
	Path  []Point
	Lines int     // of rope side by side; 0 is one
	Share float64 // of a load in the largest of the scene
	Label string  // "\n" parts its lines
}

// Kind says what a mark stands for; how that looks is the drawer's.
type Kind string

// The kinds, and what their paths are.
const (
	Ground   Kind = "ground"   // a line, the ground below it
	Stem     Kind = "stem"     // outline of wood that stays
	Wood     Kind = "wood"     // outline of the piece
	Later    Kind = "later"    // outline of the piece where it will be
	Break    Kind = "break"    // a line across what was shortened
	Obstacle Kind = "obstacle" // outline of what must not be struck
	Sling    Kind = "sling"    // a line
	Rope     Kind = "rope"     // a line
	Lately   Kind = "lately"   // a line of rope where it will be
	Sweep    Kind = "sweep"    // a path that is moved along
	Block    Kind = "block"    // a place
	Drum     Kind = "drum"     // a place
	Balance  Kind = "balance"  // a place
	Person   Kind = "person"   // feet and crown
	Window   Kind = "window"   // from one end to the other
	Gap      Kind = "gap"      // a distance, from one end to the other
	Load     Kind = "load"     // where it pulls, and a place in the direction of the pull
	Cross    Kind = "cross"    // a place where it goes wrong
)

func (s *Scene) add(k Kind, label string, path ...Point) {
	s.Marks = append(s.Marks, Mark{Kind: k, Path: path, Label: label})
}

// rope adds lines of rope side by side.
func (s *Scene) rope(k Kind, lines int, path ...Point) {
	s.Marks = append(s.Marks, Mark{Kind: k, Path: path, Lines: lines})
}

// haul adds the pull at the hands, beside the leg from a block that leads to
// them, on its outer side.
func (s *Scene) haul(label string, share float64, block, hands Point, off float64) {
	const low = 0.55
	along := hands.minus(block)
	beside := Point{off, 0}
	if along.X < 0 {
		beside.X = -off
	}
	s.load(label, share, block.plus(along.times(low)).plus(beside), along)
}

// load adds a load that pulls at a place in a direction.
func (s *Scene) load(label string, share float64, at, direction Point) {
	s.Marks = append(s.Marks, Mark{Kind: Load, Path: []Point{at, at.plus(direction)}, Share: share, Label: label})
}
