package slackchat

import (
	"sync"
	"time"
)

// frames counts the acknowledgements that were queued and those that were
// written to a socket. The library only queues them and does not say when one
// has gone out; a socket closed too early takes the queue with it.
//
// It is the WebSocket's pool of write buffers: a buffer comes back to the
// pool when its message has been written, or has failed to be. Pings and
// pongs use none, and the app sends nothing else.
type frames struct {
	mu      sync.Mutex
	buffers []any
	queued  int
	written int
	change  chan struct{}
}

func newFrames() *frames { return &frames{change: make(chan struct{}, 1)} }

// Get takes a buffer out of the pool.
func (f *frames) Get() any {
	f.mu.Lock()
	defer f.mu.Unlock()
	if len(f.buffers) == 0 {
		return nil
	}
	last := f.buffers[len(f.buffers)-1]
	f.buffers = f.buffers[:len(f.buffers)-1]
	return last
}

// Put gives a buffer back: one more message has been written.
func (f *frames) Put(buffer any) {
	f.mu.Lock()
	f.buffers = append(f.buffers, buffer)
	f.written++
	f.mu.Unlock()
	select {
	case f.change <- struct{}{}:
	default:
	}
}

// expect counts an acknowledgement that was queued.
func (f *frames) expect() {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.queued++
}

func (f *frames) settled() bool {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.written >= f.queued
}

// drain waits until everything queued has been written. The limit matters
// only where a socket broke: what it lost is never counted as written, and
// comes again.
func (f *frames) drain(limit time.Duration) {
	timer := time.NewTimer(limit)
	defer timer.Stop()
	for !f.settled() {
		select {
		case <-f.change:
		case <-timer.C:
			return
		}
	}
}
