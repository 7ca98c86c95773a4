package sheet

import (
	"encoding/csv"
	"io"
	"strconv"
	"time"

	"heft/bot"
)

var header = []string{
	"asked", "user", "channel", "thread", "workspace", "id", "status", "intent",
	"plan_kg", "plan_lb", "words", "reply", "delivered", "failure", "calc",
	"confirmed_by", "confirmed", "note",
}

func writeCSV(w io.Writer, day Day, entries []bot.Entry) error {
	out := csv.NewWriter(w)
	if err := out.Write(header); err != nil {
		return err
	}
	for _, e := range entries {
		if err := out.Write(record(day, e)); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func record(day Day, e bot.Entry) []string {
	stamp := func(t time.Time) string { return t.In(day.From.Location()).Format(time.RFC3339) }
	var kg, lb, delivered, by, confirmed, note string
	if c := e.Confirmed; c != nil {
		by, confirmed, note = c.User, stamp(c.At), c.Note
	}
	if e.PlanKg > 0 {
		kg, lb = strconv.FormatInt(up(e.PlanKg), 10), strconv.FormatInt(pounds(e.PlanKg), 10)
	}
	if e.Delivered != nil {
		delivered = stamp(*e.Delivered)
	}
	cells := []string{
		stamp(e.Asked), e.User, e.Channel, e.Thread, e.Workspace, e.ID, string(e.Status), e.Intent,
		kg, lb, e.Words, e.Reply, delivered, e.Failure, e.Calc,
		by, confirmed, note,
	}
	for i := range cells {
		cells[i] = cell(cells[i])
	}
	return cells
}
