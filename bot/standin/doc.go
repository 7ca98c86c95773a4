// Package standin is a team workspace on a loopback address: enough of the
// platform's Web API and Socket Mode for a bot to be tested, measured and
// tried out with no account. It is written from the platform's public
// documentation and knows neither the bot it serves nor the library the bot
// uses, so that a wrong reading of the protocol on one side shows on the other.
//
// Comments name the documentation page a rule was read from; what is recalled
// without the page at hand says "from memory".
package standin
