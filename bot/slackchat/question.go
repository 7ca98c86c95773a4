package slackchat

import (
	"math"
	"strconv"
	"time"

	"github.com/slack-go/slack/slackevents"

	"heft/bot"
)

// platformUser is the platform's own helper, which is nobody to answer.
const platformUser = "USLACKBOT"

// withPhoto marks a message that came with a file: crews show what they ask
// about (platform documentation, message subtypes: file_share).
const withPhoto = "file_share"

// question turns what a person asked into an event. It is false for what is
// not for the bot to answer: its own words, other bots, edits, deletions and
// messages of a special kind.
func question(outer slackevents.EventsAPIEvent, self identity) (bot.Event, bool) {
	callback, ok := outer.Data.(*slackevents.EventsAPICallbackEvent)
	if !ok {
		return bot.Event{}, false
	}
	ev := bot.Event{ID: callback.EventID, Workspace: self.team}
	var raw, stamp, author string
	switch m := outer.InnerEvent.Data.(type) {
	case *slackevents.AppMentionEvent:
		ok = m.Edited == nil
		ev.Channel, ev.Thread, ev.User = m.Channel, m.ThreadTimeStamp, m.User
		raw, stamp, author = m.Text, m.TimeStamp, m.BotID
	case *slackevents.MessageEvent:
		ok = m.IsIM() && (m.SubType == "" || m.SubType == withPhoto)
		ev.Channel, ev.Thread, ev.User = m.Channel, m.ThreadTimeStamp, m.User
		ev.Direct = true
		raw, stamp, author = m.Text, m.TimeStamp, m.BotID
	default:
		ok = false
	}
	person := author == "" && ev.User != "" && ev.User != self.user && ev.User != platformUser
	if !ok || !person || ev.ID == "" || stamp == "" {
		return bot.Event{}, false
	}
	if ev.Thread == "" {
		ev.Thread, ev.Opens = stamp, !ev.Direct
	}
	ev.At = moment(stamp, callback.EventTime)
	ev.Text = typed(raw, self.user)
	return ev, true
}

// moment reads a message stamp, seconds and a fraction; one that is no number
// leaves the time of the event.
func moment(stamp string, eventTime int) time.Time {
	seconds, err := strconv.ParseFloat(stamp, 64)
	if err != nil || math.IsNaN(seconds) || seconds < 0 || seconds > 1<<40 {
		return time.Unix(int64(eventTime), 0)
	}
	return time.UnixMicro(int64(math.Round(seconds * 1e6)))
}
