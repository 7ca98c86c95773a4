package lexicon

// NumberHere stands in a pattern for the number that it is about.
const NumberHere = "\x00"
