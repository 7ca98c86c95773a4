package sheet

import (
	"encoding/csv"
	"io"
	"math"
	"strconv"
	"strings"
	"time"

	"heft/bot"
	"heft/calc/unit"
)

var header = []string{
	"asked", "user", "channel", "thread", "workspace", "id", "status", "intent",
	"plan_kg", "plan_lb", "words", "reply", "delivered", "failure", "calc",
	"confirmed_by", "confirmed", "note", "site", "reading", "flags", "changed_from",
	"arborist", "in_force", "view_of",
}

func writeCSV(w io.Writer, day Day, entries []bot.Entry) error {
	out := csv.NewWriter(w)
	if err := out.Write(header); err != nil {
		return err
	}
	for _, f := range logged(entries) {
		if err := out.Write(record(day, f)); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

// up rounds to the next whole unit above: a plan weight is never shown
// lighter than it is. What is closer to a whole than any weighing is whole.
func up(x float64) int64 { return int64(math.Ceil(x - 1e-6)) }

func pounds(kg float64) int64 { return up(unit.Mass(kg).Pounds()) }

func record(day Day, f fact) []string {
	e := f.Entry
	stamp := func(t time.Time) string { return t.In(day.From.Location()).Format(time.RFC3339) }
	var kg, lb, delivered string
	if e.PlanKg > 0 {
		kg, lb = strconv.FormatInt(up(e.PlanKg), 10), strconv.FormatInt(pounds(e.PlanKg), 10)
	}
	if e.Delivered != nil {
		delivered = stamp(*e.Delivered)
	}
	cells := []string{
		stamp(e.Asked), e.User, e.Channel, e.Thread, e.Workspace, e.ID, string(e.Status), e.Intent,
		kg, lb, e.Words, e.Reply, delivered, e.Failure, e.Calc,
	}
	o := newObject(day, f)
	flags := make([]string, len(o.Flags))
	for i, flag := range o.Flags {
		flags[i] = string(flag)
	}
	by, confirmed, note := "", "", ""
	if c := o.Confirmed; c != nil {
		by, confirmed, note = c.By, stamp(c.At), c.Note
	}
	cells = append(cells, by, confirmed, note, o.Site, o.Reading, strings.Join(flags, " "), o.ChangedFrom,
		o.Arborist, strings.Join(o.InForce, "; "), o.ViewOf)
	for i := range cells {
		cells[i] = cell(cells[i])
	}
	return cells
}
