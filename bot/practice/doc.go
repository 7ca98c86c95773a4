// Package practice is a small chat page over a stand-in workspace: a crew
// tries the bot on it with no account, each in their own role. It shows what
// the stand-in's snapshot holds and does what people can do there; it knows
// neither the bot it serves nor what an answer means.
//
// The page is plain HTML with forms, and works so. Modules make it live:
// page.mjs takes over what changes, words.mjs keeps what is typed, and view.mjs
// leads the eye and the focus. It asks no other machine for anything, and it is
// served on this machine alone.
package practice
