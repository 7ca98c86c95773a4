package scan

import "heft/parser"

// DangerLine is one way to tell of a danger, or of what looks like one and is none.
type DangerLine struct {
	Kind  parser.Kind
	Name  string // which of the kind: "knot"
	None  bool   // what stops by itself does not, within such words
	Far   bool   // nor anywhere else in the message
	Slots []DangerSlot
}

// DangerSlot is one part of a line.
type DangerSlot struct {
	Kind        string // "" for words of any kind
	Least, Most int
	Over        bool // a comma may stand before it
}
