// Package parser reads a crew's words into a Question: every quantity, tree
// and wish that was said, with the words that said it, and nothing that was
// not. What it cannot place it asks about; it never guesses silently.
//
// The path is text → tokens (lex.go, number.go) → tree (grammar.go) →
// elements (elements.go: measures, terms, breaks) → placed quantities
// (assign.go binds words to numbers, place.go places bare ones) → Question.
// Words and their meanings live in words.en.txt, names of trees in names.csv.
package parser
