package main

import (
	"context"
	"fmt"
	"os"
	"os/user"

	"github.com/mattn/go-isatty"

	"heft/bot"
	"heft/bot/journal"
	"heft/bot/picture"
	"heft/bot/seen"
	"heft/bot/terminal"
)

type ask struct {
	JSON     bool     `help:"One JSON object on one line."`
	Units    string   `enum:",imperial,metric" default:"" help:"Units to answer in: imperial or metric."`
	Picture  string   `placeholder:"FILE.png" help:"Draw the answer into a PNG file, where it has a picture."`
	Question []string `arg:"" help:"The question, in plain words."`
}

// Run answers the question.
func (a *ask) Run(ctx context.Context, s *session) error {
	return s.atDesk(ctx, bot.Units(a.Units), a.JSON, func(d *terminal.Desk) error {
		d.Keep = a.draw
		status, err := d.Ask(ctx, unguarded(a.Question))
		s.code = map[bot.Status]int{bot.Answered: exitAnswered, bot.Needs: exitNeeds, bot.Refused: exitRefused}[status]
		return err
	})
}

// draw puts the picture of an answer into its file.
func (a *ask) draw(r bot.Reply) error {
	if a.Picture == "" || r.Scene() == nil {
		return nil
	}
	png, err := picture.PNG(*r.Scene())
	if err != nil {
		return fmt.Errorf("draw the picture: %w", err)
	}
	if err := os.WriteFile(a.Picture, png, 0o644); err != nil {
		return fmt.Errorf("keep the picture: %w", err)
	}
	return nil
}

type chat struct {
	JSON bool `help:"One JSON object a line; likewise where the input is a pipe."`
}

// Run answers line by line.
func (c *chat) Run(ctx context.Context, s *session) error {
	typed := isTerminal(s.in)
	return s.atDesk(ctx, bot.AsAsked, c.JSON || !typed, func(d *terminal.Desk) error {
		if typed && !c.JSON {
			d.Prompt = "> "
		}
		return d.Chat(ctx, s.in)
	})
}

// isTerminal says whether a person types the input.
func isTerminal(in any) bool {
	f, ok := in.(*os.File)
	return ok && isatty.IsTerminal(f.Fd())
}

// atDesk sets a terminal's desk up, with the journal or, where that cannot be
// opened, without it, having said so.
func (s *session) atDesk(ctx context.Context, units bot.Units, json bool, do func(*terminal.Desk) error) (err error) {
	desk, err := bot.NewDesk()
	if err != nil {
		return err
	}
	d := &terminal.Desk{User: userName(), Units: units, JSON: json, Now: s.now, Out: s.out}
	memory := seen.New()
	j, failed := journal.Open(ctx, s.path())
	if failed != nil {
		fmt.Fprintln(s.err, "heft: this will not be logged:", failed)
		d.Taker = &bot.Unlogged{Desk: desk, Memory: memory}
		return do(d)
	}
	defer func() {
		if failed := j.Close(); err == nil && failed != nil {
			err = fmt.Errorf("close the journal: %w", failed)
		}
	}()
	d.Taker = &bot.Clerk{Desk: desk, Journal: j, Memory: memory, Log: s.log}
	return do(d)
}

// path is where the journal lies.
func (s *session) path() string {
	if s.journalPath != "" {
		return s.journalPath
	}
	return journal.DefaultPath()
}

func userName() string {
	if u, err := user.Current(); err == nil {
		return u.Username
	}
	return "somebody"
}
