package sheet

import (
	"fmt"
	"io"
	"strings"

	"heft/bot"
)

// Format is one way to show a day.
type Format string

// The formats.
const (
	Table Format = "table"
	JSON  Format = "json"
	CSV   Format = "csv"
	HTML  Format = "html"
)

// ParseFormat reads the name of a format.
func ParseFormat(s string) (Format, error) {
	switch f := Format(s); f {
	case Table, JSON, CSV, HTML:
		return f, nil
	}
	return "", fmt.Errorf("no format %q: type table, json, csv or html", s)
}

// Write shows the entries of a day, oldest first as they are given.
func Write(w io.Writer, f Format, d Day, entries []bot.Entry) error {
	write := map[Format]func(io.Writer, Day, []bot.Entry) error{
		Table: writeTable, JSON: writeJSON, CSV: writeCSV, HTML: writeHTML,
	}[f]
	if write == nil {
		return fmt.Errorf("no format %q", f)
	}
	return write(w, d, entries)
}

// totals are the day in numbers.
type totals struct {
	Questions, Answered, Asked, Refused, Unposted int
	HeaviestKg                                    float64
}

func sum(entries []bot.Entry) totals {
	t := totals{Questions: len(entries)}
	for _, e := range entries {
		switch e.Status {
		case bot.Answered:
			t.Answered++
		case bot.Needs:
			t.Asked++
		case bot.Refused:
			t.Refused++
		}
		if e.Delivered == nil {
			t.Unposted++
		}
		t.HeaviestKg = max(t.HeaviestKg, e.PlanKg)
	}
	return t
}

// String says the totals in one line.
func (t totals) String() string {
	s := fmt.Sprintf("%d questions: %d answered, %d asked back, %d refused.", t.Questions, t.Answered, t.Asked, t.Refused)
	if t.HeaviestKg > 0 {
		s += " Heaviest plan " + mass(t.HeaviestKg) + "."
	}
	if t.Unposted > 0 {
		s += fmt.Sprintf(" %d not known to have been delivered.", t.Unposted)
	}
	return s
}

// mass says a planning weight in both systems, rounded up; nothing where
// there is none.
func mass(kg float64) string {
	if kg <= 0 {
		return ""
	}
	const pound = 0.45359237 // kg, exact
	return fmt.Sprintf("%.0f kg (%.0f lb)", up(kg), up(kg/pound))
}

func up(v float64) float64 {
	n := float64(int64(v))
	if n < v {
		n++
	}
	return n
}

// headline is the first line of the reply: what it was taken for, and the
// plan.
func headline(e bot.Entry) string {
	first, _, _ := strings.Cut(e.Reply, "\n")
	return first
}
