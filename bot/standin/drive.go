package standin

import (
	"context"
	"fmt"
	"slices"
	"sync/atomic"
	"time"

	"golang.org/x/sync/errgroup"
)

// DriveOptions say how a bot is to be driven.
type DriveOptions struct {
	Total    int      // questions
	InFlight int      // of them waiting for a reply at any time
	Channels []string // taken in turn; Yard where empty
	Text     func(i int) string
}

// Stats are what a drive measured.
type Stats struct {
	Latencies []time.Duration // from saying to the reply's arrival, ascending
	Elapsed   time.Duration
}

// Percentile returns the latency that p percent of the questions stayed
// within.
func (s Stats) Percentile(p float64) time.Duration {
	if len(s.Latencies) == 0 {
		return 0
	}
	i := int(float64(len(s.Latencies)) * p / 100)
	return s.Latencies[min(i, len(s.Latencies)-1)]
}

// PerSecond is the number of replies a second.
func (s Stats) PerSecond() float64 { return float64(len(s.Latencies)) / s.Elapsed.Seconds() }

// Drive asks questions, each in a thread of its own, and waits for the first
// reply to each.
func (w *Workspace) Drive(ctx context.Context, o DriveOptions) (Stats, error) {
	if len(o.Channels) == 0 {
		o.Channels = []string{Yard}
	}
	s := Stats{Latencies: make([]time.Duration, o.Total)}
	var asked atomic.Int64
	start := time.Now()
	group, ctx := errgroup.WithContext(ctx)
	for range o.InFlight {
		group.Go(func() error {
			for {
				i := int(asked.Add(1)) - 1
				if i >= o.Total {
					return nil
				}
				took, err := w.ask(ctx, o.Channels[i%len(o.Channels)], o.Text(i))
				if err != nil {
					return fmt.Errorf("question %d: %w", i, err)
				}
				s.Latencies[i] = took
			}
		})
	}
	err := group.Wait()
	s.Elapsed = time.Since(start)
	slices.Sort(s.Latencies)
	return s, err
}

// ask says one thing and waits for the reply.
func (w *Workspace) ask(ctx context.Context, channel, text string) (time.Duration, error) {
	if channel[0] != 'D' {
		text = w.Mention() + " " + text
	}
	reply := make(chan Message, 1)
	m, send := w.record(channel, "U0CREW0001", text, reply, nil)
	send()
	select {
	case r := <-reply:
		return r.At.Sub(m.At), nil
	case <-ctx.Done():
		return 0, ctx.Err()
	}
}
