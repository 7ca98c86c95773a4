package standin

import (
	"context"
	"slices"
)

// Snapshot is all that people of a workspace can see, at one moment.
type Snapshot struct {
	Version  int64 // grows with every change of what can be seen
	Channels []Channel
	Users    []User               // the bot last
	Messages map[string][]Message // by channel, oldest first; see Message.For
	Homes    map[string]View      // by user
	Modals   map[string]View      // by user
}

// Snapshot returns what there is to see. What it returns stays as it is.
func (w *Workspace) Snapshot() Snapshot {
	w.mu.Lock()
	defer w.mu.Unlock()
	bot, _ := w.user(w.botUser)
	s := Snapshot{
		Version: w.version, Users: append(slices.Clone(w.opts.Users), bot),
		Messages: map[string][]Message{}, Homes: map[string]View{}, Modals: map[string]View{},
	}
	for _, id := range w.order {
		s.Channels = append(s.Channels, w.channels[id])
		for _, m := range w.messages[id] {
			s.Messages[id] = append(s.Messages[id], *m)
		}
	}
	for user, v := range w.homes {
		s.Homes[user] = *v
	}
	for user, v := range w.modals {
		s.Modals[user] = *v
	}
	return s
}

// Next waits until there is something newer to see than a version, and
// returns the version there is then.
func (p *platform) Next(ctx context.Context, seen int64) (int64, error) {
	version := func() int64 {
		p.mu.Lock()
		defer p.mu.Unlock()
		return p.version
	}
	err := p.Await(ctx, func() bool { return version() > seen })
	return version(), err
}
