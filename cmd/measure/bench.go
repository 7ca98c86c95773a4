package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"time"

	"heft/bot"
)

const buildLimit = 5 * time.Minute

// bench is what stays the same from round to round.
type bench struct {
	plan
	host
	echo, heft string // the programs
	desk       *bot.Desk
	entries    []bot.Entry // one for each question
	commit     int         // bytes that the journal writes for one of them
}

func newBench(ctx context.Context, p plan, h host) (*bench, error) {
	b := &bench{plan: p, host: h, echo: filepath.Join(h.dir, "echo"), heft: filepath.Join(h.dir, "heft")}
	err := errors.Join(build(ctx, b.echo, "heft/cmd/measure/echo"), build(ctx, b.heft, "heft/cmd/heft"))
	if err != nil {
		return nil, err
	}
	if b.desk, err = bot.NewDesk(); err != nil {
		return nil, err
	}
	if b.entries, err = entriesOf(b.desk); err != nil {
		return nil, err
	}
	if b.commit, err = commitSize(ctx, h.dir, b.entries); err != nil {
		return nil, err
	}
	return b, b.warm(ctx)
}

// build builds one program.
func build(ctx context.Context, path, pkg string) error {
	ctx, cancel := context.WithTimeout(ctx, buildLimit)
	defer cancel()
	cmd := exec.CommandContext(ctx, "go", "build", "-o", path, pkg)
	cmd.WaitDelay = stopLimit
	if out, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("build %s: %w\n%s", pkg, err, out)
	}
	return nil
}

// warm starts each program once, uncounted: the first start of a new file
// reads it from disk.
func (b *bench) warm(ctx context.Context) error {
	for _, which := range order(0) {
		dir, err := os.MkdirTemp(b.dir, "warm-")
		if err != nil {
			return err
		}
		w, _, err := b.launch(ctx, which, dir)
		if err != nil {
			return err
		}
		if err := errors.Join(w.kill(), os.RemoveAll(dir)); err != nil {
			return err
		}
	}
	return nil
}

// about says in one line what the table was measured on.
func (b *bench) about(rounds []round) string {
	disk := median(figures(rounds, func(r round) float64 { return ms(r.disk.p50) }))
	return fmt.Sprintf("Measured on %s, %s/%s, %s. Rounds: %d, each with %d starts, %d questions one at a time and %d with %d in flight. "+
		"One write+fdatasync: %d bytes, as for one row, over old ones, on %s, p50 %.3g ms.",
		b.machine, runtime.GOOS, runtime.GOARCH, runtime.Version(), len(rounds), b.starts, b.alone, b.crowd, inFlight,
		b.commit, b.disk, disk)
}
