package standin

import (
	"fmt"
	"net"
	"net/http"
	"slices"
	"sync"
	"time"
)

// Workspace is a running stand-in.
type Workspace struct {
	opts   Options
	server *http.Server
	addr   string
	work   sync.WaitGroup

	mu      sync.Mutex
	changed chan struct{} // closed at the next change, if anyone waits
	waiting int
	closed  bool
	serial  int64 // last number given out
	stamp   int64 // last message stamp, in microseconds
	conns   int   // TCP connections ever accepted

	channels   map[string]Channel
	messages   map[string][]*Message // by channel, oldest first
	known      map[thread]bool       // stamps of the messages there are
	replies    map[thread]chan Message
	events     map[string]*event
	deliveries []*Delivery
	byEnvelope map[string]*Delivery
	backlog    []retry // events that wait for a socket
	acks       []Ack
	sockets    []*socket
	turn       int // whose turn among the sockets
	tickets    map[string]bool
	faults     []*Fault
	calls      []Call
	lastPost   map[string]time.Time
	files      map[string]*File
}

// thread names one conversation.
type thread struct{ channel, ts string }

// Start opens a workspace; the caller closes it.
func Start(o Options) (*Workspace, error) {
	o = o.withDefaults()
	l, err := net.Listen("tcp", o.Addr)
	if err != nil {
		return nil, fmt.Errorf("open the stand-in workspace: %w", err)
	}
	w := &Workspace{
		opts: o, addr: l.Addr().String(), changed: make(chan struct{}),
		channels: map[string]Channel{}, messages: map[string][]*Message{},
		known: map[thread]bool{}, replies: map[thread]chan Message{}, events: map[string]*event{},
		byEnvelope: map[string]*Delivery{}, tickets: map[string]bool{},
		lastPost: map[string]time.Time{}, files: map[string]*File{},
	}
	for _, c := range o.Channels {
		w.channels[c.ID] = c
	}
	mux := http.NewServeMux()
	mux.HandleFunc("/api/", w.serveAPI)
	mux.HandleFunc("/link/", w.serveLink)
	mux.HandleFunc(uploadPath, w.serveUpload)
	w.server = &http.Server{Handler: mux, ReadHeaderTimeout: 10 * time.Second, ConnState: w.count}
	w.work.Go(func() { _ = w.server.Serve(l) })
	return w, nil
}

// Close ends the workspace and everything that it runs.
func (w *Workspace) Close() error {
	w.mu.Lock()
	w.closed = true
	sockets := slices.Clone(w.sockets)
	w.mu.Unlock()
	err := w.server.Close()
	for _, s := range sockets {
		_ = s.conn.Close() // the app may have closed it
	}
	w.work.Wait()
	return err
}

// URL is where the Web API is; it ends in a slash.
func (w *Workspace) URL() string { return "http://" + w.addr + "/api/" }

// BotToken is the token the workspace gave the bot.
func (w *Workspace) BotToken() string { return w.opts.BotToken }

// AppToken is the token with which the app opens sockets.
func (w *Workspace) AppToken() string { return w.opts.AppToken }

// Mention is the bot's mention as it stands in a message.
func (w *Workspace) Mention() string { return "<@" + BotUser + ">" }

// Connections is the number of TCP connections accepted so far.
func (w *Workspace) Connections() int {
	w.mu.Lock()
	defer w.mu.Unlock()
	return w.conns
}

func (w *Workspace) count(_ net.Conn, s http.ConnState) {
	if s != http.StateNew {
		return
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	w.conns++
}

// bump wakes whoever waits for a change. The lock is held.
func (w *Workspace) bump() {
	if w.waiting > 0 {
		close(w.changed)
		w.changed = make(chan struct{})
	}
}

// next gives out a number. The lock is held.
func (w *Workspace) next() int64 {
	w.serial++
	return w.serial
}

// now is a message stamp: seconds, a dot and six digits, never the same
// twice (platform documentation, messaging: ts is unique within a channel).
// The lock is held.
func (w *Workspace) now() string {
	w.stamp = max(w.stamp+1, time.Now().UnixMicro())
	return fmt.Sprintf("%d.%06d", w.stamp/1e6, w.stamp%1e6)
}
