package standin

import (
	"fmt"
	"slices"
	"time"
)

// settled says whether another delivery of the same event was acknowledged.
// The lock is held.
func (p *platform) settled(d *Delivery) bool {
	return slices.ContainsFunc(p.deliveries, func(o *Delivery) bool {
		return o.Event == d.Event && !o.Acked.IsZero()
	})
}

func (p *platform) deliverAll(events []*event) {
	for _, e := range events {
		p.deliver(retry{event: e})
	}
}

// deliver sends an event to the request URL or to one of the open sockets,
// each in turn (documented: Socket Mode, any of the connections may get it).
// With none open the first try is lost, and the next one waits for a socket.
func (p *platform) deliver(r retry) {
	p.mu.Lock()
	if p.requests.Events != "" {
		p.underway++
		p.background(func() { p.pursue(r) })
		p.mu.Unlock()
		return
	}
	s := p.pick()
	if s == nil {
		if r.attempt == 0 {
			r.attempt, r.reason = 1, "timeout"
		}
		p.backlog = append(p.backlog, r)
		p.mu.Unlock()
		return
	}
	p.mu.Unlock()
	p.hand(s, r)
}

// pick chooses a socket whose turn it is; nil where none is open. The lock is
// held.
func (p *platform) pick() *socket {
	for range p.sockets {
		s := p.sockets[p.turn%len(p.sockets)]
		if p.turn++; !s.leaving {
			return s
		}
	}
	return nil
}

// hand writes an envelope to a socket.
func (p *platform) hand(s *socket, r retry) {
	p.mu.Lock()
	d := p.delivery(r)
	d.Socket = s.number
	p.mu.Unlock()
	err := s.write(envelope{
		ID: d.Envelope, Payload: r.event.payload, Type: r.event.kind, Accepts: r.event.kind != eventsAPI,
		Attempt: r.attempt, Reason: r.reason,
	})
	if err != nil {
		_ = s.conn.Close() // listen notices, and the event comes again
	}
}

// delivery keeps one try. The lock is held.
func (p *platform) delivery(r retry) *Delivery {
	d := &Delivery{
		Envelope: fmt.Sprintf("00000000-0000-4000-8000-%012x", p.next()), Event: r.event.id,
		Attempt: r.attempt, Reason: r.reason, Sent: time.Now(), from: r.event,
	}
	p.deliveries = append(p.deliveries, d)
	p.byEnvelope[d.Envelope] = d
	p.bump()
	return d
}
