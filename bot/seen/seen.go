package seen

import (
	"time"

	"heft/bot"
)

const (
	// A carrier brings an event again for some minutes after the first try.
	// An id is kept well beyond that.
	idsFor = 30 * time.Minute
	// A follow-up may lean on the morning's question for a working day.
	turnsFor = 12 * time.Hour

	// Bounds of the memory, whatever arrives: about 55 events a second for
	// idsFor, and more conversations than crews have in a day.
	maxIDs   = 100_000
	maxTurns = 2_000
)

// Memory implements bot.Memory. What is oldest is forgotten first when it
// grows beyond its bounds; an event so forgotten is still in the journal,
// which takes none twice.
type Memory struct {
	ids   *shelf
	turns *shelf
	jobs  *shelf
}

var _ bot.Memory = (*Memory)(nil)

// New returns an empty memory.
func New() *Memory {
	return &Memory{ids: newShelf(idsFor, maxIDs), turns: newShelf(turnsFor, maxTurns), jobs: newShelf(turnsFor, maxTurns)}
}

// First says whether the id is new, and takes it. Of several callers at one
// time, one is first.
func (m *Memory) First(id string) bool { return m.ids.add(id) }

// Forget gives an id back, so that a later delivery is first again.
func (m *Memory) Forget(id string) { m.ids.drop(id) }

// Recall returns the last turn of a conversation.
func (m *Memory) Recall(conversation string) (bot.Turn, bool) {
	turn, ok := m.turns.get(conversation).(bot.Turn)
	return turn, ok
}

// Remember keeps the last turn of a conversation.
func (m *Memory) Remember(conversation string, t bot.Turn) { m.turns.put(conversation, t) }

// Job returns what holds for a channel.
func (m *Memory) Job(channel string) (bot.Job, bool) {
	job, ok := m.jobs.get(channel).(bot.Job)
	return job, ok
}

// KeepJob keeps what holds for a channel.
func (m *Memory) KeepJob(channel string, j bot.Job) { m.jobs.put(channel, j) }
