// Package terminal carries questions from a terminal or a pipe to the desk,
// and the replies back. It knows nothing of parsing or calculating.
package terminal
