package sheet

import (
	"testing"
	"time"
	_ "time/tzdata"
)

func place(t testing.TB, name string) *time.Location {
	t.Helper()
	loc, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return loc
}

func mustDay(t testing.TB, text, where string) Day {
	t.Helper()
	day, err := ParseDay(text, place(t, where))
	if err != nil {
		t.Fatal(err)
	}
	return day
}

// The instants follow from the rules of the IANA time zone database, worked
// out by hand: offsets and the days on which clocks change.
func TestADayIsAsLongAsItsClocksMakeIt(t *testing.T) {
	for _, c := range []struct{ where, day, from, to string }{
		{"UTC", "2026-11-25", "2026-11-25T00:00:00Z", "2026-11-26T00:00:00Z"},
		{"Europe/Berlin", "2026-11-25", "2026-11-24T23:00:00Z", "2026-11-25T23:00:00Z"},
		// 23 and 25 hours: last Sundays of March and October, 01:00 UTC.
		{"Europe/Berlin", "2026-03-29", "2026-03-28T23:00:00Z", "2026-03-29T22:00:00Z"},
		{"Europe/Berlin", "2026-10-25", "2026-10-24T22:00:00Z", "2026-10-25T23:00:00Z"},
		// Second Sunday of March and first of November, 02:00 local.
		{"America/New_York", "2026-03-08", "2026-03-08T05:00:00Z", "2026-03-09T04:00:00Z"},
		{"America/New_York", "2026-11-01", "2026-11-01T04:00:00Z", "2026-11-02T05:00:00Z"},
		// Half an hour: first Sunday of April.
		{"Australia/Lord_Howe", "2026-04-05", "2026-04-04T13:00:00Z", "2026-04-05T13:30:00Z"},
		// Midnight is skipped: the day starts at 01:00, and 02:00 UTC+0 is
		// 00:00 UTC-2 the day before.
		{"America/Sao_Paulo", "2018-11-04", "2018-11-04T03:00:00Z", "2018-11-05T02:00:00Z"},
		{"America/Sao_Paulo", "2018-11-03", "2018-11-03T03:00:00Z", "2018-11-04T03:00:00Z"},
		// 24:00 becomes 23:00: the day before has 25 hours.
		{"America/Sao_Paulo", "2018-02-17", "2018-02-17T02:00:00Z", "2018-02-18T03:00:00Z"},
		{"America/Sao_Paulo", "2018-02-18", "2018-02-18T03:00:00Z", "2018-02-19T03:00:00Z"},
		// 01:00 becomes 00:00: midnight strikes twice.
		{"America/Havana", "2026-11-01", "2026-11-01T04:00:00Z", "2026-11-02T05:00:00Z"},
		// The day after this one was left out.
		{"Pacific/Apia", "2011-12-29", "2011-12-29T10:00:00Z", "2011-12-30T10:00:00Z"},
	} {
		day := mustDay(t, c.day, c.where)
		from, to := day.From.UTC().Format(time.RFC3339), day.To.UTC().Format(time.RFC3339)
		if from != c.from || to != c.to {
			t.Errorf("%s in %s: %s to %s, want %s to %s", c.day, c.where, from, to, c.from, c.to)
		}
		if day.String() != c.day {
			t.Errorf("%s in %s calls itself %s", c.day, c.where, day)
		}
		for _, at := range []time.Time{day.From, day.To.Add(-1)} {
			if got := DayOf(at); !got.From.Equal(day.From) || !got.To.Equal(day.To) {
				t.Errorf("%s in %s: its instant %v falls on %s", c.day, c.where, at, got)
			}
		}
	}
}

func TestWhatIsNoDay(t *testing.T) {
	for _, text := range []string{
		"", "today", "2026-13-01", "2026-02-30", "2026-2-3", "25.11.2026", "2026-11-25 ", "2026-11-25T00:00:00Z", "<!channel>",
	} {
		_, err := ParseDay(text, time.UTC)
		if err == nil || err.Error() != "a day looks like 2026-11-25: year, month, day" {
			t.Errorf("%q: %v", text, err)
		}
	}
	if _, err := ParseDay("2011-12-30", place(t, "Pacific/Apia")); err == nil {
		t.Error("a day that the calendar left out was found")
	}
}

func TestTimesNameTheirZoneWhereItChanges(t *testing.T) {
	at := func(text string) time.Time {
		t.Helper()
		parsed, err := time.Parse(time.RFC3339, text)
		if err != nil {
			t.Fatal(err)
		}
		return parsed
	}
	plain, long := mustDay(t, "2026-11-25", "Europe/Berlin"), mustDay(t, "2026-10-25", "Europe/Berlin")
	for _, c := range []struct {
		day      Day
		at, want string
	}{
		{plain, "2026-11-25T07:14:59Z", "08:14"},
		{long, "2026-10-25T00:30:00Z", "02:30 CEST"},
		{long, "2026-10-25T01:30:00Z", "02:30 CET"},
	} {
		if got := c.day.clock(at(c.at)); got != c.want {
			t.Errorf("%s is %q, want %q", c.at, got, c.want)
		}
	}
	if got, want := plain.title(), "Wednesday 2026-11-25, times in CET (UTC+01:00)"; got != want {
		t.Errorf("title %q, want %q", got, want)
	}
	if got, want := long.title(), "Sunday 2026-10-25, times in CEST (UTC+02:00), then CET (UTC+01:00), 25 hours: the clocks change"; got != want {
		t.Errorf("title %q, want %q", got, want)
	}
}

// A zone whose name has no letters is told by how far it is from Greenwich.
func TestTheHeadNamesTheZone(t *testing.T) {
	for where, want := range map[string]string{
		"UTC":                 "Wednesday 2026-11-25, times in UTC",
		"America/Denver":      "Wednesday 2026-11-25, times in MST (UTC-07:00)",
		"America/Sao_Paulo":   "Wednesday 2026-11-25, times in UTC-03:00",
		"Australia/Lord_Howe": "Wednesday 2026-11-25, times in UTC+11:00",
	} {
		if got := mustDay(t, "2026-11-25", where).title(); got != want {
			t.Errorf("%s: %q, want %q", where, got, want)
		}
	}
}
