package sheet

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"time"

	"heft/bot"
)

var columns = []string{
	"asked", "workspace", "channel", "thread", "user", "status", "intent", "plan_kg", "words", "reply", "delivered", "calc",
}

func writeCSV(w io.Writer, _ Day, entries []bot.Entry) error {
	out := csv.NewWriter(w)
	if err := out.Write(columns); err != nil {
		return err
	}
	for _, e := range entries {
		row := []string{
			e.Asked.Format(time.RFC3339), e.Workspace, e.Channel, e.Thread, e.User, string(e.Status), e.Intent,
			kilograms(e.PlanKg), e.Words, e.Reply, delivered(e), e.Calc,
		}
		for i := range row {
			row[i] = defused(row[i])
		}
		if err := out.Write(row); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func kilograms(kg float64) string {
	if kg <= 0 {
		return ""
	}
	return strconv.FormatFloat(up(kg), 'f', 0, 64)
}

func delivered(e bot.Entry) string {
	if e.Delivered == nil {
		return ""
	}
	return e.Delivered.Format(time.RFC3339)
}

// defused keeps a spreadsheet from taking a cell for a formula: those begin
// with one of these, or their full-width twins, perhaps after white space.
func defused(cell string) string {
	bare := strings.TrimLeft(cell, " \t\r\n\u00a0\u3000\ufeff")
	if bare != "" && strings.ContainsRune("=+-@＝＋－＠", []rune(bare)[0]) || strings.HasPrefix(cell, "\t") || strings.HasPrefix(cell, "\r") {
		return "'" + cell
	}
	return cell
}
