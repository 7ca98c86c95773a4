package slackchat

import (
	"context"
	"sync"
)

// lanes run jobs side by side, those with the same key one after the other in
// the order in which they came. The caller bounds their number.
type lanes struct {
	mu      sync.Mutex
	waiting map[string][]func() // a key is present while its lane runs
	running sync.WaitGroup
}

// add puts a job at the end of its lane.
func (l *lanes) add(key string, job func()) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if queue, open := l.waiting[key]; open {
		l.waiting[key] = append(queue, job)
		return
	}
	if l.waiting == nil {
		l.waiting = map[string][]func(){}
	}
	l.waiting[key] = nil
	l.running.Go(func() { l.run(key, job) })
}

func (l *lanes) run(key string, job func()) {
	for job != nil {
		job()
		job = l.next(key)
	}
}

// next takes the lane's next job; a lane with none left is closed.
func (l *lanes) next(key string) func() {
	l.mu.Lock()
	defer l.mu.Unlock()
	queue := l.waiting[key]
	if len(queue) == 0 {
		delete(l.waiting, key)
		return nil
	}
	l.waiting[key] = queue[1:]
	return queue[0]
}

// wait returns when every lane has run dry.
func (l *lanes) wait() { l.running.Wait() }

// queues hold the posts of channels that were told to slow down: one at a
// time, in the order in which they came. Other channels do not notice.
type queues struct {
	mu sync.Mutex
	of map[string]*queue
}

type queue struct {
	turn chan struct{} // full while somebody's turn lasts
	n    int           // in the queue, the one whose turn it is included
}

// slow says whether a channel was told to slow down.
func (q *queues) slow(channel string) bool {
	q.mu.Lock()
	defer q.mu.Unlock()
	return q.of[channel] != nil
}

// join waits for a turn in a channel. The function it returns ends the turn;
// with the last one the channel is fast again.
func (q *queues) join(ctx context.Context, channel string) (leave func(), err error) {
	q.mu.Lock()
	if q.of == nil {
		q.of = map[string]*queue{}
	}
	if q.of[channel] == nil {
		q.of[channel] = &queue{turn: make(chan struct{}, 1)}
	}
	line := q.of[channel]
	line.n++
	q.mu.Unlock()
	quit := func() {
		q.mu.Lock()
		defer q.mu.Unlock()
		if line.n--; line.n == 0 {
			delete(q.of, channel)
		}
	}
	select {
	case line.turn <- struct{}{}:
		return func() { <-line.turn; quit() }, nil
	case <-ctx.Done():
		quit()
		return nil, ctx.Err()
	}
}
