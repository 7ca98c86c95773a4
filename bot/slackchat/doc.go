// Package slackchat carries questions from a team workspace to the clerk and
// the replies back to where they were asked: threads, buttons, a command, a
// home tab. It opens a WebSocket of the platform's Socket Mode, for which the
// bot needs no public address, or takes signed requests; either way what is
// delivered goes down one path.
//
// An event is taken by the clerk, which commits it to the journal, then
// acknowledged, then answered. Nothing is answered that is not in the
// journal, and nothing is acknowledged that a crash could lose.
package slackchat
