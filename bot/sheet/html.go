package sheet

import (
	_ "embed"
	"html/template"
	"io"

	"heft/bot"
)

//go:embed page.html
var pageHTML string

var page = template.Must(template.New("page").Funcs(template.FuncMap{"mass": mass}).Parse(pageHTML))

// line is one question on the page.
type line struct {
	bot.Entry
	Clock string
}

func writeHTML(w io.Writer, d Day, entries []bot.Entry) error {
	lines := make([]line, len(entries))
	for i, e := range entries {
		lines[i] = line{e, d.clock(e.Asked)}
	}
	return page.Execute(w, struct {
		Day    string
		Totals string
		Lines  []line
	}{d.String(), sum(entries).String(), lines})
}
