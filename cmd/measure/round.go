package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"
)

// round is what one round found.
type round struct {
	bots [3]sample
	disk written
	rows float64       // appended to a journal in a second, each durable, 64 waiting
	desk time.Duration // for an answer: reading, calculating, rendering
}

func (r round) echo() sample    { return r.bots[echoBot] }
func (r round) heft() sample    { return r.bots[heftBot] }
func (r round) control() sample { return r.bots[controlBot] }

// sample is what one round found of one bot.
type sample struct {
	first     time.Duration // from its start to its first reply
	p50       time.Duration // of a reply, one in flight
	perSecond float64       // replies, 64 in flight
	peak      float64       // bytes of memory
}

func (s sample) String() string {
	return fmt.Sprintf("%.3g ms, %.0f/s, %.1f MB, start %.3g ms", ms(s.p50), s.perSecond, s.peak/1e6, ms(s.first))
}

func (r round) String() string {
	return fmt.Sprintf("echo %s; heft %s; echo again %s; disk %.3g ms; %.0f rows/s; desk %.3g ms",
		r.echo(), r.heft(), r.control(), ms(r.disk.p50), r.rows, ms(r.desk))
}

func ms(d time.Duration) float64 { return float64(d) / float64(time.Millisecond) }

// round measures once. The load comes before the single questions: it takes
// the new journal past its first growth, and fills the bots' pools.
func (b *bench) round(ctx context.Context, n int) (r round, err error) {
	dir, err := os.MkdirTemp(b.dir, "round-")
	if err != nil {
		return r, err
	}
	defer func() { err = errors.Join(err, os.RemoveAll(dir)) }()
	crew, err := b.begin(ctx, dir, n, &r)
	defer func() { err = errors.Join(err, crew.kill()) }()
	if err != nil {
		return r, err
	}
	if err := b.underLoad(crew, n, &r); err != nil {
		return r, err
	}
	if err := b.oneByOne(ctx, dir, crew, n, &r); err != nil {
		return r, err
	}
	for i, w := range crew {
		if r.bots[i].peak, err = peakMemory(w.cmd.Process.Pid); err != nil {
			return r, err
		}
	}
	return r, b.audit(ctx, &crew)
}

// crew are the bots of a round; none where one is not running.
type crew [3]*worker

func (c *crew) kill() error {
	var errs []error
	for i, w := range c {
		if w != nil {
			errs = append(errs, w.kill())
		}
		c[i] = nil
	}
	return errors.Join(errs...)
}

// begin starts the bots as often as planned, and keeps the last of each.
func (b *bench) begin(ctx context.Context, dir string, n int, r *round) (c crew, err error) {
	var took [3][]time.Duration
	for i := range b.starts {
		if err := c.kill(); err != nil {
			return c, err
		}
		for _, which := range order(n + i) {
			home := filepath.Join(dir, fmt.Sprintf("start-%d-%d", i, which))
			if err := os.Mkdir(home, 0o700); err != nil {
				return c, err
			}
			w, first, err := b.launch(ctx, which, home)
			if err != nil {
				return c, err
			}
			c[which] = w
			took[which] = append(took[which], first)
		}
	}
	for i := range took {
		r.bots[i].first = median(took[i])
	}
	return c, nil
}

// underLoad has the bots take turns with many questions in flight. The median
// turn counts: something else on the machine seldom lasts a whole round.
func (b *bench) underLoad(c crew, n int, r *round) error {
	var rates [3][]float64
	for turn := range b.turns {
		for _, which := range order(n + turn) {
			s, err := c[which].drive(b.crowd/b.turns, inFlight)
			if err != nil {
				return err
			}
			rates[which] = append(rates[which], s.PerSecond())
		}
	}
	for i := range rates {
		r.bots[i].perSecond = median(rates[i])
	}
	return nil
}

// oneByOne has the bots take turns with one question in flight, and between
// the turns measures what their latency is compared with.
func (b *bench) oneByOne(ctx context.Context, dir string, c crew, n int, r *round) (err error) {
	y, err := b.openYardsticks(ctx, dir)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, y.close()) }()
	var latencies [3][]time.Duration
	for turn := range b.turns {
		for _, which := range order(n + turn) {
			s, err := c[which].drive(b.alone/b.turns, 1)
			if err != nil {
				return err
			}
			latencies[which] = append(latencies[which], s.Latencies...)
		}
		if err := y.turn(ctx); err != nil {
			return err
		}
	}
	for i := range latencies {
		r.bots[i].p50 = median(latencies[i])
	}
	r.disk, r.rows, r.desk = y.slate.found(), median(y.rows.perSecond), y.answers.typical()
	return nil
}
