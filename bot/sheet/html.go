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

// captions are the words that stand on every page.
type captions struct {
	Sheet, Nothing, Estimates               string
	Channel, Crew, Arborist, Nobody         string
	Gear, None                              string
	Time, Who, Asked, Answer, Plan, Outcome string
	Rest, ArboristSigns, SupervisorSigns    string
}

func captionsIn(v bot.Voice) captions {
	return captions{
		Sheet: v.Word("Rigging day sheet"), Nothing: v.Word(nothing),
		Estimates: v.Word("Estimates only. Nothing here replaces the qualified arborist on site, the local codes or the gear's labels."),
		Channel:   v.Word("Channel:"), Crew: v.Word("Crew:"), Arborist: v.Word("Arborist:"), Nobody: v.Word("nobody named"),
		Gear: v.Word("Gear in force:"), None: v.Word("none told"),
		Time: v.Word("Time"), Who: v.Word("Who"), Asked: v.Word("Asked, and read as"), Answer: v.Word("Answer"),
		Plan: v.Word("Plan on"), Outcome: v.Word("Outcome"), Rest: v.Word("The rest"),
		ArboristSigns: v.Word("Arborist on site, date"), SupervisorSigns: v.Word("Supervisor, date"),
	}
}

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
	v, list := day.Voice, facts(entries, day.Voice)
	out := bufio.NewWriter(w)
	err := page.Execute(out, struct {
		Lang, Title string
		captions
		Tallies []tally
		Sites   []site
	}{v.Tag(), day.title(), captionsIn(v), sum(day, list).tallies(v), day.sites(list)})
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
	name, inForce := d.Jobs[p].Told(d.Voice)
	s := site{Name: plain(name), Channel: d.named(plain(p.Channel)), Arborist: d.named(plain(d.Jobs[p].Arborist()))}
	if s.Name == "" {
		s.Name, s.Channel = s.Channel, ""
	}
	if s.Name == "" {
		s.Name = d.Voice.Word("On a terminal")
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
		Time: d.clock(f.Asked.Asked), Who: d.named(plain(f.User)), Words: d.named(plain(f.Words)),
		Changed: d.changed(f), Answer: d.named(plain(headline(f.Reply))), Plan: weight(f.PlanKg, d.metric(f)),
		Confirmed: d.confirmed(f.Entry), Outcome: plain(d.outcome(f.Entry)), Failure: plain(f.Failure), Flags: d.flagged(f),
	}
	_, rest, _ := strings.Cut(f.Reply, "\n")
	r.Rest = d.named(plain(rest))
	if f.reading != "" {
		r.Read = d.Voice.Say("Read as: %s", plain(f.reading))
	}
	if f.next != nil {
		r.Next = d.Voice.Say("Another answer took its place at %s", d.clock(f.next.Asked))
	}
	return r
}
