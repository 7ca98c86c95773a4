// Package asking says what must be asked about a word that is not known or that turns
// the meaning, and whether the message may go on without it: not where the word could
// change what is told.
package asking
