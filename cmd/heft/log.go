package main

import (
	"context"
	"errors"
	"fmt"
	"time"

	"heft/bot/journal"
	"heft/bot/sheet"
)

type log struct {
	Day    string `placeholder:"2026-11-25" help:"The day to show; today where none is given."`
	Format string `default:"table" enum:"table,json,csv,html" help:"table, json, csv or html."`
}

// Run prints the day.
func (l *log) Run(ctx context.Context, s *session) (err error) {
	format, err := sheet.ParseFormat(l.Format)
	if err != nil {
		return err
	}
	day := sheet.DayOf(s.now())
	if l.Day != "" {
		if day, err = sheet.ParseDay(l.Day, time.Local); err != nil {
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
	return sheet.Write(s.out, format, day, entries)
}
