package main

import (
	"context"
	"fmt"
	"log/slog"
	"strings"

	"heft/bot"
	"heft/bot/journal"
	"heft/bot/picture"
	"heft/bot/slackchat"
)

// configured is what the environment says of the workspace.
func configured(s *session, listen string) (slackchat.Config, error) {
	zone, err := zoned(zoneVar, s.env(zoneVar))
	return slackchat.Config{
		BotToken: s.env(slackchat.BotTokenVar),
		AppToken: s.env(slackchat.AppTokenVar),
		APIURL:   s.env(slackchat.APIURLVar),
		Picture:  picture.PNG,
		Sheet:    sheetOf,
		Now:      s.now,
		Zone:     zone,
		Summary:  s.env("HEFT_SUMMARY"),

		SigningSecret: s.env(slackchat.SecretVar),
		Listen:        listen,
	}, err
}

type check struct {
	Listen string `default:"127.0.0.1:8421" placeholder:"HOST:PORT" help:"Where the workspace's requests would be taken."`
}

// Run says in words what is missing before the bot can serve.
func (o *check) Run(ctx context.Context, s *session) error {
	cfg, err := configured(s, o.Listen)
	var found []slackchat.Finding
	if err != nil {
		found = append(found, slackchat.Finding{What: "zone", Err: err})
	}
	if s.env(slackchat.ClientIDVar) != "" {
		found = append(found, s.lookAtInstall(cfg))
	} else {
		found = append(found, slackchat.Look(ctx, cfg, slog.New(slog.DiscardHandler))...)
	}
	found = append(found, s.lookAtJournal(ctx), lookAtSupervisors(s))
	for _, f := range found {
		if f.Err != nil {
			s.code = exitFailed
			fmt.Fprintf(s.out, "missing  %s: %v\n", f.What, f.Err)
			continue
		}
		fmt.Fprintf(s.out, "ok       %s: %s\n", f.What, f.Note)
	}
	return nil
}

// lookAtInstall says whether workspaces could install the bot, and which have.
func (s *session) lookAtInstall(cfg slackchat.Config) slackchat.Finding {
	f := slackchat.Finding{What: "installing"}
	install, err := s.install()
	if err == nil {
		_, err = slackchat.NewTeams(cfg, install, bot.Clerk{}, slog.New(slog.DiscardHandler))
	}
	if err != nil {
		f.Err = err
		return f
	}
	tokens, err := install.Ring.All()
	f.Err, f.Note = err, fmt.Sprintf("at %sinstall; so far by %d", install.PublicURL, len(tokens))
	return f
}

// lookAtJournal opens the journal as serving would: it is made where there is
// none, and brought up to date.
func (s *session) lookAtJournal(ctx context.Context) slackchat.Finding {
	j, err := journal.Open(ctx, s.path())
	if err == nil {
		err = j.Close()
	}
	return slackchat.Finding{What: "journal", Err: err, Note: s.path()}
}

// lookAtSupervisors says who may confirm any answer and is told of the day.
func lookAtSupervisors(s *session) slackchat.Finding {
	f := slackchat.Finding{What: "supervisors", Note: strings.Join(named(s.env(supervisorsVar)), ", ")}
	if f.Note == "" {
		f.Note = "nobody: HEFT_SUPERVISORS names the ids of those who see the day and are told of what is over a limit"
	}
	return f
}
