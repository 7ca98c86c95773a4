package bot

import (
	"encoding/json"

	"heft/parser"
)

// A button under an answer may show it again: its working, other units. That
// is logged as every question is, but it asks nothing new.

// viewed returns, for every entry, the place of the one whose answer it only
// shows again in the same message, or -1.
func viewed(entries []Entry) []int {
	out := make([]int, len(entries))
	shown := map[[3]string]int{} // by each message, last
	for i, e := range entries {
		out[i] = -1
		if e.Posted == "" {
			continue
		}
		message := [3]string{e.Workspace, e.Channel, e.Posted}
		if j, again := shown[message]; again && e.asksAs(entries[j]) {
			if out[i] = j; out[j] >= 0 {
				out[i] = out[j]
			}
		}
		shown[message] = i
	}
	return out
}

// asksAs says whether two entries ask the same, whatever units and whatever
// explanation they ask for.
func (e Entry) asksAs(o Entry) bool {
	a, known := e.bare()
	b, also := o.bare()
	return known && also && a == b
}

// bare is what an entry asks in words, without units and explanation.
func (e Entry) bare() (string, bool) {
	var q parser.Question
	if e.Schema != SchemaVersion || e.Intent == string(parser.AskJob) || json.Unmarshal(e.Question, &q) != nil {
		return "", false
	}
	q.Explain, q.SaysUnits, q.Units = "", false, ""
	words := q.Words()
	return words, words != ""
}

// confirmations are who stands by each entry, in whichever view of it.
func confirmations(entries []Entry, views []int) []*Confirmation {
	out := make([]*Confirmation, len(entries))
	for i, e := range entries {
		of := i
		if views[i] >= 0 {
			of = views[i]
		}
		if e.Confirmed != nil {
			out[of] = e.Confirmed
		}
	}
	return out
}
