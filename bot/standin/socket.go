package standin

import (
	"encoding/json"
	"net/http"
	"slices"
	"sync"
	"time"

	"github.com/gorilla/websocket"
)

// Limits of Socket Mode.
const (
	maxSockets = 10     // documented: Socket Mode
	maxAck     = 20_480 // a longer answer is ignored in silence (from memory)
	maxRetries = 3      // documented: Events API, retries
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
func (p *platform) serveLink(rw http.ResponseWriter, r *http.Request) {
	ticket := r.URL.Query().Get("ticket")
	p.mu.Lock()
	good := p.tickets[ticket]
	delete(p.tickets, ticket)
	p.mu.Unlock()
	if !good {
		http.Error(rw, "no such ticket", http.StatusUnauthorized)
		return
	}
	conn, err := upgrader.Upgrade(rw, r, nil)
	if err != nil {
		return // Upgrade has answered
	}
	s := &socket{conn: conn}
	if !p.admit(s) {
		// The reason is from memory.
		_ = s.write(map[string]string{"type": "disconnect", "reason": "too_many_websockets"})
		_ = conn.Close()
	}
}

// admit counts a socket in and greets it; envelopes may follow the greeting,
// never precede it.
func (p *platform) admit(s *socket) bool {
	p.mu.Lock()
	if p.closed || len(p.sockets) >= maxSockets {
		p.mu.Unlock()
		return false
	}
	s.number = int(p.next())
	err := s.write(map[string]any{
		"type": "hello", "num_connections": len(p.sockets) + 1,
		"connection_info": map[string]string{"app_id": AppID},
		"debug_info":      map[string]any{"host": "standin", "approximate_connection_time": 18060},
	})
	p.sockets = append(p.sockets, s)
	backlog := p.backlog
	p.backlog = nil
	p.work.Go(func() { p.listen(s) })
	p.bump()
	p.mu.Unlock()
	if err != nil {
		_ = s.conn.Close() // listen notices
	}
	for _, r := range backlog {
		p.deliver(r)
	}
	return true
}

// listen reads acknowledgements until the socket closes, and pings it.
func (p *platform) listen(s *socket) {
	done := make(chan struct{})
	p.work.Go(func() { p.ping(s, done) })
	for {
		_, data, err := s.conn.ReadMessage()
		if err != nil {
			break
		}
		p.acknowledge(s, data)
	}
	close(done)
	_ = s.conn.Close()
	p.gone(s)
}

func (p *platform) ping(s *socket, done <-chan struct{}) {
	beat := time.NewTicker(p.shared.PingEvery)
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

func (p *platform) acknowledge(s *socket, data []byte) {
	var a struct {
		Envelope string          `json:"envelope_id"`
		Payload  json.RawMessage `json:"payload"`
	}
	if len(data) >= maxAck || json.Unmarshal(data, &a) != nil {
		return
	}
	p.acked(Ack{Envelope: a.Envelope, Socket: s.number, At: time.Now(), Payload: a.Payload})
}

// acked keeps an acknowledgement and acts on what it answers.
func (p *platform) acked(a Ack) {
	p.mu.Lock()
	var again bool
	var e *event
	if d := p.byEnvelope[a.Envelope]; d != nil {
		again, e = !d.Acked.IsZero(), d.from
		a.Event, d.Acked = d.Event, a.At
	}
	p.acks = append(p.acks, a)
	p.bump()
	p.mu.Unlock()
	if e != nil && e.reply != nil && !again {
		e.reply(a.Payload)
	}
}

// gone counts a socket out. What it left unacknowledged comes again as soon
// as a socket is open; the real platform tries at once, after a minute and
// after five (documented: Events API, retries).
func (p *platform) gone(s *socket) {
	p.mu.Lock()
	p.sockets = slices.DeleteFunc(p.sockets, func(o *socket) bool { return o == s })
	var again []retry
	for _, d := range p.deliveries {
		if d.Socket == s.number && d.from.retried() && d.Acked.IsZero() && d.Attempt < maxRetries && !p.settled(d) {
			again = append(again, retry{event: d.from, attempt: d.Attempt + 1, reason: "timeout"})
		}
	}
	p.bump()
	p.mu.Unlock()
	for _, r := range again {
		p.deliver(r)
	}
}

// Sockets is the number of open sockets that take envelopes.
func (p *platform) Sockets() int { return len(p.open()) }

func (p *platform) open() []*socket {
	p.mu.Lock()
	defer p.mu.Unlock()
	return slices.DeleteFunc(slices.Clone(p.sockets), func(s *socket) bool { return s.leaving })
}

// Disconnect asks the app to leave every socket: "warning" some seconds
// before the platform closes it, "refresh_requested" when it does so at once
// (documented: Socket Mode, disconnecting).
func (p *platform) Disconnect(reason string) {
	for _, s := range p.open() {
		p.mu.Lock()
		s.leaving = true
		p.mu.Unlock()
		err := s.write(map[string]any{
			"type": "disconnect", "reason": reason, "debug_info": map[string]string{"host": "standin"},
		})
		if err != nil || reason == "refresh_requested" {
			_ = s.conn.Close()
		}
	}
}
