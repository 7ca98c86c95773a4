package bot

import "time"

// Event is one message that reached us, whatever carried it.
type Event struct {
	ID        string // the carrier's own id of the delivery, unique within the workspace
	Workspace string
	Channel   string
	Thread    string // the conversation it belongs to; on its own, the message itself
	User      string
	Text      string // what the person typed, the bot's own mention taken off
	At        time.Time
	Units     Units  // the asker's usual units, where the carrier knows them
	Opens     bool   // it opens its conversation: nothing was said before it
	Direct    bool   // it was told to the bot alone: all of that is one conversation
	Alone     bool   // it is a conversation by itself, outside any channel's job
	Job       Job    // what holds for its channel
	Language  string // what to answer in, whatever its words are in; empty for as it is asked
	Bound     bool   // others than the asker say who the job's arborist is
	Day       *Day   // the day that was asked about, where the asker may see it

	Message string    // the carrier's id of the message that asks
	Shown   string    // the carrier's id of the message that shows the answer; set beforehand, that one gives way to it
	Reached time.Time // when it reached us; zero for at once
	was     *Entry    // what the same message asked before it was edited
	unread  int       // how many unknown words have been left out of the text
	tried   int       // how many numbers of the text are tried as one of several things that each may be
	lent    bool      // a bare number of the text was read by what was told before
}

// Conversation names the talk that a follow-up may lean on: a thread, or all
// that one person and the bot say to each other.
func (e Event) Conversation() string {
	if e.Direct {
		return e.Workspace + "/" + e.Channel
	}
	return e.Workspace + "/" + e.Channel + "/" + e.Thread
}

// Units says which system a reply speaks first.
type Units string

// The two systems, and the zero value for "as the question does".
const (
	AsAsked  Units = ""
	Imperial Units = "imperial"
	Metric   Units = "metric"
)
