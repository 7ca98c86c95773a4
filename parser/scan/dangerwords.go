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

// TopicLine is one way to ask what is answered of no piece.
type TopicLine struct {
	Name   string // "shock-load"
	None   bool   // what looks like it, and is asked of something else
	Beside bool   // asked whatever figures stand beside it
	First  bool   // asked where nothing was spoken of before
	Slots  []DangerSlot
}

// DangerSlot is one part of a line.
type DangerSlot struct {
	Kind        string // "" for words of any kind
	Least, Most int
	Over        bool // a comma may stand before it
}
