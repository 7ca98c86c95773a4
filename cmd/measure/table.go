package main

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"
)

// measure is one row of the table: a ratio that every round has, and what is
// aimed for.
type measure struct {
	name      string
	aim, goal string
	ratio     func(round) float64
	control   func(round) float64 // echo against itself; nil where no echo has the figure
}

var measures = []measure{
	{
		"reply latency beyond echo's, p50, 1 in flight, × this disk's write+fdatasync p50", "3", "1.5",
		func(r round) float64 { return ms(r.heft().p50-r.echo().p50) / ms(r.disk.p50) },
		func(r round) float64 { return ms(r.control().p50) / ms(r.echo().p50) },
	},
	{
		"replies per second, 64 in flight, × echo", "1.0", "2.0",
		func(r round) float64 { return r.heft().perSecond / r.echo().perSecond },
		func(r round) float64 { return r.control().perSecond / r.echo().perSecond },
	},
	{
		"durable rows per second, 64 waiting, × this disk's write+fdatasync rate", "7", "15",
		func(r round) float64 { return r.rows / r.disk.perSecond }, nil,
	},
	{
		"parse + calculate + render, × echo's p50", "0.2", "0.05",
		func(r round) float64 { return ms(r.desk) / ms(r.echo().p50) }, nil,
	},
	{
		"peak memory, × echo", "1.5", "1.25",
		func(r round) float64 { return r.heft().peak / r.echo().peak },
		func(r round) float64 { return r.control().peak / r.echo().peak },
	},
	{
		"start to first reply with a new journal, × echo", "1.5", "1.1",
		func(r round) float64 { return ms(r.heft().first) / ms(r.echo().first) },
		func(r round) float64 { return ms(r.control().first) / ms(r.echo().first) },
	},
}

// Echo against itself must stay within these for a row to mean anything.
const controlLeast, controlMost = 0.95, 1.05

// table is the rounds as a table in Markdown, its columns aligned.
func table(rounds []round) string {
	lines := [][]string{{"measure", "first aim", "the goal", "median", "min–max", "echo × itself"}}
	for _, m := range measures {
		all := figures(rounds, m.ratio)
		lines = append(lines, []string{
			m.name, m.aim, m.goal, figure(median(all)),
			figure(slices.Min(all)) + "–" + figure(slices.Max(all)), m.verdict(rounds),
		})
	}
	return aligned(lines)
}

// verdict is the control, and what it means where it is off.
func (m measure) verdict(rounds []round) string {
	if m.control == nil {
		return "–"
	}
	c := median(figures(rounds, m.control))
	if c >= controlLeast && c <= controlMost {
		return fmt.Sprintf("%.3f", c)
	}
	return fmt.Sprintf("%.3f: this run says nothing", c)
}

func figure(f float64) string { return fmt.Sprintf("%.3g", f) }

// aligned is a Markdown table; the first line is its head.
func aligned(lines [][]string) string {
	widths := make([]int, len(lines[0]))
	for _, line := range lines {
		for i, cell := range line {
			widths[i] = max(widths[i], utf8.RuneCountInString(cell))
		}
	}
	rule := make([]string, len(widths))
	for i, w := range widths {
		rule[i] = strings.Repeat("-", w)
	}
	var b strings.Builder
	for _, line := range slices.Insert(slices.Clone(lines), 1, rule) {
		for i, cell := range line {
			fmt.Fprintf(&b, "| %s%s ", cell, strings.Repeat(" ", widths[i]-utf8.RuneCountInString(cell)))
		}
		b.WriteString("|\n")
	}
	return b.String()
}
