// Package turning reads the words that turn a meaning round: denials, corrections,
// "more", "the other one". Each turns its own clause, and one that holds nothing of the
// question is talk: it is left out and said back. Whatever else it turns is asked about.
package turning
