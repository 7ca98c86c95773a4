// Package bot is the desk: an event becomes a question, the question a
// result, the result a reply, and all of it an entry in the journal. It alone
// sees both the parser and the calculator.
package bot
