package lexicon

// Word is one word of a message, folded, and where it stands.
type Word struct {
	Folded     string
	Start, End int
}
