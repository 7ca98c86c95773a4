// Package slackchat carries questions from a team workspace to the clerk and
// the replies back into the thread they were asked in. It opens a WebSocket
// of the platform's Socket Mode, so the bot needs no public address.
//
// An event is taken by the clerk, which commits it to the journal, then
// acknowledged, then answered. Nothing is answered that is not in the
// journal, and nothing is acknowledged that a crash could lose.
package slackchat
