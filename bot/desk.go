package bot

// Turn is what a conversation has established so far.
type Turn struct{}

// Desk reads a question, works it out and words the reply. It does no I/O and
// reads no clock.
type Desk struct{}

// NewDesk returns a desk.
func NewDesk() *Desk { return &Desk{} }

// Answer answers one event, leaning on what the conversation had established.
func (d *Desk) Answer(ev Event, before Turn) (Reply, Entry, Turn) {
	r := plain(Needs, "What piece? Type species, diameter and length.")
	return r, Entry{ID: ev.ID, Asked: ev.At, Workspace: ev.Workspace, Channel: ev.Channel, Thread: ev.Thread, User: ev.User, Words: ev.Text, Status: r.status, Intent: "weight", Result: r.result, Reply: r.Text(), Calc: "0", Schema: SchemaVersion}, before
}

func plain(s Status, lines ...string) Reply {
	return Reply{status: s, lines: lines, result: []byte(`{}`)}
}
