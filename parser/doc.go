// Package parser says what a crew's words come to: a Question, which holds every
// quantity, tree and wish that was said, with the words that said it, and nothing that
// was not; or an Ask, what must be asked back. It never guesses silently.
//
// How words become a Question is in the rooms below it, each of which knows only those
// named before it:
//
//	language  the word files, one a language
//	scan      text to words, numbers and pauses
//	lexicon   what the word files say that words mean, and words that are typed badly
//	reading   a message as a row of figures, terms and pauses: what all rules look at
//	gear      which numbers and words are of ropes, blocks, slings, and of what stands around
//	stops     what ends all arithmetic: somebody hurt, a power line, unsound wood or gear
//	places    whose a number is: words bind theirs, bare ones take the place that is left
//	bounds    the most that a piece may weigh, also where it is told by what nobody wants
//	sizes     how large a number is where its unit is not said
//	turning   words that turn a meaning round, and those that are talk and left out
//	asking    what must be asked about a word, and what may be left out to go on
//	heights   where blocks, hitches and obstacles are, and which way the rope turns
//	lines     how long and how thick the rope is, and whether it reaches
//	pulls     who pulls, how hard, and at what angle
//	senses    words that are one thing here and another there
//	talk      the day's job, its crew and its log; questions about us
//	reader    the order in which all this is asked of a message: from text to Question
//
// Names of trees are in names.csv; what messages must be read as, line by line, in
// testdata/questions.
package parser
