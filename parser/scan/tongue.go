package scan

// Tongue is what one message is read by: the language of most of its words,
// which gives a word its meaning where others know it too, and another that
// fills in. A message of English words alone is read by English alone, so
// that no other language can change what it means.
type Tongue struct {
	Slots   []int   // of a node's terms, the leading language first
	Langs   LangSet // of the words that are known
	Leading LangSet // of the language that leads, and the trees

	Inflects bool // its words have more endings than a plural
	Talk     func(string) *Term
	Dialect  // the leading one, with what it leaves free of the other
}

// LangSet is a set of languages; the trees' names are one of it.
type LangSet uint16
