package sheet

import (
	"bufio"
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"heft/bot"
)

// Widths beyond which a text is cut in the table.
const (
	nameWidth    = 12
	wordsWidth   = 42
	answerWidth  = 42
	outcomeWidth = 36
)

func writeTable(w io.Writer, day Day, entries []bot.Entry) error {
	out := bufio.NewWriter(w)
	fmt.Fprintf(out, "%s\n\n", day.title())
	list, v := facts(entries, day.Voice), day.Voice
	if len(list) > 0 {
		tab := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
		row(tab, v.Word("TIME"), v.Word("WHO"), v.Word("CHANNEL"), v.Word("OUTCOME"), v.Word("PLAN WEIGHT"), v.Word("QUESTION"), v.Word("ANSWER"))
		for _, f := range list {
			row(tab, day.clock(f.Asked.Asked), short(day.named(f.User), nameWidth), short(day.named(f.Channel), nameWidth),
				short(day.marked(f), outcomeWidth), weight(f.PlanKg, day.metric(f)), short(day.named(f.Words), wordsWidth),
				short(day.named(headline(f.Reply)), answerWidth))
		}
		if err := tab.Flush(); err != nil {
			return err
		}
		fmt.Fprintln(out)
	}
	fmt.Fprintln(out, sum(day, list).said(v))
	return out.Flush()
}

// row writes the cells of one line; an empty one shows as a dash.
func row(w io.Writer, cells ...string) {
	for i, c := range cells {
		if c == "" {
			cells[i] = "–"
		}
	}
	fmt.Fprintln(w, strings.Join(cells, "\t"))
}
