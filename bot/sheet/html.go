package sheet

import (
	"bufio"
	_ "embed"
	"html/template"
	"io"
	"slices"
	"strings"

	"heft/bot"
)

//go:embed sheet.html
var pageText string

var page = template.Must(template.New("sheet").Parse(pageText))

// entryRow is one question on the page, all of it plain text.
type entryRow struct {
	Time, Who, Words, Read, Changed string
	Answer, Rest, Plan, Confirmed   string
	Outcome, Failure, Next          string
	Flags                           []string
}

// site is a channel on the page: its job, its crew, and what they asked.
type site struct {
	Name, Channel, Arborist string
	Crew, InForce           []string
	Rows                    []entryRow
}

func writeHTML(w io.Writer, day Day, entries []bot.Entry) error {
	list := facts(entries)
	out := bufio.NewWriter(w)
	err := page.Execute(out, struct {
		Title   string
		Nothing string
		Tallies []tally
		Sites   []site
	}{day.title(), nothing, sum(day, list).tallies(), day.sites(list)})
	if err != nil {
		return err
	}
	return out.Flush()
}

// sites are the channels in the order in which they first asked.
func (d Day) sites(list []fact) []site {
	var out []site
	at := map[Place]int{}
	for _, f := range list {
		if f.View {
			continue // its question stands there already
		}
		i, known := at[f.place]
		if !known {
			i = len(out)
			at[f.place] = i
			out = append(out, d.site(f.place))
		}
		if who := d.named(plain(f.User)); !slices.Contains(out[i].Crew, who) {
			out[i].Crew = append(out[i].Crew, who)
		}
		out[i].Rows = append(out[i].Rows, d.row(f))
	}
	return out
}

// site is a channel before anything was asked there.
func (d Day) site(p Place) site {
	name, inForce := d.Jobs[p].Told(bot.VoiceOf(""))
	s := site{Name: plain(name), Channel: d.named(plain(p.Channel)), Arborist: d.named(plain(d.Jobs[p].Arborist()))}
	if s.Name == "" {
		s.Name, s.Channel = s.Channel, ""
	}
	if s.Name == "" {
		s.Name = "On a terminal"
	}
	if s.Channel == s.Name {
		s.Channel = ""
	}
	for _, fact := range inForce {
		s.InForce = append(s.InForce, plain(fact))
	}
	return s
}

func (d Day) row(f fact) entryRow {
	r := entryRow{
		Time: d.clock(f.Asked.Asked), Who: d.named(plain(f.User)), Words: d.named(plain(f.Words)), Read: plain(f.reading),
		Changed: d.changed(f), Answer: d.named(plain(headline(f.Reply))), Plan: weight(f.PlanKg, d.metric(f)),
		Confirmed: d.confirmed(f.Entry), Outcome: plain(outcome(f.Entry)), Failure: plain(f.Failure), Flags: f.flagged(),
	}
	_, rest, _ := strings.Cut(f.Reply, "\n")
	r.Rest = d.named(plain(rest))
	if f.next != nil {
		r.Next = "Another answer took its place at " + d.clock(f.next.Asked)
	}
	return r
}
