package main

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"heft/bot"
	"heft/bot/journal"
	"heft/bot/sheet"
	"heft/parser"
)

type log struct {
	Day      string            `placeholder:"2026-11-25" help:"The day to show; today where none is given."`
	Format   string            `default:"table" enum:"table,json,csv,html" help:"table, json, csv or html."`
	Zone     string            `placeholder:"America/Denver" help:"Where the crew's clock hangs (or HEFT_ZONE); this machine's where none is named."`
	Language string            `placeholder:"es" help:"The language of the table and of the page; the one that most of the day's questions were asked in where none is named."`
	Name     map[string]string `placeholder:"ID=NAME;..." help:"Names to show in the place of the workspace's ids."`
}

// Run prints the day.
func (l *log) Run(ctx context.Context, s *session) (err error) {
	format, err := sheet.ParseFormat(l.Format)
	if err != nil {
		return err
	}
	where := "--zone"
	if l.Zone == "" {
		where, l.Zone = zoneVar, s.env(zoneVar)
	}
	zone, err := zoned(where, l.Zone)
	if err != nil {
		return err
	}
	day := sheet.DayOf(s.now().In(zone))
	if l.Day != "" {
		if day, err = sheet.ParseDay(l.Day, zone); err != nil {
			return err
		}
	}
	j, err := journal.OpenRead(ctx, s.path())
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, j.Close()) }()
	entries, err := j.Between(ctx, day.From, day.To)
	if err != nil {
		return fmt.Errorf("read the journal: %w", err)
	}
	day.Names = l.Name
	if day.Voice, err = l.voice(format, entries); err != nil {
		return err
	}
	if day.Jobs, err = jobs(ctx, j, day.To, entries); err != nil {
		return fmt.Errorf("read the journal: %w", err)
	}
	return sheet.Write(s.out, format, day, entries)
}

// voice is what the day is told in.
func (l *log) voice(format sheet.Format, entries []bot.Entry) (bot.Voice, error) {
	known := bot.Languages()
	switch {
	case l.Language == "":
		return bot.Spoken(entries), nil
	case !slices.Contains(known, l.Language):
		return bot.Voice{}, fmt.Errorf("--language is one of %s, not %q", strings.Join(known, ", "), l.Language)
	case format == sheet.CSV || format == sheet.JSON:
		return bot.Voice{}, errors.New("csv and json are for scripts, and the same in every language: leave --language away")
	}
	return bot.VoiceOf(l.Language), nil
}

// jobsFor is how far back the job of a day long gone is looked for.
const jobsFor = 90 * 24 * time.Hour

// jobs are what held in the channels of some entries at a time.
func jobs(ctx context.Context, j *journal.Reader, until time.Time, entries []bot.Entry) (map[sheet.Place]bot.Job, error) {
	out := map[sheet.Place]bot.Job{}
	var later bool
	for _, e := range entries {
		p := sheet.Place{Workspace: e.Workspace, Channel: e.Channel}
		if _, known := out[p]; known {
			continue
		}
		last, err := j.Job(ctx, e.Workspace, e.Channel)
		if err != nil && !errors.Is(err, bot.ErrNotLogged) {
			return nil, err
		}
		out[p] = bot.JobOf(last)
		later = later || !last.Asked.Before(until)
	}
	if !later {
		return out, nil
	}
	// Some job was told anew since: what held then is looked for.
	before, err := j.Between(ctx, until.Add(-jobsFor), until)
	clear(out)
	for _, e := range before {
		if told := bot.JobOf(e); e.Intent == string(parser.AskJob) && e.Status == bot.Answered {
			out[sheet.Place{Workspace: e.Workspace, Channel: e.Channel}] = told
		}
	}
	return out, err
}
