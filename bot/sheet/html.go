package sheet

import (
	"bufio"
	_ "embed"
	"html/template"
	"io"

	"heft/bot"
)

//go:embed sheet.html
var pageText string

var page = template.Must(template.New("sheet").Parse(pageText))

// entryRow is one question on the page, all of it plain text.
type entryRow struct {
	Time, Who, Channel, Outcome, Plan, Words, Reply, Failure, Confirmed string
}

// confirmedBy says who stands by an answer, when and with what note.
func confirmedBy(day Day, e bot.Entry) string {
	c := e.Confirmed
	if c == nil {
		return ""
	}
	said := "by " + plain(c.User) + " at " + day.clock(c.At)
	if c.Note != "" {
		said += ": " + plain(c.Note)
	}
	return said
}

func writeHTML(w io.Writer, day Day, entries []bot.Entry) error {
	rows := make([]entryRow, 0, len(entries))
	for _, e := range entries {
		rows = append(rows, entryRow{
			Time: day.clock(e.Asked), Who: plain(e.User), Channel: plain(e.Channel),
			Outcome: plain(outcome(e)), Plan: weight(e.PlanKg),
			Words: plain(e.Words), Reply: plain(e.Reply), Failure: plain(e.Failure),
			Confirmed: confirmedBy(day, e),
		})
	}
	out := bufio.NewWriter(w)
	err := page.Execute(out, struct {
		Title, Totals string
		Rows          []entryRow
	}{day.title(), sum(entries).String(), rows})
	if err != nil {
		return err
	}
	return out.Flush()
}
