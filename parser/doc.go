// Package parser reads a crew's words into a Question: every quantity, tree
// and wish that was said, with the words that said it, and nothing that was
// not. What it cannot place it asks about; it never guesses silently.
//
// The path is text → tongue, the languages that it is read by (tongue.go) →
// tokens (tokens.go, scan.go, scanwords.go) → tree (grammar.go) → elements:
// figures (figure.go, join.go, ranges.go), terms and pauses (elements.go) →
// numbers of the surroundings set apart (surroundings.go), and those that their
// neighbours claim (claims.go) or that a swing may strike (obstacle.go,
// told.go) → placed quantities (assign.go binds words to numbers, place.go
// places bare ones) → Question (read.go).
//
// Words and their meanings live in language/en.txt and language/es.txt, names
// of trees in names.csv; what they must be read as, line by line, in
// testdata/questions.
package parser
