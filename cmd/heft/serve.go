package main

import (
	"context"
	"errors"
	"fmt"

	"heft/bot"
	"heft/bot/journal"
	"heft/bot/seen"
	"heft/bot/slackchat"
)

type serve struct{}

// Run answers in the team workspace until it is told to stop.
func (*serve) Run(ctx context.Context, s *session) (err error) {
	desk, err := bot.NewDesk()
	if err != nil {
		return err
	}
	j, err := journal.Open(ctx, s.path())
	if err != nil {
		return err
	}
	defer func() {
		if failed := j.Close(); failed != nil {
			err = errors.Join(err, fmt.Errorf("close the journal: %w", failed))
		}
	}()
	clerk := &bot.Clerk{Desk: desk, Journal: j, Memory: seen.New(), Log: s.log}
	chat, err := slackchat.New(slackchat.Config{
		BotToken: s.env("SLACK_BOT_TOKEN"),
		AppToken: s.env("SLACK_APP_TOKEN"),
		APIURL:   s.env("SLACK_API_URL"),
	}, clerk, s.log)
	if err != nil {
		return err
	}
	return chat.Run(ctx)
}
