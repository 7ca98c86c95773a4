package main

import (
	"context"
	"fmt"
	"io"
	"log/slog"
	"os"
	"os/signal"
	"syscall"
	"time"

	"github.com/alecthomas/kong"
)

// The exit codes that scripts rely on.
const (
	exitAnswered = 0
	exitFailed   = 1
	exitNeeds    = 2
	exitRefused  = 3
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	code := run(ctx, os.Args[1:], world{
		in: os.Stdin, out: os.Stdout, err: os.Stderr, env: os.Getenv, now: time.Now,
	})
	stop()
	os.Exit(code)
}

// world is all that a command touches outside itself.
type world struct {
	in       io.Reader
	out, err io.Writer
	env      func(string) string
	now      func() time.Time
}

// commands is what can be typed behind "heft".
type commands struct {
	Journal string `placeholder:"PATH" help:"Where the journal of questions lies (or HEFT_JOURNAL)."`

	Ask   ask   `cmd:"" help:"Answer one question."`
	Chat  chat  `cmd:"" help:"Answer messages as one conversation, a line each."`
	Serve serve `cmd:"" help:"Answer in the crew's team workspace."`
	Log   log   `cmd:"" help:"Show what was asked and answered on a day."`

	Practice rehearse `cmd:"" help:"Try the whole bot on a page on this machine, with no account."`
}

// run reads the arguments and runs one command.
func run(ctx context.Context, args []string, w world) (code int) {
	var c commands
	left := -1
	parser, err := kong.New(&c,
		kong.Name("heft"),
		kong.Description("Weights, wraps and loads for a rigging crew, in plain words."),
		kong.Writers(w.out, w.err),
		kong.Exit(func(code int) { left = code }),
		kong.WithHyphenPrefixedParameters(true),
		kong.UsageOnError(),
	)
	if err != nil {
		return w.fail(err)
	}
	chosen, err := parser.Parse(guarded(args))
	if left >= 0 {
		return left // help was asked for and printed
	}
	if err != nil {
		return w.fail(err)
	}
	if c.Journal == "" {
		c.Journal = w.env("HEFT_JOURNAL")
	}
	s := &session{
		world: w, journalPath: c.Journal,
		log: slog.New(slog.NewTextHandler(w.err, &slog.HandlerOptions{Level: slog.LevelInfo})),
	}
	chosen.BindTo(ctx, (*context.Context)(nil))
	if err := chosen.Run(s); err != nil {
		return w.fail(err)
	}
	return s.code
}

func (w world) fail(err error) int {
	fmt.Fprintln(w.err, "heft:", err)
	return exitFailed
}

// session is one run of one command.
type session struct {
	world
	journalPath string
	log         *slog.Logger
	code        int // how it exits when nothing failed
}
