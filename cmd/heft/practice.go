package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"time"

	"golang.org/x/sync/errgroup"

	"heft/bot/practice"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

type rehearse struct {
	Addr string `default:"127.0.0.1:8420" placeholder:"127.0.0.1:8420" help:"The loopback address of the page; port 0 takes a free one."`
}

// Run serves a page on this machine where the whole bot is tried out, in a
// workspace that lives as long as the command. Without a journal named, its
// journal does so too.
func (c *rehearse) Run(ctx context.Context, s *session) (err error) {
	if err := practice.CheckAddr(c.Addr); err != nil {
		return err
	}
	path := s.journalPath
	if path == "" {
		dir, err := os.MkdirTemp("", "heft-practice-")
		if err != nil {
			return fmt.Errorf("make room for the practice journal: %w", err)
		}
		defer func() { _ = os.RemoveAll(dir) }() // what stays is in the temporary folder
		path = filepath.Join(dir, "journal.db")
	}
	listener, err := net.Listen("tcp", c.Addr)
	if err != nil {
		return fmt.Errorf("serve the practice page: %w", err)
	}
	space, err := standin.Start(practice.Scenario())
	if err != nil {
		return errors.Join(err, listener.Close())
	}
	defer func() { err = errors.Join(err, space.Close()) }()
	return s.rehearse(ctx, space, listener, path)
}

// rehearse runs the bot in the workspace, and the page beside it, until it is
// told to stop or one of them fails.
func (s *session) rehearse(ctx context.Context, space *standin.Workspace, listener net.Listener, path string) error {
	zone, err := zoned(zoneVar, s.env(zoneVar))
	if err != nil {
		return errors.Join(err, listener.Close())
	}
	group, ctx := errgroup.WithContext(ctx)
	within := &session{world: s.within(space), journalPath: path, log: s.log}
	bot := &switched{space: space, off: make(chan chan struct{}), run: func(ctx context.Context) error { return (&serve{}).Run(ctx, within) }}
	group.Go(func() error { return bot.stayOn(ctx) })
	daySheet := func(ctx context.Context, w io.Writer, language string) error {
		day := s.world
		day.out = w
		return (&log{Format: "html", Language: language, Name: practice.Names(language)}).Run(ctx, &session{world: day, journalPath: path, log: s.log})
	}
	server := &http.Server{
		Handler:           practice.New(space, practice.Desk{DaySheet: daySheet, Restart: bot.restart, Zone: zone}),
		ReadHeaderTimeout: 10 * time.Second,
		BaseContext:       func(net.Listener) context.Context { return ctx }, // ends the pages that wait for changes
	}
	group.Go(func() error {
		if err := server.Serve(listener); !errors.Is(err, http.ErrServerClosed) {
			return fmt.Errorf("serve the practice page: %w", err)
		}
		return nil
	})
	group.Go(func() error {
		<-ctx.Done()
		return server.Close()
	})
	group.Go(func() error {
		if space.Await(ctx, func() bool { return space.Sockets() > 0 }) != nil {
			return nil // stopped before the bot was there
		}
		_, err := fmt.Fprintf(s.out, "http://%s/\n", listener.Addr())
		return err
	})
	return group.Wait()
}

// within is the world of a bot whose team workspace is the stand-in; the
// variables of a real one are not looked at.
func (s *session) within(space *standin.Workspace) world {
	w := s.world
	w.env = func(name string) string {
		switch name {
		case slackchat.BotTokenVar:
			return space.BotToken()
		case slackchat.AppTokenVar:
			return space.AppToken()
		case slackchat.APIURLVar:
			return space.URL()
		case supervisorsVar:
			return practice.Supervisor
		}
		if strings.HasPrefix(name, "SLACK_") {
			return ""
		}
		return s.env(name)
	}
	return w
}
