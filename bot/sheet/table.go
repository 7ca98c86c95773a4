package sheet

import (
	"fmt"
	"io"
	"strings"
	"text/tabwriter"
	"unicode"

	"heft/bot"
)

// widest is how much of a person's words or of a reply a table line holds.
const widest = 70

func writeTable(w io.Writer, d Day, entries []bot.Entry) error {
	if len(entries) == 0 {
		_, err := fmt.Fprintf(w, "%s: no questions.\n", d)
		return err
	}
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintln(t, "TIME\tWHO\tCHANNEL\tSTATUS\tPLAN\tWORDS\tREPLY")
	for _, e := range entries {
		fmt.Fprintf(t, "%s\t%s\t%s\t%s\t%s\t%s\t%s\n", d.clock(e.Asked), tame(e.User), tame(e.Channel),
			e.Status, mass(e.PlanKg), tame(e.Words), tame(headline(e)))
	}
	if err := t.Flush(); err != nil {
		return err
	}
	_, err := fmt.Fprintf(w, "\n%s, %s\n", d, sum(entries))
	return err
}

// tame makes words safe for a terminal: one line, nothing that moves a cursor
// or turns the text round, and no longer than a line has room for.
func tame(s string) string {
	var b strings.Builder
	n := 0
	for _, r := range s {
		if n++; n > widest {
			b.WriteRune('…')
			break
		}
		switch {
		case unicode.IsSpace(r):
			b.WriteByte(' ')
		case unicode.IsPrint(r):
			b.WriteRune(r)
		}
	}
	return b.String()
}
