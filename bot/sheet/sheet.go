package sheet

import (
	"errors"
	"fmt"
	"io"

	"heft/bot"
)

// Format is how a day is rendered.
type Format string

// The formats.
const (
	Table Format = "table" // lines to look over on a terminal; long texts are cut
	JSON  Format = "json"  // an array of objects, one a line, with all that the journal holds
	CSV   Format = "csv"   // a header and a row for each question
	HTML  Format = "html"  // one page that stands alone, to read and to print
)

// ParseFormat reads the name of a format.
func ParseFormat(name string) (Format, error) {
	switch f := Format(name); f {
	case Table, JSON, CSV, HTML:
		return f, nil
	}
	return "", errors.New("the formats are table, json, csv and html")
}

// Write renders the entries of a day, in the order given and with the times
// of the day's place. A day without entries says so: in words in the table
// and on the page, in JSON as an empty array, in CSV as a header alone.
func Write(w io.Writer, format Format, day Day, entries []bot.Entry) error {
	write, ok := map[Format]func(io.Writer, Day, []bot.Entry) error{
		Table: writeTable, JSON: writeJSON, CSV: writeCSV, HTML: writeHTML,
	}[format]
	if !ok {
		_, err := ParseFormat(string(format))
		return err
	}
	if err := write(w, day, entries); err != nil {
		return fmt.Errorf("write the day's sheet: %w", err)
	}
	return nil
}
