package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"syscall"
	"time"
)

// limit is the longest that a whole run may take.
const limit = 20 * time.Minute

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	code := run(ctx, os.Args[1:], os.Stdout, os.Stderr)
	stop()
	os.Exit(code)
}

// run measures and prints the table. Progress goes to the second writer.
func run(ctx context.Context, args []string, out, progress io.Writer) int {
	p, err := parsePlan(args, progress)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		return 1 // the flag package has said why
	}
	ctx, cancel := context.WithTimeout(ctx, limit)
	defer cancel()
	if err := compare(ctx, p, out, progress); err != nil {
		fmt.Fprintln(progress, "measure:", err)
		return 1
	}
	return 0
}

// compare builds what is measured, goes through the rounds and prints.
func compare(ctx context.Context, p plan, out, progress io.Writer) (err error) {
	h, err := thisHost()
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, os.RemoveAll(h.dir)) }()
	b, err := newBench(ctx, p, h)
	if err != nil {
		return err
	}
	var rounds []round
	for i := range p.rounds {
		r, err := b.round(ctx, i)
		if err != nil {
			return fmt.Errorf("round %d: %w", i+1, err)
		}
		fmt.Fprintf(progress, "round %d of %d: %s\n", i+1, p.rounds, r)
		rounds = append(rounds, r)
	}
	_, err = io.WriteString(out, table(rounds)+"\n"+b.about(rounds)+"\n")
	return err
}
