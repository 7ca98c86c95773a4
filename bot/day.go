package bot

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"slices"
	"time"

	"heft/calc/unit"
)

// Look is which part of which day a supervisor looks at; what is empty is not
// narrowed down, and an empty day is today.
type Look struct {
	Day     string `json:",omitempty"` // 2026-11-25
	Channel string `json:",omitempty"`
	Person  string `json:",omitempty"`
	Flag    Flag   `json:",omitempty"`
}

// Flag is a reason to look at an answer again.
type Flag string

// The reasons.
const (
	Over        Flag = "over"        // over the crew's limit
	Unconfirmed Flag = "unconfirmed" // somebody on site has to stand by it, and nobody does
	Unfinished  Flag = "unfinished"  // asked back, and never completed
)

// Flags are all reasons, in their order.
var Flags = []Flag{Over, Unconfirmed, Unfinished}

// Asked is one question of a day.
type Asked struct {
	Entry
	Flags []Flag
	Views []Entry // the same answer seen in another way: its working, other units
}

// Group is what a channel or a person asked on a day.
type Group struct {
	Name      string // the carrier's id
	Direct    bool   // a direct message, asked by Person
	Person    string
	Questions int
	Heaviest  unit.Mass
	Flagged   map[Flag]int
}

// Day is what was asked on a day, as a supervisor sees it.
type Day struct {
	Look     Look
	From, To time.Time
	Channels []Group
	People   []Group
	Asked    []Asked        // newest first
	Jobs     map[string]Job // what held in each channel at the end of the day
	Voice    Voice          // in which it is told
}

// Entries are all that was logged of the day's questions, oldest first.
func (d Day) Entries() []Entry {
	var out []Entry
	for _, a := range slices.Backward(d.Asked) {
		out = append(append(out, a.Entry), a.Views...)
	}
	slices.SortStableFunc(out, func(a, b Entry) int { return a.Asked.Compare(b.Asked) })
	return out
}

const dateForm = "2006-01-02"

// Day is the part of a workspace's day that a person looks at. It fails with
// ErrNotYours for whoever does not supervise, whatever they look at.
func (c *Clerk) Day(ctx context.Context, workspace, user string, l Look, now time.Time) (Day, error) {
	if !c.Supervises(user) {
		return Day{}, ErrNotYours
	}
	return c.day(ctx, workspace, l, now)
}

// Today is a workspace's day, for a summary to every supervisor.
func (c *Clerk) Today(ctx context.Context, workspace string, now time.Time) (Day, error) {
	return c.day(ctx, workspace, Look{}, now)
}

func (c *Clerk) day(ctx context.Context, workspace string, l Look, now time.Time) (Day, error) {
	at, err := time.ParseInLocation(dateForm, l.Day, now.Location())
	if err != nil {
		l.Day, at = "", now
	}
	from := time.Date(at.Year(), at.Month(), at.Day(), 0, 0, 0, 0, now.Location())
	d := Day{Look: l, From: from, To: from.AddDate(0, 0, 1)}
	entries, err := c.Journal.Between(ctx, d.From, d.To)
	if err != nil {
		return Day{}, fmt.Errorf("read the day: %w", err)
	}
	entries = slices.DeleteFunc(entries, func(e Entry) bool { return e.Workspace != workspace })
	for _, a := range Flagged(entries) {
		if l.holds(a) {
			d.add(a)
		}
	}
	slices.Reverse(d.Asked)
	d.Jobs, err = c.jobsOf(ctx, workspace, d)
	return d, err
}

// jobsOf are the jobs of a day's channels. Where one was told anew since, it is
// the last that was told on the day.
func (c *Clerk) jobsOf(ctx context.Context, workspace string, d Day) (map[string]Job, error) {
	jobs := map[string]Job{}
	for _, g := range d.Channels {
		e, err := c.Journal.Job(ctx, workspace, g.Name)
		if err != nil && !errors.Is(err, ErrNotLogged) {
			return nil, fmt.Errorf("read the jobs of the day: %w", err)
		}
		if !e.Asked.Before(d.To) {
			i := slices.IndexFunc(d.Asked, func(a Asked) bool { return a.Channel == g.Name && a.setsJob() })
			if i < 0 {
				continue
			}
			e = d.Asked[i].Entry
		}
		jobs[g.Name] = JobOf(e)
	}
	return jobs, nil
}

// Flagged are the questions of a day, oldest first, with the reasons to look
// at them again.
func Flagged(entries []Entry) []Asked {
	out := questions(entries)
	for i, a := range out {
		out[i].Flags = flagsOf(a, out[i+1:])
	}
	return out
}

// holds says whether a question is looked at.
func (l Look) holds(a Asked) bool {
	return (l.Channel == "" || l.Channel == a.Channel) && (l.Person == "" || l.Person == a.User) &&
		(l.Flag == "" || slices.Contains(a.Flags, l.Flag))
}

// flagsOf are the reasons to look at an answer again, given what was asked
// later that day. One that gave way to another has none: the other has them.
func flagsOf(e Asked, later []Asked) []Flag {
	var out []Flag
	if e.Posted != "" && slices.ContainsFunc(later, func(o Asked) bool { return o.Channel == e.Channel && o.Posted == e.Posted }) {
		return nil
	}
	if e.OverLimit() {
		out = append(out, Over)
	}
	if e.ToConfirm() && e.Confirmed == nil {
		out = append(out, Unconfirmed)
	}
	completes := func(o Asked) bool {
		return o.Status == Answered && o.Channel == e.Channel && o.Thread == e.Thread && (e.Thread != "" || o.User == e.User)
	}
	if e.Status == Needs && !slices.ContainsFunc(later, completes) {
		out = append(out, Unfinished)
	}
	return out
}

func (d *Day) add(a Asked) {
	d.Asked = append(d.Asked, a)
	d.Channels = counted(d.Channels, a.Channel, a)
	d.People = counted(d.People, a.User, a)
}

func counted(groups []Group, name string, a Asked) []Group {
	i := slices.IndexFunc(groups, func(g Group) bool { return g.Name == name })
	if i < 0 {
		i = len(groups)
		groups = append(groups, Group{Name: name, Flagged: map[Flag]int{}, Direct: len(name) > 0 && name[0] == 'D', Person: a.User})
	}
	g := &groups[i]
	g.Questions++
	g.Heaviest = max(g.Heaviest, unit.Mass(a.PlanKg))
	for _, f := range a.Flags {
		g.Flagged[f]++
	}
	return groups
}

// VoiceFor is what a person was last answered in within a day, or English. The
// words of a button are not theirs.
func (c *Clerk) VoiceFor(ctx context.Context, workspace, user string, now time.Time) Voice {
	entries, err := c.Journal.Between(ctx, now.AddDate(0, 0, -1), now.Add(time.Minute))
	if err != nil {
		return Voice{}
	}
	for _, e := range slices.Backward(entries) {
		if _, pressed := e.pressed(); !pressed && e.Workspace == workspace && e.User == user {
			return e.Voice()
		}
	}
	return Voice{}
}

// Next is a look at the day so many days later, or earlier.
func (d Day) Next(days int) Look {
	l := d.Look
	l.Day = d.From.AddDate(0, 0, days).Format(dateForm)
	return l
}

// worst puts the groups with most to look at first.
func worst(groups []Group) []Group {
	sum := func(g Group) (n int) {
		for _, f := range Flags {
			n += g.Flagged[f]
		}
		return n
	}
	return slices.SortedStableFunc(slices.Values(groups), func(a, b Group) int {
		return cmp.Or(cmp.Compare(sum(b), sum(a)), cmp.Compare(b.Questions, a.Questions))
	})
}
