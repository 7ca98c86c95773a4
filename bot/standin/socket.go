package standin

import (
	"encoding/json"
	"fmt"
	"net/http"
	"slices"
	"sync"
	"time"

	"github.com/gorilla/websocket"
)

// Limits of Socket Mode.
const (
	maxSockets = 10     // platform documentation, Socket Mode
	maxAck     = 20_480 // a longer answer is ignored in silence (from memory)
	maxRetries = 3      // platform documentation, Events API, retries
	writeLimit = 10 * time.Second
)

// socket is one open connection of the app.
type socket struct {
	number  int
	conn    *websocket.Conn
	leaving bool // told to go: no envelope is sent there any more

	writing sync.Mutex
}

// write sends one frame.
func (s *socket) write(v any) error {
	s.writing.Lock()
	defer s.writing.Unlock()
	if err := s.conn.SetWriteDeadline(time.Now().Add(writeLimit)); err != nil {
		return err
	}
	return s.conn.WriteJSON(v)
}

// upgrader takes any Origin: the app is no browser, and the ticket is the
// key.
var upgrader = websocket.Upgrader{CheckOrigin: func(*http.Request) bool { return true }}

// serveLink opens a socket for a ticket, which serves once.
func (w *Workspace) serveLink(rw http.ResponseWriter, r *http.Request) {
	ticket := r.URL.Query().Get("ticket")
	w.mu.Lock()
	good := w.tickets[ticket]
	delete(w.tickets, ticket)
	w.mu.Unlock()
	if !good {
		http.Error(rw, "no such ticket", http.StatusUnauthorized)
		return
	}
	conn, err := upgrader.Upgrade(rw, r, nil)
	if err != nil {
		return // Upgrade has answered
	}
	s := &socket{conn: conn}
	if !w.admit(s) {
		// The reason is from memory.
		_ = s.write(map[string]string{"type": "disconnect", "reason": "too_many_websockets"})
		_ = conn.Close()
	}
}

// admit counts a socket in and greets it; envelopes may follow the greeting,
// never precede it.
func (w *Workspace) admit(s *socket) bool {
	w.mu.Lock()
	if w.closed || len(w.sockets) >= maxSockets {
		w.mu.Unlock()
		return false
	}
	s.number = int(w.next())
	err := s.write(map[string]any{
		"type": "hello", "num_connections": len(w.sockets) + 1,
		"connection_info": map[string]string{"app_id": AppID},
		"debug_info":      map[string]any{"host": "standin", "approximate_connection_time": 18060},
	})
	w.sockets = append(w.sockets, s)
	backlog := w.backlog
	w.backlog = nil
	w.work.Go(func() { w.listen(s) })
	w.bump()
	w.mu.Unlock()
	if err != nil {
		_ = s.conn.Close() // listen notices
	}
	for _, r := range backlog {
		w.deliver(r)
	}
	return true
}

// listen reads acknowledgements until the socket closes, and pings it.
func (w *Workspace) listen(s *socket) {
	done := make(chan struct{})
	w.work.Go(func() { w.ping(s, done) })
	for {
		_, data, err := s.conn.ReadMessage()
		if err != nil {
			break
		}
		w.acknowledge(s, data)
	}
	close(done)
	_ = s.conn.Close()
	w.gone(s)
}

func (w *Workspace) ping(s *socket, done <-chan struct{}) {
	beat := time.NewTicker(w.opts.PingEvery)
	defer beat.Stop()
	// The first comes at once, so that a client that counts on pings need
	// not wait for one.
	for {
		if err := s.conn.WriteControl(websocket.PingMessage, []byte("ping"), time.Now().Add(writeLimit)); err != nil {
			return
		}
		select {
		case <-beat.C:
		case <-done:
			return
		}
	}
}

func (w *Workspace) acknowledge(s *socket, data []byte) {
	var a struct {
		Envelope string          `json:"envelope_id"`
		Payload  json.RawMessage `json:"payload"`
	}
	if len(data) >= maxAck || json.Unmarshal(data, &a) != nil {
		return
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	ack := Ack{Envelope: a.Envelope, Socket: s.number, At: time.Now(), Payload: a.Payload}
	if d := w.byEnvelope[a.Envelope]; d != nil {
		ack.Event, d.Acked = d.Event, ack.At
	}
	w.acks = append(w.acks, ack)
	w.bump()
}

// gone counts a socket out. What it left unacknowledged comes again as soon
// as a socket is open; the real platform tries at once, after a minute and
// after five (platform documentation, Events API, retries).
func (w *Workspace) gone(s *socket) {
	w.mu.Lock()
	w.sockets = slices.DeleteFunc(w.sockets, func(o *socket) bool { return o == s })
	var again []retry
	for _, d := range w.deliveries {
		if d.Socket == s.number && d.Acked.IsZero() && d.Attempt < maxRetries && !w.settled(d) {
			again = append(again, retry{event: d.from, attempt: d.Attempt + 1, reason: "timeout"})
		}
	}
	w.bump()
	w.mu.Unlock()
	for _, r := range again {
		w.deliver(r)
	}
}

// settled says whether another delivery of the same event was acknowledged.
// The lock is held.
func (w *Workspace) settled(d *Delivery) bool {
	return slices.ContainsFunc(w.deliveries, func(o *Delivery) bool {
		return o.Event == d.Event && !o.Acked.IsZero()
	})
}

func (w *Workspace) deliverAll(events []*event) {
	for _, e := range events {
		w.deliver(retry{event: e})
	}
}

// deliver sends an event to one of the open sockets, each in turn (platform
// documentation, Socket Mode: any of the connections may get it). With none
// open the first try is lost, and the next one waits for a socket.
func (w *Workspace) deliver(r retry) {
	w.mu.Lock()
	var open []*socket
	for _, s := range w.sockets {
		if !s.leaving {
			open = append(open, s)
		}
	}
	if len(open) == 0 {
		if r.attempt == 0 {
			r.attempt, r.reason = 1, "timeout"
		}
		w.backlog = append(w.backlog, r)
		w.mu.Unlock()
		return
	}
	s := open[w.turn%len(open)]
	w.turn++
	d := &Delivery{
		Envelope: fmt.Sprintf("00000000-0000-4000-8000-%012x", w.next()), Event: r.event.id,
		Attempt: r.attempt, Reason: r.reason, Socket: s.number, Sent: time.Now(), from: r.event,
	}
	w.deliveries = append(w.deliveries, d)
	w.byEnvelope[d.Envelope] = d
	w.bump()
	w.mu.Unlock()
	err := s.write(envelope{ID: d.Envelope, Payload: r.event.payload, Type: "events_api", Attempt: r.attempt, Reason: r.reason})
	if err != nil {
		_ = s.conn.Close() // listen notices, and the event comes again
	}
}

// Sockets is the number of open sockets that take envelopes.
func (w *Workspace) Sockets() int { return len(w.open()) }

func (w *Workspace) open() []*socket {
	w.mu.Lock()
	defer w.mu.Unlock()
	return slices.DeleteFunc(slices.Clone(w.sockets), func(s *socket) bool { return s.leaving })
}

// Disconnect asks the app to leave every socket: "warning" some seconds
// before the platform closes it, "refresh_requested" when it does so at once
// (platform documentation, Socket Mode, disconnecting).
func (w *Workspace) Disconnect(reason string) {
	for _, s := range w.open() {
		w.mu.Lock()
		s.leaving = true
		w.mu.Unlock()
		err := s.write(map[string]any{
			"type": "disconnect", "reason": reason, "debug_info": map[string]string{"host": "standin"},
		})
		if err != nil || reason == "refresh_requested" {
			_ = s.conn.Close()
		}
	}
}
