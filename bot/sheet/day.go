package sheet

import (
	"errors"
	"sort"
	"strconv"
	"strings"
	"time"

	"heft/bot"
)

// Day is a calendar day somewhere: from its first instant up to, not at, the
// first of the next. Where the clocks change it has more or fewer hours than
// 24.
type Day struct {
	From, To time.Time

	Jobs  map[Place]bot.Job // what held in each channel at the end of the day
	Names map[string]string // of people and channels, by their ids
	Voice bot.Voice         // in which the page and the table are told
}

const dateLayout = "2006-01-02"

// ParseDay reads a day such as 2026-11-25 in a place.
func ParseDay(text string, loc *time.Location) (Day, error) {
	t, err := time.Parse(dateLayout, text)
	if err != nil {
		return Day{}, errors.New("a day looks like 2026-11-25: year, month, day")
	}
	year, month, date := t.Date()
	day := around(time.Date(year, month, date, 12, 0, 0, 0, loc))
	if day.String() != text {
		return Day{}, errors.New("the calendar there left that day out")
	}
	return day, nil
}

// DayOf is the day on which t falls in t's own location.
func DayOf(t time.Time) Day {
	year, month, date := t.Date()
	return around(time.Date(year, month, date, 12, 0, 0, 0, t.Location()))
}

// around finds the day's ends by looking: there are places whose clocks skip
// midnight or strike it twice.
func around(noon time.Time) Day {
	const reach = 36 * 60 * 60 // more seconds than lie between noon and either end
	same := func(seconds int) bool {
		return noon.Add(time.Duration(seconds)*time.Second).Format(dateLayout) == noon.Format(dateLayout)
	}
	before := sort.Search(reach, func(s int) bool { return same(s - reach) }) - reach
	after := sort.Search(reach, func(s int) bool { return !same(s) })
	return Day{
		From: noon.Add(time.Duration(before) * time.Second),
		To:   noon.Add(time.Duration(after) * time.Second),
	}
}

// String is the date.
func (d Day) String() string { return d.From.Format(dateLayout) }

// even says whether the clocks stay as they are all day.
func (d Day) even() bool { return d.To.Sub(d.From) == 24*time.Hour }

// weekdays are the days of the week.
var weekdays = [...]string{"Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"}

// title names the day and the clock its times are told by.
func (d Day) title() string {
	weekday := d.Voice.Word(weekdays[d.From.Weekday()])
	if d.even() {
		return d.Voice.Say("%s %s, times in %s", weekday, d.String(), zone(d.From))
	}
	return d.Voice.Say("%s %s, times in %s, then %s, %s hours: the clocks change",
		weekday, d.String(), zone(d.From), zone(d.To.Add(-1)), strconv.FormatFloat(d.To.Sub(d.From).Hours(), 'g', -1, 64))
}

// zone names the zone of a time: where it has no letters, by how far it is
// from Greenwich.
func zone(t time.Time) string {
	name, offset := t.Format("MST"), t.Format("-07:00")
	if strings.ContainsAny(name, "+-") {
		return "UTC" + offset
	}
	if name == "UTC" {
		return name
	}
	return name + " (UTC" + offset + ")"
}

// clock tells the time of day, with its zone where that changes.
func (d Day) clock(t time.Time) string {
	layout := "15:04"
	if !d.even() {
		layout += " MST"
	}
	return t.In(d.From.Location()).Format(layout)
}
