package scan

import "slices"

// Cue names words that mean nothing by themselves, but say what a number beside
// them is: "over" behind a block, "now" behind "level". Every language has its
// own, in the lines `cue` of its file.
type Cue string

// CueSet are the cues that a word is one of: few words are one of any.
type CueSet []Cue

// Has says whether a cue is one of them.
func (s CueSet) Has(c Cue) bool { return slices.Contains(s, c) }

// Most dangers are told by a thing and how it is, or where somebody is, in words that
// say nothing by themselves: "my hand is in the wraps", "a bracket on the beech". The
// lines `danger` of the word files say which go together, by the kinds of words that
// the lines `kind` list:
//
//	kind hand | hand, finger
//	danger emergency | <hand> <caught>* <inside> <machine>
//
// "<x>?" may be missing, "<x>*" comes any number of times up to four; "..3" is up to
// three words within the same breath that deny nothing, ";;3" up to three of the same
// sentence. What no kind tells is a word as it stands. "<tree>", "<piece>", "<gear>"
// and "<somebody>" are also whatever the other lines know as such, "<number>" is a
// number, and at "<end>" a breath ends. What a line "danger none …" tells is none,
// and with "!" nothing of the kind in the whole message is.

// What is asked of the trade as a whole, of the answers or of the log is told the same
// way, by the lines `topic`: "topic shock-load | <what-is> shock load". With "!" behind
// its name it is asked whatever figures stand beside it, with "?" only where nothing was
// spoken of before. What a line "topic none …" tells is asked of something else.

// DangerWords is what a word file says of dangers, and of what is asked of no piece.
type DangerWords struct {
	Kinds  map[string][]string // of a spelling, the kinds it is of
	Lines  []*DangerLine
	Topics []*TopicLine

	Begins map[string][]int  // the lines, by what they begin with: most words begin none
	Asks   map[string][]int  // likewise the topics
	Itself map[string]string // of a word that stands in any line as it is, the kind that is
}

// Joint is what joins two numbers.
type Joint int

// Most of the words that crews type beside a question are talk: coffee, the van,
// what the neighbour thinks. There are far more of them than of all others, none
// begins a spelling, and no slip is mended to one. So they stand in a part of the
// word files of their own, [talk], that is looked into only where nothing else is
// found.
type Talk map[string]*Term

// Dialect is what a word file says about the form of messages rather than
// about trees and ropes: its numbers, its units, its small words.
type Dialect struct {
	Tag      string
	Slot     int                   // of its terms in a node
	Optional map[string]bool       // can stand inside any spelling, or be left out
	Glued    map[string]bool       // small words that are typed without their space
	Small    map[string]bool       // small words that are typed as one with another: "needto"
	Leads    map[string]bool       // end the words of a role that lead straight to their number
	Numbers  map[string]NumberWord // numbers typed as words
	Counted  map[string]bool       // what follows "one" where it is a number
	Articles map[string]bool       // are one before the name of a length: "a foot across"
	Units    map[string]*UnitWord
	Joins    map[string]Joint
	Cues     map[string]CueSet // of words, what they say of a number beside them
	Endings  []Ending
	Comma    bool              // "14,5" is fourteen and a half
	Any      string            // "any", before a tree
	Called   map[string]string // the first name of a tree that is its alone
	Aliases  map[string]string // the word that a chopped one stands for: "pc"
	Chopped  []Ending          // ends of words that are chopped: "pullin", "mojao"
	Sounds   []Ending          // what is written in several ways and sounds alike: "v" and "b"
	Spoken   func() Talk       // the words of no question
	Dangers  DangerWords       // told by several words together
}

// Cued says whether a word, or several with a space between them, is one of a cue.
func (d *Dialect) Cued(word string, c Cue) bool { return d.Cues[word].Has(c) }

// NumberWord is a word of a number.
type NumberWord struct {
	Value  float64
	Scale  bool // "hundred": so many times what stands before it
	Plus   bool // between tens and ones: "treinta y cinco"
	Nought bool // between hundreds and ones: "two oh five"
	Point  bool // the decimal point, said as a word: "one point two"
}

// Ending is how a word differs from the spelling that it is found under.
type Ending struct{ Cut, Put string }

const (
	Hyphen Joint = iota // "14-16"
	Dash                // "14 - 16"
	To                  // "14 to 16"
	Or                  // "14 or 16"
	UpTo                // "14 a 16": a word that says much else besides
	Slash               // "14/10"
	Colon               // "2:1"
)
