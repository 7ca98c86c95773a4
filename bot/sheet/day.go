package sheet

import (
	"fmt"
	"time"
)

// Day is one calendar day somewhere: From is in it, To is not. It has 23 or
// 25 hours where the clocks change.
type Day struct{ From, To time.Time }

// ParseDay reads a day such as 2026-11-25 in a place's time.
func ParseDay(s string, in *time.Location) (Day, error) {
	from, err := time.ParseInLocation(time.DateOnly, s, in)
	if err != nil {
		return Day{}, fmt.Errorf("%q is no day: type it like 2026-11-25", s)
	}
	return Day{From: from, To: from.AddDate(0, 0, 1)}, nil
}

// String is the day's date.
func (d Day) String() string { return d.From.Format(time.DateOnly) }

// clock is the time of day in the day's place.
func (d Day) clock(t time.Time) string { return t.In(d.From.Location()).Format("15:04") }
