package sheet

import (
	"encoding/json"
	"io"
	"time"

	"heft/bot"
)

// row is one entry for other programs. The whole day is one array of them.
type row struct {
	ID        string          `json:"id"`
	Asked     time.Time       `json:"asked"`
	Workspace string          `json:"workspace"`
	Channel   string          `json:"channel"`
	Thread    string          `json:"thread"`
	User      string          `json:"user"`
	Words     string          `json:"words"`
	Status    bot.Status      `json:"status"`
	Intent    string          `json:"intent"`
	PlanKg    float64         `json:"plan_kg,omitempty"`
	Result    json.RawMessage `json:"result,omitempty"` // the object that ask --json prints
	Reply     string          `json:"reply"`
	Delivered *time.Time      `json:"delivered,omitempty"`
	Failure   string          `json:"failure,omitempty"`
	Calc      string          `json:"calc"`
	Schema    int             `json:"schema"`
}

func writeJSON(w io.Writer, _ Day, entries []bot.Entry) error {
	rows := make([]row, len(entries))
	for i, e := range entries {
		rows[i] = row{
			e.ID, e.Asked, e.Workspace, e.Channel, e.Thread, e.User, e.Words, e.Status, e.Intent, e.PlanKg,
			e.Result, e.Reply, e.Delivered, e.Failure, e.Calc, e.Schema,
		}
	}
	out := json.NewEncoder(w)
	out.SetIndent("", "  ")
	return out.Encode(rows)
}
