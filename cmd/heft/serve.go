package main

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"path/filepath"
	"runtime/debug"
	"strings"
	"time"
	_ "time/tzdata" // HEFT_ZONE is known on a machine without the zones' files, too
	"unicode"

	"golang.org/x/sync/errgroup"

	"heft/bot"
	"heft/bot/journal"
	"heft/bot/keyring"
	"heft/bot/seen"
	"heft/bot/slackchat"
)

// supervisorsVar names the ids of those who see the day, and zoneVar where the
// crew's clock hangs.
const (
	supervisorsVar = "HEFT_SUPERVISORS"
	zoneVar        = "HEFT_ZONE"
)

type serve struct {
	Listen string `default:"127.0.0.1:8421" placeholder:"HOST:PORT" help:"Where the workspace's requests are taken, with a signing secret instead of an app-level token."`
}

// Run answers in the team workspace until it is told to stop.
func (o *serve) Run(ctx context.Context, s *session) (err error) {
	cfg, err := configured(s, o.Listen)
	if err != nil {
		return err
	}
	log := slog.New(slackchat.Masked(s.log.Handler()))
	clerk := &bot.Clerk{Memory: seen.New(), Log: log, Supervisors: named(s.env(supervisorsVar))}
	if s.env(slackchat.ClientIDVar) != "" {
		return s.serveTeams(ctx, cfg, clerk)
	}
	chat, err := slackchat.New(cfg, clerk, log)
	if err != nil {
		return err
	}
	defer chat.HangUp()
	leave, err := s.settle(ctx, clerk, chat.Connect)
	if err != nil {
		return unlessTold(ctx, err)
	}
	defer func() { err = errors.Join(err, leave()) }()
	if err := chat.Recover(ctx, s.now()); err != nil {
		return unlessTold(ctx, err)
	}
	return chat.Run(ctx)
}

// unlessTold is no failure where the program was told to stop before it had
// begun: what it was about to do was cut short by that.
func unlessTold(ctx context.Context, err error) error {
	if ctx.Err() != nil && errors.Is(err, context.Canceled) {
		return nil
	}
	return err
}

// serveTeams answers in every workspace that installs the bot.
func (s *session) serveTeams(ctx context.Context, cfg slackchat.Config, clerk *bot.Clerk) (err error) {
	install, err := s.install()
	if err != nil {
		return err
	}
	leave, err := s.settle(ctx, clerk, func(context.Context) error { return nil })
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, leave()) }()
	teams, err := slackchat.NewTeams(cfg, install, *clerk, clerk.Log)
	if err != nil {
		return err
	}
	return teams.Run(ctx)
}

// whileSettling is how much the heap may grow, in percent, before garbage is
// collected: what is made then stays in use, and collecting finds next to none.
const whileSettling = 400

// settle gives a clerk its desk and its journal, and does something else
// meanwhile: each takes its time, and none needs the others. What it returns
// closes the journal.
func (s *session) settle(ctx context.Context, clerk *bot.Clerk, meanwhile func(context.Context) error) (leave func() error, err error) {
	defer debug.SetGCPercent(debug.SetGCPercent(whileSettling))
	ready, beside := errgroup.WithContext(ctx)
	beside, give := context.WithCancel(beside)
	defer give()
	ready.Go(func() (err error) { clerk.Desk, err = bot.NewDesk(); return err })
	ready.Go(func() error { return meanwhile(beside) })
	j, err := journal.Open(ctx, s.path())
	if err != nil {
		give()
		_ = ready.Wait() // it may have failed because it was given up
		return nil, err
	}
	leave = func() error {
		if err := j.Close(); err != nil {
			return fmt.Errorf("close the journal: %w", err)
		}
		return nil
	}
	clerk.Journal = j
	if err := ready.Wait(); err != nil {
		return nil, errors.Join(err, leave())
	}
	return leave, nil
}

// install is what the environment says of being installed. The workspaces'
// tokens lie beside the journal, sealed.
func (s *session) install() (slackchat.Install, error) {
	ring, err := keyring.Open(filepath.Join(filepath.Dir(s.path()), "workspaces"), s.env("HEFT_KEY"))
	if err != nil {
		return slackchat.Install{}, fmt.Errorf("HEFT_KEY: %w", err)
	}
	return slackchat.Install{
		ClientID: s.env(slackchat.ClientIDVar), ClientSecret: s.env(slackchat.ClientSecretVar),
		PublicURL: s.env(slackchat.PublicURLVar), Ring: ring, Supervisors: named(s.env(supervisorsVar)),
	}, nil
}

// named reads a list of people's ids, parted by commas.
func named(list string) []string {
	return strings.FieldsFunc(list, func(r rune) bool { return r == ',' || unicode.IsSpace(r) })
}

// zoned finds the crew's time zone: this machine's where none is named. What
// is wrong is told of where it was named.
func zoned(where, name string) (*time.Location, error) {
	if name == "" {
		return time.Local, nil
	}
	zone, err := time.LoadLocation(name)
	if err != nil {
		return nil, fmt.Errorf("%s is a zone like America/Denver, not %q", where, name)
	}
	return zone, nil
}
