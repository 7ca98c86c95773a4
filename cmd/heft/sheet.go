package main

import (
	"bytes"

	"heft/bot"
	"heft/bot/sheet"
)

// sheetOf writes a day that a supervisor looks at as a file, oldest question
// first, as `heft log` does.
func sheetOf(d bot.Day, format string) (name string, data []byte, err error) {
	f, err := sheet.ParseFormat(format)
	if err != nil {
		return "", nil, err
	}
	entries := d.Entries()
	day := sheet.Day{From: d.From, To: d.To, Jobs: map[sheet.Place]bot.Job{}, Voice: d.Voice}
	for _, e := range entries {
		p := sheet.Place{Workspace: e.Workspace, Channel: e.Channel}
		day.Jobs[p] = d.Jobs[e.Channel]
	}
	var out bytes.Buffer
	err = sheet.Write(&out, f, day, entries)
	return "heft-" + day.String() + "." + format, out.Bytes(), err
}
