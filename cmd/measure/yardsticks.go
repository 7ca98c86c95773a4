package main

import (
	"context"
	"errors"
	"path/filepath"
	"time"

	"heft/bot"
	"heft/bot/journal"
)

// yardsticks are what happens inside this process, a part in each turn: the
// disk's durable writes, the journal's rows and the desk's answers.
type yardsticks struct {
	*bench
	slate   *slate
	journal *journal.Journal
	rows    rows
	answers answers
}

func (b *bench) openYardsticks(ctx context.Context, dir string) (*yardsticks, error) {
	s, err := newSlate(filepath.Join(dir, "slate"), b.commit)
	if err != nil {
		return nil, err
	}
	j, err := journal.Open(ctx, filepath.Join(dir, "rows.db"))
	if err != nil {
		return nil, errors.Join(err, s.close())
	}
	return &yardsticks{bench: b, slate: s, journal: j}, nil
}

func (y *yardsticks) close() error { return errors.Join(y.slate.close(), y.journal.Close()) }

// turn measures a turn's share of each.
func (y *yardsticks) turn(ctx context.Context) error {
	if err := y.slate.write(y.writes / y.turns); err != nil {
		return err
	}
	y.answers.ask(y.desk, y.reads/y.turns)
	return y.rows.append(ctx, y.journal, y.entries, y.plan.rows/y.turns)
}

// questions are five that a crew types every day; the desk answers each of
// them.
var questions = []string{
	"14 in red oak limb 22 ft, hitched at 35 ft",
	"dead white ash log 40 cm x 3 m",
	"600 lb limb, 2 wraps",
	"block load for 600 lb, 60° between the legs",
	"how much rope for a hitch at 45 ft",
}

// asked is a question as it reaches the desk from a workspace.
func asked(text string) bot.Event {
	return bot.Event{
		ID: "Ev0000000001", Workspace: "T0CREW0001", Channel: "C0CREW0001",
		Thread: "1795608000.000100", User: "U0CREW0001", Text: text,
		At: time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC),
	}
}

// answers are how long the desk took over each question.
type answers [][]time.Duration

func (a *answers) ask(desk *bot.Desk, times int) {
	if *a == nil {
		*a = make(answers, len(questions))
	}
	for i, text := range questions {
		for range times {
			began := time.Now()
			reply, _, _ := desk.Answer(asked(text), bot.Turn{})
			_ = reply.Text()
			(*a)[i] = append((*a)[i], time.Since(began))
		}
	}
}

// typical is the median question's median time.
func (a answers) typical() time.Duration {
	each := make([]time.Duration, len(a))
	for i := range a {
		each[i] = median(a[i])
	}
	return median(each)
}
