package bot

import (
	"context"
	"encoding/json"
	"errors"
	"time"
)

// SchemaVersion is raised when the shape of Entry.Question or Entry.Result
// changes, so that an old row is never read as a new one.
const SchemaVersion = 1

// Entry is one question as the journal keeps it.
type Entry struct {
	ID        string // Event.ID
	Asked     time.Time
	Workspace string
	Channel   string
	Thread    string
	User      string
	Words     string // the question as it was typed
	Status    Status
	Intent    string
	Question  json.RawMessage // as it was read
	Result    json.RawMessage // as it was answered: what `heft ask --json` prints, but for its text
	Reply     string          // as a person read it
	PlanKg    float64         // the heavy end; 0 when the reply gave no weight
	Calc      string          // version of the calculator
	Schema    int
	Delivered *time.Time // nil until the reply is known to have been posted
	Failure   string     // why the last try to post it failed
	Message   string     // the carrier's id of the message that asked
	Posted    string     // the carrier's id of the message that shows the reply
	Confirmed *Confirmation
}

// Delivery is what became of a reply.
type Delivery struct {
	Workspace string
	ID        string // Entry.ID
	At        time.Time
	Posted    string // the carrier's id of the message that shows the reply
	Failure   string // empty when the reply was posted
}

// ErrLogged says that the journal already holds the event.
var ErrLogged = errors.New("the event is in the journal already")

// ErrNotLogged says that the journal does not hold the event.
var ErrNotLogged = errors.New("the event is not in the journal")

// Journal keeps every question that reached us.
type Journal interface {
	// Append puts the entry on disk before it returns. It fails with
	// ErrLogged where the workspace's event is there already.
	Append(context.Context, Entry) error
	// Deliver records what became of a reply. It need not wait for the disk:
	// what it records is there by the time the journal is closed.
	Deliver(context.Context, Delivery) error
	// Conversation returns the entries of an event's conversation asked since
	// then, oldest first.
	Conversation(ctx context.Context, ev Event, since time.Time) ([]Entry, error)
	// Job returns the last entry that set, showed or cleared a channel's job,
	// or ErrNotLogged.
	Job(ctx context.Context, workspace, channel string) (Entry, error)
	// About returns the last entry, asked since then, that a message of a
	// channel asks or shows the answer to, or ErrNotLogged.
	About(ctx context.Context, workspace, channel, message string, since time.Time) (Entry, error)
	// Confirm puts a confirmation on disk before it returns. It fails with
	// ErrConfirmed where there is one, and with ErrNotLogged where there is
	// no such entry.
	Confirm(context.Context, Confirmation) error
	// Find returns one entry, or ErrNotLogged.
	Find(ctx context.Context, workspace, id string) (Entry, error)
	// Between returns the entries asked from the first time up to, not at,
	// the second, oldest first.
	Between(ctx context.Context, from, to time.Time) ([]Entry, error)
	// Undelivered returns the entries asked since then whose reply is not
	// known to have been posted, oldest first.
	Undelivered(ctx context.Context, since time.Time) ([]Entry, error)
}
