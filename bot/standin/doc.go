// Package standin is a team workspace on a loopback address: enough of the
// platform's Web API, of Socket Mode and of its requests over HTTP for a bot
// to be tested, measured and tried out with no account. It refuses what the
// platform refuses. It is written from the platform's public documentation
// and knows neither the bot it serves nor the library the bot uses, so that a
// wrong reading of the protocol on one side shows on the other.
//
// People act in it by the methods of a Workspace (Say, Edit, Press, Command,
// Submit …), several workspaces may share one app (Another), and a page can
// show what they see (Snapshot, Next).
//
// Comments name the documentation page a rule was read from, as
// "documented: …"; what is recalled without the page at hand says "from
// memory".
package standin
