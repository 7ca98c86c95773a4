package standin

import (
	"context"
	"fmt"
	"slices"
)

// Await returns when the condition holds; it is looked at again after every
// change of the workspace. It may call any method of the workspace.
func (w *Workspace) Await(ctx context.Context, cond func() bool) error {
	w.mu.Lock()
	w.waiting++
	w.mu.Unlock()
	defer func() {
		w.mu.Lock()
		w.waiting--
		w.mu.Unlock()
	}()
	for {
		w.mu.Lock()
		changed := w.changed
		w.mu.Unlock()
		if cond() {
			return nil
		}
		select {
		case <-changed:
		case <-ctx.Done():
			return fmt.Errorf("what was awaited did not come: %w", ctx.Err())
		}
	}
}

// Wake has every Await look at its condition again, for what lies outside the
// workspace.
func (w *Workspace) Wake() {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.bump()
}

// Reply waits for the bot's first reply in a message's thread.
func (w *Workspace) Reply(ctx context.Context, m Message) (Message, error) {
	var reply Message
	err := w.Await(ctx, func() bool {
		i := slices.IndexFunc(w.Thread(m.Channel, m.Thread()), func(o Message) bool {
			reply = o
			return o.BotID == BotID && o.TS > m.TS
		})
		return i >= 0
	})
	return reply, err
}

// Messages are those of a channel, oldest first.
func (w *Workspace) Messages(channel string) []Message {
	w.mu.Lock()
	defer w.mu.Unlock()
	list := make([]Message, 0, len(w.messages[channel]))
	for _, m := range w.messages[channel] {
		list = append(list, *m)
	}
	return list
}

// Thread is a message and the replies to it, oldest first.
func (w *Workspace) Thread(channel, ts string) []Message {
	return slices.DeleteFunc(w.Messages(channel), func(m Message) bool { return m.Thread() != ts })
}

// Acks are the acknowledgements in the order in which they came.
func (w *Workspace) Acks() []Ack {
	w.mu.Lock()
	defer w.mu.Unlock()
	return slices.Clone(w.acks)
}

// Acked says whether any delivery of an event was acknowledged.
func (w *Workspace) Acked(eventID string) bool {
	return slices.ContainsFunc(w.Acks(), func(a Ack) bool { return a.Event == eventID })
}

// Deliveries are the tries to tell the app of an event, in order.
func (w *Workspace) Deliveries(eventID string) []Delivery {
	w.mu.Lock()
	defer w.mu.Unlock()
	var list []Delivery
	for _, d := range w.deliveries {
		if d.Event == eventID {
			list = append(list, *d)
		}
	}
	return list
}

// Calls are those of one method, in order.
func (w *Workspace) Calls(method string) []Call {
	w.mu.Lock()
	defer w.mu.Unlock()
	return slices.DeleteFunc(slices.Clone(w.calls), func(c Call) bool { return c.Method != method })
}
