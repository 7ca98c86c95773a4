package standin

import (
	"context"
	"fmt"
	"slices"
)

// Await returns when the condition holds; it is looked at again after every
// change of the workspace. It may call any method of the workspace.
func (p *platform) Await(ctx context.Context, cond func() bool) error {
	p.mu.Lock()
	p.waiting++
	p.mu.Unlock()
	defer func() {
		p.mu.Lock()
		p.waiting--
		p.mu.Unlock()
	}()
	for {
		p.mu.Lock()
		changed := p.changed
		p.mu.Unlock()
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
func (p *platform) Wake() {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.bump()
}

// Reply waits for the bot's first reply in a message's thread.
func (w *Workspace) Reply(ctx context.Context, m Message) (Message, error) {
	var reply Message
	err := w.Await(ctx, func() bool {
		i := slices.IndexFunc(w.Thread(m.Channel, m.Thread()), func(o Message) bool {
			reply = o
			return o.BotID == w.botID && o.For == "" && o.TS > m.TS
		})
		return i >= 0
	})
	return reply, err
}

// Messages are those of a channel, oldest first.
func (w *Workspace) Messages(channel string) []Message {
	return w.which(channel, func(*Message) bool { return true })
}

// Thread is a message and the replies to it, oldest first.
func (w *Workspace) Thread(channel, ts string) []Message {
	return w.which(channel, func(m *Message) bool { return m.Thread() == ts })
}

// which are the messages of a channel that are wanted, oldest first.
func (w *Workspace) which(channel string, wanted func(*Message) bool) []Message {
	w.mu.Lock()
	defer w.mu.Unlock()
	var list []Message
	for _, m := range w.messages[channel] {
		if wanted(m) {
			list = append(list, *m)
		}
	}
	return list
}

// Acks are the acknowledgements in the order in which they came.
func (p *platform) Acks() []Ack {
	p.mu.Lock()
	defer p.mu.Unlock()
	return slices.Clone(p.acks)
}

// Acked says whether any delivery of an event was acknowledged.
func (p *platform) Acked(eventID string) bool {
	return slices.ContainsFunc(p.Acks(), func(a Ack) bool { return a.Event == eventID })
}

// Deliveries are the tries to tell the app of an event, in order.
func (p *platform) Deliveries(eventID string) []Delivery {
	p.mu.Lock()
	defer p.mu.Unlock()
	var list []Delivery
	for _, d := range p.deliveries {
		if d.Event == eventID {
			list = append(list, *d)
		}
	}
	return list
}

// Calls are those of one method, in order.
func (p *platform) Calls(method string) []Call {
	p.mu.Lock()
	defer p.mu.Unlock()
	return slices.DeleteFunc(slices.Clone(p.calls), func(c Call) bool { return c.Method != method })
}
