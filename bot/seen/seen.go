package seen

import (
	"time"

	"github.com/patrickmn/go-cache"

	"heft/bot"
)

const (
	// events are remembered for longer than the platform keeps delivering
	// one: its last try comes after about six minutes.
	events = 30 * time.Minute
	// talk is how long a follow-up may lean on what was said.
	talk = 12 * time.Hour
	// mostTalks bounds the memory: past it, a conversation that is new is
	// answered but not remembered.
	mostTalks = 20_000

	sweep = 5 * time.Minute
)

// Memory is a bot.Memory. It is safe for use by many goroutines.
type Memory struct{ ids, turns *cache.Cache }

var _ bot.Memory = (*Memory)(nil)

// New returns an empty memory.
func New() *Memory {
	return &Memory{ids: cache.New(events, sweep), turns: cache.New(talk, sweep)}
}

// First says whether the id is new, and takes it.
func (m *Memory) First(id string) bool {
	return m.ids.Add(id, struct{}{}, cache.DefaultExpiration) == nil
}

// Forget gives an id back.
func (m *Memory) Forget(id string) { m.ids.Delete(id) }

// Recall returns the last turn of a conversation.
func (m *Memory) Recall(conversation string) (bot.Turn, bool) {
	v, ok := m.turns.Get(conversation)
	if !ok {
		return bot.Turn{}, false
	}
	return v.(bot.Turn), true
}

// Remember keeps the last turn of a conversation.
func (m *Memory) Remember(conversation string, t bot.Turn) {
	if _, known := m.turns.Get(conversation); known || m.turns.ItemCount() < mostTalks {
		m.turns.SetDefault(conversation, t)
	}
}
