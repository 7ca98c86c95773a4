package sheet

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"strings"
	"time"
	"unicode"
	"unicode/utf16"

	"heft/bot"
)

// object is an entry as scripts read it; what does not apply is absent.
type object struct {
	ID        string          `json:"id"`
	Asked     time.Time       `json:"asked"`
	Workspace string          `json:"workspace,omitempty"`
	Channel   string          `json:"channel,omitempty"`
	Thread    string          `json:"thread,omitempty"`
	User      string          `json:"user,omitempty"`
	Words     string          `json:"words"`
	Status    bot.Status      `json:"status"`
	Intent    string          `json:"intent,omitempty"`
	PlanKg    float64         `json:"plan_kg,omitempty"`
	Reply     string          `json:"reply"`
	Delivered *time.Time      `json:"delivered,omitempty"`
	Failure   string          `json:"failure,omitempty"`
	Confirmed *confirmation   `json:"confirmed,omitempty"`
	Calc      string          `json:"calc,omitempty"`
	Schema    int             `json:"schema"`
	Question  json.RawMessage `json:"question,omitempty"`
	Result    json.RawMessage `json:"result,omitempty"`

	Site        string     `json:"site,omitempty"`
	Reading     string     `json:"reading,omitempty"`
	Flags       []bot.Flag `json:"flags,omitempty"`
	ChangedFrom string     `json:"changed_from,omitempty"` // the words in whose place these were taken
	Arborist    string     `json:"arborist,omitempty"`     // named by the channel's job
	InForce     []string   `json:"in_force,omitempty"`     // what else the job holds: gear, limit, units
	ViewOf      string     `json:"view_of,omitempty"`      // the id of the question whose answer it showed in another way
}

// confirmation is that somebody stands by an answer, on site.
type confirmation struct {
	By   string    `json:"by"`
	At   time.Time `json:"at"`
	Note string    `json:"note,omitempty"`
}

func writeJSON(w io.Writer, day Day, entries []bot.Entry) error {
	out := bufio.NewWriter(w)
	fmt.Fprint(out, "[")
	for i, f := range logged(entries) {
		line, err := json.Marshal(newObject(day, f))
		if err != nil {
			return err
		}
		sep := ",\n"
		if i == 0 {
			sep = "\n"
		}
		fmt.Fprint(out, sep, escape(string(line)))
	}
	if len(entries) > 0 {
		fmt.Fprintln(out)
	}
	fmt.Fprintln(out, "]")
	return out.Flush()
}

func newObject(day Day, f fact) object {
	e := f.Entry
	o := object{
		ID: e.ID, Asked: e.Asked.In(day.From.Location()),
		Workspace: e.Workspace, Channel: e.Channel, Thread: e.Thread, User: e.User,
		Words: e.Words, Status: e.Status, Intent: e.Intent, PlanKg: e.PlanKg, Reply: e.Reply,
		Failure: e.Failure, Calc: e.Calc, Schema: e.Schema,
		Question: raw(e.Question), Result: raw(e.Result), Reading: f.reading, Flags: f.Flags, ViewOf: f.viewOf,
	}
	o.Site, o.InForce = day.Jobs[f.place].Told(bot.VoiceOf(""))
	o.Arborist = day.Jobs[f.place].Arborist()
	if f.was != nil {
		o.ChangedFrom = f.was.Words
	}
	if math.IsNaN(e.PlanKg) || math.IsInf(e.PlanKg, 0) {
		o.PlanKg = 0
	}
	if e.Delivered != nil {
		at := e.Delivered.In(day.From.Location())
		o.Delivered = &at
	}
	if c := e.Confirmed; c != nil {
		o.Confirmed = &confirmation{By: c.User, At: c.At.In(day.From.Location()), Note: c.Note}
	}
	return o
}

// raw passes JSON through, and anything else as a string: one damaged entry
// must not hide the day.
func raw(m json.RawMessage) json.RawMessage {
	if len(m) == 0 || json.Valid(m) {
		return m
	}
	text, _ := json.Marshal(string(m)) // a string cannot fail
	return text
}

// escape writes runes that a terminal could obey in JSON's own notation. In
// JSON they can only stand inside a string.
func escape(line string) string {
	var b strings.Builder
	for _, r := range line {
		switch {
		case unicode.IsPrint(r):
			b.WriteRune(r)
		case r > 0xffff:
			hi, lo := utf16.EncodeRune(r)
			fmt.Fprintf(&b, `\u%04x\u%04x`, hi, lo)
		default:
			fmt.Fprintf(&b, `\u%04x`, r)
		}
	}
	return b.String()
}
