package standin

import (
	"context"
	"fmt"
	"net"
	"net/http"
	"slices"
	"sync"
	"time"
)

// platform is what the workspaces of one stand-in share: its address, the
// app's sockets, and what was sent over them.
type platform struct {
	shared Options
	server *http.Server
	addr   string
	work   sync.WaitGroup
	alive  context.Context // until it is closed
	end    context.CancelFunc

	mu      sync.Mutex
	changed chan struct{} // closed at the next change, if anyone waits
	waiting int
	version int64 // counts what people could see change
	closed  bool
	serial  int64 // last number given out
	stamp   int64 // last message stamp, in microseconds
	conns   int   // TCP connections ever accepted

	teams      []*Workspace
	events     map[string]*event
	deliveries []*Delivery
	byEnvelope map[string]*Delivery
	backlog    []retry // events that wait for a socket
	acks       []Ack
	sockets    []*socket
	turn       int // whose turn among the sockets
	tickets    map[string]bool
	requests   RequestURLs
	underway   int // requests without an answer yet
	faults     []*Fault
	calls      []Call
	files      map[string]*File
	triggers   map[string]*trigger
	responses  map[string]*response
	codes      map[string]*Workspace // of an installation, each good once
}

// open starts the server that all workspaces share.
func open(s Options) (*platform, error) {
	l, err := net.Listen("tcp", s.Addr)
	if err != nil {
		return nil, fmt.Errorf("open the stand-in workspace: %w", err)
	}
	p := &platform{
		shared: s, addr: l.Addr().String(), changed: make(chan struct{}),
		events: map[string]*event{}, byEnvelope: map[string]*Delivery{}, tickets: map[string]bool{},
		files: map[string]*File{}, triggers: map[string]*trigger{}, responses: map[string]*response{},
		codes: map[string]*Workspace{},
		// No id of an event is given out again by the next stand-in, as none
		// is by the platform: an app may have kept those it took.
		serial: s.Now().UnixMicro(),
	}
	p.alive, p.end = context.WithCancel(context.Background())
	mux := http.NewServeMux()
	mux.HandleFunc("/api/", p.serveAPI)
	mux.HandleFunc("/link/", p.serveLink)
	mux.HandleFunc(uploadPath, p.serveUpload)
	mux.HandleFunc(responsePath, p.serveResponse)
	p.server = &http.Server{Handler: mux, ReadHeaderTimeout: 10 * time.Second, ConnState: p.count}
	p.work.Go(func() { _ = p.server.Serve(l) })
	return p, nil
}

// Close ends the stand-in, every workspace of it and everything it runs.
func (p *platform) Close() error {
	p.mu.Lock()
	p.closed = true
	sockets := slices.Clone(p.sockets)
	p.mu.Unlock()
	p.end()
	err := p.server.Close()
	for _, s := range sockets {
		_ = s.conn.Close() // the app may have closed it
	}
	p.work.Wait()
	return err
}

// URL is where the Web API is; it ends in a slash.
func (p *platform) URL() string { return "http://" + p.addr + "/api/" }

// AppToken is the token with which the app opens sockets.
func (p *platform) AppToken() string { return p.shared.AppToken }

// SigningSecret is the secret that signs what goes to request URLs.
func (p *platform) SigningSecret() string { return p.shared.SigningSecret }

// Connections is the number of TCP connections accepted so far.
func (p *platform) Connections() int {
	p.mu.Lock()
	defer p.mu.Unlock()
	return p.conns
}

func (p *platform) count(_ net.Conn, s http.ConnState) {
	if s != http.StateNew {
		return
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	p.conns++
}

// bump wakes whoever waits for a change. The lock is held.
func (p *platform) bump() {
	if p.waiting > 0 {
		close(p.changed)
		p.changed = make(chan struct{})
	}
}

// show is bump for what people can see. The lock is held.
func (p *platform) show() {
	p.version++
	p.bump()
}

// next gives out a number. The lock is held.
func (p *platform) next() int64 {
	p.serial++
	return p.serial
}

// now is a message stamp: seconds, a dot and six digits, never the same
// twice (documented: messaging, ts is unique within a channel). The lock is
// held.
func (p *platform) now() string {
	p.stamp = max(p.stamp+1, p.shared.Now().UnixMicro())
	return fmt.Sprintf("%d.%06d", p.stamp/1e6, p.stamp%1e6)
}

// background runs something that Close waits for. The lock is held.
func (p *platform) background(do func()) {
	if !p.closed {
		p.work.Go(do)
	}
}
